using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Water.Polars;

namespace Finwright.Water.Lifting;

/// <summary>From a blade to the fin that the lifting surface sees.</summary>
public static class BladeLifting
{
    // A turned, cambered section's mean line is found at an x by this many corrections; each gains a factor of twist times camber.
    private const int Corrections = 3;

    /// <summary>Takes outline, mean surface and thickness from a blade.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="polar">What the section at a depth does; null for no friction and no stall.</param>
    /// <param name="strip">Flexible strip at the trailing edge, inside the blade's outline; null for none.</param>
    /// <remarks>A symmetric blade gets no mean surface at all, so that its answers are exactly symmetric. The rounding of the tip's thickness is left out.</remarks>
    public static LiftingFin ToLiftingFin(this Blade blade, Func<double, ISectionPolar>? polar = null, FlexibleStrip? strip = null)
    {
        ArgumentNullException.ThrowIfNull(blade);
        return new()
        {
            Span = blade.Span,
            LeadingEdge = blade.Outline.LeadingEdge,
            TrailingEdge = blade.Outline.TrailingEdge,
            MeanSurface = blade.IsSymmetric ? null : (x, y) => MeanSurface(blade, x, y),
            ThicknessRatio = blade.ThicknessRatio,
            Polar = polar,
            Strip = strip,
        };
    }

    // Midway between the two sides at one station of the section, not at one x: for a thick section that is turned these differ by twist times the slope of the squared thickness.
    private static double MeanSurface(Blade blade, double x, double y)
    {
        double chord = Math.Max(blade.Outline.Chord(y), 0), leading = blade.Outline.LeadingEdge(y), turn = blade.Twist(y);
        double station = chord > 0 ? (x - leading) / chord : 0.25;
        for (int i = 0; ; i++)
        {
            double inside = Math.Clamp(station, 0, 1), u = Math.Acos(2 * inside - 1) / (2 * Math.PI);
            Point3 starboard = blade.Skin(y, u), port = blade.Skin(y, 1 - u);
            double miss = x - (starboard.X + port.X) / 2;
            if (i == Corrections || chord <= 0 || Math.Abs(miss) <= double.Epsilon)
                return (starboard.Z + port.Z) / 2 - Math.Tan(turn) * (chord > 0 ? miss : 0);
            station = inside + miss / (chord * Math.Cos(turn));
        }
    }
}
