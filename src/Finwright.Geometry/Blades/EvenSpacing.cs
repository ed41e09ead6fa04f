namespace Finwright.Geometry.Blades;

/// <summary>Spreads places over an interval so that every gap carries the same share of a given density.</summary>
internal static class EvenSpacing
{
    /// <summary>Gaps are never longer than this many times the mean: a curve may run straight for a while, but not for ever.</summary>
    private const double LongestGap = 4;

    /// <summary>Places from <paramref name="from"/> to <paramref name="to"/>, both included.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    /// <param name="density">Gaps wanted in each of the equal cells of the interval, 0 or more.</param>
    /// <param name="least">Least number of gaps.</param>
    /// <param name="parts">Places per gap: 2 gives the middle of each gap as well.</param>
    public static double[] Places(double from, double to, double[] density, int least, int parts)
    {
        double sum = 0;
        foreach (double d in density)
            sum += d;
        double floor = Math.Max(sum, least) / (LongestGap * density.Length);
        double[] reached = new double[density.Length + 1];
        for (int i = 0; i < density.Length; i++)
            reached[i + 1] = reached[i] + Math.Max(density[i], floor);

        int gaps = Math.Max(least, (int)Math.Ceiling(reached[^1]));
        double[] places = new double[gaps * parts + 1];
        double cell = (to - from) / density.Length;
        int at = 0;
        for (int i = 1; i < places.Length - 1; i++)
        {
            double wanted = reached[^1] * i / (places.Length - 1);
            while (reached[at + 1] < wanted)
                at++;
            places[i] = from + cell * (at + (wanted - reached[at]) / (reached[at + 1] - reached[at]));
        }

        (places[0], places[^1]) = (from, to);
        return places;
    }
}
