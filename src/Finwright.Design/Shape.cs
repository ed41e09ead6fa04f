using System.Text.Json.Serialization;

namespace Finwright.Design;

/// <summary>Ready outline families; each only produces points that can then be moved.</summary>
public enum OutlineFamily
{
    /// <summary>Deep and narrow, close to straight down.</summary>
    [Input("Deep and narrow, close to straight down.")]
    Upright,

    /// <summary>Curved aft toward the tip.</summary>
    [Input("Curved aft toward the tip.")]
    Raked,

    /// <summary>Leading edge swept so far that weed slides off.</summary>
    [Input("Leading edge swept so far that weed slides off.")]
    SteepRake,

    /// <summary>Short, with a wide root and a small tip.</summary>
    [Input("Short, with a wide root and a small tip.")]
    WideDelta,

    /// <summary>Points given by the maker.</summary>
    [Input("Points given by the maker.")]
    Free,
}

/// <summary>How the blade ends at the tip.</summary>
public enum TipStyle
{
    /// <summary>Thickness runs out in a half ellipse.</summary>
    [Input("Thickness runs out in a half ellipse.")]
    Rounded,

    /// <summary>Cut off flat at the full depth.</summary>
    [Input("Cut off flat at the full depth.")]
    Flat,
}

/// <summary>How a side of the blade is finished.</summary>
public enum Finish
{
    /// <summary>Filled, sanded and polished until it shines.</summary>
    [Input("Filled, sanded and polished until it shines.")]
    Polished,

    /// <summary>Filled and wet-sanded with 400 grit: smooth and matt.</summary>
    [JsonStringEnumMemberName("grit-400")]
    [Input("Filled and wet-sanded with 400 grit: smooth and matt.")]
    Grit400,

    /// <summary>As it comes off the printer, layer lines and all.</summary>
    [Input("As it comes off the printer, layer lines and all.")]
    BarePrint,
}

/// <summary>The blade.</summary>
public sealed record Shape
{
    /// <summary>Outline seen from the side.</summary>
    [Input("Outline of the blade seen from the side.")]
    public required Outline Outline { get; init; }

    /// <summary>Sections from root to tip.</summary>
    [Input("Sections at places along the span, from root (0 %) to tip (100 %); everything between is smooth.", Reason = "A plain symmetric section, slightly thinner at the tip.")]
    public IReadOnlyList<SectionStation> Sections { get; init; } =
    [
        new SectionStation { AtPercent = 0, ThicknessPercent = 10 },
        new SectionStation { AtPercent = 100, ThicknessPercent = 8.5 },
    ];

    /// <summary>Sections that the maker brings along.</summary>
    [Input("Section coordinates of your own, by name.", Reason = "None unless brought along.")]
    public IReadOnlyList<ImportedSection> ImportedSections { get; init; } = [];

    /// <summary>How the blade ends.</summary>
    [Input("How the blade ends at the tip.", Reason = "A rounded tip cuts nobody and sheds a calmer vortex (common practice, no source).")]
    public TipStyle Tip { get; init; } = TipStyle.Rounded;

    /// <summary>Depth over which a rounded tip runs out, mm; null for half the thickness at the tip.</summary>
    [Input("Depth over which a rounded tip runs out; leave it out for half the thickness there.", Minimum = 0.2, Maximum = 30, Reason = "Left out: a half-round edge.")]
    public double? TipRoundingMm { get; init; }

    /// <summary>Thickness of the blunt trailing edge, mm.</summary>
    [Input("Thickness of the square trailing edge.", Minimum = 0, Maximum = 4, Reason = "About 1 mm is what makers leave: it prints, and does not cut (common practice, no source).")]
    public double TrailingEdgeMm { get; init; } = 1.0;

    /// <summary>Flexible strip in a slot along the trailing edge; null for none.</summary>
    [Input("Thin flexible sheet let into a slot along the trailing edge.", Reason = "Left out: none.")]
    public Strip? Strip { get; init; }

    /// <summary>Flange at the root; null for none.</summary>
    [Input("Flange at the root that lies against the hull or the base, with a fillet into the blade.", Reason = "Left out: none.")]
    public Flange? Flange { get; init; }

    /// <summary>Finish of the starboard side.</summary>
    [Input("Finish of the starboard side.", Reason = "400 to 600 grit, matt, is what many makers stop at (common practice, no source).")]
    public Finish StarboardFinish { get; init; } = Finish.Grit400;

