using System.Globalization;
using System.Text.RegularExpressions;
using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Tests.Views;

/// <summary>Reads dimensions back from a drawing: the number that is told, and how far the tips of its two arrows are apart.</summary>
internal static partial class DimensionReading
{
    /// <summary>Lengths, in millimetres as told, and on paper.</summary>
    public static IReadOnlyList<(double Told, double OnPaper, string Text)> Lengths(Drawing drawing)
    {
        List<(double, double, string)> found = [];
        List<Point2> tips = [];
        foreach (DrawnItem item in drawing.Items)
        {
            if (item is DrawnArea { Layer: Dimensions.LineLayer } arrow)
                tips.Add(arrow.Rings[0][0]);
            else if (item is DrawnText text)
            {
                if (tips.Count == 2 && !text.Text.Contains('°', StringComparison.Ordinal) && LastNumber().Match(text.Text) is { Success: true } number)
                    found.Add((double.Parse(number.Groups["number"].Value, CultureInfo.InvariantCulture), 1e3 * (tips[1] - tips[0]).Length, text.Text));
                tips.Clear();
            }
        }

        return found;
    }

    [GeneratedRegex(@"(?<number>\d+(\.\d+)?)( mm)?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex LastNumber();
}
