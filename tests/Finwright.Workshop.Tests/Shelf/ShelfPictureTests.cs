using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Workshop.Shelf;

namespace Finwright.Workshop.Tests.Shelf;

public sealed class ShelfPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Demos => [.. Directory.EnumerateFiles(AppContext.BaseDirectory, "*.fin.json").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Of_draws_every_demo_small_and_in_true_proportion(string file)
    {
        Blade blade = BladeOf(file);
        string svg = ShelfPicture.Of(blade);
        Assert.InRange(Encoding.UTF8.GetByteCount(svg), 300, ShelfPicture.MostBytes);
        Assert.Equal(svg, ShelfPicture.Of(blade));
        (double X, double Y)[] drawn = Outline(svg);
        // Depth and breadth of the blade's own edges, sampled; lines of the picture are drawn to a tenth of a unit.
        double[] depths = [.. Enumerable.Range(0, 401).Select(i => blade.Span * i / 400)];
        double wide = depths.Max(blade.Outline.TrailingEdge) - depths.Min(blade.Outline.LeadingEdge);
        double scale = (drawn.Max(p => p.Y) - drawn.Min(p => p.Y)) / blade.Span;
        Assert.Equal(scale * wide, drawn.Max(p => p.X) - drawn.Min(p => p.X), 0.5);
        // Bow to the left: the root's leading edge is drawn first and stands left of its trailing edge, at the hull.
        Assert.True(drawn[0].X < drawn[^1].X);
        Assert.Equal(drawn[0].Y, drawn[^1].Y);
        Assert.Equal(scale * blade.Outline.Chord(0), drawn[^1].X - drawn[0].X, 0.3);
        // The bar is as long as it says.
        XElement bar = XElement.Parse(svg).Descendants(Svg + "text").Single();
        double millimetres = double.Parse(bar.Value.Split(' ')[0], CultureInfo.InvariantCulture);
        string run = XElement.Parse(svg).Elements(Svg + "path").Last().Attribute("d")!.Value;
        double length = double.Parse(run[(run.IndexOf('h', StringComparison.Ordinal) + 1)..].Split('m')[0], CultureInfo.InvariantCulture);
        Assert.Equal(scale * 1e-3 * millimetres, length, 0.2);
    }

    private static (double X, double Y)[] Outline(string svg) =>
    [
        .. XElement.Parse(svg).Elements(Svg + "path").First().Attribute("d")!.Value.TrimEnd('Z').Split(['M', 'L'], StringSplitOptions.RemoveEmptyEntries)
            .Select(pair => pair.Split(' ')).Select(pair => (double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture))),
    ];

    private static Blade BladeOf(string file)
    {
        using Assessor assessor = new();
        return assessor.Assess(DesignReader.ReadFile(Path.Combine(AppContext.BaseDirectory, file)), AssessmentDepth.Shape).Blade!;
    }
}
