namespace Finwright.Water.Polars;

/// <summary>
/// Slopes for cubic pieces that follow their points without overshoot: where the points rise or fall, so does the curve, and a peak of the
/// points is the peak of the curve.
/// </summary>
/// <remarks>
/// Fritsch and Butland, 1984, "A method for constructing local monotone piecewise cubic interpolants", SIAM J. Sci. Stat. Comput. 5:
/// weighted harmonic mean of the slopes on both sides; three-point formula, limited, at the ends.
/// </remarks>
internal static class MonotoneCubic
{
    /// <summary>Slope at an inner point.</summary>
    /// <param name="before">Distance to the point before.</param>
    /// <param name="after">Distance to the point behind.</param>
    /// <param name="slopeBefore">Slope of the chord before.</param>
    /// <param name="slopeAfter">Slope of the chord behind.</param>
    public static double Inner(double before, double after, double slopeBefore, double slopeAfter)
    {
        if (slopeBefore * slopeAfter <= 0)
            return 0;
        double first = 2 * after + before, second = after + 2 * before;
        return (first + second) / (first / slopeBefore + second / slopeAfter);
    }

    /// <summary>Slope at an end.</summary>
    /// <param name="near">Distance to the neighbour.</param>
    /// <param name="far">Distance from the neighbour to the one behind it.</param>
    /// <param name="slopeNear">Slope of the chord to the neighbour.</param>
    /// <param name="slopeFar">Slope of the next chord.</param>
    public static double End(double near, double far, double slopeNear, double slopeFar)
    {
        double slope = ((2 * near + far) * slopeNear - near * slopeFar) / (near + far);
        if (slope * slopeNear <= 0)
            return 0;
        return slopeNear * slopeFar <= 0 && Math.Abs(slope) > 3 * Math.Abs(slopeNear) ? 3 * slopeNear : slope;
    }

    /// <summary>Slopes at all points of a row.</summary>
    /// <param name="x">Places, rising; at least two.</param>
    /// <param name="y">Values there.</param>
    public static double[] Slopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        int n = x.Length;
        double[] slopes = new double[n];
        if (n == 2)
        {
            slopes[0] = slopes[1] = (y[1] - y[0]) / (x[1] - x[0]);
            return slopes;
        }

        for (int i = 1; i < n - 1; i++)
        {
            double before = x[i] - x[i - 1], after = x[i + 1] - x[i];
            slopes[i] = Inner(before, after, (y[i] - y[i - 1]) / before, (y[i + 1] - y[i]) / after);
        }

        slopes[0] = End(x[1] - x[0], x[2] - x[1], (y[1] - y[0]) / (x[1] - x[0]), (y[2] - y[1]) / (x[2] - x[1]));
        slopes[n - 1] = End(x[n - 1] - x[n - 2], x[n - 2] - x[n - 3], (y[n - 1] - y[n - 2]) / (x[n - 1] - x[n - 2]), (y[n - 2] - y[n - 3]) / (x[n - 2] - x[n - 3]));
        return slopes;
    }

    /// <summary>Value of a cubic piece.</summary>
    /// <param name="share">Place on the piece, 0 to 1.</param>
    /// <param name="width">Length of the piece.</param>
    /// <param name="y0">Value at its start.</param>
    /// <param name="y1">Value at its end.</param>
    /// <param name="slope0">Slope at its start.</param>
    /// <param name="slope1">Slope at its end.</param>
    public static double Value(double share, double width, double y0, double y1, double slope0, double slope1)
    {
        double rest = 1 - share;
        double bend = width * share * rest * (rest * slope0 - share * slope1);
        return y0 + share * share * (3 - 2 * share) * (y1 - y0) + bend;
    }
}
