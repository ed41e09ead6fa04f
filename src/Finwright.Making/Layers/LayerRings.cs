using Finwright.Geometry;

namespace Finwright.Making.Layers;

/// <summary>Rings of a layer beside those it keeps.</summary>
public static class LayerRings
{
    /// <summary>What lies inside the walls, solid or not, as rings: outer ones counter-clockwise, holes clockwise; metres.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="settings">How it is printed.</param>
    public static IReadOnlyList<IReadOnlyList<Point2>> Inside(Layer layer, PrintSettings settings)
    {
        ArgumentNullException.ThrowIfNull(layer);
        ArgumentNullException.ThrowIfNull(settings);
        return RingAreas.ToRings(RingAreas.Shrunk(RingAreas.ToFigure(layer.Outline), settings.WallThickness), 0);
    }
}
