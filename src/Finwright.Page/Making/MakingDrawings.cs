using System.Globalization;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pictures;
using Finwright.Papers.Sheet;
using Finwright.Papers.Words;

namespace Finwright.Page.Making;

/// <summary>Drawings of print, pour and cure: those of the build sheet and of the pack.</summary>
internal static class MakingDrawings
{
    // Room of a drawing, metres: the width of a text column at true size.
    private const double Width = 0.17, PlateHeight = 0.11, PourHeight = 0.13;

    /// <summary>Draws one.</summary>
    /// <param name="name">plate-1, pour-0, cure-0, map-0, pores-0: by number of the plate, or by place in the list of parts.</param>
    /// <param name="made">Print, pour and cure.</param>
    /// <param name="fin">Name of the fin.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <returns>The drawing as SVG; null when there is none.</returns>
    public static byte[]? Of(string name, AssessmentResult? made, string fin, Tongue tongue)
    {
        int dash = name.IndexOf('-', StringComparison.Ordinal);
        if (made is null || dash < 0 || !int.TryParse(name.AsSpan(dash + 1), NumberStyles.None, CultureInfo.InvariantCulture, out int number))
            return null;
        return name[..dash] switch
        {
            "plate" when made.Parts?.Plates.Any(plate => plate.Number == number) is true => Svg(SheetPictures.Plate(made, number, tongue, Width, PlateHeight), tongue.Words.Sheet.PlateCaption(number)),
            "pour" when made.Poured?.Parts.ElementAtOrDefault(number) is { } part => Svg(SheetPictures.Pour(made, part.Name, tongue, Width, PourHeight), tongue.Words.Sheet.PourCaption(tongue.Words.Names.Part(part.Name))),
            "cure" when made.Cured?.Parts.ElementAtOrDefault(number) is { IsWhole: true } part => SheetFigures.Cure(made.Cured, part, fin, tongue).ToSvg(),
            "map" when made.Cured?.Parts.ElementAtOrDefault(number) is { IsWhole: true } part => Figure(made, fin, $"cure-map-{part.Name.Replace(' ', '-')}.svg"),
            "pores" when made.Poured?.Parts.ElementAtOrDefault(number) is { } part => Figure(made, fin, $"pores-{part.Name.Replace(' ', '-')}.svg"),
            _ => null,
        };
    }

    private static byte[]? Figure(AssessmentResult made, string fin, string file) =>
        MakingFigures.Of(fin, made.Poured, made.Cured).Where(figure => figure.File == file).Select(figure => figure.Figure.ToSvg()).FirstOrDefault();

    private static byte[] Svg(Drawing drawing, string title)
    {
        using MemoryStream stream = new();
        SvgFile.Write(drawing, title, stream);
        return stream.ToArray();
    }
}
