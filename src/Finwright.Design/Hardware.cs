using System.Text.Json.Serialization;

namespace Finwright.Design;

/// <summary>Metric coarse threads that fins use.</summary>
public enum Thread
{
    /// <summary>M4 × 0.7.</summary>
    [Input("M4 × 0.7.")]
    [JsonStringEnumMemberName("M4")]
    M4,

    /// <summary>M5 × 0.8.</summary>
    [Input("M5 × 0.8.")]
    [JsonStringEnumMemberName("M5")]
    M5,

    /// <summary>M6 × 1.0.</summary>
    [Input("M6 × 1.0.")]
    [JsonStringEnumMemberName("M6")]
    M6,

    /// <summary>M8 × 1.25.</summary>
    [Input("M8 × 1.25.")]
    [JsonStringEnumMemberName("M8")]
    M8,
}

/// <summary>Form of an embedded nut.</summary>
public enum NutKind
{
    /// <summary>Hexagon nut.</summary>
    [Input("Hexagon nut.")]
    Hex,

    /// <summary>Square nut.</summary>
    [Input("Square nut.")]
    Square,

    /// <summary>Cross nut: a cylinder lying across the bolt.</summary>
    [Input("Cross nut: a cylinder lying across the bolt.")]
    Cross,
}

/// <summary>Form of a free cavity.</summary>
public enum CavityKind
{
    /// <summary>Rectangular.</summary>
    [Input("Rectangular.")]
    Box,

    /// <summary>Round.</summary>
    [Input("Round.")]
    Cylinder,
}

/// <summary>Side of the fin, looking forward.</summary>
public enum Side
{
    /// <summary>Right, looking forward.</summary>
    [Input("Right, looking forward.")]
    Starboard,

    /// <summary>Left, looking forward.</summary>
    [Input("Left, looking forward.")]
    Port,
}

/// <summary>Rods, bolts, nuts and cavities.</summary>
public sealed record Hardware
{
    /// <summary>The board's bolts and their nuts.</summary>
    [Input("The bolts from the deck of the board and the nuts they end in.", Reason = "M6 stainless with hexagon nuts, which every shop has.")]
    public BoxBolts BoxBolts { get; init; } = new();

    /// <summary>Threaded rods that clamp the blade to the base.</summary>
    [Input("Threaded rods that clamp the blade to the base; needed with the fixing \"clamp-rods\".", MaximumLength = 8, Reason = "Only for that fixing.")]
    public IReadOnlyList<ClampRod> ClampRods { get; init; } = [];

    /// <summary>Carbon rods along the span.</summary>
    [Input("Carbon rods bonded into bores along the span; parallel, or fanned when their percentages differ at root and tip.", MaximumLength = 12, Reason = "None unless asked for.")]
    public IReadOnlyList<CarbonRod> CarbonRods { get; init; } = [];

    /// <summary>Free cavities.</summary>
    [Input("Cavities opened from one side, with a ledge for a lid: for a tracker or a light.", MaximumLength = 8, Reason = "None unless asked for.")]
    public IReadOnlyList<Cavity> Cavities { get; init; } = [];
}

/// <summary>The board's bolts and the nuts they end in.</summary>
public sealed record BoxBolts
{
    /// <summary>Thread.</summary>
    [Input("Thread of the bolts.", Reason = "M6 in nearly every box (common practice, no source).")]
    public Thread Thread { get; init; } = Thread.M6;

    /// <summary>Form of the nut.</summary>
    [Input("Form of the embedded nut.", Reason = "Hexagon nuts are everywhere and cheap.")]
    public NutKind Nut { get; init; } = NutKind.Hex;

    /// <summary>Depth of the nut's middle in the blade for through bolts, mm.</summary>
    [Input("With through bolts: how deep below the hull the middle of the nut sits in the blade.", Minimum = 6, Maximum = 200, Reason = "Deep enough to spread the pull over many layers (common practice, no source).")]
    public double BladeDepthMm { get; init; } = 35;
}

/// <summary>A threaded rod that clamps the blade to the base.</summary>
public sealed record ClampRod
{
    /// <summary>Thread.</summary>
    [Input("Thread of the rod.", Reason = "The box bolts' own size: one kind of nut to buy.")]
    public Thread Thread { get; init; } = Thread.M6;

    /// <summary>Distance aft of the front corner of the base at the hull, mm.</summary>
    [Input("Distance of the rod's axis behind the front corner of the base at the hull.", Minimum = 5, Maximum = 300)]
    public required double FromFrontMm { get; init; }

    /// <summary>Depth of the nut's middle in the blade, mm.</summary>
    [Input("How deep below the hull the middle of the nut sits in the blade.", Minimum = 6, Maximum = 250, Reason = "Deep enough to spread the pull over many layers (common practice, no source).")]
    public double BladeDepthMm { get; init; } = 40;

