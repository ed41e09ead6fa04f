using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;

namespace Finwright.Geometry.Parts;

/// <summary>Where a line of text stands on a face.</summary>
/// <param name="Centre">Middle of the text's box, face axes, metres.</param>
/// <param name="Height">Height of the letters over the pen's outer edges, metres.</param>
public readonly record struct TextPlace(Point2 Centre, double Height);

/// <summary>Finds the largest line of text that stands on a face clear of its edges and holes.</summary>
/// <remarks>
/// Heights are tried from the largest down in steps of 4 %, places on a half-millimetre grid from the middle of the face outward: plain, and
/// fine enough that nobody sees the difference on a printed part. Text runs along the face's x axis only.
/// </remarks>
public static class TextPlacer
{
    private const double GridStep = 0.5e-3;
    private const double HeightStep = 0.96;

    /// <summary>The place of the largest text, or null when even the smallest has no room.</summary>
    /// <param name="face">Rings of the face: outer ones counter-clockwise, holes clockwise; metres.</param>
    /// <param name="text">Characters of <see cref="StrokeFont"/>, at least one.</param>
    /// <param name="pen">Pen width, metres.</param>
    /// <param name="margin">Least distance from the text's box to the edge of the face or a hole, metres.</param>
    /// <param name="greatest">Greatest height, metres, not less than the least legible one.</param>
    public static TextPlace? Find(IReadOnlyList<IReadOnlyList<Point2>> face, string text, double pen, double margin, double greatest)
    {
        ArgumentNullException.ThrowIfNull(face);
        ArgumentOutOfRangeException.ThrowIfNegative(margin);
        double least = StrokeText.LeastHeightInPens * pen;
        ArgumentOutOfRangeException.ThrowIfLessThan(greatest, least);
        NetTopologySuite.Geometries.Geometry room = PlaneAreas.ToArea(face).Buffer(-margin);
        if (room.IsEmpty)
            return null;
        IPreparedGeometry prepared = PreparedGeometryFactory.Prepare(room);
        Point2[] places = Places(room);
        for (double height = greatest; ; height = Math.Max(least, height * HeightStep))
        {
            double width = StrokeText.Width(text, height, pen);
            foreach (Point2 place in places)
                if (prepared.Covers(Box(place, width, height)))
                    return new(place, height);
            if (height <= least)
                return null;
        }
    }

    private static Point2[] Places(NetTopologySuite.Geometries.Geometry room)
    {
        Envelope box = room.EnvelopeInternal;
        Point middle = room.Centroid;
        int left = (int)Math.Floor((box.MinX - middle.X) / GridStep), right = (int)Math.Ceiling((box.MaxX - middle.X) / GridStep);
        int low = (int)Math.Floor((box.MinY - middle.Y) / GridStep), high = (int)Math.Ceiling((box.MaxY - middle.Y) / GridStep);
        return
        [
            .. from i in Enumerable.Range(left, right - left + 1)
               from j in Enumerable.Range(low, high - low + 1)
               orderby (long)i * i + (long)j * j
               select new Point2(middle.X + i * GridStep, middle.Y + j * GridStep),
        ];
    }

    private static Polygon Box(Point2 centre, double width, double height)
    {
        double x = width / 2, y = height / 2;
        return PlaneAreas.Factory.CreatePolygon(
        [
            new(centre.X - x, centre.Y - y), new(centre.X + x, centre.Y - y), new(centre.X + x, centre.Y + y),
            new(centre.X - x, centre.Y + y), new(centre.X - x, centre.Y - y),
        ]);
    }
}
