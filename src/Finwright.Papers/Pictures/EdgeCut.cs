using Finwright.Geometry;
using Finwright.Geometry.Blades;

namespace Finwright.Papers.Pictures;

/// <summary>The blade cut square to its trailing edge.</summary>
internal sealed class EdgeCut
{
    private const double Hair = 1e-5;
    private readonly BladeShape _blade;
    private readonly Point3 _edge;
    private readonly Point2 _inward;
    private readonly double _half;

    /// <summary>Cuts at a depth.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="y">Depth at the edge, metres, inside the span.</param>
    public EdgeCut(BladeShape blade, double y)
    {
        _blade = blade;
        Point3 starboard = blade.Skin(y, 0), port = blade.Skin(y, 1);
        (_edge, _half) = (0.5 * (starboard + port), (starboard - port).Length / 2);
        Point3 before = Edge(y - Hair), after = Edge(y + Hair);
        Point2 along = new(after.X - before.X, after.Y - before.Y);
        _inward = 1 / along.Length * new Point2(-along.Y, along.X);
    }

    /// <summary>Half the thickness at a distance ahead of the edge, metres.</summary>
    public double Half(double s)
    {
        Point2 p = Place(s);
        return s <= Hair ? _half : _blade.HalfThickness(p.X, p.Y);
    }

    /// <summary>Where the middle lies across the fin, from its place at the edge, metres; straight on behind the edge.</summary>
    public double Middle(double s)
    {
        const double first = 1e-3;
        if (s <= 0)
            return s / first * Middle(first);
        Point2 p = Place(s);
        return _blade.MidSurface(p.X, p.Y) - _edge.Z;
    }

    private Point3 Edge(double y) => 0.5 * (_blade.Skin(y, 0) + _blade.Skin(y, 1));

    private Point2 Place(double s) => new Point2(_edge.X, _edge.Y) + s * _inward;
}
