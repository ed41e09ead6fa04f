using System.Text;
using System.Xml.Linq;
using Finwright.Assessment.Figures;

namespace Finwright.Assessment.Tests.Figures;

public sealed class FigureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string, Func<Figure>> Figures => new()
    {
        { "polar", () => PolarFigure.Draw("Section at half the depth", [Polar("5 m/s", 1.0), Polar("9 m/s", 1.1), Polar("14 m/s", 1.15)]) },
        { "span load", () => SpanLoadFigure.Draw("Load at cruise", 300, [.. Enumerable.Range(0, 21).Select(i => new SpanLoadSample(15 * i, 20 * Math.Sqrt(1 - i * i / 400.0) + (i < 10 ? 1 : -1), 20 * Math.Sqrt(1 - i * i / 400.0)))]) },
        { "leeway", () => LeewayFigure.Draw("At 9 m/s", Leeway(90), Leeway(100), Leeway(70), new LeewaySample(3.5, 315, 30)) },
        { "leeway not reached", () => LeewayFigure.Draw("At 9 m/s", Leeway(90), [], [], null) },
        { "pressure", () => PressureFigure.Draw("At cruise <half> & depth", X, Cp, -2.2) },
        { "pressure without a limit", () => PressureFigure.Draw("At cruise", X, Cp, null) },
    };

    private static double[] X => [.. Enumerable.Range(0, 81).Select(i => (1 + Math.Cos(i * Math.PI / 40)) / 2)];

    private static double[] Cp => [.. X.Select((x, i) => i < 40 ? -1.5 * (1 - x) : 0.2 - 0.3 * x * (1 - x))];

    [Theory]
    [MemberData(nameof(Figures))]
    public void Draw_gives_a_picture_with_a_title_words_for_the_blind_and_units(string what, Func<Figure> draw)
    {
        XElement root = XDocument.Parse(Encoding.UTF8.GetString(draw().ToSvg())).Root!;
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.NotEmpty(root.Element(Svg + "title")!.Value);
        Assert.EndsWith(".", root.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
        string[] texts = [.. root.Descendants(Svg + "text").Select(text => text.Value)];
        Assert.Contains(texts, text => text.Contains(", ", StringComparison.Ordinal));
        Assert.DoesNotContain(root.Descendants().Attributes(), attribute => attribute.Value.Contains("NaN", StringComparison.Ordinal));
        Assert.True(root.Descendants(Svg + "polyline").Any(), what);
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void Draw_twice_gives_the_same_bytes(string what, Func<Figure> draw) => Assert.True(draw().ToSvg().AsSpan().SequenceEqual(draw().ToSvg()), what);

    [Fact]
    public void Draw_of_a_polar_with_bridged_points_has_a_dashed_part()
    {
        PolarLine line = Polar("9 m/s", 1);
        PolarLine bridged = line with { Samples = [.. line.Samples.Select(sample => sample with { IsSolved = sample.AngleDegrees is < 5 or > 7 })] };
        int Dashed(PolarLine drawn) => XDocument.Parse(Encoding.UTF8.GetString(PolarFigure.Draw("Polar", [drawn]).ToSvg())).Descendants(Svg + "polyline").Count(p => p.Attribute("stroke-dasharray") is not null || ((string?)p.Attribute("style"))?.Contains("stroke-dasharray", StringComparison.Ordinal) == true);
        Assert.Equal(0, Dashed(line));
        Assert.Equal(2, Dashed(bridged));
    }

    [Fact]
    public void Draw_of_pressures_that_do_not_match_their_places_is_refused() =>
        Assert.Throws<ArgumentException>(() => PressureFigure.Draw("x", [0, 1], [0], null));

    private static PolarLine Polar(string name, double peak) => new(name, [.. Enumerable.Range(0, 33).Select(i => new PolarSample(i / 2.0, peak * Math.Sin(i / 2.0 * Math.PI / 24), 0.006 + 0.0002 * i * i / 4.0, true))]);

    private static LeewaySample[] Leeway(double slope) => [.. Enumerable.Range(0, 31).Select(i => new LeewaySample(i / 2.0, slope * i / 2.0 * (1 - Math.Pow(i / 40.0, 3)), 10 + i * i / 10.0))];
}
