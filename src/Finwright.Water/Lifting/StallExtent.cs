namespace Finwright.Water.Lifting;

/// <summary>How far stall reaches over a fin.</summary>
/// <remarks>
/// A pointed tip is stalled at any leeway in theory, since its load falls off more slowly than its chord; it carries nothing and nobody notices. So the fin counts as stalled when strips
/// of more than <see cref="OnsetArea"/> of its area are past their peak.
/// </remarks>
internal static class StallExtent
{
    /// <summary>Share of the fin's area that must be past its peak of lift (judgement).</summary>
    public const double OnsetArea = 0.03;

    /// <summary>Stall share of the fin: what <see cref="OnsetArea"/> of its area have reached or passed.</summary>
    /// <remarks>The strips are put in order of their stall share, each standing at the middle of its own area; between them it is read off in a line, so that it does not jump with the number of strips.</remarks>
    /// <param name="shares">Stall share of each strip; 0 or less for strips that do not count.</param>
    /// <param name="areas">Area of each strip.</param>
    /// <returns>Share, 0 when no strip counts, and the strip nearest to that place, -1 when no strip counts.</returns>
    public static (double Share, int Strip) Of(ReadOnlySpan<double> shares, ReadOnlySpan<double> areas)
    {
        double total = 0, taken = 0, share = 0, middle = 0;
        foreach (double area in areas)
            total += area;
        double wanted = OnsetArea * total;
        Span<bool> used = stackalloc bool[shares.Length];
        int last = -1;
        while (true)
        {
            int next = -1;
            for (int j = 0; j < shares.Length; j++)
                if (!used[j] && shares[j] > 0 && (next < 0 || shares[j] > shares[next]))
                    next = j;
            if (next < 0)
                return (share, last);
            used[next] = true;
            double nextMiddle = taken + areas[next] / 2;
            if (last < 0 && nextMiddle >= wanted)
                return (shares[next], next);
            if (nextMiddle >= wanted)
            {
                double along = (wanted - middle) / (nextMiddle - middle);
                return (share + along * (shares[next] - share), along > 0.5 ? next : last);
            }

            (taken, share, middle, last) = (taken + areas[next], shares[next], nextMiddle, next);
        }
    }
}
