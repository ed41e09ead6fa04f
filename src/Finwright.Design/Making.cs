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

    /// <summary>Heat capacity of the filament, J/(kg K).</summary>
    [Input("Heat capacity of the plastic.", Minimum = 500, Maximum = 4000, Reason = "PETG, solid (makeitfrom.com, page on PETG).")]
    public double HeatCapacityJPerKgK { get; init; } = 1200;

    /// <summary>Heat conductivity of the filament, W/(m K).</summary>
    [Input("Heat conductivity of the plastic.", Minimum = 0.05, Maximum = 2, Reason = "PETG, solid (makeitfrom.com, page on PETG).")]
    public double ConductivityWPerMK { get; init; } = 0.29;

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

    /// <summary>Overhang that prints without support, degrees from straight up.</summary>
    [Input("Greatest overhang that prints without support, measured from straight up.", Minimum = 10, Maximum = 85, Reason = "Beyond 50 to 55 degrees lines droop (common practice, no source).")]
    public double OverhangLimitDegrees { get; init; } = 50;

    /// <summary>Speeds and times of the printer.</summary>
    [Input("Speeds and times of the printer, which decide how long a print takes.", Reason = "A common printer, driven gently.")]
    public Machine Machine { get; init; } = new();
}

/// <summary>Speeds and times of the printer.</summary>
public sealed record Machine
{
    /// <summary>Speed of the outer wall line, mm/s.</summary>
    [Input("Speed of the outermost wall line.", Minimum = 5, Maximum = 500, Reason = "40 to 60 mm/s is usual for PETG; the outside goes slowest (common practice, no source).")]
    public double OuterWallSpeedMmPerS { get; init; } = 40;

    /// <summary>Speed of all other lines, mm/s.</summary>
    [Input("Speed of all other lines: inner walls, solid layers, infill.", Minimum = 5, Maximum = 600, Reason = "40 to 60 mm/s is usual for PETG (common practice, no source).")]
    public double InnerSpeedMmPerS { get; init; } = 60;

    /// <summary>Speed of moves that lay nothing, mm/s.</summary>
    [Input("Speed of moves that lay nothing.", Minimum = 20, Maximum = 1000, Reason = "Middling printers (from memory).")]
    public double TravelSpeedMmPerS { get; init; } = 150;

    /// <summary>Most plastic that the nozzle melts, mm³/s.</summary>
    [Input("Most plastic that the nozzle melts in a second.", Minimum = 1, Maximum = 60, Reason = "8 to 15 mm³/s with a common nozzle (from memory).")]
    public double FlowLimitMm3PerS { get; init; } = 10;

    /// <summary>Acceleration, mm/s².</summary>
    [Input("Acceleration of the nozzle.", Minimum = 100, Maximum = 30_000, Reason = "Middling printers (from memory).")]
    public double AccelerationMmPerS2 { get; init; } = 1500;

    /// <summary>Time lost between two layers, s.</summary>
    [Input("Time lost between two layers.", Minimum = 0, Maximum = 30, Reason = "Lift, travel, prime (from memory).")]
    public double LayerChangeSeconds { get; init; } = 1.5;

    /// <summary>Least time for a layer, s.</summary>
    [Input("Least time that a layer takes, so that it can set before the next.", Minimum = 0, Maximum = 120, Reason = "Small PETG layers sag when hurried (common practice, no source).")]
    public double LeastLayerSeconds { get; init; } = 10;

    /// <summary>Heating up and levelling before the first layer, min.</summary>
    [Input("Heating up and levelling before the first layer.", Minimum = 0, Maximum = 60, Reason = "Bed at 80 °C takes that long (from memory).")]
    public double StartMinutes { get; init; } = 8;
}

/// <summary>Which way up a part is held while it is poured.</summary>
public enum PourPosition
{
    /// <summary>The way that leaves least air, of those that are easy to hold.</summary>
    [Input("The way that leaves least air, of those that are easy to hold.")]
    Auto,

