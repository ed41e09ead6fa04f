using System.Globalization;
using System.Text;
using Finwright.Geometry;

namespace Finwright.Page.Drawings;

/// <summary>Numbers and lines as SVG writes them: millimetres, a point for the decimal, no more digits than a screen shows.</summary>
internal static class SvgNumber
{
    private const double Millimetres = 1e3;

    /// <summary>A number.</summary>
    public static string Of(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A line through points, metres, shifted aft by so many millimetres.</summary>
    public static string Path(IReadOnlyList<Point2> points, double aft = 0, bool closed = true)
    {
        if (points.Count == 0)
            return "";
        StringBuilder path = new(points.Count * 14);
        for (int i = 0; i < points.Count; i++)
            path.Append(i == 0 ? 'M' : 'L').Append(Of(Millimetres * points[i].X + aft)).Append(' ').Append(Of(Millimetres * points[i].Y));
        if (closed)
            path.Append('Z');
        return path.ToString();
    }

    /// <summary>Several closed lines in one.</summary>
    public static string Paths(IEnumerable<IReadOnlyList<Point2>> rings, double aft = 0) => string.Concat(rings.Select(ring => Path(ring, aft)));
}
