using System.Globalization;
using System.Xml.Linq;
using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Tests.Drawings;

/// <summary>Reads a drawing back from its file with an XML reader that knows nothing of ours. Millimetres.</summary>
internal static class SvgReading
{
    public static byte[] Bytes(Drawing drawing, string title = "Fairway upright")
    {
        using MemoryStream stream = new();
        SvgFile.Write(drawing, title, stream);
        return stream.ToArray();
    }

    public static XElement Of(Drawing drawing, string title = "Fairway upright") => XElement.Load(new MemoryStream(Bytes(drawing, title)));

    public static XElement Group(XElement svg, string id) => svg.Elements().Single(e => (string?)e.Attribute("id") == id);

    public static IEnumerable<XElement> Groups(XElement svg) => svg.Elements().Where(e => e.Name.LocalName is "g");

    /// <summary>The lines of a path, point by point.</summary>
    public static Point2[][] Lines(XElement path) =>
        [.. ((string)path.Attribute("d")!).Split('M', StringSplitOptions.RemoveEmptyEntries).Select(line => line
            .Split([' ', 'L', 'Z'], StringSplitOptions.RemoveEmptyEntries)
            .Select(word => double.Parse(word, CultureInfo.InvariantCulture))
            .Chunk(2)
            .Select(pair => new Point2(pair[0], pair[1]))
            .ToArray())];

    public static Point2[] Points(XElement svg, string id) => [.. Group(svg, id).Elements().SelectMany(Lines).SelectMany(line => line)];

    public static (double Width, double Height) Extents(XElement svg, string id)
    {
        DrawnBox box = DrawnBox.Round(Points(svg, id));
        return (box.Width, box.Height);
    }

    public static double SideMm(XElement svg, string side) => double.Parse(((string)svg.Attribute(side)!)[..^2], CultureInfo.InvariantCulture);

    /// <summary>Area of a closed line, mm².</summary>
    public static double Area(Point2[] ring) => Math.Abs(Enumerable.Range(0, ring.Length).Sum(i => ring[i].Cross(ring[(i + 1) % ring.Length]))) / 2;
}
