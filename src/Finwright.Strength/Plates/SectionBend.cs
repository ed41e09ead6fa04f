namespace Finwright.Strength.Plates;

/// <summary>How far one section of a loaded blade moves.</summary>
/// <param name="Depth">Its depth, metres.</param>
/// <param name="LeadingEdge">Deflection of its leading edge, metres, to starboard.</param>
/// <param name="MidChord">Of its middle.</param>
/// <param name="TrailingEdge">Of its trailing edge.</param>
/// <param name="Twist">Turn of its chord, radians, positive when the trailing edge goes farther to starboard: under a starboard load the blade washes out and unloads.</param>
public readonly record struct SectionBend(double Depth, double LeadingEdge, double MidChord, double TrailingEdge, double Twist)
{
    private const double LeastChordShare = 0.1;

    // Halvings that find where the edges have drawn together.
    private const int Halvings = 40;

    /// <summary>Reads a section off a loaded plate.</summary>
    /// <param name="bent">The loaded plate.</param>
    /// <param name="fin">The fin.</param>
    /// <param name="depth">Depth of the section, metres, 0 to the span.</param>
    /// <remarks>
    /// The twist is read between a tenth and nine tenths of the chord: nose and trailing edge are thin and bend by themselves. Where the edges draw together at a tip, the twist is that of the last section whose
    /// chord is a tenth of the root's or more.
    /// </remarks>
    public static SectionBend At(PlateSolution bent, PlateFin fin, double depth)
    {
        ArgumentNullException.ThrowIfNull(bent);
        ArgumentNullException.ThrowIfNull(fin);
        double leading = fin.LeadingEdge(depth), chord = fin.TrailingEdge(depth) - leading;
        double Deflection(double share) => bent.Deflection(leading + share * chord, depth);
        return new(depth, Deflection(0), Deflection(0.5), Deflection(1), Turn(bent, fin, Math.Min(depth, LastWide(fin))));
    }

    private static double Turn(PlateSolution bent, PlateFin fin, double depth)
    {
        double leading = fin.LeadingEdge(depth), chord = fin.TrailingEdge(depth) - leading;
        return (bent.Deflection(leading + 0.9 * chord, depth) - bent.Deflection(leading + 0.1 * chord, depth)) / (0.8 * chord);
    }

    private static double LastWide(PlateFin fin)
    {
        double least = LeastChordShare * (fin.TrailingEdge(0) - fin.LeadingEdge(0));
        if (fin.TrailingEdge(fin.Span) - fin.LeadingEdge(fin.Span) >= least)
            return fin.Span;
        double wide = 0, narrow = fin.Span;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (wide + narrow) / 2;
            (wide, narrow) = fin.TrailingEdge(middle) - fin.LeadingEdge(middle) >= least ? (middle, narrow) : (wide, middle);
        }

        return wide;
    }
}
