using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Features;

/// <summary>The bore for a straight rod along the span: a line in the planform, laid through the thickness as well as it can.</summary>
/// <param name="rootX">Where the axis crosses the hull plane, metres aft of the root quarter chord.</param>
/// <param name="tipX">Where the axis would cross the depth of the tip, metres aft of the root quarter chord.</param>
/// <param name="diameter">Diameter of the bore, metres.</param>
/// <param name="blade">The blade.</param>
/// <param name="skin">The blade's surface.</param>
public sealed class RodBore(double rootX, double tipX, double diameter, BladeShape blade, IReadOnlyList<SurfacePatch> skin)
{
    /// <summary>The bore between two depths.</summary>
    /// <param name="fromY">Upper end, metres; negative inside the base.</param>
    /// <param name="toY">Lower end, metres.</param>
    /// <remarks>
    /// Across the fin the axis is the straight line of least squares through the mid-surface over the part in the blade, so
    /// that a twisted or cambered blade loses the least margin on either side.
    /// </remarks>
    public FeatureVolume Between(double fromY, double toY)
    {
        (double z, double slope) = LineThroughMidSurface(toY);
        Point3 At(double y) => new(X(y), y, z + slope * y);
        return FeatureVolume.Cylinder(diameter, At(fromY), At(toY));
    }

    /// <summary>Plastic left between the bore and the skin.</summary>
    /// <param name="toY">Lower end of the bore, metres.</param>
    public Clearance To(double toY) => Clearance.InBlade(Between(0, toY), blade, skin);

    /// <summary>The deepest lower end that keeps a margin to the skin, rounded down to a tenth of a millimetre; null when even the shortest bore does not.</summary>
    /// <param name="margin">Least plastic between bore and skin, metres.</param>
    /// <param name="shortest">Shortest bore worth making, metres.</param>
    public double? DeepestFor(double margin, double shortest)
    {
        if (shortest >= blade.Span || To(shortest).Wall < margin)
            return null;
        // A longer bore holds every shorter one, so the margin only falls with depth: bisection finds where it is used up.
        const double step = 1e-4, fine = 1e-5;
        double good = shortest, bad = blade.Span;
        while (bad - good > fine)
        {
            double middle = (good + bad) / 2;
            if (To(middle).Wall >= margin)
                good = middle;
            else
                bad = middle;
        }

        // In a twisted blade the fitted line turns a little with depth: step back until the rounded depth holds too.
        double rounded = Math.Floor(good / step) * step;
        while (rounded > shortest && To(rounded).Wall < margin)
            rounded -= step;
        return Math.Max(rounded, shortest);
    }

    private double X(double y) => rootX + (tipX - rootX) * y / blade.Span;

    private (double Z, double Slope) LineThroughMidSurface(double toY)
    {
        const int count = 33;
        double sumY = 0, sumZ = 0, sumYY = 0, sumYZ = 0;
        for (int i = 0; i < count; i++)
        {
            double y = Math.Min(toY, blade.Span) * i / (count - 1);
            double x = Math.Clamp(X(y), blade.Outline.LeadingEdge(y), blade.Outline.TrailingEdge(y));
            double z = blade.MidSurface(x, y);
            sumY += y;
            sumZ += z;
            sumYY += y * y;
            sumYZ += y * z;
        }

        double slope = (count * sumYZ - sumY * sumZ) / (count * sumYY - sumY * sumY);
        return ((sumZ - slope * sumY) / count, slope);
    }
}
