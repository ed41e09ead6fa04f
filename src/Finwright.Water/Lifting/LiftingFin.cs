using Finwright.Water.Polars;

namespace Finwright.Water.Lifting;

/// <summary>A fin as the lifting surface sees it: edges, mean surface, thickness and what its sections do. Design axes, metres.</summary>
/// <remarks>The functions are asked at depths from 0 to <see cref="Span"/> and must give the same answer each time.</remarks>
public sealed record LiftingFin
{
    /// <summary>Depth of the tip below the root, metres, positive.</summary>
    public required double Span { get; init; }

    /// <summary>x of the leading edge at a depth, metres aft of the root quarter chord.</summary>
    public required Func<double, double> LeadingEdge { get; init; }

    /// <summary>x of the trailing edge at a depth, metres; not ahead of the leading edge. The edges may meet at the tip.</summary>
    public required Func<double, double> TrailingEdge { get; init; }

    /// <summary>z of the mean surface at x and depth, metres, positive to starboard; null for a flat fin. Camber and twist are in it.</summary>
    public Func<double, double, double>? MeanSurface { get; init; }

    /// <summary>Greatest thickness over chord at a depth.</summary>
    public Func<double, double> ThicknessRatio { get; init; } = _ => 0.1;

    /// <summary>What the section at a depth does; null for a surface without friction and without stall.</summary>
    public Func<double, ISectionPolar>? Polar { get; init; }

    /// <summary>The flexible strip at the trailing edge; null for none. The edges above include it.</summary>
    public FlexibleStrip? Strip { get; init; }

    /// <summary>Chord at a depth, metres.</summary>
    public double Chord(double y) => TrailingEdge(y) - LeadingEdge(y);

    /// <summary>A fin with straight edges, for checks and first estimates.</summary>
    /// <param name="span">Depth of the tip, metres.</param>
    /// <param name="rootChord">Chord at the root, metres.</param>
    /// <param name="tipChord">Chord at the tip, metres, 0 or more.</param>
    /// <param name="quarterChordSweep">Angle of the quarter-chord line from straight down, radians, positive aft.</param>
    public static LiftingFin Trapezoid(double span, double rootChord, double tipChord, double quarterChordSweep)
    {
        double run = Math.Tan(quarterChordSweep);
        double ChordAt(double y) => rootChord + (tipChord - rootChord) * y / span;
        return new()
        {
            Span = span,
            LeadingEdge = y => run * y - 0.25 * ChordAt(y),
            TrailingEdge = y => run * y + 0.75 * ChordAt(y),
        };
    }
}

/// <summary>A thin elastic sheet along the trailing edge, held at its front line and bent by its own load.</summary>
/// <remarks>
/// Each strip of the fin bends by itself as a cantilever sheet under a load that falls off linearly to the trailing edge: with free length L and
/// hinge moment M per span the edge turns by M L/(4 D). Stiffness along the span, large deflections and the sheet's own weight are left out.
/// </remarks>
/// <param name="FreeLength">Chordwise length between the held line and the trailing edge, metres, positive; at a depth where it is more than <see cref="LargestChordShare"/> of the chord it is cut to that.</param>
/// <param name="FlexuralRigidity">Bending stiffness of the sheet per span, E t³/12(1 - ν²), newton metres, positive.</param>
/// <param name="FromDepth">Depth where the sheet begins, metres.</param>
/// <param name="ToDepth">Depth where it ends, metres.</param>
public sealed record FlexibleStrip(double FreeLength, double FlexuralRigidity, double FromDepth, double ToDepth)
{
    /// <summary>A strip is a flap at the edge; more than half the chord would be another fin.</summary>
    public const double LargestChordShare = 0.5;
}