    /// <summary>Finish of the port side.</summary>
    [Input("Finish of the port side.", Reason = "As the other side: 400 to 600 grit, matt (common practice, no source).")]
    public Finish PortFinish { get; init; } = Finish.Grit400;

    /// <summary>Greatest distance between the true skin and the mesh, mm.</summary>
    [Input("Greatest distance between the true skin and its flat facets.", Minimum = 0.0005, Maximum = 0.2, Reason = "A tenth of a usual layer: finer than the printer can show.")]
    public double SkinToleranceMm { get; init; } = 0.02;
}

/// <summary>Outline: a family with a few numbers, or free points.</summary>
public sealed record Outline
{
    /// <summary>Family, or free.</summary>
    [Input("Outline family, or \"free\" for points of your own.")]
    public required OutlineFamily Family { get; init; }

    /// <summary>Depth of the tip below the hull, mm.</summary>
    [Input("Depth of the tip below the hull. With free points it may be left out: the deepest point counts.", Minimum = 40, Maximum = 800, Reason = "Must be given for every family but free points.")]
    public double? SpanMm { get; init; }

    /// <summary>Chord at the root, mm; give this or the area.</summary>
    [Input("Chord at the root. Give this or the area, not both.", Minimum = 20, Maximum = 400, Reason = "One of the two must be given for every family but free points.")]
    public double? RootChordMm { get; init; }

    /// <summary>Area of the blade from the side, cm²; give this or the root chord.</summary>
    [Input("Area of the blade seen from the side. Give this or the root chord, not both.", Minimum = 15, Maximum = 1500, Reason = "One of the two must be given for every family but free points.")]
    public double? AreaCm2 { get; init; }

    /// <summary>Angle of the 25 % chord line from straight down, degrees, positive aft; null for the family's own.</summary>
    [Input("Angle of the line of quarter chords, root to tip, from straight down, positive aft.", Minimum = -30, Maximum = 70, Reason = "Left out: upright 6, raked 25, steep rake 45, wide delta 38 degrees (starting values, from memory).")]
    public double? RakeDegrees { get; init; }

    /// <summary>Tip chord as a share of the root chord, %; null for the family's own.</summary>
    [Input("Chord near the tip, before its corners are rounded, as a share of the root chord.", Minimum = 5, Maximum = 120, Reason = "Left out: upright 55, raked 35, steep rake 35, wide delta 18 % (starting values, from memory).")]
    public double? TipChordPercent { get; init; }

    /// <summary>Leading edge of a free outline, root first.</summary>
    [Input("Control points of the leading edge of a free outline, from the hull down to the tip.", Reason = "Only for free points.")]
    public IReadOnlyList<OutlinePoint> LeadingEdge { get; init; } = [];

    /// <summary>Trailing edge of a free outline, root first.</summary>
    [Input("Control points of the trailing edge of a free outline, from the hull down to the tip.", Reason = "Only for free points.")]
    public IReadOnlyList<OutlinePoint> TrailingEdge { get; init; } = [];
}

/// <summary>A control point of an outline edge.</summary>
public sealed record OutlinePoint
{
    /// <summary>Depth below the hull, mm.</summary>
    [Input("Depth below the hull.", Minimum = 0, Maximum = 800)]
    public required double DepthMm { get; init; }

    /// <summary>Distance aft of the root's leading edge, mm.</summary>
    [Input("Distance aft of any fixed upright line that both edges share; the root's quarter chord becomes the origin.", Minimum = -800, Maximum = 1200)]
    public required double AftMm { get; init; }
}

/// <summary>The section at one place along the span.</summary>
public sealed record SectionStation
{
    /// <summary>Place along the span, %.</summary>
    [Input("Place along the span, from root 0 to tip 100.", Minimum = 0, Maximum = 100)]
    public required double AtPercent { get; init; }

    /// <summary>Section name: a formula section or an imported one.</summary>
    [Input("Section: \"naca-0010\", \"naca-2412\", \"naca-0010-35\", \"naca-16-009\", or the name of an imported section.", Reason = "The four-digit thickness form is forgiving to sanding and well measured.")]
    public string Section { get; init; } = "naca-0010";

    /// <summary>Thickness ratio, %; null for the section's own.</summary>
    [Input("Greatest thickness as a share of the chord; leave it out for the section's own.", Minimum = 2, Maximum = 25, Reason = "Left out: as the section's name says.")]
    public double? ThicknessPercent { get; init; }

