namespace Finwright.Design;

/// <summary>How a part lies on the printer.</summary>
public enum PrintAttitude
{
    /// <summary>Standing where it fits, else lying.</summary>
    [Input("Standing where it fits, else lying.")]
    Auto,

    /// <summary>Standing on its root-side face.</summary>
    [Input("Standing on its root-side face.")]
    Standing,

    /// <summary>Lying on its starboard side.</summary>
    [Input("Lying on its starboard side.")]
    Lying,
}

/// <summary>How the pour is kept cool.</summary>
public enum Cooling
{
    /// <summary>Hung in a bath of water.</summary>
    [Input("Hung in a bath of water.")]
    WaterBath,

    /// <summary>Standing in still air.</summary>
    [Input("Standing in still air.")]
    StillAir,
}

/// <summary>Where along the chord the bench weight hangs.</summary>
public enum ChordPlace
{
    /// <summary>At the leading edge.</summary>
    [Input("At the leading edge.")]
    LeadingEdge,

    /// <summary>At half chord.</summary>
    [Input("At half chord.")]
    MidChord,

    /// <summary>At the trailing edge.</summary>
    [Input("At the trailing edge.")]
    TrailingEdge,
}

/// <summary>Cuts, dowels and how the parts lie on the printer.</summary>
public sealed record Parts
{
    /// <summary>Part number engraved on the root face.</summary>
    [Input("Number engraved on the root face of the blade: capitals, digits, dash, dot and space, at most 12; empty for none.", MaximumLength = 12, Reason = "Two fins that look alike are told apart by it; left empty nothing is engraved.")]
    public string Number { get; init; } = "";

    /// <summary>Depth of the engraving, mm.</summary>
    [Input("Depth of the engraving.", Minimum = 0.2, Maximum = 1.5, Reason = "Two layers of 0.2 mm.")]
    public double EngravingMm { get; init; } = 0.4;

    /// <summary>Cuts across the blade.</summary>
    [Input("Cuts across the blade, from the root down.", MaximumLength = 20, Reason = "None unless asked for or needed.")]
    public IReadOnlyList<Cut> Cuts { get; init; } = [];

    /// <summary>Whether cuts are proposed when the blade does not fit the printer.</summary>
    [Input("Whether cuts are made by themselves when the blade does not fit the printer and none are given.", Reason = "A fin that cannot be printed helps nobody.")]
    public bool ProposeCuts { get; init; } = true;

    /// <summary>Gap left for the bond at each cut, mm.</summary>
    [Input("Gap left for the bond at each cut.", Minimum = 0, Maximum = 1, Reason = "0.1 to 0.2 mm of epoxy is strongest (common practice, no source).")]
    public double BondGapMm { get; init; } = 0.15;

    /// <summary>Dowel diameter, mm.</summary>
    [Input("Diameter of the dowel rods across each cut.", Minimum = 1, Maximum = 10, Reason = "Fits beside the carbon rods of a usual blade.")]
    public double DowelMm { get; init; } = 3;

    /// <summary>Dowel length, mm.</summary>
    [Input("Length of each dowel rod, half on each side of the cut.", Minimum = 6, Maximum = 150, Reason = "Five diameters of bond on each side.")]
    public double DowelLengthMm { get; init; } = 36;

    /// <summary>Dowels at each cut.</summary>
    [Input("Dowel rods at each cut.", Minimum = 0, Maximum = 6, Reason = "Two keep the pieces from turning.")]
    public int DowelsPerCut { get; init; } = 2;

    /// <summary>How blade pieces lie on the printer.</summary>
    [Input("How blade pieces lie on the printer.", Reason = "Standing prints both sides alike and needs no support, where it fits.")]
    public PrintAttitude BladeAttitude { get; init; } = PrintAttitude.Auto;

    /// <summary>How the base lies on the printer.</summary>
    [Input("How the base lies on the printer.", Reason = "Lying puts the layers along the pull of the bolts and the flat sides true.")]
    public PrintAttitude BaseAttitude { get; init; } = PrintAttitude.Lying;
}

