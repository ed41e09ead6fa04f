using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Files;

/// <summary>Finds where a smooth solid of the blade must end because the rounded tip beyond has no size left.</summary>
internal static class TipCut
{
    /// <summary>Least thickness of a flat tip, metres; ten times what programs for solids take for zero (1e-5 mm to 1e-3 mm, common practice, no source).</summary>
    private const double LeastThickness = 0.01e-3;

    /// <summary>Least chord of a flat tip, metres.</summary>
    private const double LeastChord = 0.5e-3;

    /// <summary>Cuts tried in turn, metres above the tip.</summary>
    private static readonly double[] Cuts = [0, 0.01e-3, 0.02e-3, 0.05e-3, 0.1e-3, 0.2e-3, 0.5e-3, 1e-3, 2e-3, 5e-3];

    /// <summary>Corners of the trailing edge closer than this are one sharp edge, metres.</summary>
    private const double SharpEdge = 1e-6;

    /// <summary>Whether a trailing edge with these corners is blunt.</summary>
    public static bool IsBlunt(Point3 starboard, Point3 port) => (starboard - port).Length > SharpEdge;

    /// <summary>Greatest depth at which the section still has a size, and an edge as blunt or sharp as the root's, metres.</summary>
    public static double DepthOf(BladeShape blade)
    {
        if (!(blade.Span > 0) || !HasSize(blade, 0))
            throw new ArgumentException("The blade has no span or no thickness at its root.", nameof(blade));
        bool blunt = EdgeIsBlunt(blade, 0);
        foreach (double cut in Cuts)
            if (cut < 0.5 * blade.Span && HasSize(blade, blade.Span - cut) && EdgeIsBlunt(blade, blade.Span - cut) == blunt)
                return blade.Span - cut;
        throw new ArgumentException($"The blade has no thickness {1e3 * Cuts[^1]} mm above its tip.", nameof(blade));
    }

    private static bool EdgeIsBlunt(BladeShape blade, double y) => IsBlunt(blade.Skin(y, 0), blade.Skin(y, 1));

    private static bool HasSize(BladeShape blade, double y)
    {
        Point3 edge = blade.Skin(y, 0), nose = blade.Skin(y, 0.5), starboard = blade.Skin(y, 0.3), port = blade.Skin(y, 0.7);
        return (edge - nose).Length >= LeastChord && (starboard - port).Length >= LeastThickness;
    }
}
