using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Features;

/// <summary>What a feature is for.</summary>
public enum FeatureKind
{
    /// <summary>Bore for a bolt from the deck.</summary>
    BoltBore,

    /// <summary>Bore for a threaded rod that clamps blade and base.</summary>
    ClampRodBore,

    /// <summary>Pocket that holds a nut.</summary>
    NutPocket,

    /// <summary>Room above a nut's pocket, as the part is printed, through which the nut sinks in.</summary>
    NutWayIn,

    /// <summary>Round pocket, open at the top edge, in which a nut is turned with a socket.</summary>
    SocketPocket,

    /// <summary>Bore for a carbon rod.</summary>
    CarbonRodBore,

    /// <summary>Hole for the cross pin of a long slot.</summary>
    PinHole,

    /// <summary>Hole for the plate screw of a long slot.</summary>
    ScrewHole,

    /// <summary>Room of a free cavity.</summary>
    CavityRoom,

    /// <summary>Recess for the lid of a free cavity.</summary>
    LidRecess,
}

/// <summary>A bore, pocket or cavity in its place.</summary>
public sealed record PlacedFeature
{
    /// <summary>Name for messages and papers, for example "front box bolt: nut pocket".</summary>
    public required string Name { get; init; }

    /// <summary>What it is for.</summary>
    public required FeatureKind Kind { get; init; }

    /// <summary>JSON path of the value that places it.</summary>
    public required string Path { get; init; }

    /// <summary>Features of one owner are meant to join: a bolt's bore and its nut pocket.</summary>
    public required string Owner { get; init; }

    /// <summary>The room it takes inside the fin.</summary>
    public required FeatureVolume Volume { get; init; }

    /// <summary>How far the cutting tool runs out of the fin before the start of the axis, metres; 0 for a blind end.</summary>
    public double OpenBefore { get; init; }

    /// <summary>How far the cutting tool runs out of the fin after the end of the axis, metres; 0 for a blind end.</summary>
    public double OpenAfter { get; init; }

    /// <summary>Whether it opens through the top edge of the base.</summary>
    public bool OpensAtTop { get; init; }

    /// <summary>Whether the print is paused to put something in before it closes over.</summary>
    public bool NeedsPause { get; init; }

    /// <summary>Whether its axis reaches below the hull plane, into the blade.</summary>
    public bool IsInBlade => Math.Max(Volume.From.Y, Volume.To.Y) > Hair;

    /// <summary>Whether its axis reaches above the hull plane, into the base.</summary>
    public bool IsInBase => Math.Min(Volume.From.Y, Volume.To.Y) < -Hair;

    /// <summary>The cutting tool.</summary>
    public SolidExpression Tool() => Volume.Lengthened(OpenBefore, OpenAfter).Tool();

    // An axis that ends in the hull plane may miss it by rounding, metres.
    private const double Hair = 1e-9;
}
