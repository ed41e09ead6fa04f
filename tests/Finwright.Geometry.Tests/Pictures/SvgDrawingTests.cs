using System.Globalization;
using System.Xml.Linq;
using Finwright.Geometry.Pictures;

namespace Finwright.Geometry.Tests.Pictures;

public sealed class SvgDrawingTests
{
    private static readonly Point2[] Triangle = [new(-0.05, 0), new(0.15, 0), new(0.1, 0.2123)];
    private static readonly DrawnLine Box = new([new(-0.03, -0.03), new(0.12, -0.03), new(0.1, 0), new(-0.02, 0)], Closed: true);

    [Fact]
    public void The_sheet_is_in_millimetres_and_its_view_box_has_the_same_numbers()
    {
        XElement svg = Parsed(OutlineDrawings.Planform("Mudflat 21", Triangle, [Box], []));
        string width = (string)svg.Attribute("width")!, height = (string)svg.Attribute("height")!;
        Assert.EndsWith("mm", width, StringComparison.Ordinal);
        Assert.EndsWith("mm", height, StringComparison.Ordinal);
        Assert.Equal($"0 0 {width[..^2]} {height[..^2]}", (string)svg.Attribute("viewBox")!);
    }

    [Fact]
    public void The_outline_has_the_extents_of_the_geometry()
    {
        XElement svg = Parsed(OutlineDrawings.Planform("Mudflat 21", Triangle, [Box], []));
        (double width, double height) = Extents(svg, "outline");
        Assert.Equal(200, width, 2e-4);
        Assert.Equal(212.3, height, 2e-4);
        (width, height) = Extents(svg, "base");
        Assert.Equal(150, width, 2e-4);
        Assert.Equal(30, height, 2e-4);
        Assert.Equal(100, Extents(svg, "check-100-mm").Width, 2e-4);
    }

    [Fact]
    public void Sections_keep_their_size_and_starboard_is_up()
    {
        Point2[] section = [new(0.02, 0), new(0.05, 0.006), new(0.12, 0.001), new(0.12, -0.001), new(0.05, -0.002)];
        XElement svg = Parsed(OutlineDrawings.Sections("Mudflat 21", [new("root", section, []), new("120 mm", section, [new(section[..2])])]));
        Point2[] first = Points(Group(svg, "outline").Elements().First());
        Assert.Equal(100, first.Max(p => p.X) - first.Min(p => p.X), 2e-4);
        Assert.Equal(8, first.Max(p => p.Y) - first.Min(p => p.Y), 2e-4);
        Assert.Equal(-6, first[1].Y - first[0].Y, 2e-4);
        Assert.Equal(2, Group(svg, "outline").Elements().Count());
        // The second lies clear below the first.
        Assert.True(Points(Group(svg, "outline").Elements().Last()).Min(p => p.Y) > first.Max(p => p.Y));
    }

    [Fact]
    public void Geometry_is_plain_paths_with_one_colour_a_group_and_notes_stand_apart()
    {
        foreach (XElement svg in (XElement[])[Parsed(OutlineDrawings.Planform("a", Triangle, [Box], [Box])), Parsed(OutlineDrawings.BaseSide("b", Box.Points, []))])
        {
            XElement[] groups = [.. svg.Elements().Where(e => e.Name.LocalName is "g")];
            foreach (XElement group in groups)
                Assert.All(group.Elements(), e => Assert.Equal((string)group.Attribute("id")! == "notes" ? "text" : "path", e.Name.LocalName));
            Assert.Equal(groups.Length - 1, groups.Select(g => (string?)g.Attribute("stroke")).OfType<string>().Distinct(StringComparer.Ordinal).Count());
            Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), a => a.Name.LocalName is "transform" or "style" or "class");
        }
    }

    [Fact]
    public void Everything_drawn_lies_on_the_sheet()
    {
        XElement svg = Parsed(OutlineDrawings.Planform("A rather long name of a fin that must not leave the sheet on its right side, whatever the fin's own width", Triangle, [], []));
        double width = double.Parse(((string)svg.Attribute("width")!)[..^2], CultureInfo.InvariantCulture), height = double.Parse(((string)svg.Attribute("height")!)[..^2], CultureInfo.InvariantCulture);
        Assert.All(svg.Descendants().Where(e => e.Name.LocalName is "path").SelectMany(Points), p =>
        {
            Assert.InRange(p.X, 9.9, width - 9.9);
            Assert.InRange(p.Y, 9.9, height - 9.9);
        });
    }

    [Fact]
    public void Dimensions_name_span_and_root_chord()
    {
        XElement svg = Parsed(OutlineDrawings.Planform("Mudflat 21", Triangle, [], []));
        string[] notes = [.. Group(svg, "notes").Elements().Select(e => e.Value)];
        Assert.Contains("200.0 mm", notes, StringComparer.Ordinal);
        Assert.Contains("212.3 mm", notes, StringComparer.Ordinal);
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes_and_survives_any_title()
    {
        byte[] first = Bytes(OutlineDrawings.Planform("<&\"\u0001\ud800", Triangle, [], []));
        Assert.Equal(first, Bytes(OutlineDrawings.Planform("<&\"\u0001\ud800", Triangle, [], [])));
        Assert.Equal("svg", XElement.Load(new MemoryStream(first)).Name.LocalName);
    }

    [Fact]
    public void Lines_that_are_none_are_refused()
    {
        SvgDrawing drawing = new(0.1, 0.1, "x");
        Pen pen = new(Palette.Line, 0.2);
        Assert.Throws<ArgumentException>(() => drawing.Add("a", pen, [new([new(0, 0)])]));
        Assert.Throws<ArgumentException>(() => drawing.Add("a", pen, [new([new(0, 0), new(double.NaN, 0)])]));
        Assert.Throws<ArgumentException>(() => drawing.Add("A b", pen, []));
        drawing.Add("a", pen, []);
        Assert.Throws<ArgumentException>(() => drawing.Add("a", pen, []));
        Assert.Throws<ArgumentException>(() => OutlineDrawings.BaseSide("x", [], []));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineDrawings.Sections("x", []));
    }

    private static byte[] Bytes(SvgDrawing drawing)
    {
        using MemoryStream stream = new();
        drawing.WriteTo(stream);
        return stream.ToArray();
    }

    private static XElement Parsed(SvgDrawing drawing) => XElement.Load(new MemoryStream(Bytes(drawing)));

    private static XElement Group(XElement svg, string id) => svg.Elements().Single(e => (string?)e.Attribute("id") == id);

    private static Point2[] Points(XElement path)
    {
        string[] words = ((string)path.Attribute("d")!).Split([' ', 'M', 'L', 'Z'], StringSplitOptions.RemoveEmptyEntries);
        double[] numbers = [.. words.Select(word => double.Parse(word, CultureInfo.InvariantCulture))];
        return [.. numbers.Chunk(2).Select(pair => new Point2(pair[0], pair[1]))];
    }

    private static (double Width, double Height) Extents(XElement svg, string id)
    {
        Point2[] points = [.. Group(svg, id).Elements().SelectMany(Points)];
        return (points.Max(p => p.X) - points.Min(p => p.X), points.Max(p => p.Y) - points.Min(p => p.Y));
    }
}
