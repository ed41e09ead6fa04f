namespace Finwright.Water.Lifting;

/// <summary>What limits the trust in a lifting-surface answer.</summary>
[Flags]
public enum LiftingValidity
{
    /// <summary>Inside all limits.</summary>
    Full = 0,

    /// <summary>Leeway beyond 20 degrees.</summary>
    LargeLeeway = 1,

    /// <summary>Speed so low that waves matter.</summary>
    SlowForSurface = 2,

    /// <summary>A section was asked beyond its Reynolds numbers or thickness ratios.</summary>
    BeyondPolar = 4,

    /// <summary>A section's answer bridges a point that did not converge.</summary>
    BridgedPolar = 8,

    /// <summary>Some strips are past their peak of lift.</summary>
    StalledStrips = 16,

    /// <summary>Another answer was found at the same leeway.</summary>
    NotUnique = 32,

    /// <summary>A leading-edge vortex carries part of the load.</summary>
    LeadingEdgeVortex = 64,

    /// <summary>Sweep beyond what simple sweep theory bears.</summary>
    SteepSweep = 128,

    /// <summary>The gap at the root is so small that friction closes it in part.</summary>
    NarrowGap = 256,

    /// <summary>A section's true peak of lift lies beyond its computed points.</summary>
    PeakNotReached = 512,

    /// <summary>No sections: no friction and no stall.</summary>
    NoSections = 1024,

    /// <summary>Raked strips are past their peak of lift.</summary>
    StalledRake = 2048,
}

/// <summary>Words for <see cref="LiftingValidity"/>.</summary>
public static class LiftingValidities
{
    private static readonly (LiftingValidity Flag, string Text)[] Texts =
    [
        (LiftingValidity.LargeLeeway, "Leeway is beyond 20 degrees: the straight wake and the stalled sections are rough there. Take the numbers as a trend."),
        (LiftingValidity.SlowForSurface, "Speed is below the wave limit √(g · span): the fin makes waves that are not computed, and the surface acts more like a wall. Compare with the full mirror."),
        (LiftingValidity.BeyondPolar, "A section works beyond the Reynolds numbers or thickness ratios of its polar; the nearest edge of the table stands in. Compute a wider polar."),
        (LiftingValidity.BridgedPolar, "A section's polar has a point that did not converge; its neighbours stand in."),
        (LiftingValidity.StalledStrips, "Part of the fin is stalled: lift there can change with the way the state was reached."),
        (LiftingValidity.NotUnique, "More than one answer was found at this leeway, as in hysteresis; the other side force is given beside it."),
        (LiftingValidity.LeadingEdgeVortex, "A vortex along the steep leading edge carries part of the load; its share follows Polhamus' analogy, which was made for thin delta wings. Where the vortex bursts is not computed: take side force past the sections' peak as an upper bound."),
        (LiftingValidity.SteepSweep, "The quarter-chord line is swept beyond 60 degrees; section data are used as at 60 degrees."),
        (LiftingValidity.NarrowGap, "The gap at the root is below one per cent of the span: friction closes it in part, so the computed loss is too large."),
        (LiftingValidity.PeakNotReached, "A section's peak of lift lies beyond its computed points: stall comes later than shown."),
        (LiftingValidity.StalledRake, "Stalled strips are raked by more than 20 degrees: past the onset of stall a raked fin holds on better than computed here, since its boundary layer drains toward the tip. Take side force past onset as a lower bound."),
        (LiftingValidity.NoSections, "No sections were given: no friction and no stall in these numbers."),
    ];

    /// <summary>One plain sentence or two for each limit that applies.</summary>
    public static IReadOnlyList<string> Describe(this LiftingValidity validity) =>
        [.. Texts.Where(t => validity.HasFlag(t.Flag)).Select(t => t.Text)];
}
