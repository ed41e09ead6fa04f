namespace Finwright.Water.Lifting;

/// <summary>How the lifting surface is divided, and what its edges are like.</summary>
public sealed record LiftingOptions
{
    /// <summary>Strips along the span, 4 to 80.</summary>
    public int Strips { get; init; } = 20;

    /// <summary>Vortices along the chord, 2 to 24.</summary>
    public int Rows { get; init; } = 6;

    /// <summary>How much of the suction round the leading edge is kept.</summary>
    public LeadingEdgeForm LeadingEdge { get; init; } = LeadingEdgeForm.Round;

    /// <summary>How the tip is finished; it decides the cross-flow force round it.</summary>
    public TipForm Tip { get; init; } = TipForm.Faired;

    /// <summary>Whether the fin pierces the water's surface, with no hull over it, so that it throws up spray.</summary>
    public bool PiercesSurface { get; init; }

    internal static void Check(LiftingOptions options)
    {
        if (options.Strips is < 4 or > 80)
            throw new ArgumentOutOfRangeException(nameof(options), options.Strips, "The lattice takes 4 to 80 strips along the span.");
        if (options.Rows is < 2 or > 24)
            throw new ArgumentOutOfRangeException(nameof(options), options.Rows, "The lattice takes 2 to 24 vortices along the chord.");
    }
}

/// <summary>The leading edge's hold on its suction.</summary>
public enum LeadingEdgeForm
{
    /// <summary>Round: suction is kept until the section reaches its maximum lift.</summary>
    Round,

    /// <summary>Sharp: none is kept; all of it turns into normal force where the edge is swept steeply.</summary>
    Sharp,
}

/// <summary>The tip's form, for the force of the flow round it.</summary>
public enum TipForm
{
    /// <summary>No force beyond the lattice.</summary>
    None,

    /// <summary>Rounded or tapering tip.</summary>
    Faired,

    /// <summary>Tip cut off square.</summary>
    Square,

    /// <summary>Thin square tip: the whole suction of the side edge becomes normal force (Lamar). Upper bound.</summary>
    SideEdgeSuction,
}
