namespace Finwright.Geometry.Sections;

/// <summary>
/// A section of unit chord, nose at (0, 0), trailing edge at x = 1: half thickness and camber line over x.
/// All sections share this form, so that they can be blended along the span.
/// </summary>
/// <remarks>
/// The thickness is laid square to the camber line (NACA TR-460, Jacobs, Ward and Pinkerton, 1933) when
/// <see cref="ThicknessIsSquareToCamber"/> is true, else along y.
/// </remarks>
public abstract class Section
{
    /// <summary>Name, as the design file spells it.</summary>
    public abstract string Name { get; }

    /// <summary>Greatest thickness over chord.</summary>
    public abstract double ThicknessRatio { get; }

    /// <summary>Greatest camber over chord, signed.</summary>
    public virtual double MaximumCamber => 0;

    /// <summary>Whether thickness is laid square to the camber line; else along y.</summary>
    public virtual bool ThicknessIsSquareToCamber => false;

    /// <summary>
    /// How far the thickness is turned from along y (0) to square to the camber line (1). In between only for a blend of both kinds.
    /// </summary>
    public virtual double SquareShare => ThicknessIsSquareToCamber ? 1 : 0;

    /// <summary>
    /// Places inside the chord where the curvature or its slope may jump, rising, chords from the nose. Integrals and panels
    /// that respect them keep their full accuracy.
    /// </summary>
    public virtual IReadOnlyList<double> Joins => [];

    /// <summary>Half thickness at x, chords; starts as √x at the nose, may end blunt at x = 1.</summary>
    /// <param name="x">Distance from the nose along the chord, 0 to 1.</param>
    public abstract double HalfThickness(double x);

    /// <summary>Camber line at x, chords.</summary>
    /// <param name="x">Distance from the nose along the chord, 0 to 1.</param>
    public virtual double Camber(double x) => 0;

    /// <summary>Slope of the camber line at x.</summary>
    /// <param name="x">Distance from the nose along the chord, 0 to 1.</param>
    public virtual double CamberSlope(double x) => 0;
}
