namespace Finwright.Papers.Words.English;

internal sealed partial class EnglishTemplates : TemplateWords
{
    public override string CheckLine => "100 mm: measure this line before use";

    public override string Fin(string name, string? number) => string.IsNullOrEmpty(number) ? name : $"{name}, part number {number}";

    public override string TrueSize => "True size: print at 100 % and measure the check line first.";

    public override string LengthsIn(string unit) => $"Unit of length: {unit}.";

    public override string PlanformTitle => "Planform";

    public override string PlanformUse => "Lay the printed parts on it to check their outline, and carry depths and lines over to the blade.";

    public override string PrintedBlade => "edge of the printed blade";

    public override string Base => "base";

    public override string BaseAndFlange => "base and flange";

    public override string StripEdge => "outer edge of the strip";

    public override string SlotBottom => "bottom of the slot for the strip";

    public override string CutBetweenParts => "cut between two parts of the blade";

    public override string QuarterChordLine => "quarter-chord line";

    public override string Hull => "hull";

    public override string Depth(string depth) => $"depth {depth}";

    public override string Chord(string chord) => $"chord {chord}";

    public override string StripTitle => "Strip";

    public override string StripUse(string sheet, string width, string length) =>
        $"Cut the strip from {sheet} sheet, {width} wide and {length} long at the printed edge. It is drawn as it lies flat in the plane of the blade. Try it in the slot before you roughen and bond it.";

    public override string StripCutLine => "cut here";

    public override string StripPrintedEdge => "the printed trailing edge ends here";

    public override string StripInSlot(string depth) => $"into the slot, {depth} deep";

    public override string StripOutside(string overhang) => $"stays outside, {overhang}";

    public override string ToTheTip => "to the tip";

    public override string RootEnd => "root end";

    public override string SectionsTitle => "Sections";

    public override string SectionsUse(bool symmetric) => symmetric
        ? "Glue to card and cut out: the piece shows the section, the card round it is the gauge. Cut the card along the chord to get a gauge for one side; hold it to the blade while sanding."
        : "Glue to card and cut out: the piece shows the section, the card round it is the gauge. Starboard lies above. Cut the card along the chord to get a gauge for each side; hold it to the blade while sanding.";

    public override string Section(string depth, string share, string chord, string thickness, string behind) =>
        $"Depth {depth} ({share} of span): chord {chord}, thickness {thickness} at {behind} behind the leading edge";

    public override string SectionOutline => "outline of the section";

    public override string SectionMiddle => "chord; the arrow points forward, past the leading edge";

    public override string GreatestThickness => "greatest thickness";

    public override string DrillTitle => "Places to drill";

    public override string DrillUse =>
        "Lay the paper on the side that it names, outline on outline, and prick the crosses through. Drill by hand with a stop on the drill, as deep as the table says, from the skin; slowly, so that the plastic does not melt; wear eye protection. Keep clear of what lies inside. "
        + "Bores and pockets are printed; they are shown so that you can check them. Depths with a minus lie above the hull.";

    public override string SeenFrom(bool starboard) => starboard ? "Starboard side" : "Port side";

    public override string PortRole(string name, bool feed)
    {
        string role = feed ? "feed" : "vent";
        return name.Contains(role, StringComparison.OrdinalIgnoreCase) ? name : $"{name}, {role}";
    }

    public override string Drill(string diameter, string depth) => $"Ø {diameter}, {depth} deep";

    public override string SideOf(int side) => side > 0 ? "starboard" : side < 0 ? "port" : "edge";

    public override string OutlineOfParts => "blade and base";

    public override string InsideLines => "inside: bores, pockets, dowels";

    public override string PartHead => "Part";

    public override string PortHead => "Port";

    public override string SideHead => "Side";

    public override string DiameterHead => "Ø";

    public override string DrillDepthHead => "Deep from skin";

    public override string AngleHead => "To blade plane";

    public override string FromOriginHead => "Aft of 0";

    public override string BelowHullHead => "Below hull";

    public override string InsideHead => "Inside";

    public override string FromHullHead => "Begins below hull";

    public override string ToHullHead => "Ends below hull";

    public override string BaseTitle => "Base gauge";

    public override string BaseUse =>
        "Glue to card, cut out both pieces and try them in the fin box: the long one shows length, depth and end angles, the narrow one the width. Correct the base's measurements in the design where they bind or rattle.";

    public override string CutLine => "cut here";

    public override string BoltAxis => "axis of a bolt from the deck";

    public override string Bolt(string thread) => $"{thread} bolt";

    public override string CrossPin(string diameter) => $"cross pin, {diameter}";

    public override string WhatHead => "What";

    public override string FromFrontCornerHead => "Aft of the front corner";

    public override string AboveHullHead => "Above hull";

    public override string LeanHead => "Leans aft, going up";

    public override string CutAcross => "across";

    public override string Front => "front";

    public override string JigTitle(string part) => $"Pour jig: {part}";

    public override string JigUse(string attitude) =>
        $"How the part is held for the pour: {attitude}. Fix the paper to an upright board with the bench line level, hold the part against it outline on outline, and put the supports under it. Ports stay free.";

    public override string PartFromTheSide => "the part, seen level from the side";

    public override string Support => "support, height beside it";

    public override string BenchLevel => "bench, level";

    public override string Plumb => "plumb";

    public override string Level => "level";

    public override string AlongHull => "parallel to the hull";

    public override string AlongSpan => "along the span, square to the hull";

    public override string ReferenceToLevel(string direction, string angle) => $"{direction}, {angle} to level";

    public override string AboveBenchHead => "Above bench";
}
