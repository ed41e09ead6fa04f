using Finwright.Geometry;

namespace Finwright.Making.Layers;

/// <summary>
/// A part cut into printed layers. Layer axes: z up as printed with the bed at 0; the footprint turned about z so that the narrowest
/// rectangle round it lies along x and y, its long side along x, its corner at the origin. Metres.
/// </summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Settings">How it is printed.</param>
/// <param name="ToLayers">From the axes of the mesh that was sliced to the layer axes.</param>
/// <param name="Size">Size along the layer axes, metres.</param>
/// <param name="Layers">The layers from the bed up; at least one.</param>
public sealed record PartLayers(string Name, PrintSettings Settings, Placement ToLayers, Point3 Size, IReadOnlyList<Layer> Layers)
{
    /// <summary>Everything inside the outlines, m³.</summary>
    public double EnvelopeVolume => Layers.Sum(layer => layer.Height * layer.OutlineArea);

    /// <summary>The room inside walls and solid layers, gyroid and pores together, m³.</summary>
    public double CoreVolume => Layers.Sum(layer => layer.Height * layer.CoreArea);
}

/// <summary>One printed layer.</summary>
/// <param name="Bottom">Height of its lower face, metres.</param>
/// <param name="Top">Height of its upper face, metres.</param>
/// <param name="Outline">Rings of the part at mid-height: outer ones counter-clockwise, holes clockwise; metres.</param>
/// <param name="Core">Rings of what lies inside walls and solid layers, where the gyroid is printed; same sense.</param>
/// <param name="OutlineArea">Area inside the outline, m².</param>
/// <param name="InsideArea">Area inside the walls, solid or not, m².</param>
/// <param name="CoreArea">Area inside walls and solid layers, m².</param>
/// <param name="WallLength">Length of all wall lines along their middles, metres.</param>
public sealed record Layer(
    double Bottom,
    double Top,
    IReadOnlyList<IReadOnlyList<Point2>> Outline,
    IReadOnlyList<IReadOnlyList<Point2>> Core,
    double OutlineArea,
    double InsideArea,
    double CoreArea,
    double WallLength)
{
    /// <summary>Height of the layer, metres.</summary>
    public double Height => Top - Bottom;

    /// <summary>Height at which it was sliced, metres.</summary>
    public double Middle => (Top + Bottom) / 2;

    /// <summary>Area of the walls, m².</summary>
    public double WallArea => OutlineArea - InsideArea;

    /// <summary>Area printed solid inside the walls, m².</summary>
    public double SolidArea => InsideArea - CoreArea;
}
