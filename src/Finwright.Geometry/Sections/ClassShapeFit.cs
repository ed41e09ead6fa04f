using System.Diagnostics.CodeAnalysis;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Finwright.Geometry.Sections;

/// <summary>What a class-shape fit may use.</summary>
/// <param name="Order">Order n of the thickness polynomial, 1 to <see cref="ClassShapeFit.HighestOrder"/>. Order 8 follows four-digit and 16-series sections of fin thickness within 0.00015 chords.</param>
/// <param name="CamberOrder">Order m of the camber polynomial, 0 to <see cref="ClassShapeFit.HighestOrder"/>; null for a symmetric section.</param>
/// <param name="NoseTerm">Whether the extra nose term may be used.</param>
public sealed record ClassShapeOptions(int Order = 8, int? CamberOrder = 7, bool NoseTerm = false);

/// <summary>A class-shape fit and how closely it follows its points.</summary>
/// <param name="Section">The fitted section.</param>
/// <param name="MaximumError">Greatest distance of a point from the fitted surface, chords.</param>
/// <param name="MaximumErrorAt">Where that is, from the nose, chords.</param>
/// <param name="MaximumErrorSide">+1 when it is on the starboard (upper) side, -1 on port.</param>
/// <param name="RootMeanSquareError">Root mean square of the distances, chords.</param>
public sealed record ClassShapeFitted(
    ClassShapeSection Section,
    double MaximumError,
    double MaximumErrorAt,
    int MaximumErrorSide,
    double RootMeanSquareError);

/// <summary>Least-squares fit of a class-shape section to points or to another section.</summary>
/// <remarks>
/// Kulfan, 2008, Journal of Aircraft 45(1), 142. Both sides are fitted at once, ordinates unweighted, by orthogonal
/// factorisation of the design matrix. The trailing edge keeps the given thickness.
/// </remarks>
public static class ClassShapeFit
{
    /// <summary>Highest order on offer: beyond it the basis grows too ill-conditioned to gain anything in double precision.</summary>
    public const int HighestOrder = 24;

    // Rows used in the factorisation; the error is always measured on all points. Far above the unknowns of the highest order.
    private const int MostRowsASide = 600;

    // Below this ratio of the factor's diagonal the points do not determine the coefficients. Order 24 over cosine-spaced
    // stations stands at 1e-3, so only truly bunched points fall below.
    private const double RankTolerance = 1e-12;

    // Stations a side when a whole section is fitted.
    private const int StationsASide = 200;

    /// <summary>Fits points of unit chord: nose at (0, 0), middle of the trailing edge at (1, 0).</summary>
    /// <param name="name">Name of the new section.</param>
    /// <param name="starboard">Points of the upper side, x from 0 to 1, any order.</param>
    /// <param name="port">Points of the lower side, x from 0 to 1, any order.</param>
    /// <param name="trailingEdge">Thickness of the trailing edge, chords, not negative.</param>
    /// <param name="options">Orders and terms.</param>
    /// <param name="fitted">The fit.</param>
    /// <returns>False when the points are too few or too bunched for the orders asked for.</returns>
    /// <exception cref="ArgumentException">An order is out of range, a point is not finite or off the chord.</exception>
    public static bool TryFit(
        string name,
        IReadOnlyList<Point2> starboard,
        IReadOnlyList<Point2> port,
        double trailingEdge,
        ClassShapeOptions options,
        [NotNullWhen(true)] out ClassShapeFitted? fitted)
    {
        ArgumentNullException.ThrowIfNull(starboard);
        ArgumentNullException.ThrowIfNull(port);
        ArgumentNullException.ThrowIfNull(options);
        CheckOrder(options.Order, 1);
        CheckOrder(options.CamberOrder ?? 0, 0);
        CheckPoints(starboard, nameof(starboard));
        CheckPoints(port, nameof(port));
        fitted = null;

        List<(Point2 Point, int Side)> rows = [.. Rows(starboard, 1), .. Rows(port, -1)];
        int shapes = options.Order + 1, nose = options.NoseTerm ? 1 : 0, cambers = options.CamberOrder + 1 ?? 0;
        int unknowns = shapes + nose + cambers;
        if (rows.Count < unknowns)
            return false;

        Matrix<double> design = Matrix<double>.Build.Dense(rows.Count, unknowns);
        Vector<double> wanted = Vector<double>.Build.Dense(rows.Count);
        Span<double> basis = stackalloc double[HighestOrder + 1];
        for (int row = 0; row < rows.Count; row++)
        {
            (Point2 point, int side) = rows[row];
            (double x, double y) = (point.X, point.Y);
            wanted[row] = y - side * x * trailingEdge / 2;
            Bernstein.Basis(x, basis[..shapes]);
            for (int i = 0; i < shapes; i++)
                design[row, i] = side * Math.Sqrt(x) * (1 - x) * basis[i];
            if (options.NoseTerm)
                design[row, shapes] = side * ClassShapeSection.NoseTerm(x, options.Order);
            Bernstein.Basis(x, basis[..Math.Max(cambers, 1)]);
            for (int j = 0; j < cambers; j++)
                design[row, shapes + nose + j] = x * (1 - x) * basis[j];
        }

        QR<double> factors = design.QR(QRMethod.Thin);
        Vector<double> diagonal = factors.R.Diagonal().PointwiseAbs();
        if (!(diagonal.Minimum() > RankTolerance * diagonal.Maximum()))
            return false;
        double[] solution = factors.Solve(wanted).ToArray();
        if (!solution.All(double.IsFinite))
            return false;
        ClassShapeSection section = new(name, solution[..shapes], solution[(shapes + nose)..], trailingEdge, options.NoseTerm ? solution[shapes] : 0);
        fitted = Measured(section, starboard, port);
        return true;
    }

