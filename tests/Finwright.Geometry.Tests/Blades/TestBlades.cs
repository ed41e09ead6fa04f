using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;
using Finwright.Geometry.Sections;
using MathNet.Numerics.Integration;

namespace Finwright.Geometry.Tests.Blades;

/// <summary>Blades to test with, and the volume of one by a way that shares nothing with the loft.</summary>
internal static class TestBlades
{
    public static SplineOutline Outline(Point2[] leading, Point2[] trailing)
    {
        List<OutlineFault> faults = [];
        Assert.True(SplineOutline.TryCreate(leading, trailing, out SplineOutline? outline, faults), string.Join("; ", faults));
        return outline;
    }

    public static SplineOutline Trapezoid(double root, double tip, double span, double sweep) => Outline(
        [new(-root / 4, 0), new(sweep - tip / 4, span)],
        [new(0.75 * root, 0), new(sweep + 0.75 * tip, span)]);

    /// <summary>A round-tipped, raked planform whose edges meet.</summary>
    public static SplineOutline Round() => Outline(
        [new(-0.03, 0), new(-0.02, 0.10), new(0.00, 0.20), new(0.03, 0.30), new(0.06, 0.32), new(0.08, 0.32)],
        [new(0.09, 0), new(0.085, 0.10), new(0.085, 0.20), new(0.10, 0.30), new(0.10, 0.32), new(0.08, 0.32)]);

    public static BladeStation Station(double depth, string name, double ratio, double camber = 0, double twist = 0)
    {
        Assert.True(SectionCatalogue.TryFind(name, null, out Section? section, out string problem), problem);
        return new(depth, new ScaledSection(section, ratio, camber), twist);
    }

    /// <summary>Volume of a plain blade: Gauss over depth of the section's area, itself a Green integral over the skin's own points.</summary>
    public static double Volume(Blade blade)
    {
        List<double> cuts = [0, .. blade.SplineOutline.LeadingCurve.Breaks.ToArray().Select(t => blade.SplineOutline.LeadingCurve.At(t).Y),
            .. blade.SplineOutline.TrailingCurve.Breaks.ToArray().Select(t => blade.SplineOutline.TrailingCurve.At(t).Y),
            .. blade.StationDepths, blade.Span - blade.TipRounding, blade.Span];
        double[] depths = [.. cuts.Distinct().Order()];
        double sum = 0;
        for (int i = 1; i < depths.Length; i++)
            sum += GaussLegendreRule.Integrate(
                s => SectionArea(blade, depths[i - 1] + (depths[i] - depths[i - 1]) * s * s * (3 - 2 * s)) * 6 * s * (1 - s) * (depths[i] - depths[i - 1]), 0, 1, 32);
        return sum;
    }

    /// <summary>Area of the section at a depth by the trapezoidal polygon of many points with Richardson's step.</summary>
    public static double SectionArea(Blade blade, double y)
    {
        double Polygon(int n)
        {
            double sum = 0;
            Point3 before = blade.Skin(y, 1);
            for (int i = 0; i <= n; i++)
            {
                Point3 at = blade.Skin(y, (double)i / n);
                sum += before.X * at.Z - at.X * before.Z;
                before = at;
            }

            return sum / 2;
        }

        return (4 * Polygon(1024) - Polygon(512)) / 3;
    }
}
