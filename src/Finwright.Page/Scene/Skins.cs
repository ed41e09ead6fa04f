using System.Runtime.CompilerServices;
using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.FromDesign;
using Finwright.Page.Editing;

namespace Finwright.Page.Scene;

/// <summary>Skins for looking at, of results that may be older than the design on the screen.</summary>
internal static class Skins
{
    // As coarse as the skin that follows the hand, mm.
    private const double ToleranceMm = 0.1;

    // Longest edge of a skin that shows a field, metres: its lines must not follow the facets.
    private const double LongestEdge = 5e-3;

    private static readonly ConditionalWeakTable<AssessmentResult, TriangleMesh> Known = [];

    /// <summary>The skin of the blade that a result speaks of, fine enough to show a field.</summary>
    /// <param name="standing">What is known.</param>
    /// <param name="result">Water and strength of it.</param>
    public static TriangleMesh? Of(Standing standing, AssessmentResult result)
    {
        if (result is not { Blade: { } blade, Design: { } design })
            return null;
        if (!Known.TryGetValue(result, out TriangleMesh? own))
        {
            TriangleMesh skin = standing is { Skin: { } drawn } && standing.SailingVersion == standing.ShapeVersion
                ? drawn
                : BladeFromDesign.Skin(design.Shape with { SkinToleranceMm = ToleranceMm }, blade, []);
            Known.AddOrUpdate(result, own = FinerMesh.Of(skin, LongestEdge));
        }

        return own;
    }
}
