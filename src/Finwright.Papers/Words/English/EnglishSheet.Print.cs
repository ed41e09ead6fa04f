namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet
{
    public override string Print => "Print";

    public override string PrintNotPlanned => "The print was not planned: no numbers can be given here.";

    public override string Settings => "Settings of the printer's program";

    public override string SettingColumn => "setting";

    public override string PlasticSetting => "plastic";

    public override string LayerSetting => "layer height";

    public override string WallSetting => "walls";

    public override string SolidSetting => "solid layers";

    public override string InfillSetting => "infill";

    public override string SpeedSetting => "speed";

    public override string HeatSetting => "nozzle and bed";

    public override string HeatValue => "by the filament's data sheet";

    public override string SupportSetting => "supports";

    public override string PartsHead => "The parts";

    public override string PlateColumn => "plate";

    public override string LiesColumn => "lies";

    public override string TimeColumn => "time";

    public override string PlasticColumn => "plastic";

    public override StepWords KeepAttitude => new("Load the files as they are; do not turn or scale the parts", "They lie as strength and overhang ask for, in true size.");

    public override StepWords TryGauge => new("Try the gauge in the box of the board before anything else is printed", "It must need a firm push. If not, correct the allowances of the base in the design file and make all papers and files again.");

    public override StepWords SetPauses => new("Set a pause before each layer of this table; count layers from 1 at the bed and check the height", "The nut must go in before its pocket closes; one forgotten cannot be put in later.");

    public override string LayerColumn => "before layer";

    public override string HeightColumn => "at height";

    public override string PutInColumn => "put in";

    public override string RoomColumn => "room above";

    public override StepWords PutIn => new("At each pause: put it in with tweezers, press it down until it lies below the last layer, go on at once", "What stands proud catches the nozzle and tears the print off the bed.");

    public override StepWords FirstLayers => new("Stay for the first layers", "What lifts now lifts for good.");

    public override string PrintSentence(string time, string plates, string grams, string stops) => $"About {time} of printing on {plates}, {grams} of plastic, {stops}.";

    public override string WallValue(int lines, string width, string thickness) => $"{lines} lines of {width}, {thickness} in all";

    public override string SolidValue(int layers) => $"{layers} at the top, {layers} at the bottom";

    public override string InfillValue(string share) => $"gyroid, {share}";

    public override string SpeedValue(string outer, string inner) => $"outer wall {outer}, all else {inner}";

    public override string SupportValue(bool needed) => needed ? "where a part hangs over; see the verdict below" : "none";

    public override string SizeColumn(string unit) => $"size on the bed, {unit}";

    public override StepWords DryFilament(string temperature) => new($"Dry the filament as its data sheet says; for PETG 4 to 6 h at {temperature} is usual (from memory)", "Damp filament strings, its layers hold badly, and resin leaks out.");

    public override string PlateHead(int number, string parts) => $"Plate {number}: {parts}";

    public override string PlateCaption(int number) => $"Plate {number}, the bed seen from above.";

    public override StepWords PrintPlate(int number, string time, string grams) => new($"Print plate {number}: about {time}, {grams} of plastic", "The range is what speed, corners and cooling of your printer leave open.");

    public override StepWords Brim(string parts, string width) => new($"Give these a brim of {width} all round: {parts}", "High on a small foot, a knock of the nozzle would loosen them.");

    public override StepWords Discs(string parts, string diameter) => new($"Put discs of {diameter}, one layer thick, under the ends of these: {parts}", "A long foot lifts there first as it shrinks.");

    public override StepWords PutInLater(string items) => new($"After the print put in: {items}", "Its pocket stays open, so no pause is needed.");

    public override string CannotPutIn(string items) => $"No pause gets this in: {items}. Turn the part on the bed, or let the pocket open to a side.";

    public override StepWords CoolPlate(string temperature) => new($"Let the bed cool below {temperature} before you take anything off", "Long parts bend when they are pulled off warm (common practice, no source).");
}
