using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Files;

/// <summary>How well a STEP solid follows the blade.</summary>
/// <param name="Deviation">Greatest distance found between the skin of the blade and the written surface, metres.</param>
/// <param name="IsWithinTolerance">Whether the deviation met the tolerance; false when the finest net allowed did not.</param>
/// <param name="Depth">Depth at which the solid ends in a flat tip, metres.</param>
/// <param name="TipCutOff">What was left off a rounded tip, metres of depth; 0 when the blade ends flat.</param>
/// <param name="Stations">Sections that the surface runs through.</param>
/// <param name="PointsPerSection">Points that it runs through at each of them.</param>
public sealed record StepReport(double Deviation, bool IsWithinTolerance, double Depth, double TipCutOff, int Stations, int PointsPerSection);

/// <summary>
/// The plain blade as one closed solid of smooth surfaces in a STEP file (ISO 10303-21, schema of application protocol 214): a cubic by
/// cubic B-spline skin from the starboard trailing edge round the nose to the port one, a ruled strip between the two when the edge is blunt,
/// and flat caps at root and tip. Millimetres, design axes.
/// </summary>
/// <remarks>
/// A rounded tip shrinks to a line, where a surface has no direction; the solid ends in a small flat tip just before, and the report says how
/// much is missing. Base, flange and bores are not part of this file.
/// </remarks>
public static class StepFile
{
    /// <summary>Default tolerance, metres: a fiftieth of a millimetre, below what any printer shows.</summary>
    public const double DefaultTolerance = 0.02e-3;

    /// <summary>Writes the blade. Same blade, same bytes.</summary>
    /// <param name="stream">Receives the file.</param>
    /// <param name="blade">What to write; sections must lie in planes of constant depth.</param>
    /// <param name="name">Name of the solid; letters outside plain ASCII are written in the standard's own code.</param>
    /// <param name="tolerance">Wanted distance between skin and written surface, metres, positive.</param>
    /// <returns>How well the surface follows the blade and what was cut off.</returns>
    /// <exception cref="ArgumentException">The blade has no span, is thinner than a hundredth of a millimetre at its root, or its skin is not finite.</exception>
    public static StepReport Write(Stream stream, BladeShape blade, string name, double tolerance = DefaultTolerance)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(blade);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        double depth = TipCut.DepthOf(blade);
        (SplineSurface skin, double deviation) = SkinFit.Fit(blade, depth, tolerance);
        StepText text = new(name);
        text.AddSolid(skin);
        text.WriteTo(stream);
        return new(deviation, deviation <= tolerance, depth, blade.Span - depth, skin.Rows, skin.Columns);
    }
}
