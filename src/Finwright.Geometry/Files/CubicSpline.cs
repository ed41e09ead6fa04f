using MathNet.Numerics.LinearAlgebra;

namespace Finwright.Geometry.Files;

/// <summary>Cubic B-splines through given points.</summary>
/// <remarks>Piegl and Tiller, The NURBS Book, 2nd ed., 1997: basis functions A2.1 and A2.2, knots by averaging eq. 9.8, interpolation section 9.2.1.</remarks>
internal static class CubicSpline
{
    private const int Degree = 3;

    /// <summary>Basis functions that are not zero at one place.</summary>
    public const int Order = Degree + 1;

    /// <summary>Knots for a curve through points at these parameters, increasing; at least four.</summary>
    public static double[] Knots(double[] parameters)
    {
        int count = parameters.Length;
        double[] knots = new double[count + Order];
        for (int i = 0; i < Order; i++)
            (knots[i], knots[^(i + 1)]) = (parameters[0], parameters[^1]);
        for (int i = 1; i < count - Degree; i++)
            knots[i + Degree] = (parameters[i] + parameters[i + 1] + parameters[i + 2]) / Degree;
        return knots;
    }

    /// <summary>The four basis functions that are not zero at a parameter.</summary>
    /// <returns>Number of the first of them.</returns>
    public static int Weights(double[] knots, double t, Span<double> weights)
    {
        int last = knots.Length - Order - 1, span = Degree;
        while (span < last && t >= knots[span + 1])
            span++;
        Span<double> left = stackalloc double[Order], right = stackalloc double[Order];
        weights[0] = 1;
        for (int j = 1; j <= Degree; j++)
        {
            left[j] = t - knots[span + 1 - j];
            right[j] = knots[span + j] - t;
            double saved = 0;
            for (int r = 0; r < j; r++)
            {
                double term = weights[r] / (right[r + 1] + left[j - r]);
                weights[r] = saved + right[r + 1] * term;
                saved = left[j - r] * term;
            }

            weights[j] = saved;
        }

        return span - Degree;
    }

    /// <summary>The same curve with a knot raised to three times, so that a control point lies on the curve there.</summary>
    /// <remarks>Boehm's insertion: Piegl and Tiller, eq. 5.15.</remarks>
    public static (Point3[] Poles, double[] Knots) Broken(Point3[] poles, double[] knots, double at)
    {
        for (int times = knots.Count(knot => knot == at); times < Degree; times++)
        {
            int last = Array.FindLastIndex(knots, knot => knot <= at);
            Point3[] more = new Point3[poles.Length + 1];
            for (int i = 0; i < more.Length; i++)
            {
                double share = i <= last - Degree ? 1 : i > last - times ? 0 : (at - knots[i]) / (knots[i + Degree] - knots[i]);
                more[i] = share >= 1 ? poles[i] : share <= 0 ? poles[i - 1] : share * poles[i] + (1 - share) * poles[i - 1];
            }

            poles = more;
            knots = [.. knots[..(last + 1)], at, .. knots[(last + 1)..]];
        }

        return (poles, knots);
    }

    /// <summary>Turns points at parameters into control points of the curve through them.</summary>
    /// <param name="parameters">Increasing.</param>
    /// <param name="points">One row a parameter; any number of columns, each a curve of its own.</param>
    public static Matrix<double> Poles(double[] parameters, Matrix<double> points)
    {
        double[] knots = Knots(parameters);
        Matrix<double> system = Matrix<double>.Build.Dense(parameters.Length, parameters.Length);
        Span<double> weights = stackalloc double[Order];
        for (int i = 0; i < parameters.Length; i++)
        {
            int first = Weights(knots, parameters[i], weights);
            for (int k = 0; k < Order; k++)
                system[i, first + k] = weights[k];
        }

        return system.LU().Solve(points);
    }
}
