using CsCheck;

namespace Finwright.Numerics.Tests;

public sealed class BSplineCurveTests
{
    private static readonly Gen<(double[] X, double[] Y)> Points =
        Gen.Int[2, 12].SelectMany(n => Gen.Select(Gen.Double[-1, 1].Array[n], Gen.Double[0.001, 1].Array[n], (x, steps) => (x, Rising(steps))));

    [Fact]
    public void At_four_points_is_the_cubic_of_Bernstein()
    {
        BSplineCurve curve = BSplineCurve.WithUniformKnots([0, 1, 3, 2], [0, 2, 2.5, 7]);
        foreach (double t in (double[])[0, 0.1, 0.5, 0.77, 1])
        {
            double s = 1 - t;
            // Bernstein form of a Bézier cubic, to which a clamped B-spline of four points reduces.
            Assert.Equal(3 * s * s * t * 1 + 3 * s * t * t * 3 + t * t * t * 2, curve.At(t).X, 14);
            Assert.Equal(3 * s * s * t * 2 + 3 * s * t * t * 2.5 + t * t * t * 7, curve.At(t).Y, 14);
        }
    }

    [Fact]
    public void At_agrees_with_the_recurrence_of_de_Boor()
    {
        Points.Where(p => p.X.Length >= 4).Hold((p) =>
        {
            BSplineCurve curve = BSplineCurve.WithUniformKnots(p.X, p.Y);
            for (int k = 0; k <= 20; k++)
                Assert.Equal(DeBoor(curve.Knots, p.X, k / 20.0), curve.At(k / 20.0).X, 1e-12);
        });
    }

    [Fact]
    public void At_evenly_spaced_values_on_Greville_places_is_a_straight_line()
    {
        double[] dummy = new double[9];
        BSplineCurve shape = BSplineCurve.WithUniformKnots(dummy, dummy);
        double[] greville = new double[9];
        for (int i = 0; i < 9; i++)
            greville[i] = (shape.Knots[i + 1] + shape.Knots[i + 2] + shape.Knots[i + 3]) / 3;
        // de Boor 1978: control values at the Greville places reproduce linear functions.
        BSplineCurve line = BSplineCurve.WithUniformKnots(greville, dummy);
        for (int k = 0; k <= 50; k++)
            Assert.Equal(k / 50.0, line.At(k / 50.0).X, 14);
    }

    [Fact]
    public void Derivatives_agree_with_differences()
    {
        Points.Hold(p =>
        {
            BSplineCurve curve = BSplineCurve.WithUniformKnots(p.X, p.Y);
            const double h = 1e-5;
            foreach (double t in (double[])[0.0313, 0.411, 0.917])
            {
                Assert.Equal((curve.At(t + h).X - curve.At(t - h).X) / (2 * h), curve.Derivative(t).X, 1e-4 * (1 + Math.Abs(curve.Derivative(t).X)));
                Assert.Equal((curve.Derivative(t + h).Y - curve.Derivative(t - h).Y) / (2 * h), curve.SecondDerivative(t).Y, 1e-2 * (1 + Math.Abs(curve.SecondDerivative(t).Y)));
            }
        });
    }

    [Fact]
    public void ParameterAtY_gives_back_the_depth()
    {
        Points.Hold(p =>
        {
            BSplineCurve curve = BSplineCurve.WithUniformKnots(p.X, p.Y);
            for (int k = 0; k <= 37; k++)
            {
                double y = p.Y[^1] * k / 37;
                Assert.Equal(Math.Max(y, p.Y[0]), curve.At(curve.ParameterAtY(y)).Y, 1e-13 * p.Y[^1]);
            }
        });
    }

    [Fact]
    public void ParameterAtY_holds_where_the_curve_ends_level()
    {
        BSplineCurve curve = BSplineCurve.WithUniformKnots([0, 0, 0.5, 1], [0, 1, 1, 1]);
        // y = 1 - (1 - t)³ here, so that t = 1 - ∛(1 - y).
        foreach (double y in (double[])[0, 0.3, 0.9, 1 - 1e-6, 1 - 1e-12])
            Assert.Equal(1 - Math.Cbrt(1 - y), curve.ParameterAtY(y), 1e-5);
    }

    [Fact]
    public void IntegralXdY_of_a_parabola_is_exact()
    {
        // x = t², y = t as a quadratic Bézier curve: the integral of t² is 1/3.
        BSplineCurve curve = BSplineCurve.WithUniformKnots([0, 0, 1], [0, 0.5, 1]);
        Assert.Equal(1.0 / 3, curve.IntegralXdY(), 15);
    }

    [Fact]
    public void Construction_refuses_what_is_no_curve()
    {
        Assert.Throws<ArgumentException>(() => BSplineCurve.WithUniformKnots([0], [0]));
        Assert.Throws<ArgumentException>(() => BSplineCurve.WithUniformKnots([0, 1], [0, 1, 2]));
        Assert.Throws<ArgumentException>(() => BSplineCurve.WithUniformKnots([0, double.NaN], [0, 1]));
    }

    private static double[] Rising(double[] steps)
    {
        double[] y = new double[steps.Length];
        for (int i = 1; i < y.Length; i++)
            y[i] = y[i - 1] + steps[i];
        return y;
    }

    // Sum of control values times basis functions, each by the recurrence on degrees (de Boor 1978, chapter X, equation 4).
    private static double DeBoor(ReadOnlySpan<double> knots, double[] control, double t)
    {
        double sum = 0;
        for (int i = 0; i < control.Length; i++)
            sum += control[i] * Basis(knots, i, 3, Math.Min(t, 1 - 1e-15));
        return sum;
    }

    private static double Basis(ReadOnlySpan<double> k, int i, int degree, double t)
    {
        if (degree == 0)
            return t >= k[i] && t < k[i + 1] ? 1 : 0;
        double left = k[i + degree] > k[i] ? (t - k[i]) / (k[i + degree] - k[i]) * Basis(k, i, degree - 1, t) : 0;
        double right = k[i + degree + 1] > k[i + 1] ? (k[i + degree + 1] - t) / (k[i + degree + 1] - k[i + 1]) * Basis(k, i + 1, degree - 1, t) : 0;
        return left + right;
    }
}
