using System.Globalization;

namespace Finwright.Geometry.Sections;

/// <summary>Writes a section as plain columns of coordinates that <see cref="CoordinateReader"/> reads back.</summary>
public static class CoordinateWriter
{
    /// <summary>Writes x and y, eight decimals, once round from the starboard trailing edge, points crowded at nose and trailing edge.</summary>
    /// <param name="writer">Where to write.</param>
    /// <param name="section">The section.</param>
    /// <param name="pointsASide">Steps from the trailing edge to the nose, at least 8.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than 8 steps.</exception>
    public static void Write(TextWriter writer, Section section, int pointsASide = 100)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(section);
        ArgumentOutOfRangeException.ThrowIfLessThan(pointsASide, 8);
        writer.Write("# ");
        writer.Write(string.Concat(section.Name.Select(c => char.IsControl(c) ? ' ' : c)));
        writer.Write("\n# x y, chord 1: starboard trailing edge, round the nose, to port\n");
        for (int i = 0; i <= 2 * pointsASide; i++)
        {
            Point2 p = SectionGeometry.PointAt(section, i / (2.0 * pointsASide));
            writer.Write(string.Create(CultureInfo.InvariantCulture, $"{p.X:F8} {p.Y:F8}\n"));
        }
    }
}
