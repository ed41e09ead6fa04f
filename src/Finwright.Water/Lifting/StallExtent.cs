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

    /// <summary>The strip that decides: of the strips nearest to stall, or furthest past it, the one with which they come to more than the onset's share of area.</summary>
    /// <param name="shares">Stall share of each strip; 0 or less for strips that do not count.</param>
    /// <param name="areas">Area of each strip.</param>
    /// <returns>Index, or -1 when no strip counts.</returns>
    public static int Critical(ReadOnlySpan<double> shares, ReadOnlySpan<double> areas)
    {
        double total = 0, taken = 0;
        foreach (double area in areas)
            total += area;
        Span<bool> used = stackalloc bool[shares.Length];
        int last = -1;
        while (taken <= OnsetArea * total)
        {
            int next = -1;
            for (int j = 0; j < shares.Length; j++)
                if (!used[j] && shares[j] > 0 && (next < 0 || shares[j] > shares[next]))
                    next = j;
            if (next < 0)
                break;
            used[next] = true;
            taken += areas[next];
            last = next;
        }

        return last;
    }
}