    /// <summary>Form of the nut in the blade.</summary>
    [Input("Form of the nut in the blade.", Reason = "Hexagon nuts are everywhere and cheap.")]
    public NutKind Nut { get; init; } = NutKind.Hex;

    /// <summary>Lean of the rod, degrees, positive when the lower end leans aft.</summary>
    [Input("Lean of the rod from square to the hull, positive when its lower end goes aft, to follow a raked blade.", Minimum = -30, Maximum = 45, Reason = "Square to the hull.")]
    public double LeanDegrees { get; init; }
}

/// <summary>A carbon rod along the span.</summary>
public sealed record CarbonRod
{
    /// <summary>Diameter, mm.</summary>
    [Input("Diameter of the rod.", Minimum = 1, Maximum = 12, Reason = "4 mm fits most blades to two thirds of the span.")]
    public double DiameterMm { get; init; } = 4;

    /// <summary>Where the rod stands at the root, % of chord.</summary>
    [Input("Where the rod crosses the root, as a share of the chord from the leading edge.", Minimum = 2, Maximum = 95)]
    public required double RootChordPercent { get; init; }

    /// <summary>Where the rod points at the tip, % of chord; null for parallel to the quarter-chord line.</summary>
    [Input("Where the rod would cross the tip section, as a share of its chord; a different number from the root's fans the rods.", Minimum = 2, Maximum = 95, Reason = "Left out: the same share as at the root.")]
    public double? TipChordPercent { get; init; }

    /// <summary>How far the bore reaches up into the base, mm.</summary>
    [Input("How far the rod reaches above the hull plane into the base.", Minimum = 0, Maximum = 100, Reason = "Ends at the root face.")]
    public double IntoBaseMm { get; init; }

    /// <summary>Depth of the bore's end, mm; null for as deep as the margin allows.</summary>
    [Input("Depth of the lower end of the bore; leave it out to go as deep as the margin to the skin allows.", Minimum = 10, Maximum = 800, Reason = "Left out: as deep as the margin to the skin allows.")]
    public double? ToDepthMm { get; init; }

    /// <summary>Least plastic left between bore and skin, mm.</summary>
    [Input("Least plastic left between the bore and the skin.", Minimum = 0.4, Maximum = 10, Reason = "Two printed lines of 0.45 mm and a little.")]
    public double MarginMm { get; init; } = 1.0;
}

/// <summary>A cavity opened from one side.</summary>
public sealed record Cavity
{
    /// <summary>What goes into it.</summary>
    [Input("What goes into it, for the papers.", Reason = "Only a label.")]
    public string Name { get; init; } = "cavity";

    /// <summary>Form.</summary>
    [Input("Box or cylinder.", Reason = "Most trackers are boxes.")]
    public CavityKind Kind { get; init; } = CavityKind.Box;

    /// <summary>Side it opens to.</summary>
    [Input("Side it opens to, looking forward.", Reason = "One side had to be chosen.")]
    public Side Side { get; init; } = Side.Starboard;

    /// <summary>Depth of its middle below the hull, mm.</summary>
    [Input("Depth of its middle below the hull.", Minimum = 0, Maximum = 800)]
    public required double AtDepthMm { get; init; }

    /// <summary>Place of its middle along the chord, %.</summary>
    [Input("Place of its middle along the chord there, from the leading edge.", Minimum = 2, Maximum = 98)]
    public required double AtChordPercent { get; init; }

    /// <summary>Length along the chord (diameter of a cylinder), mm.</summary>
    [Input("Length along the chord; the diameter of a cylinder.", Minimum = 2, Maximum = 150)]
    public required double LengthMm { get; init; }

    /// <summary>Height along the span, mm; not used by a cylinder.</summary>
    [Input("Height along the span; a cylinder has none.", Minimum = 2, Maximum = 150, Reason = "Left out: as high as it is long.")]
    public double? HeightMm { get; init; }

    /// <summary>Room inside, across the fin, below the lid, mm.</summary>
    [Input("Room across the fin, under the lid.", Minimum = 0.5, Maximum = 40)]
    public required double RoomMm { get; init; }

    /// <summary>Width of the ledge that carries the lid, mm.</summary>
    [Input("Width of the ledge that carries the lid, all round; 0 for no lid.", Minimum = 0, Maximum = 12, Reason = "Enough for a bead of sealant.")]
    public double LedgeMm { get; init; } = 2.5;

    /// <summary>Thickness of the lid, mm.</summary>
    [Input("Thickness of the lid, which ends flush with the skin.", Minimum = 0.4, Maximum = 6, Reason = "Six layers of 0.2 mm.")]
    public double LidMm { get; init; } = 1.2;

    /// <summary>Least plastic left to the other side, mm.</summary>
    [Input("Least plastic left between the cavity and the far skin.", Minimum = 0.4, Maximum = 10, Reason = "Two printed lines of 0.45 mm and a little.")]
    public double MarginMm { get; init; } = 1.0;
}
