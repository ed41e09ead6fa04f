using Finwright.Geometry.Outlines;

namespace Finwright.Geometry.Blades;

/// <summary>
/// The blade as a smooth surface: outline, section, thickness, camber and twist at every depth. Design axes, metres, radians.
/// The flange and its fillet are part of the loft, not of this shape.
/// </summary>
public abstract class BladeShape
{
    /// <summary>The planform.</summary>
    public abstract Outline Outline { get; }

    /// <summary>Depth of the tip, metres.</summary>
    public double Span => Outline.Span;

    /// <summary>Thickness of the blunt trailing edge, metres.</summary>
    public abstract double TrailingEdgeThickness { get; }

    /// <summary>Thickness ratio at depth y.</summary>
    public abstract double ThicknessRatio(double y);

    /// <summary>Twist about the quarter chord at depth y, radians, positive nose to starboard.</summary>
    public abstract double Twist(double y);

    /// <summary>
    /// Point of the skin. <paramref name="u"/> runs once round the section: 0 is the starboard trailing edge corner, 0.5 the nose, 1 the port trailing
    /// edge corner, with chordwise station x/c = (1 + cos 2πu) / 2. Rounded tips are included.
    /// </summary>
    /// <param name="y">Depth, metres, 0 to <see cref="Span"/>.</param>
    /// <param name="u">Place round the section, 0 to 1.</param>
    public abstract Point3 Skin(double y, double u);

    /// <summary>z of the surface midway between both sides at a place of the planform, metres.</summary>
    /// <param name="x">Aft of the root quarter chord, metres; inside the outline at this depth.</param>
    /// <param name="y">Depth, metres.</param>
    public abstract double MidSurface(double x, double y);

    /// <summary>Half the thickness along z at a place of the planform, metres; 0 outside the outline.</summary>
    /// <param name="x">Aft of the root quarter chord, metres.</param>
    /// <param name="y">Depth, metres.</param>
    public abstract double HalfThickness(double x, double y);
}