    /// <summary>Tip down, as the fin hangs under a board.</summary>
    [Input("Tip down, as the fin hangs under a board.")]
    TipDown,

    /// <summary>Tip up.</summary>
    [Input("Tip up.")]
    TipUp,

    /// <summary>Leading edge down.</summary>
    [Input("Leading edge down.")]
    LeadingEdgeDown,

    /// <summary>Leading edge up.</summary>
    [Input("Leading edge up.")]
    LeadingEdgeUp,

    /// <summary>Lying flat, port side down.</summary>
    [Input("Lying flat, port side down.")]
    StarboardUp,

    /// <summary>Lying flat, starboard side down.</summary>
    [Input("Lying flat, starboard side down.")]
    PortUp,
}

/// <summary>Resin, room, cooling and ports.</summary>
public sealed record Pour
{
    /// <summary>Resin.</summary>
    [Input("Resin system, your name for it.", Reason = "Only a label; how it cures is in the resin system below.")]
    public string Resin { get; init; } = "slow laminating epoxy";

    /// <summary>How the resin cures.</summary>
    [Input("How the resin cures, thickens and weighs.", Reason = "A slow laminating epoxy: the maker's own data sheet or cup test goes before it.")]
    public ResinChoice System { get; init; } = new();

    /// <summary>Room temperature, °C.</summary>
    [Input("Temperature of the room and the resin.", Minimum = 5, Maximum = 40, Reason = "A heated workshop.")]
    public double RoomCelsius { get; init; } = 20;

    /// <summary>Temperature of the resin when it is poured, °C; null for the room's.</summary>
    [Input("Temperature of the mixed resin when it is poured.", Minimum = 2, Maximum = 50, Reason = "Left out: that of the room.")]
    public double? ResinCelsius { get; init; }

    /// <summary>Cooling.</summary>
    [Input("How the pour is kept cool.", Reason = "Water takes heat away some fifty times faster than still air (from memory).")]
    public Cooling Cooling { get; init; } = Cooling.WaterBath;

    /// <summary>Temperature of the bath, °C.</summary>
    [Input("Temperature of the bath.", Minimum = 2, Maximum = 40, Reason = "Cold tap water.")]
    public double BathCelsius { get; init; } = 15;

    /// <summary>Share of the part's height under water, %.</summary>
    [Input("How much of the part's height stands under water, as it is held for the pour.", Minimum = 5, Maximum = 100, Reason = "All but the ports, which must stay dry.")]
    public double BathLevelPercent { get; init; } = 95;

    /// <summary>How long it stays in the bath, h.</summary>
    [Input("How long the part stays in the bath.", Minimum = 0.1, Maximum = 96, Reason = "Over night: until a slow resin has given off most of its heat (judgement).")]
    public double BathHours { get; init; } = 12;

    /// <summary>How the part is held.</summary>
    [Input("Which way up a part is held while it is poured.", Reason = "Found by the least air left.")]
    public PourPosition Attitude { get; init; } = PourPosition.Auto;

    /// <summary>Tilt from that attitude toward the trailing edge, degrees.</summary>
    [Input("Tilt from that attitude: positive lifts the trailing edge, or the tip where an edge points up or down. Not used with \"auto\".", Minimum = -60, Maximum = 60, Reason = "Level.")]
    public double TiltDegrees { get; init; }

    /// <summary>Pours one after the other.</summary>
    [Input("Pours one after the other, each up to a share of the part's height; none for one pour to the top.", MaximumLength = 8, Reason = "One pour to the top.")]
    public IReadOnlyList<PourStage> Stages { get; init; } = [];

    /// <summary>Most resin mixed in one cup, g.</summary>
    [Input("Most resin mixed in one cup.", Minimum = 10, Maximum = 2000, Reason = "Pot life is quoted for 100 g; larger cups heat themselves (common practice, no source).")]
    public double CupGrams { get; init; } = 100;

