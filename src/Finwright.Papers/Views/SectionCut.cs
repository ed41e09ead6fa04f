using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Papers.Templates;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace Finwright.Papers.Views;

/// <summary>A section of the blade by material. x aft of the leading edge, y to port, metres.</summary>
/// <param name="Depth">Depth below the hull.</param>
/// <param name="Skin">Its outline.</param>
/// <param name="Core">Rings of the core inside the walls.</param>
/// <param name="Rods">Rods of carbon or steel.</param>
/// <param name="Bores">Other bores, empty when the fin is made.</param>
/// <param name="Chord">Its chord.</param>
/// <param name="Thickness">Its greatest thickness.</param>
internal sealed record SectionCut(
    double Depth, IReadOnlyList<Point2> Skin, IReadOnlyList<IReadOnlyList<Point2>> Core, IReadOnlyList<IReadOnlyList<Point2>> Rods, IReadOnlyList<IReadOnlyList<Point2>> Bores, double Chord, double Thickness)
{
    // Odd, so that one point is the nose.
    private const int PointsRound = 481;

    /// <summary>Cuts the blade at a depth.</summary>
    public static SectionCut Of(TemplateFin fin, double depth)
    {
        double leading = fin.Blade.Outline.LeadingEdge(depth);
        Point2[] skin = [.. Enumerable.Range(0, PointsRound).Select(i => fin.Blade.Skin(depth, i / (PointsRound - 1.0))).Select(p => new Point2(p.X - leading, -p.Z))];
        double wall = fin.Design.Print.Walls * fin.Design.Print.LineWidthMm * 1e-3;
        ILookup<bool, IReadOnlyList<Point2>> round = fin.Solids.Features.Where(feature => feature.Volume.Diameter > 0)
            .Select(feature => (IsRod: SideOfFin.IsRod(feature), Ring: Round(feature.Volume, depth, leading)))
            .Where(entry => entry.Ring.Count > 0)
            .ToLookup(entry => entry.IsRod, entry => entry.Ring);
        return new(depth, skin, Inset(skin, wall), [.. round[true]], [.. round[false]], fin.Blade.Outline.Chord(depth), skin.Max(p => p.Y) - skin.Min(p => p.Y));
    }

    private static IReadOnlyList<IReadOnlyList<Point2>> Inset(Point2[] ring, double by)
    {
        // The library's own precision suits coordinates of about a thousand: millimetres.
        const double millimetres = 1e3;
        Coordinate[] corners = [.. ring.Append(ring[0]).Select(p => new Coordinate(millimetres * p.X, millimetres * p.Y))];
        NetTopologySuite.Geometries.Geometry inner = GeometryFactory.Default.CreatePolygon(corners).Buffer(-millimetres * by, new BufferParameters { JoinStyle = JoinStyle.Mitre });
        return
        [
            .. Enumerable.Range(0, inner.NumGeometries).Select(inner.GetGeometryN).OfType<Polygon>().Where(polygon => !polygon.IsEmpty)
                .Select(polygon => (IReadOnlyList<Point2>)[.. polygon.ExteriorRing.Coordinates.SkipLast(1).Select(c => new Point2(c.X / millimetres, c.Y / millimetres))]),
        ];
    }

    // A round bore is met in an ellipse; one that lies level is left out.
    private static IReadOnlyList<Point2> Round(FeatureVolume bore, double depth, double leading)
    {
        const int corners = 48;
        Point3 way = bore.To - bore.From;
        double share = (depth - bore.From.Y) / way.Y;
        if (!(share is >= 0 and <= 1))
            return [];
        Point3 centre = bore.From + share * way, along = 1 / way.Length * way;
        double radius = bore.Diameter / 2;
        // Square to the axis, one of them level; the other reaches the level plane drawn out along the axis.
        Point2 level = new(along.X, along.Z);
        double lean = level.Length;
        Point2 slope = lean > 1e-9 ? 1 / lean * level : new(1, 0), square = new(-slope.Y, slope.X);
        return
        [
            .. Enumerable.Range(0, corners).Select(i => Math.Tau * i / corners)
                .Select(turn => radius / Math.Abs(along.Y) * Math.Cos(turn) * slope + radius * Math.Sin(turn) * square)
                .Select(offset => new Point2(centre.X + offset.X - leading, -centre.Z - offset.Y)),
        ];
    }
}