    /// <summary>Fits another section.</summary>
    /// <param name="section">
    /// The section to fit. When its thickness lies square to a camber line, its surface is first turned and scaled, by a little, so
    /// that the point farthest from the trailing edge is the nose.
    /// </param>
    /// <param name="options">Orders and terms; the camber order counts only for a section with camber.</param>
    /// <returns>The fit; its section carries the same name.</returns>
    public static ClassShapeFitted Fit(Section section, ClassShapeOptions options)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(options);
        if (section.MaximumCamber is 0)
            options = options with { CamberOrder = null };
        List<Point2> contour = [];
        for (int i = 0; i <= 2 * StationsASide; i++)
            contour.Add(SectionGeometry.PointAt(section, i / (2.0 * StationsASide)));
        IReadOnlyList<Point2> starboard, port;
        if (section.SquareShare is 0 || section.MaximumCamber is 0)
        {
            starboard = contour[..(StationsASide + 1)];
            port = contour[StationsASide..];
        }
        else
        {
            AlignedContour aligned = AlignedContour.Of(contour);
            starboard = [.. aligned.Starboard.Select(p => p.Point)];
            port = [.. aligned.Port.Select(p => p.Point)];
        }

        return TryFit(section.Name, starboard, port, 2 * section.HalfThickness(1), options, out ClassShapeFitted? fitted)
            ? fitted
            : throw new InvalidOperationException($"{StationsASide} cosine-spaced stations a side determine every order on offer.");
    }

    private static IEnumerable<(Point2 Point, int Side)> Rows(IReadOnlyList<Point2> points, int side)
    {
        // The class functions vanish at both ends: such points carry nothing.
        int step = (points.Count + MostRowsASide - 1) / MostRowsASide;
        for (int i = 0; i < points.Count; i += Math.Max(step, 1))
            if (points[i].X is > 0 and < 1)
                yield return (points[i], side);
    }

    private static ClassShapeFitted Measured(ClassShapeSection section, IReadOnlyList<Point2> starboard, IReadOnlyList<Point2> port)
    {
        double worst = 0, worstAt = 0, squares = 0;
        int worstSide = 1;
        foreach (int side in (ReadOnlySpan<int>)[1, -1])
            foreach (Point2 p in side > 0 ? starboard : port)
            {
                double distance = Math.Abs(p.Y - section.Camber(p.X) - side * section.HalfThickness(p.X)) * Leaning(section, p.X, side);
                squares += distance * distance;
                if (distance > worst)
                    (worst, worstAt, worstSide) = (distance, p.X, side);
            }

        return new(section, worst, worstAt, worstSide, Math.Sqrt(squares / (starboard.Count + port.Count)));
    }

    // Cosine of the surface's slope: turns a difference of ordinates into a distance. Differences in √x, where the nose is smooth.
    private static double Leaning(ClassShapeSection section, double x, int side)
    {
        const double step = 1e-5;
        double root = Math.Sqrt(x), from = Math.Max(root - step, 0), to = Math.Min(root + step, 1);
        double Y(double s) => section.Camber(s * s) + side * section.HalfThickness(s * s);
        double run = to * to - from * from, rise = Y(to) - Y(from);
        return run / Math.Sqrt(run * run + rise * rise);
    }

    private static void CheckOrder(int order, int least)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(order, least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(order, HighestOrder);
    }

    private static void CheckPoints(IReadOnlyList<Point2> points, string parameter)
    {
        foreach (Point2 p in points)
            if (!(p.X >= 0 && p.X <= 1 && double.IsFinite(p.Y)))
                throw new ArgumentException($"({p.X}, {p.Y}) is not a point over the unit chord.", parameter);
    }
}
