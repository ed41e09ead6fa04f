using Finwright.Geometry.Blades;
using MathNet.Numerics.LinearAlgebra;

namespace Finwright.Geometry.Files;

/// <summary>Fits one cubic by cubic surface to the skin of a blade, as fine as a tolerance needs.</summary>
internal static class SkinFit
{
    private const int FewestStations = 17;
    private const int FewestPoints = 65;
    private const int MostStations = 129;
    private const int MostPoints = 257;

    /// <summary>Fits the skin from the root to a depth.</summary>
    /// <returns>The surface and the greatest distance found, metres.</returns>
    public static (SplineSurface Surface, double Deviation) Fit(BladeShape blade, double depth, double tolerance)
    {
        int stations = FewestStations, points = FewestPoints;
        while (true)
        {
            SplineSurface surface = Through(blade, depth, stations, points);
            (double along, double around) = Deviation(blade, depth, surface, stations, points);
            double deviation = Math.Max(along, around);
            bool finerAlong = along > tolerance && stations < MostStations, finerAround = around > tolerance && points < MostPoints;
            if (!finerAlong && !finerAround)
                return (surface, deviation);
            if (finerAlong)
                stations = 2 * stations - 1;
            if (finerAround)
                points = 2 * points - 1;
        }
    }

    /// <summary>
    /// Depth at a parameter from 0 to 1. Towards a rounded tip the chord goes as the root of the distance to it; stations spread as its
    /// square make it smooth.
    /// </summary>
    private static double Depth(BladeShape blade, double depth, double t)
    {
        double end = 1 - Math.Sqrt(1 - depth / blade.Span), s = 1 - t * end;
        return t < 1 ? blade.Span * (1 - s * s) : depth;
    }

    /// <summary>
    /// Place round the section at a parameter from 0 to 1, which goes as the root of x/c. The skin's own measure stands still at the
    /// trailing edge, where a surface in it would have no direction; the root does not, and keeps the nose smooth.
    /// </summary>
    private static double Place(double w) => Math.Acos(1 - 2 * w) / Math.PI;

    private static SplineSurface Through(BladeShape blade, double depth, int stations, int points)
    {
        double[] down = [.. Enumerable.Range(0, stations).Select(i => i / (stations - 1.0))];
        double[] round = [.. Enumerable.Range(0, points).Select(j => j / (points - 1.0))];
        Matrix<double> skin = Matrix<double>.Build.Dense(points, 3 * stations);
        for (int i = 0; i < stations; i++)
            for (int j = 0; j < points; j++)
            {
                Point3 p = blade.Skin(Depth(blade, depth, down[i]), Place(round[j]));
                if (!double.IsFinite(p.X + p.Y + p.Z))
                    throw new ArgumentException($"The skin at {1e3 * Depth(blade, depth, down[i]):g4} mm depth is not finite.", nameof(blade));
                (skin[j, 3 * i], skin[j, 3 * i + 1], skin[j, 3 * i + 2]) = (p.X, p.Y, p.Z);
            }

        // First every section by itself, then the control points of all sections down the span.
        Matrix<double> sections = CubicSpline.Poles(round, skin);
        Matrix<double> spanwise = Matrix<double>.Build.Dense(stations, 3 * points);
        for (int i = 0; i < stations; i++)
            for (int j = 0; j < points; j++)
                for (int k = 0; k < 3; k++)
                    spanwise[i, 3 * j + k] = sections[j, 3 * i + k];
        Matrix<double> net = CubicSpline.Poles(down, spanwise);
        Point3[] poles = new Point3[stations * points];
        for (int i = 0; i < stations; i++)
            for (int j = 0; j < points; j++)
                poles[i * points + j] = new(net[i, 3 * j], net[i, 3 * j + 1], net[i, 3 * j + 2]);
        return new(poles, CubicSpline.Knots(down), CubicSpline.Knots(round));
    }

    /// <summary>Distance between skin and surface at equal parameters, which is never less than the true distance: between stations, and between points of a section.</summary>
    private static (double Along, double Around) Deviation(BladeShape blade, double depth, SplineSurface surface, int stations, int points)
    {
        double At(double t, double w) => (surface.At(t, w) - blade.Skin(Depth(blade, depth, t), Place(w))).Length;
        double along = 0, around = 0;
        for (int i = 0; i < stations - 1; i++)
            for (int j = 0; j < points; j++)
                along = Math.Max(along, At((i + 0.5) / (stations - 1), j / (points - 1.0)));
        for (int i = 0; i < stations; i++)
            for (int j = 0; j < points - 1; j++)
                around = Math.Max(around, At(i / (stations - 1.0), (j + 0.5) / (points - 1)));
        for (int i = 0; i < stations - 1; i++)
            for (int j = 0; j < points - 1; j++)
                along = Math.Max(along, At((i + 0.5) / (stations - 1), (j + 0.5) / (points - 1)) - around);
        return (along, around);
    }
}
