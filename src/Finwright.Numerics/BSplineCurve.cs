using MathNet.Numerics.Integration;

namespace Finwright.Numerics;

/// <summary>
/// A planar B-spline curve, clamped at both ends, cubic when it has four control points or more, of lower degree with fewer.
/// The parameter t runs from 0 to 1.
/// </summary>
/// <remarks>
/// Basis functions by the recurrence of de Boor (de Boor, A Practical Guide to Splines, 1978, chapter X). The curve is turned
/// once into one polynomial per knot span, so that evaluation is a search and a Horner scheme.
/// </remarks>
public sealed class BSplineCurve
{
    /// <summary>Greatest degree.</summary>
    public const int MaximumDegree = 3;

    private const int Terms = MaximumDegree + 1;
    private const int NewtonSteps = 60;

    private readonly double[] _controlX, _controlY, _knots;
    private readonly double[] _breaks;

    // Power coefficients in (t - start of the span), four per span, constant term first.
    private readonly double[] _x, _y;

    private BSplineCurve(double[] controlX, double[] controlY, double[] knots, int degree)
    {
        (_controlX, _controlY, _knots, Degree) = (controlX, controlY, knots, degree);
        int spans = controlX.Length - degree;
        _breaks = knots[degree..(degree + spans + 1)];
        _x = new double[Terms * spans];
        _y = new double[Terms * spans];
        for (int span = 0; span < spans; span++)
        {
            Polynomial(controlX, span, _x.AsSpan(Terms * span, Terms));
            Polynomial(controlY, span, _y.AsSpan(Terms * span, Terms));
        }
    }

    /// <summary>Degree of the pieces, 1 to 3.</summary>
    public int Degree { get; }

    /// <summary>Second coordinates of the control points.</summary>
    public ReadOnlySpan<double> ControlY => _controlY;

    /// <summary>Knots, length control points + degree + 1; the first and last are repeated degree + 1 times.</summary>
    public ReadOnlySpan<double> Knots => _knots;

    /// <summary>Ends of the polynomial pieces, rising from 0 to 1.</summary>
    public ReadOnlySpan<double> Breaks => _breaks;

    /// <summary>A curve with evenly spaced knots: moving one control point never changes the curve far from it.</summary>
    /// <param name="x">First coordinates of the control points, at least two, finite.</param>
    /// <param name="y">Second coordinates, as many.</param>
    /// <exception cref="ArgumentException">Fewer than two points, unequal lengths, or a number that is not finite.</exception>
    public static BSplineCurve WithUniformKnots(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        RequirePoints(x, y);
        int spans = x.Length - Math.Min(MaximumDegree, x.Length - 1);
        double[] breaks = new double[spans + 1];
        for (int i = 0; i <= spans; i++)
            breaks[i] = (double)i / spans;
        return Clamped(x, y, breaks);
    }

    /// <summary>Point of the curve.</summary>
    /// <param name="t">Parameter, 0 to 1; values outside are taken as the nearer end.</param>
    public (double X, double Y) At(double t)
    {
        (int k, double s) = Locate(t);
        return (Value(_x, k, s), Value(_y, k, s));
    }

    /// <summary>First derivative by t.</summary>
    /// <param name="t">Parameter, 0 to 1; values outside are taken as the nearer end.</param>
    public (double X, double Y) Derivative(double t)
    {
        (int k, double s) = Locate(t);
        return (Slope(_x, k, s), Slope(_y, k, s));
    }

    /// <summary>Second derivative by t; from the right at a knot.</summary>
    /// <param name="t">Parameter, 0 to 1; values outside are taken as the nearer end.</param>
    public (double X, double Y) SecondDerivative(double t)
    {
        (int k, double s) = Locate(t);
        return (2 * _x[k + 2] + 6 * _x[k + 3] * s, 2 * _y[k + 2] + 6 * _y[k + 3] * s);
    }

    /// <summary>
    /// The parameter at which the second coordinate has a value. The second coordinates of the control points must not fall,
    /// so that the curve's do not either.
    /// </summary>
    /// <param name="y">Value sought; below the first or above the last point, that end is returned.</param>
    /// <returns>Parameter, 0 to 1.</returns>
    public double ParameterAtY(double y)
    {
        if (y <= _controlY[0])
            return 0;
        if (y >= _controlY[^1])
            return 1;
        int spans = _breaks.Length - 1;
        int low = 0, high = spans;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (_y[Terms * middle] <= y)
                low = middle;
            else
                high = middle;
        }

