using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
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
public sealed record SectionCut(
    double Depth, IReadOnlyList<Point2> Skin, IReadOnlyList<IReadOnlyList<Point2>> Core, IReadOnlyList<IReadOnlyList<Point2>> Rods, IReadOnlyList<IReadOnlyList<Point2>> Bores, double Chord, double Thickness)
{
    // Odd, so that one point is the nose.
    private const int PointsRound = 481;

    /// <summary>Rings of pockets and cavities.</summary>
    public IReadOnlyList<IReadOnlyList<Point2>> Pockets { get; init; } = [];

    /// <summary>Rings of the slot for the strip, as far as it lies inside the blade or opens out of it.</summary>
    public IReadOnlyList<IReadOnlyList<Point2>> Slot { get; init; } = [];

    /// <summary>Cuts a blade at a depth.</summary>
    /// <param name="design">The design.</param>
    /// <param name="blade">Its blade.</param>
    /// <param name="features">What is bored into it.</param>
    /// <param name="depth">Depth below the hull, metres.</param>
    /// <param name="slot">The slot for the strip; null for none.</param>
    public static SectionCut Of(FinDesign design, Blade blade, IReadOnlyList<PlacedFeature> features, double depth, StripSlot? slot = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(blade);
        ArgumentNullException.ThrowIfNull(features);
        double leading = blade.Outline.LeadingEdge(depth);
        Point2[] skin = [.. Enumerable.Range(0, PointsRound).Select(i => blade.Skin(depth, i / (PointsRound - 1.0))).Select(p => new Point2(p.X - leading, -p.Z))];
        double wall = design.Print.Walls * design.Print.LineWidthMm * 1e-3;
        ILookup<bool, IReadOnlyList<Point2>> round = features.Where(feature => feature.Volume.Diameter > 0)
            .Select(feature => (IsRod: SideOfFin.IsRod(feature), Ring: Round(feature.Volume, depth, leading)))
            .Where(entry => entry.Ring.Count > 0)
            .ToLookup(entry => entry.IsRod, entry => entry.Ring);
        return new(depth, skin, Inset(skin, wall), [.. round[true]], [.. round[false]], blade.Outline.Chord(depth), skin.Max(p => p.Y) - skin.Min(p => p.Y))
        {
            Pockets = [.. features.Where(IsPocket).Select(feature => FromLeadingEdge(feature.Volume.SliceAt(depth))).Where(ring => ring.Count > 0)],
            Slot = slot is null || slot.IsFolded ? [] : [.. MeshSlice.Rings(slot.Tool(), depth).Select(FromLeadingEdge)],
        };

        IReadOnlyList<Point2> FromLeadingEdge(IReadOnlyList<Point2> ring) => [.. ring.Select(p => new Point2(p.X - leading, -p.Y))];
    }

    /// <summary>Cuts the blade at a depth.</summary>
    internal static SectionCut Of(TemplateFin fin, double depth) => Of(fin.Design, fin.Blade, fin.Solids.Features, depth);

    // A nut's way in is closed by the layers above it.
    private static bool IsPocket(PlacedFeature feature) => feature.Volume.Diameter == 0 && feature.Kind is not FeatureKind.NutWayIn;

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
