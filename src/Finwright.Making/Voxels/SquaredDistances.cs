namespace Finwright.Making.Voxels;

/// <summary>Squared distance of every grid point from the nearest marked one, exact, on a grid of unequal spacings.</summary>
/// <remarks>
/// Lower envelope of parabolas, one direction after the other: P. F. Felzenszwalb and D. P. Huttenlocher, "Distance transforms of sampled
/// functions", Theory of Computing 8 (2012) 415, section 2 (from memory); the spacing of the points enters as the scale of each direction.
/// </remarks>
internal static class SquaredDistances
{
    /// <summary>Works the distances out.</summary>
    /// <param name="marked">Whether each point is marked; x fastest, then y, then z.</param>
    /// <param name="countX">Points along x.</param>
    /// <param name="countY">Points along y.</param>
    /// <param name="countZ">Points along z.</param>
    /// <param name="spacingX">Spacing along x, metres.</param>
    /// <param name="spacingY">Spacing along y, metres.</param>
    /// <param name="spacingZ">Spacing along z, metres.</param>
    /// <returns>Squared distances, m²; infinite everywhere when nothing is marked.</returns>
    public static double[] Of(bool[] marked, int countX, int countY, int countZ, double spacingX, double spacingY, double spacingZ)
    {
        double[] squared = new double[marked.Length];
        for (int i = 0; i < squared.Length; i++)
            squared[i] = marked[i] ? 0 : double.PositiveInfinity;
        int longest = Math.Max(countX, Math.Max(countY, countZ));
        Envelope envelope = new(longest);
        for (int line = 0; line < countY * countZ; line++)
            envelope.Along(squared, line * countX, 1, countX, spacingX);
        for (int k = 0; k < countZ; k++)
            for (int i = 0; i < countX; i++)
                envelope.Along(squared, i + k * countX * countY, countX, countY, spacingY);
        for (int line = 0; line < countX * countY; line++)
            envelope.Along(squared, line, countX * countY, countZ, spacingZ);
        return squared;
    }

    private sealed class Envelope(int longest)
    {
        private readonly double[] _values = new double[longest];
        private readonly int[] _parabolas = new int[longest];
        private readonly double[] _from = new double[longest];

        public void Along(double[] squared, int start, int stride, int count, double spacing)
        {
            double scale = spacing * spacing;
            int used = 0;
            for (int q = 0; q < count; q++)
            {
                double value = _values[q] = squared[start + q * stride];
                if (double.IsPositiveInfinity(value))
                    continue;
                double from = double.NegativeInfinity;
                while (used > 0)
                {
                    int p = _parabolas[used - 1];
                    from = ((value - _values[p]) / scale + (double)q * q - (double)p * p) / (2.0 * (q - p));
                    if (from > _from[used - 1])
                        break;
                    used--;
                }

                _parabolas[used] = q;
                _from[used] = used == 0 ? double.NegativeInfinity : from;
                used++;
            }

            if (used == 0)
                return;
            int at = 0;
            for (int q = 0; q < count; q++)
            {
                while (at + 1 < used && _from[at + 1] < q)
                    at++;
                double steps = q - _parabolas[at];
                squared[start + q * stride] = scale * steps * steps + _values[_parabolas[at]];
            }
        }
    }
}