    /// <summary>Resin standing in tubes and funnels on the ports, ml.</summary>
    [Input("Resin that stands in tubes and funnels on the ports, to feed what the pores still take.", Minimum = 0, Maximum = 500, Reason = "A short tube on each port (common practice, no source).")]
    public double ReservoirMl { get; init; } = 15;

    /// <summary>Height of the reservoir's level above the part's highest point, mm.</summary>
    [Input("How high the resin in the feeding tube stands above the highest point of the part.", Minimum = 10, Maximum = 1000, Reason = "A tube in the hand, or a light push on the syringe.")]
    public double HeadMm { get; init; } = 150;

    /// <summary>Resin lost in cups, syringe and leaks, %.</summary>
    [Input("Resin lost in cups and syringe and through leaks.", Minimum = 0, Maximum = 50, Reason = "A film stays in every cup (common practice, no source).")]
    public double LossPercent { get; init; } = 5;

    /// <summary>Port dimples.</summary>
    [Input("Shallow dimples that mark where ports are drilled for pour and air.", Reason = "One at the front and one at the rear of every poured part.")]
    public Ports Ports { get; init; } = new();
}

/// <summary>One of several pours.</summary>
public sealed record PourStage
{
    /// <summary>Level reached, % of the part's height.</summary>
    [Input("Level that this pour reaches, as a share of the part's height as it is held.", Minimum = 1, Maximum = 100)]
    public required double ToPercent { get; init; }

    /// <summary>Hours after the first pour.</summary>
    [Input("Hours after the first pour.", Minimum = 0, Maximum = 240)]
    public required double AfterHours { get; init; }
}

/// <summary>A resin system by name or from a file.</summary>
public sealed record ResinChoice
{
    /// <summary>Name of a resin system of the library.</summary>
    [Input("Name of a resin system that Finwright knows (finwright resins lists them).", MaximumLength = 60, Reason = "Left out: laminating-slow.")]
    public string? Name { get; init; }

    /// <summary>File of a resin system beside the design.</summary>
    [Input("Name of a resin file of your own beside the design, instead of a known name.", MaximumLength = 120, Reason = "Left out: a known resin.")]
    public string? File { get; init; }

    /// <summary>Content of a resin file.</summary>
    [Input("The text of a resin file, to keep the resin within the design. Taken from the file when one is named.", MaximumLength = 20_000, Lines = true, Reason = "Left out: a known resin.")]
    public string? Content { get; init; }
}

/// <summary>Dimples that mark the ports.</summary>
public sealed record Ports
{
    /// <summary>Whether dimples are made.</summary>
    [Input("Whether dimples are printed.", Reason = "A drill wanders on a curved skin without them.")]
    public bool Dimples { get; init; } = true;

    /// <summary>Diameter, mm.</summary>
    [Input("Diameter of the dimples and of the ports drilled there.", Minimum = 1, Maximum = 12, Reason = "The size of a syringe tip (common practice, no source).")]
    public double DiameterMm { get; init; } = 4;

    /// <summary>Depth, mm.</summary>
    [Input("Depth of the dimples.", Minimum = 0.2, Maximum = 6, Reason = "Guides the drill and leaves the wall closed until then.")]
    public double DepthMm { get; init; } = 1;

    /// <summary>Side they are made on.</summary>
    [Input("Side they are made on, looking forward.", Reason = "One side had to be chosen.")]
    public Side Side { get; init; } = Side.Starboard;

    /// <summary>Further ports in the blade.</summary>
    [Input("Further ports in the blade, for example where finwright pour finds that air stays.", MaximumLength = 12, Reason = "None unless asked for.")]
    public IReadOnlyList<PortPlace> Further { get; init; } = [];
}

/// <summary>A place of a port in the blade.</summary>
public sealed record PortPlace
{
    /// <summary>Depth below the hull, mm.</summary>
    [Input("Depth of its middle below the hull.", Minimum = 0, Maximum = 800)]
    public required double AtDepthMm { get; init; }

