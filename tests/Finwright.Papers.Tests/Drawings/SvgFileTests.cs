using System.Xml.Linq;
using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using static Finwright.Papers.Tests.Drawings.SvgReading;

namespace Finwright.Papers.Tests.Drawings;

public sealed class SvgFileTests
{
    private static readonly Pen Whole = new(Palette.Line, 0.3e-3), Dashed = new(Palette.Line, 0.3e-3, [2e-3, 1e-3]);

    private static Drawing Sample()
    {
        Drawing drawing = new();
        drawing.Add(new DrawnArea("tone", Palette.Water, [[new(0, 0), new(0.2, 0), new(0.2, 0.1)], [new(0.1, 0.01), new(0.15, 0.01), new(0.15, 0.04)]]));
        drawing.Add(new DrawnStroke("outline", Whole, [new(-0.05, 0), new(0.15, 0), new(0.1, 0.2123)], Closed: true));
        drawing.Add(new DrawnStroke("outline", Dashed, [new(0, 0), new(0.0123456789, 0.1)], Closed: false));
        drawing.Add(new DrawnText("notes", "root <&\"> Wurzel", new(0.05, 0.05), new(3e-3, Palette.Line)));
        drawing.Add(new DrawnText("notes", "span", new(0.05, 0.08), new(3e-3, Palette.Line, TextAnchor.Middle, UpwardTurn: Math.PI / 2)));
        return drawing;
    }

    [Fact]
    public void The_sheet_is_in_millimetres_and_its_view_box_has_the_same_numbers()
    {
        XElement svg = Of(Sample());
        Assert.EndsWith("mm", (string)svg.Attribute("width")!, StringComparison.Ordinal);
        Assert.Equal($"0 0 {((string)svg.Attribute("width")!)[..^2]} {((string)svg.Attribute("height")!)[..^2]}", (string)svg.Attribute("viewBox")!);
        Assert.Equal(250 + 20, SideMm(svg, "width"), 1e-9);
        Assert.Equal(212.3 + 20, SideMm(svg, "height"), 1e-9);
    }

    [Fact]
    public void Lines_keep_their_size_and_begin_at_the_margin()
    {
        XElement svg = Of(Sample());
        Point2[] points = Points(svg, "outline");
        Assert.Equal(3, points.Length);
        Assert.Equal([10, 210, 160], points.Select(p => p.X));
        Assert.Equal([10, 10, 222.3], points.Select(p => p.Y));
        // Four decimals of a millimetre.
        Assert.Equal(60 + 12.3457, Points(svg, "outline-2")[1].X, 1e-9);
        Assert.Equal("0.3", (string)Group(svg, "outline").Attribute("stroke-width")!);
        Assert.Equal("2 1", (string)Group(svg, "outline-2").Attribute("stroke-dasharray")!);
    }

    [Fact]
    public void Each_layer_and_pen_has_a_group_of_its_own_with_a_name_of_its_own()
    {
        XElement svg = Of(Sample());
        Assert.Equal(["tone", "outline", "outline-2", "notes"], Groups(svg).Select(g => (string)g.Attribute("id")!), StringComparer.Ordinal);
        foreach (XElement group in Groups(svg))
            Assert.All(group.Elements(), e => Assert.Equal((string)group.Attribute("id")! == "notes" ? "text" : "path", e.Name.LocalName));
        Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), a => a.Name.LocalName is "style" or "class");
    }

    [Fact]
    public void Only_turned_words_carry_a_transform()
    {
        XElement[] turned = [.. Of(Sample()).DescendantsAndSelf().Where(e => e.Attribute("transform") is not null)];
        // SVG turns clockwise for positive angles, since its y runs down.
        Assert.Equal("rotate(-90 110 90)", (string)Assert.Single(turned).Attribute("transform")!);
    }

    [Fact]
    public void Rings_of_an_area_are_one_path_that_is_filled_where_their_number_is_odd()
    {
        XElement group = Group(Of(Sample()), "tone");
        Assert.Equal("evenodd", (string)group.Attribute("fill-rule")!);
        Assert.Equal(2, Lines(Assert.Single(group.Elements())).Length);
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes_and_survives_any_words()
    {
        const string Title = "<&\"\u0001\ud800";
        Drawing drawing = Sample();
        drawing.Add(new DrawnText("notes", Title, new(0, 0), new(3e-3, Palette.Line)));
        byte[] first = Bytes(drawing, Title);
        Assert.Equal(first, Bytes(drawing, Title));
        XElement svg = XElement.Load(new MemoryStream(first));
        Assert.Contains("root <&\"> Wurzel", Group(svg, "notes").Elements().Select(e => e.Value), StringComparer.Ordinal);
        Assert.StartsWith("<&\"", svg.Elements().First(e => e.Name.LocalName is "title").Value, StringComparison.Ordinal);
    }
}
