using MathNet.Numerics.Integration;

namespace Finwright.Geometry.Sections;

/// <summary>Area and moments of the region inside a section of unit chord, by Green's theorem round its contour.</summary>
/// <param name="Area">∫ dA.</param>
/// <param name="X">∫ x dA.</param>
/// <param name="Y">∫ y dA.</param>
/// <param name="XX">∫ x² dA.</param>
/// <param name="YY">∫ y² dA.</param>
/// <remarks>
/// Gauss points in the angle φ with x = (1 - cos φ) / 2, in which a round nose is smooth. On each panel the contour is
/// differentiated through the polynomial that passes its Gauss points (barycentric form; Berrut and Trefethen, 2004,
/// "Barycentric Lagrange interpolation", SIAM Review 46(3)). Panels end at the section's joins.
/// </remarks>
internal readonly record struct ContourMoments(double Area, double X, double Y, double XX, double YY)
{
    private const int Order = 12;
    private const int PanelsPerPiece = 12;

    private static GaussLegendreRule Rule { get; } = new(-1, 1, Order);

    private static double[] Differentiation { get; } = DifferentiationMatrix();

    /// <summary>Moments of a section.</summary>
    public static ContourMoments Of(Section section)
    {
        double[] ends = [0, .. section.Joins.Where(x => x is > 0 and < 1), 1];
        ContourMoments sum = default;
        Span<Point2> points = stackalloc Point2[Order];
        for (int piece = 1; piece < ends.Length; piece++)
        {
            double from = Angle(ends[piece - 1]), width = (Angle(ends[piece]) - from) / PanelsPerPiece;
            for (int panel = 0; panel < PanelsPerPiece; panel++)
                foreach (int side in (ReadOnlySpan<int>)[-1, 1])
                {
                    for (int i = 0; i < Order; i++)
                    {
                        double s = Math.Sin((from + (panel + 0.5 * (1 + Rule.Abscissas[i])) * width) / 2);
                        points[i] = SectionGeometry.SurfaceAt(section, s * s, side);
                    }

                    // Nose to trailing edge is counter-clockwise on the port side only.
                    sum = sum.Plus(Along(points), -side);
                }
        }

        return sum.Plus(Straight(SectionGeometry.SurfaceAt(section, 1, -1), SectionGeometry.SurfaceAt(section, 1, 1)), 1);
    }

    private static double Angle(double x) => 2 * Math.Asin(Math.Sqrt(x));

    private static ContourMoments Straight(Point2 from, Point2 to)
    {
        Span<Point2> points = stackalloc Point2[Order];
        for (int i = 0; i < Order; i++)
            points[i] = from + 0.5 * (1 + Rule.Abscissas[i]) * (to - from);
        return Along(points);
    }

    // One panel's share of the contour integrals.
    private static ContourMoments Along(ReadOnlySpan<Point2> points)
    {
        ContourMoments sum = default;
        for (int i = 0; i < Order; i++)
        {
            Point2 p = points[i], tangent = default;
            for (int j = 0; j < Order; j++)
                tangent += Differentiation[i * Order + j] * points[j];
            double dx = Rule.Weights[i] * tangent.X, dy = Rule.Weights[i] * tangent.Y;
            sum = sum.Plus(new((p.X * dy - p.Y * dx) / 2, p.X * p.X * dy / 2, -p.Y * p.Y * dx / 2, p.X * p.X * p.X * dy / 3, -p.Y * p.Y * p.Y * dx / 3), 1);
        }

        return sum;
    }

    private static double[] DifferentiationMatrix()
    {
        double[] x = Rule.Abscissas, weight = new double[Order], matrix = new double[Order * Order];
        for (int i = 0; i < Order; i++)
        {
            weight[i] = 1;
            for (int j = 0; j < Order; j++)
                if (j != i)
                    weight[i] /= x[i] - x[j];
        }

        for (int i = 0; i < Order; i++)
            for (int j = 0; j < Order; j++)
                if (j != i)
                {
                    double entry = weight[j] / weight[i] / (x[i] - x[j]);
                    matrix[i * Order + j] = entry;
                    matrix[i * Order + i] -= entry;
                }

        return matrix;
    }

    private ContourMoments Plus(ContourMoments other, int sign) =>
        new(Area + sign * other.Area, X + sign * other.X, Y + sign * other.Y, XX + sign * other.XX, YY + sign * other.YY);
}