        // Newton inside a bracket; a step that leaves it, or that shrinks it too slowly near a flat end, is replaced by halving.
        int k = Terms * low;
        double width = _breaks[low + 1] - _breaks[low];
        double left = 0, right = width, s = width / 2;
        double last = width;
        for (int i = 0; i < NewtonSteps; i++)
        {
            double miss = Value(_y, k, s) - y;
            if (miss == 0)
                break;
            if (miss > 0)
                right = s;
            else
                left = s;
            double step = -miss / Slope(_y, k, s);
            double next = s + step;
            if (!(next > left && next < right) || Math.Abs(step) > last / 2)
                next = (left + right) / 2;
            last = Math.Abs(next - s);
            s = next;
            if (last <= 1e-16 * width || right - left <= 1e-16 * width)
                break;
        }

        return _breaks[low] + s;
    }

    /// <summary>Exact integral of x dy along the curve: the area between it and the line x = 0.</summary>
    /// <remarks>x y′ is a polynomial of degree five on each piece, for which three Gauss points are exact.</remarks>
    public double IntegralXdY()
    {
        double sum = 0;
        for (int span = 0; span < _breaks.Length - 1; span++)
        {
            int k = Terms * span;
            sum += GaussLegendreRule.Integrate(s => Value(_x, k, s) * Slope(_y, k, s), 0, _breaks[span + 1] - _breaks[span], 3);
        }

        return sum;
    }

    private static BSplineCurve Clamped(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double[] breaks)
    {
        int degree = x.Length - breaks.Length + 1;
        double[] knots = new double[x.Length + degree + 1];
        for (int i = 0; i < knots.Length; i++)
            knots[i] = breaks[Math.Clamp(i - degree, 0, breaks.Length - 1)];
        return new(x.ToArray(), y.ToArray(), knots, degree);
    }

    private static void RequirePoints(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length != y.Length)
            throw new ArgumentException($"{x.Length} first coordinates against {y.Length} second ones.", nameof(y));
        if (x.Length < 2)
            throw new ArgumentException($"A curve needs two control points or more; {x.Length} given.", nameof(x));
        for (int i = 0; i < x.Length; i++)
            if (!double.IsFinite(x[i]) || !double.IsFinite(y[i]))
                throw new ArgumentException($"Control point {i} is not finite.", nameof(x));
    }

    private static double Value(double[] c, int k, double s) => c[k] + s * (c[k + 1] + s * (c[k + 2] + s * c[k + 3]));

    private static double Slope(double[] c, int k, double s) => c[k + 1] + s * (2 * c[k + 2] + s * 3 * c[k + 3]);

    /// <summary>Offset of the span's coefficients, and the distance of t from its start.</summary>
    private (int Offset, double Distance) Locate(double t)
    {
        t = Math.Clamp(t, 0, 1);
        int low = 0, high = _breaks.Length - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (_breaks[middle] <= t)
                low = middle;
            else
                high = middle;
        }

        return (Terms * low, t - _breaks[low]);
    }

    /// <summary>Power coefficients of one span by de Boor's recurrence on polynomials in the distance from the span's start.</summary>
    private void Polynomial(double[] control, int span, Span<double> result)
    {
        int p = Degree, first = span + p;
        double start = _knots[first];
        Span<double> work = stackalloc double[Terms * Terms];
        work.Clear();
        for (int j = 0; j <= p; j++)
            work[Terms * j] = control[span + j];
        for (int level = 1; level <= p; level++)
            for (int j = p; j >= level; j--)
            {
                double from = _knots[first - p + j], to = _knots[first + 1 + j - level];
                // Weight (t - from) / (to - from) = a + b s.
                double b = 1 / (to - from), a = (start - from) * b;
                Span<double> here = work.Slice(Terms * j, Terms), before = work.Slice(Terms * (j - 1), Terms);
                for (int m = level; m >= 0; m--)
                {
                    double change = here[m] - before[m];
                    double lower = m > 0 ? here[m - 1] - before[m - 1] : 0;
                    here[m] = before[m] + a * change + b * lower;
                }
            }

        work.Slice(Terms * p, Terms).CopyTo(result);
    }
}