/// <summary>One cut across the blade.</summary>
public sealed record Cut
{
    /// <summary>Depth at which the cut crosses the quarter-chord line, mm.</summary>
    [Input("Depth below the hull at which the cut crosses the line of quarter chords.", Minimum = 5, Maximum = 800)]
    public required double AtDepthMm { get; init; }

    /// <summary>Slope of the cut, degrees, positive when it goes deeper toward the trailing edge.</summary>
    [Input("Slope of the cut, positive when it goes deeper toward the trailing edge; 0 is level with the hull.", Minimum = -60, Maximum = 60, Reason = "Level with the hull.")]
    public double SlopeDegrees { get; init; }
}

/// <summary>Printer, filament and settings.</summary>
public sealed record Print
{
    /// <summary>Name of the printer.</summary>
    [Input("Your name for the printer.", Reason = "Only a label.")]
    public string Printer { get; init; } = "my printer";

    /// <summary>Bed, left to right, mm.</summary>
    [Input("Bed size, left to right.", Minimum = 80, Maximum = 1000, Reason = "A common mid-size bed.")]
    public double BedXMm { get; init; } = 250;

    /// <summary>Bed, front to back, mm.</summary>
    [Input("Bed size, front to back.", Minimum = 80, Maximum = 1000, Reason = "A common mid-size bed.")]
    public double BedYMm { get; init; } = 210;

    /// <summary>Height, mm.</summary>
    [Input("Height of the build space.", Minimum = 80, Maximum = 1000, Reason = "A common mid-size printer.")]
    public double BedZMm { get; init; } = 210;

    /// <summary>Strip at each edge of the bed that is not used, mm.</summary>
    [Input("Strip along each edge of the bed that is not used.", Minimum = 0, Maximum = 40, Reason = "Printers reach 5 to 10 mm less than advertised (common practice, no source).")]
    public double EdgeMarginMm { get; init; } = 5;

    /// <summary>Gap between parts on the bed, mm.</summary>
    [Input("Gap between parts on the same bed.", Minimum = 1, Maximum = 50, Reason = "Room for a brim round each (common practice, no source).")]
    public double PartGapMm { get; init; } = 8;

    /// <summary>Filament.</summary>
    [Input("Filament.", Reason = "PETG bonds well between layers and stands water (common practice, no source).")]
    public string Filament { get; init; } = "PETG";

    /// <summary>Density of the filament, g/cm³.</summary>
    [Input("Density of the filament.", Minimum = 0.8, Maximum = 2, Reason = "PETG 1.25 to 1.29 (from memory).")]
    public double FilamentDensityGPerCm3 { get; init; } = 1.27;

    /// <summary>Layer height, mm.</summary>
    [Input("Layer height.", Minimum = 0.05, Maximum = 0.6, Reason = "Usual with a 0.4 mm nozzle (common practice, no source).")]
    public double LayerMm { get; init; } = 0.2;

    /// <summary>Width of a printed line, mm.</summary>
    [Input("Width of a printed line.", Minimum = 0.15, Maximum = 1.5, Reason = "0.42 to 0.48 mm with a 0.4 mm nozzle (common practice, no source).")]
    public double LineWidthMm { get; init; } = 0.45;

    /// <summary>Walls.</summary>
    [Input("Number of lines in each wall.", Minimum = 1, Maximum = 12, Reason = "Tight enough to hold resin (common practice, no source).")]
    public int Walls { get; init; } = 3;

    /// <summary>Solid layers above and below a part.</summary>
    [Input("Solid layers at the top and at the bottom of a part; they are the skin of a blade that is printed lying.", Minimum = 0, Maximum = 40, Reason = "A millimetre of 0.2 mm layers holds resin as well as the walls do (common practice, no source).")]
    public int SolidLayers { get; init; } = 5;