    /// <summary>Greatest camber, %; null for the section's own.</summary>
    [Input("Greatest camber as a share of the chord, positive toward starboard; leave it out for the section's own.", Minimum = -8, Maximum = 8, Reason = "Left out: as the section's name says.")]
    public double? CamberPercent { get; init; }

    /// <summary>Twist about the quarter chord, degrees, positive nose to starboard.</summary>
    [Input("Twist about the quarter chord, positive when the nose turns to starboard.", Minimum = -20, Maximum = 20, Reason = "None: the fin must work on both tacks.")]
    public double TwistDegrees { get; init; }
}

/// <summary>Section coordinates that the maker brings along.</summary>
public sealed record ImportedSection
{
    /// <summary>Name used by the stations.</summary>
    [Input("Name by which stations refer to it.", MaximumLength = 60)]
    public required string Name { get; init; }

    /// <summary>File of coordinate columns beside the design file; null when the points are given here.</summary>
    [Input("File of coordinate columns, beside the design file. Give this or the points.", Reason = "Left out when the points stand in the design file.")]
    public string? File { get; init; }

    /// <summary>Points x, y in chords, once round or in two blocks.</summary>
    [Input("Points [x, y] in chords, going once round. Give these or a file.", Minimum = -2, Maximum = 2, MaximumLength = DesignLimits.SectionPoints, Reason = "Empty when a file is named.")]
    public IReadOnlyList<IReadOnlyList<double>> Points { get; init; } = [];
}

/// <summary>Flexible sheet let into a slot along the trailing edge.</summary>
public sealed record Strip
{
    /// <summary>Thickness of the sheet, mm.</summary>
    [Input("Thickness of the sheet.", Minimum = 0.2, Maximum = 0.6, Reason = "0.2 to 0.5 mm PETG sheet is what makers use (common practice, no source).")]
    public double SheetMm { get; init; } = 0.4;

    /// <summary>Slot width beyond the sheet, mm.</summary>
    [Input("How much wider than the sheet the slot is printed, for the glue and the printer's error.", Minimum = 0, Maximum = 0.6, Reason = "0.1 mm of glue and 0.1 mm of printer error (common practice, no source).")]
    public double AllowanceMm { get; init; } = 0.2;

    /// <summary>Depth of the slot, measured square to the trailing edge, mm.</summary>
    [Input("Depth of the slot, measured square to the trailing edge.", Minimum = 4, Maximum = 15, Reason = "8 to 10 mm of overlap holds the sheet (common practice, no source).")]
    public double SlotDepthMm { get; init; } = 8;

    /// <summary>How far the sheet stands out behind the printed edge, mm.</summary>
    [Input("How far the sheet stands out behind the printed trailing edge.", Minimum = 0, Maximum = 40, Reason = "Enough to flex, short enough not to flutter (common practice, no source).")]
    public double OverhangMm { get; init; } = 10;

    /// <summary>Where the slot begins, % of span.</summary>
    [Input("Where the slot begins, along the span.", Minimum = 0, Maximum = 90, Reason = "Clear of the root, where the blade must stay whole.")]
    public double FromPercent { get; init; } = 8;

    /// <summary>Where the slot ends, % of span.</summary>
    [Input("Where the slot ends, along the span.", Minimum = 10, Maximum = 100, Reason = "Clear of the tip, where the section gets too thin.")]
    public double ToPercent { get; init; } = 88;
}

/// <summary>Flange at the root with a fillet into the blade.</summary>
public sealed record Flange
{
    /// <summary>How far the flange stands out round the root section, mm.</summary>
    [Input("How far the flange stands out all round the root section.", Minimum = 1, Maximum = 30, Reason = "Covers the gap round a usual box.")]
    public double OverhangMm { get; init; } = 6;

    /// <summary>Thickness of the flange, mm.</summary>
    [Input("Thickness of the flange.", Minimum = 0.8, Maximum = 12, Reason = "Fifteen layers of 0.2 mm: stiff enough to bear on the hull.")]
    public double ThicknessMm { get; init; } = 3;

    /// <summary>Radius of the fillet between flange and blade, mm.</summary>
    [Input("Radius of the fillet between flange and blade; not more than the overhang.", Minimum = 0, Maximum = 30, Reason = "Rounds the corner where the bending is greatest.")]
    public double FilletMm { get; init; } = 5;
}
