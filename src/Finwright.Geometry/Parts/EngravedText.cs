using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Parts;

/// <summary>A line of text cut into a flat face, readable by whoever looks at that face.</summary>
/// <param name="Text">The text.</param>
/// <param name="Face">The face: x in the direction of reading, y up, z out of the solid; its origin lies on the face.</param>
/// <param name="Place">Where the text stands, in the face's axes.</param>
/// <param name="Pen">Width of the strokes, metres.</param>
/// <param name="Depth">How deep it is cut, metres.</param>
public sealed record EngravedText(string Text, Placement Face, TextPlace Place, double Pen, double Depth)
{
    /// <summary>Greatest height of letters, metres: readable at arm's length, larger adds nothing.</summary>
    public const double GreatestHeight = 8e-3;

    private const double Beyond = 3e-3;

    /// <summary>The prisms to be taken away.</summary>
    public SolidExpression Tool()
    {
        Point2[][] letters = [.. StrokeText.Outline(Text, Place.Height, Pen).Select(ring => ring.Select(p => p + Place.Centre).ToArray())];
        return new PrismSolid(letters, Depth + Beyond).Placed(Placement.Shift(new(0, 0, -Depth)).Then(Face));
    }

    /// <summary>Finds the largest place for a text on a face, clear of everything that comes near the face.</summary>
    /// <param name="kernel">Slices the solid.</param>
    /// <param name="solid">What is engraved.</param>
    /// <param name="face">The face: x in the direction of reading, y up, z out of the solid.</param>
    /// <param name="text">Characters of <see cref="StrokeFont"/>, not only spaces.</param>
    /// <param name="depth">How deep, metres.</param>
    /// <param name="line">Width of a printed line, metres: strokes are two lines wide where there is room, else one and a half or one.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>Null when even the smallest legible letters have no room.</returns>
    public static EngravedText? Find(
        ISolidKernel kernel, SolidExpression solid, Placement face, string text, double depth, double line, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(kernel);
        ArgumentNullException.ThrowIfNull(solid);
        // Just under the face, and two lines under the floor of the letters: what is whole at both is whole between, as bores and pockets near the face are straight.
        // What stands on the face would close over the letters: it must be free there.
        double[] heights = [-depth / 4, -(depth + 2 * line), depth / 4];
        IReadOnlyList<SliceRings> slices = kernel.Slice(solid.Placed(face.RigidInverse()), heights, cancellation);
        NetTopologySuite.Geometries.Geometry room = PlaneAreas.ToArea(slices[0].Rings).Intersection(PlaneAreas.ToArea(slices[1].Rings)).Difference(PlaneAreas.ToArea(slices[2].Rings));
        IReadOnlyList<IReadOnlyList<Point2>> rings = PlaneAreas.ToRings(room);
        foreach (double lines in (ReadOnlySpan<double>)[2, 1.5, 1])
        {
            double pen = lines * line;
            double greatest = Math.Max(GreatestHeight, StrokeText.LeastHeightInPens * pen);
            if (TextPlacer.Find(rings, text, pen, 2 * line, greatest) is { } place)
                return new(text, face, place, pen, depth);
        }

        return null;
    }
}
