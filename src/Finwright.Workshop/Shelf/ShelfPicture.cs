using System.Globalization;
using System.Text;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;
using Finwright.Geometry.Pictures;

namespace Finwright.Workshop.Shelf;

/// <summary>A small picture of a design for the shelf: its outline under the hull, bow to the left, with a bar that tells its size.</summary>
public static class ShelfPicture
{
    /// <summary>Most bytes of a picture: a shelf of a hundred designs is still read at once.</summary>
    public const int MostBytes = 4096;

    private const double Width = 240, Height = 220, Hull = 14, Rim = 12, Deepest = 176, BarLine = 206;

    // What the eye sees of a line in a picture of this size.
    private const double Fineness = 0.15;

    // The bar is the longest of these that is not longer than the fin is deep.
    private static readonly int[] BarsMm = [200, 100, 50, 20, 10];

    /// <summary>Draws a blade.</summary>
    /// <param name="blade">The blade.</param>
    /// <returns>The picture as SVG (W3C, Scalable Vector Graphics 1.1, 2011), at most <see cref="MostBytes"/> bytes. The same blade gives the same text.</returns>
    public static string Of(Blade blade)
    {
        ArgumentNullException.ThrowIfNull(blade);
        Planform planform = Planform.Of(blade.SplineOutline);
        double tolerance = Fineness * blade.Span / Deepest;
        string svg = Draw(planform, tolerance);
        // An outline with many turns is drawn more coarsely rather than not at all.
        while (Encoding.UTF8.GetByteCount(svg) > MostBytes)
            svg = Draw(planform, tolerance *= 2);
        return svg;
    }

    private static string Draw(Planform planform, double tolerance)
    {
        IReadOnlyList<Point2> line = planform.Polyline(tolerance);
        double left = line.Min(point => point.X), wide = line.Max(point => point.X) - left;
        double scale = Math.Min(Deepest / planform.Span, (Width - 2 * Rim) / wide), at = (Width - scale * wide) / 2;
        int bar = Array.Find(BarsMm, length => length <= 1e3 * planform.Span && 1e-3 * length * scale <= Width / 2);
        StringBuilder path = new();
        foreach ((int index, Point2 point) in line.Index())
            path.Append(index == 0 ? 'M' : 'L').Append(Number(at + scale * (point.X - left))).Append(' ').Append(Number(Hull + scale * point.Y));
        double length = 1e-3 * bar * scale;
        return $"""
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {Number(Width)} {Number(Height)}" role="img"><title>Outline, {1e3 * planform.Span:0} mm deep, {1e4 * planform.Area:0} cm²</title>
            <path d="{path}Z" fill="{Palette.Paper.Under(Palette.Water, 0.14).Hex}" stroke="{Palette.Line.Hex}" stroke-width="1.4" stroke-linejoin="round"/>
            <path d="M6 {Number(Hull)}H{Number(Width - 6)}" stroke="{Palette.Line.Hex}" stroke-width="2"/>
            <path d="M{Number(Rim)} {Number(BarLine - 3)}v6m0-3h{Number(length)}m0-3v6" fill="none" stroke="{Palette.Quiet.Hex}"/>
            <text x="{Number(Rim + length + 6)}" y="{Number(BarLine + 4)}" font-family="Inter, Helvetica, Arial, sans-serif" font-size="12" fill="{Palette.Quiet.Hex}">{bar} mm</text></svg>

            """.ReplaceLineEndings("\n");
    }

    private static string Number(double value) => (Math.Round(value, 1) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);
}
