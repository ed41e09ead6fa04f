using System.Text;
using Finwright.Assessment;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Pictures;

/// <summary>The demo designs and everything that is drawn of them.</summary>
internal static class PictureFins
{
    /// <summary>A fin in one blade with a strip, and one in parts with rods, by name.</summary>
    public static IReadOnlyList<(string Name, Func<AssessmentResult> Made)> All { get; } =
        [("fairway", () => MadeFins.Fairway), ("sandbar", () => MadeFins.Sandbar)];

    public static Tongue Speaking(PaperLanguage language) => new(new() { Language = language, Date = new(2026, 11, 27), ProgramVersion = "1.0" });

    /// <summary>Every picture of a fin in a room.</summary>
    public static IEnumerable<(string Name, Drawing Drawing)> Pictures(AssessmentResult result, Tongue tongue, double width, double height)
    {
        foreach (int number in result.Parts!.Plates.Select(plate => plate.Number))
            yield return ($"plate-{number}", SheetPictures.Plate(result, number, tongue, width, height));
        foreach (string part in result.Poured!.Parts.Select(part => part.Name))
            yield return ($"pour-{part.Replace(' ', '-')}", SheetPictures.Pour(result, part, tongue, width, height));
        yield return ("bench", SheetPictures.Bench(result, tongue, Math.Max(width, PictureRoom.LeastBenchWidth), Math.Max(height, PictureRoom.LeastBenchHeight)));
        if (SheetPictures.Strip(result, tongue, width, height) is { } strip)
            yield return ("strip", strip);
    }

    public static IEnumerable<string> Words(Drawing drawing) => drawing.Items.OfType<DrawnText>().Select(text => text.Text);

    /// <summary>The box round lines and areas of a layer.</summary>
    public static DrawnBox Layer(Drawing drawing, string layer) =>
        DrawnBox.Round(drawing.Items.Where(item => item is not DrawnText && string.Equals(item.Layer, layer, StringComparison.Ordinal)).SelectMany(Extent.Of));

    /// <summary>The drawing as text, for comparing.</summary>
    public static string Svg(Drawing drawing)
    {
        using MemoryStream stream = new();
        SvgFile.Write(drawing, "picture", stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
