using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Finwright.Assessment.Figures;
using OxyPlot;

namespace Finwright.Assessment.Tests.Figures;

/// <summary>A figure read back.</summary>
internal sealed partial class DrawnFigure
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // A narrow sans-serif letter over the size of its type; names are mostly small letters.
    private const double LetterWidth = 0.5;

    private readonly XElement _root;

    public DrawnFigure(Figure figure) => _root = XDocument.Parse(Encoding.UTF8.GetString(figure.ToSvg())).Root!;

    public string Title => _root.Element(Svg + "title")!.Value;

    public string Words => _root.Element(Svg + "desc")!.Value;

    public IReadOnlyList<string> Texts => [.. _root.Descendants(Svg + "text").Select(text => text.Value)];

    public int Lines => _root.Descendants(Svg + "polyline").Count();

    public int Dashed => _root.Descendants(Svg + "polyline").Count(line => ((string?)line.Attribute("style"))?.Contains("dasharray", StringComparison.Ordinal) == true || line.Attribute("stroke-dasharray") is not null);

    /// <summary>Filled areas in the order in which they are painted.</summary>
    public IReadOnlyList<IReadOnlyList<DataPoint>> Areas =>
        [.. _root.Descendants(Svg + "polygon").Where(polygon => !((string?)polygon.Attribute("style") ?? "").Contains("fill:none", StringComparison.Ordinal)).Select(polygon => Points(polygon.Attribute("points")!.Value))];

    /// <summary>Texts that leave the sheet, or that part of it to which they are clipped.</summary>
    public IEnumerable<string> Outside()
    {
        double[] box = Numbers(_root.Attribute("viewBox")!.Value);
        foreach (XElement text in _root.Descendants(Svg + "text"))
        {
            double size = double.Parse(text.Attribute("font-size")!.Value, CultureInfo.InvariantCulture), width = LetterWidth * size * text.Value.Length;
            double back = text.Attribute("text-anchor")?.Value switch { "middle" => width / 2, "end" => width, _ => 0 };
            string moved = text.Attribute("transform")?.Value ?? "";
            double[] at = moved.Length > 0 ? Numbers(moved) : [Number(text, "x"), Number(text, "y")];
            (double left, double right, double top, double bottom) = moved.Contains("rotate(-90", StringComparison.Ordinal)
                ? (at[0] - size, at[0] + size, at[1] - width + back, at[1] + back)
                : (at[0] - back, at[0] - back + width, at[1] - size / 2, at[1] + size / 2);
            (double fromX, double fromY, double toX, double toY) = Clip(text) ?? (0, 0, box[2], box[3]);
            if (left < fromX || right > toX || top < fromY || bottom > toY)
                yield return text.Value;
        }
    }

    private (double FromX, double FromY, double ToX, double ToY)? Clip(XElement text)
    {
        if (text.Ancestors(Svg + "g").Select(group => group.Attribute("clip-path")?.Value).FirstOrDefault(clip => clip is not null) is not { } name)
            return null;
        XElement window = _root.Descendants(Svg + "clipPath").Single(clip => string.Equals($"url(#{clip.Attribute("id")!.Value})", name, StringComparison.Ordinal)).Element(Svg + "rect")!;
        (double x, double y) = (Number(window, "x"), Number(window, "y"));
        return (x, y, x + Number(window, "width"), y + Number(window, "height"));
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static IReadOnlyList<DataPoint> Points(string list)
    {
        double[] numbers = Numbers(list);
        return [.. Enumerable.Range(0, numbers.Length / 2).Select(i => new DataPoint(numbers[2 * i], numbers[2 * i + 1]))];
    }

    private static double[] Numbers(string text) => [.. AnyNumber().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"-?[0-9.]+(e-?[0-9]+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex AnyNumber();
}
