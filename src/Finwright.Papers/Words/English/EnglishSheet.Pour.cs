using Finwright.Making.Pores;

namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet
{
    public override string Pour => "Pour";

    public override string PourNotPlanned => "The pour was not worked out: no numbers can be given here.";

    public override string NothingPoured => "No part has room for resin inside its walls, so nothing is poured.";

    public override StepWords LayOut => new("Lay out cups, scales, sticks, syringe, cloths and a second pair of gloves; read this chapter to its end", "Once it is mixed, the resin does not wait.");

    public override string PortColumn => "port";

    public override string NameColumn => "name";

    public override string RoleColumn => "for";

    public override string DiameterColumn => "drill";

    public override string DepthColumn => "deep, from the skin";

    public override string PortsSuggested => "The part has no ports of its own: the picture shows where to drill.";

    public override string WorkingTimeUnknown => "How long a full cup can be worked is not known: the data sheet tells it.";

    public override string FillingUnknown => "How fast the pores fill is not known: pour slowly and watch the vents.";

    public override string CupColumn => "cup";

    public override string ResinColumn => "resin";

    public override string HardenerColumn => "hardener";

    public override string MixColumn => "together";

    public override string MixedAtColumn => "mixed at";

    public override string PouredAtColumn => "poured at";

    public override StepWords Rock => new("While it fills: tilt, rock and tap the part all over", "Bubbles cling to the lines of the infill; a knock frees them.");

    public override string NoAir => "Held like this, all air finds its way to a vent.";

    public override StepWords TopUp => new("When resin without bubbles stands in every vent, stop; look every quarter of an hour and top up until nothing sinks any more", "The pores go on drinking, and resin shrinks as it hardens.");

    public override string StageColumn => "pour";

    public override string LevelColumn => "up to";

    public override string AfterColumn => "after the first";

    public override StepWords PourStages => new("Mark the levels on the part with tape; stop at each and wait until the part has warmed and cooled again before the next; pour on while the last is still tacky", "Each pour must lose its heat; on a tacky face the next one bonds (common practice, no source).");

    public override StepWords Leftovers => new("Spread what is left in cups and syringe thin on the metal tray outdoors", "A thin layer stays cool; a full cup does not.");

    public override string PourSentence(string pores, string grams, string cups) => $"The pores take about {pores}; mix {grams} in {cups}, what stays in tubes, cups and syringe included.";

    public override StepWords WarmResin(string resin, string room) => new($"Bring resin and hardener to {resin} and the room to {room}", "All times of this chapter are for these temperatures; warmer is faster.");

    public override StepWords FillBath(string temperature) => new($"Fill the bath with water of {temperature} and try each part in it, dry ports up, before anything is mixed", "A part that floats or tips over with resin in it is lost.");

    public override StepWords HowToMix(string cup) => new($"For every cup: weigh the resin, weigh the hardener into it, stir for three minutes, scrape sides and bottom, pour into a clean cup, stir again; never more than {cup} in a cup", "Resin at the wall of a cup stays unmixed and never hardens; a larger cup heats itself faster.");

    public override string LimitedBy(BatchLimit limit) => limit switch
    {
        BatchLimit.StatedMass => "A cup is as large as the one for which the data sheet states its working time.",
        BatchLimit.PotLife => "A cup is as large as a hand can pour in half its working time.",
        _ => "A cup is as large as the design allows.",
    };

    public override StepWords Hold(string part, string attitude) => new($"Hold the {part} with the {attitude}, as the picture shows, and fix it there", "Held otherwise, air stays where no vent is.");

    public override string PourCaption(string part) => $"The {part} held for the pour: ports by their numbers, the feed filled in.";

    public override string Role(bool isFeed) => isFeed ? "feed" : "vent";

    public override StepWords DrillPorts(string part) => new($"Drill the ports of the {part} as deep as the table says, from the skin: through the wall and on into the core; mark that depth on the drill with tape", "The infill parts the inside into two rooms that never meet; only a deep enough hole opens both.");

    public override StepWords SetReservoir(string millilitres, string head) => new($"Fix tube and funnel to port 1; keep the funnel {head} above the highest point of the part; plan {millilitres} to stand in funnel and tubes at the end", "The height presses the resin through the pores, and what stands there tops them up.");

    public override StepWords SetSyringe(string head) => new($"Fix the tube to port 1; hold its upper end {head} above the highest point of the part, or press the syringe lightly", "The height presses the resin through the pores.");

    public override StepWords PourCups(string part, string cups, string total, string pouring) => new($"Pour the {part} through port 1, slowly: {cups}, {total} in all, about {pouring} a cup; tick each", "Fast resin closes air in behind it.");

    public override string WorkingTime(string time) => $"A full cup can be worked for about {time}; pour it in the first half of that time. What strings or grows warm is not poured any more.";

    public override string Filling(string time) => $"The pores alone would let the whole part fill in {time}.";

    public override string PoresRange(string pores, string total) => $"Room for resin: {pores}. To mix, with losses: {total}. The last cup may be smaller, or one more may be needed.";

    public override string AirStays(string millilitres, string share) => $"Held like this, {millilitres} of air stay, {share} of the pores, where the picture marks it: tilt that place toward a vent while it fills.";

    public override string AirBetter(string attitude, string millilitres) => $"With the {attitude}, {millilitres} stay.";

    public override string AirRocking(string first, string second, string millilitres) => $"Rocked between {first} and {second}, {millilitres} stay.";

    public override string Staged(int pours) => $"This design is poured in {pours} pours, one after the other:";
}
