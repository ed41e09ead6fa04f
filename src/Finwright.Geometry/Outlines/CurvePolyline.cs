using Finwright.Numerics;

namespace Finwright.Geometry.Outlines;

/// <summary>Draws a spline as a line of short straight pieces.</summary>
internal static class CurvePolyline
{
    /// <summary>Bound on the pieces of one knot span, against absurd tolerances.</summary>
    private const int MostPieces = 4096;

    /// <summary>Points along the curve, from start to end.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="tolerance">Greatest distance between curve and line, metres.</param>
    /// <remarks>
    /// A piece of parameter length h lies within h²/8 of the greatest second derivative of its chord (linear interpolation error),
    /// and the second derivative of a cubic is greatest at an end of the span.
    /// </remarks>
    public static List<Point2> Of(BSplineCurve curve, double tolerance)
    {
        List<Point2> points = [Point(curve, 0)];
        for (int span = 0; span + 1 < curve.Breaks.Length; span++)
        {
            double from = curve.Breaks[span], width = curve.Breaks[span + 1] - from;
            double greatest = Math.Max(Second(curve, from), Second(curve, from + width * (1 - 1e-12)));
            int pieces = (int)Math.Clamp(Math.Ceiling(width * Math.Sqrt(greatest / (8 * tolerance))), 1, MostPieces);
            for (int i = 1; i <= pieces; i++)
                points.Add(Point(curve, from + width * i / pieces));
        }

        return points;
    }

    private static Point2 Point(BSplineCurve curve, double t)
    {
        (double x, double y) = curve.At(t);
        return new(x, y);
    }

    private static double Second(BSplineCurve curve, double t)
    {
        (double x, double y) = curve.SecondDerivative(t);
        return double.Hypot(x, y);
    }
}
