namespace Finwright.Water.Lifting;

/// <summary>Loads of the strips of a fin per angle by which each strip is turned, over the dynamic pressure: what a fin that twists needs to know of the water.</summary>
/// <remarks>Potential flow: section lift slopes of 2π, no stall. Row-major, row = strip that is loaded, column = strip that is turned nose to starboard.</remarks>
public sealed record TwistResponse
{
    private TwistResponse()
    {
    }

    /// <summary>Depths of the middles of the strips, metres.</summary>
    public required IReadOnlyList<double> Depths { get; init; }

    /// <summary>Widths of the strips along the span, metres.</summary>
    public required IReadOnlyList<double> Widths { get; init; }

    /// <summary>Chords, metres.</summary>
    public required IReadOnlyList<double> Chords { get; init; }

    /// <summary>x of the quarter chords, metres.</summary>
    public required IReadOnlyList<double> QuarterChords { get; init; }

    /// <summary>Load per depth, dynamic pressure and radian, metres, positive to starboard.</summary>
    public required IReadOnlyList<double> Load { get; init; }

    /// <summary>Moment about the strip's quarter chord per depth, dynamic pressure and radian, m², positive nose to starboard.</summary>
    public required IReadOnlyList<double> Moment { get; init; }

    internal static TwistResponse Of(FinLattice lattice, LiftingModes modes, StripGeometry geometry)
    {
        int strips = lattice.Strips;
        double[] load = new double[strips * strips], moment = new double[strips * strips];
        for (int i = 0; i < strips; i++)
        {
            for (int j = 0; j < strips; j++)
            {
                int at = i * modes.Count + 2 + j;
                load[i * strips + j] = 2 * modes.Circulation[at];
                moment[i * strips + j] = 2 * (modes.Circulation[at] * geometry.QuarterX[i] - modes.Arm[at]);
            }
        }

        return new()
        {
            Depths = [.. lattice.Span.Middles],
            Widths = [.. lattice.Widths],
            Chords = [.. lattice.Chords],
            QuarterChords = [.. geometry.QuarterX],
            Load = load,
            Moment = moment,
        };
    }
}