    /// <summary>Place along the chord there, %.</summary>
    [Input("Place of its middle along the chord there, from the leading edge.", Minimum = 2, Maximum = 98)]
    public required double AtChordPercent { get; init; }
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

/// <summary>What things cost, in a currency of the maker's own.</summary>
public sealed record Prices
{
    /// <summary>Currency.</summary>
    [Input("Currency, as it is shown.", MaximumLength = 8, Reason = "Only a label.")]
    public string Currency { get; init; } = "EUR";

    /// <summary>Filament, per kg.</summary>
    [Input("Filament, by the kilogram.", Minimum = 0, Maximum = 1000, Reason = "15 to 30 a kilogram (from memory).")]
    public double FilamentPerKg { get; init; } = 22;

    /// <summary>Filament on a spool, kg.</summary>
    [Input("Filament on one spool.", Minimum = 0.1, Maximum = 10, Reason = "The usual spool.")]
    public double SpoolKg { get; init; } = 1;

    /// <summary>Resin with hardener, per kg.</summary>
    [Input("Resin with its hardener, by the kilogram.", Minimum = 0, Maximum = 1000, Reason = "15 to 40 a kilogram (from memory).")]
    public double ResinPerKg { get; init; } = 28;

    /// <summary>Resin with hardener in one pack, kg.</summary>
    [Input("Resin with its hardener in one pack.", Minimum = 0.05, Maximum = 50, Reason = "The usual small pack.")]
    public double ResinPackKg { get; init; } = 1;

    /// <summary>Carbon rod, per m.</summary>
    [Input("Carbon rod, by the metre.", Minimum = 0, Maximum = 500, Reason = "3 to 8 a metre for 3 to 6 mm (from memory).")]
    public double CarbonRodPerM { get; init; } = 5;

    /// <summary>Threaded rod, per m.</summary>
    [Input("Stainless threaded rod, by the metre.", Minimum = 0, Maximum = 500, Reason = "From memory.")]
    public double ThreadedRodPerM { get; init; } = 6;

    /// <summary>Dowel rod, per m.</summary>
    [Input("Dowel rod, by the metre.", Minimum = 0, Maximum = 500, Reason = "As thin carbon rod (from memory).")]
    public double DowelPerM { get; init; } = 3;

    /// <summary>One bolt, pin or screw.</summary>
    [Input("One stainless bolt, pin or screw.", Minimum = 0, Maximum = 100, Reason = "From memory.")]
    public double BoltEach { get; init; } = 1;

    /// <summary>One nut.</summary>
    [Input("One stainless or brass nut.", Minimum = 0, Maximum = 100, Reason = "About 1 each (common practice, no source).")]
    public double NutEach { get; init; } = 0.8;

    /// <summary>Sheet for strip and lids, per fin.</summary>
    [Input("Sheet for the strip and lids of one fin.", Minimum = 0, Maximum = 200, Reason = "An offcut (from memory).")]
    public double SheetEach { get; init; } = 1.5;

    /// <summary>Cups, syringes, gloves, abrasives and lacquer, per fin.</summary>
    [Input("Cups, syringes, gloves, abrasives and lacquer for one fin.", Minimum = 0, Maximum = 500, Reason = "2 to 5 a fin, and the lacquer (from memory).")]
    public double SundriesEach { get; init; } = 6;

    /// <summary>Electricity, per kWh.</summary>
    [Input("Electricity, by the kilowatt hour.", Minimum = 0, Maximum = 10, Reason = "A European household (from memory).")]
    public double EnergyPerKwh { get; init; } = 0.3;

    /// <summary>Power that the printer draws on average, W.</summary>
    [Input("What the printer draws on average.", Minimum = 0, Maximum = 3000, Reason = "A heated bed at 80 °C (from memory).")]
    public double PrinterWatts { get; init; } = 120;
}
