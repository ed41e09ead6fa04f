namespace Finwright.Geometry.Files;

/// <summary>A cubic by cubic B-spline surface: rows down the span, columns round the section.</summary>
/// <param name="Poles">Control points, row after row, metres.</param>
/// <param name="SpanKnots">Knots down the span, ends four times.</param>
/// <param name="RoundKnots">Knots round the section, ends four times.</param>
internal sealed record SplineSurface(Point3[] Poles, double[] SpanKnots, double[] RoundKnots)
{
    /// <summary>Control points down the span.</summary>
    public int Rows => SpanKnots.Length - CubicSpline.Order;

    /// <summary>Control points round the section.</summary>
    public int Columns => RoundKnots.Length - CubicSpline.Order;

    /// <summary>Control point.</summary>
    public Point3 Pole(int row, int column) => Poles[row * Columns + column];

    /// <summary>Control points of a section.</summary>
    public Point3[] Row(int row) => Poles[(row * Columns)..((row + 1) * Columns)];

    /// <summary>Control points of a line down the span.</summary>
    public Point3[] Column(int column) => [.. Enumerable.Range(0, Rows).Select(row => Pole(row, column))];

    /// <summary>The same surface as two, meeting at the middle of the way round.</summary>
    public SplineSurface[] Halves()
    {
        double middle = (RoundKnots[0] + RoundKnots[^1]) / 2;
        List<Point3> left = [], right = [];
        double[] leftKnots = [], rightKnots = [];
        for (int row = 0; row < Rows; row++)
        {
            (Point3[] poles, double[] knots) = CubicSpline.Broken(Row(row), RoundKnots, middle);
            int first = Array.IndexOf(knots, middle);
            left.AddRange(poles[..first]);
            right.AddRange(poles[(first - 1)..]);
            leftKnots = [.. knots[..(first + CubicSpline.Order - 1)], middle];
            rightKnots = [middle, .. knots[first..]];
        }

        return [new([.. left], SpanKnots, leftKnots), new([.. right], SpanKnots, rightKnots)];
    }

    /// <summary>Point of the surface.</summary>
    public Point3 At(double span, double round)
    {
        Span<double> down = stackalloc double[CubicSpline.Order], about = stackalloc double[CubicSpline.Order];
        int row = CubicSpline.Weights(SpanKnots, span, down), column = CubicSpline.Weights(RoundKnots, round, about);
        Point3 sum = default;
        for (int i = 0; i < CubicSpline.Order; i++)
            for (int j = 0; j < CubicSpline.Order; j++)
                sum += down[i] * about[j] * Pole(row + i, column + j);
        return sum;
    }
}
