using Finwright.Assessment.Figures;

namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet
{
    public override string Cure => "Cure";

    public override string CureNotWorkedOut => "The cure was not worked out. Keep the part cool, in water with its vents up if you can, and stay within the data sheet of the resin.";

    public override string NeverAboveUnknown => "Keep it cool";

    public override string WaterNotNeeded => "By itself it stays cool enough even in air at the warm end of the range; the water makes it surer.";

    public override string WaterNotEnough => "Even all the time in this water it does not stay below softening at the warm end of the range: do not pour it like this.";

    public override string PouredAt => "Poured at";

    public override string IntoWaterAt => "Into the water at";

    public override string OutOfWaterAt => "Out of the water at";

    public override string HandledAt => "Handled at";

    public override string HoursColumn => "after the pour";

    public override string ResinHeatColumn => "hottest resin, expected";

    public override string SkinHeatColumn => "warmest skin, expected";

    public override string ClockColumn => "clock";

    public override string MeasuredColumn => "measured";

    public override StepWords Harden => new("Let it stand in a warm room for another day before it is sanded; full strength takes five to seven days", "Half-cured resin clogs the paper, and its dust is the worst.");

    public override StepWords ClosePorts => new("Cut tubes and beads off flush, fill the ports and every dent with thickened epoxy", "An open port drinks water.");

    public override string CureTitle(string fin, string part) => $"{fin}, {part}: temperature while it cures";

    public override CureCurveWords CureCurves => CureCurveWords.English;

    public override string CureSentence(string part, string peak, string after) => $"The warmest part, the {part}, should peak at {peak} after {after}.";

    public override string CureLost(string part) => $"The cure of the {part} could not be followed to its end: change resin, thickness or cooling a little and make the papers again before you pour.";

    public override string NeverAbove(string temperature) => $"Never above {temperature}: there the walls soften";

    public override IReadOnlyList<string> Runaway(bool isBathed) =>
    [
        isBathed
            ? "A part that gets too warm: leave it in the water, vents up; put in cold water and ice from outside its ports."
            : "A part that gets too warm: stand it in a tub of cold water up to its vents, outdoors if it can be carried safely.",
        "A cup that gets hot: outdoors onto the metal tray, spread thin. Hold it with a cloth or pliers, not with the bare hand.",
        "Do not breathe the smoke, do not close any vessel or vent, pour nothing more in. Open doors, go out, keep others away until it is cold.",
        "If it burns: get away, close the door, call the fire service.",
    ];

    public override StepWords IntoWater(string part, string temperature, string level, string time) => new($"Stand the {part} in water of {temperature} up to {level} of its height, vents above the water, for {time} from the pour", "Water takes the heat away; taken out too early, the rest of it comes out in air, where it cannot leave.");

    public override StepWords IntoAir(string part, string temperature) => new($"Let the {part} stand in still air of {temperature}, away from sun and heaters, with room all round", "The cure was worked out for this; a warm corner makes it hotter.");

    public override string WaterNeeded(string time) => $"Shorter than {time} in the water it would soften at the warm end of the range.";

    public override string Expected(string peak, string after) => $"Its resin should peak at {peak}, after {after}.";

    public override StepWords Measure(string place) => new($"Tape a thermometer to the skin, {place}, and write down what it shows", "A peak that comes early or high warns of the next pour; the numbers belong to this fin's notes.");

    public override string HottestPlace(string distance, bool isBelow) => isBelow ? $"{distance} below the hull plane, over the thickest place" : $"{distance} above the hull plane, on the base";

    public override string CureCaption(string part) => $"The {part}: temperature while it cures, with its range.";

    public override StepWords Handle(string part, string time, string range) => new($"Do not move or unpack the {part} before {time} have passed ({range})", "Resin moved before it has set shifts and cracks.");

    public override StepWords HandleUnknown(string part) => new($"When the {part} can be handled is not known: wait until a scrap from the same cup is hard and glassy", "Resin moved before it has set shifts and cracks.");

    public override string HandleRange(string early, string? late) => late is null ? $"{early} or longer" : $"{early} to {late}";
}
