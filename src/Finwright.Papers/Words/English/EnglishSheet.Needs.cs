namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishSheet
{
    public override string Needs => "What you need";

    public override string NeedsSentence => "Buy, cut and lay out everything before the first print: a stop of the printer does not wait for a nut from the post.";

    public override string CutList => "To buy and cut";

    public override string CutNothing => "Nothing is to be bought or cut beside plastic and resin.";

    public override string ItemColumn => "what";

    public override string CountColumn => "count";

    public override string LengthColumn => "length";

    public override string ToleranceColumn => "how exact";

    public override string PlaceColumn => "where";

    public override string BoltTolerance => "through the nut, not to the end of the bore";

    public override string ByBox => "by your box";

    public override string ByTemplate => "by the template";

    public override string BoltNote => "Bolts: the length is the part inside the fin. Add the board above the base, measured at each bolt hole; the bolts of one box are often of different lengths. How exact a cut must be is common practice, no source; every bore is a little deeper than what goes into it.";

    public override string Materials => "Plastic and resin";

    public override string AmountColumn => "amount";

    public override string RemarkColumn => "of which";

    public override string MixByDataSheet => "resin and hardener in the ratio of the data sheet";

    public override string NoMix => "no part is poured";

    public override string MaterialsNote => "Brim, skirt and trials are not counted. Have a quarter more resin at hand than this: a leak takes some (common practice, no source).";

    public override string Tools => "Tools and small things";

    public override StepWords ToolsBody => new("Nitrile gloves (many), eye cover, long sleeves, P2 or P3 mask, soap and water, moving air", "For your skin, eyes and lungs, from the first coat to the last paper.");

    public override StepWords ToolsSealing => new("Clear lacquer or thin epoxy with a brush, tape, soapy water", "To make the print tight, and to find where it is not.");

    public override StepWords ToolsTray => new("Flat metal tray, outdoors, on stone or sand", "For a cup that gets hot, and for leftovers spread thin.");

    public override StepWords ToolsBonding => new("Paper of 120 to 180 grit, isopropanol, clean cloths, thickened or toughened epoxy, clamps", "Bonds hold on rough, clean faces only.");

    public override StepWords ToolsSanding => new("Waterproof paper of 80, 180, 240 and 400 grit, hard sanding block, the section templates", "To shape, to fair and to finish.");

    public override StepWords ToolsFitting => new("Dry soap, grease for threads, screwdriver or key of the bolts, soft washers for their heads", "To find where the base touches, and to keep air out of the bolt holes.");

    public override string CutShort(string atMost) => $"not longer; up to {atMost} shorter";

    public override string RodTolerance(string atMost) => $"not longer; up to {atMost} shorter, ends rounded";

    public override string Filament(string name) => $"filament: {name}";

    public override string OfSpool(string share, string spool) => $"{share} of a full spool of {spool}";

    public override string Mix(string name) => $"resin with hardener: {name}";

    public override string MixOf(string resin, string hardener) => $"{resin} of resin, {hardener} of hardener";

    public override StepWords ToolsMixing(string cups, string scales) => new($"Clean cups ({cups}, and some spare), stirring sticks, scales that show {scales}, clock", "Resin and hardener are weighed, not guessed: a wrong ratio never hardens.");

    public override StepWords ToolsPouring(string drill) => new($"Drill of {drill}, syringe of 50 to 100 ml with a tube that fits it, funnel, tape for marks", "To open the ports and to feed the resin slowly.");

    public override StepWords ToolsBath(string level) => new($"Tub that takes each part as it is held, filled to {level} of its height, with something to hold it; thermometer on a wire", "Water takes the heat of the cure away.");

    public override StepWords ToolsBench(string mass, string gauge) => new($"Weight of {mass}, weighed; loop of cord; ruler or gauge that shows {gauge}; a block or box that holds the base; something soft below", "To prove the fin ashore.");
}