    /// <summary>Share of the inside filled with plastic, %.</summary>
    [Input("Share of the inside that the gyroid fills with plastic.", Minimum = 3, Maximum = 60, Reason = "Open enough to pour through (common practice, no source).")]
    public double InfillPercent { get; init; } = 15;

    /// <summary>Added to bore diameters, mm.</summary>
    [Input("Added to the diameter of bores for bolts, rods and dowels.", Minimum = 0, Maximum = 1.5, Reason = "Printed holes come out small: bolt plus 0.4 to 0.5 mm (common practice, no source).")]
    public double BoreAllowanceMm { get; init; } = 0.4;

    /// <summary>Added to nut pockets across the flats, mm.</summary>
    [Input("Added to nut pockets across the flats and in height.", Minimum = 0, Maximum = 1.5, Reason = "0.2 mm lets the nut in without play (common practice, no source).")]
    public double PocketAllowanceMm { get; init; } = 0.2;
}

/// <summary>Resin, room, cooling and ports.</summary>
public sealed record Pour
{
    /// <summary>Resin.</summary>
    [Input("Resin system, your name for it.", Reason = "Only a label until a data sheet is entered.")]
    public string Resin { get; init; } = "slow laminating epoxy";

    /// <summary>Room temperature, °C.</summary>
    [Input("Temperature of the room and the resin.", Minimum = 5, Maximum = 40, Reason = "A heated workshop.")]
    public double RoomCelsius { get; init; } = 20;

    /// <summary>Cooling.</summary>
    [Input("How the pour is kept cool.", Reason = "Water takes heat away some fifty times faster than still air (from memory).")]
    public Cooling Cooling { get; init; } = Cooling.WaterBath;

    /// <summary>Temperature of the bath, °C.</summary>
    [Input("Temperature of the bath.", Minimum = 2, Maximum = 40, Reason = "Cold tap water.")]
    public double BathCelsius { get; init; } = 15;

    /// <summary>Port dimples.</summary>
    [Input("Shallow dimples that mark where ports are drilled for pour and air.", Reason = "One at the front and one at the rear of every poured part.")]
    public Ports Ports { get; init; } = new();
}

/// <summary>Dimples that mark the ports.</summary>
public sealed record Ports
{
    /// <summary>Whether dimples are made.</summary>
    [Input("Whether dimples are printed.", Reason = "A drill wanders on a curved skin without them.")]
    public bool Dimples { get; init; } = true;

    /// <summary>Diameter, mm.</summary>
    [Input("Diameter of the dimples.", Minimum = 1, Maximum = 12, Reason = "The size of a syringe tip (common practice, no source).")]
    public double DiameterMm { get; init; } = 4;

    /// <summary>Depth, mm.</summary>
    [Input("Depth of the dimples.", Minimum = 0.2, Maximum = 6, Reason = "Guides the drill and leaves the wall closed until then.")]
    public double DepthMm { get; init; } = 1;

    /// <summary>Side they are made on.</summary>
    [Input("Side they are made on, looking forward.", Reason = "One side had to be chosen.")]
    public Side Side { get; init; } = Side.Starboard;
}

/// <summary>The bench test.</summary>
public sealed record Prove
{
    /// <summary>Mass hung on the fin, kg.</summary>
    [Input("Mass hung on the fin.", Minimum = 0.2, Maximum = 80, Reason = "Near half of a usual side force, without danger at the bench.")]
    public double MassKg { get; init; } = 15;

    /// <summary>Distance from the root, % of span.</summary>
    [Input("Where it hangs, along the span.", Minimum = 5, Maximum = 100, Reason = "About where the water's push acts (common practice, no source).")]
    public double AtSpanPercent { get; init; } = 40;

    /// <summary>Place along the chord.</summary>
    [Input("Where it hangs, along the chord.", Reason = "The easiest place to hang a loop without slipping.")]
    public ChordPlace AtChord { get; init; } = ChordPlace.MidChord;
}
