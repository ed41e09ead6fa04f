using Finwright.Design;
using Finwright.Geometry.Sections;

namespace Finwright.Page.Drawings;

/// <summary>Names of sections that can be chosen, and what a section brings along.</summary>
public static class SectionNames
{
    // Common on fins (common practice, no source); every other name of these forms can be typed.
    private static readonly string[] Usual = ["naca-0008", "naca-0009", "naca-0010", "naca-0012", "naca-0010-34", "naca-0010-35", "naca-0010-64", "naca-16-009", "naca-16-010", "naca-2410"];

    /// <summary>Names to choose from: those that are common, then the design's own.</summary>
    public static IReadOnlyList<string> Of(FinDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return [.. Usual, .. design.Shape.ImportedSections.Select(section => section.Name)];
    }

    /// <summary>Thickness and camber that a section has by itself, %; null when the name is not known.</summary>
    public static (double Thickness, double Camber)? Own(FinDesign design, string name)
    {
        ArgumentNullException.ThrowIfNull(design);
        Section? section = design.Shape.ImportedSections.FirstOrDefault(own => string.Equals(own.Name, name, StringComparison.Ordinal)) is { Points.Count: > 0 } imported
            ? CoordinateReader.FromPoints(imported.Name, imported.Points).Section
            : SectionCatalogue.TryFind(name, imported: null, out Section? found, out _) ? found : null;
        return section is null ? null : (100 * section.ThicknessRatio, 100 * section.MaximumCamber);
    }

    /// <summary>A name for a section from a file: that of the file, and no second of the same.</summary>
    public static string Free(FinDesign design, string file)
    {
        ArgumentNullException.ThrowIfNull(design);
        const int longest = 50;
        string name = Path.GetFileNameWithoutExtension((file ?? "").Trim());
        name = string.Concat(name.Where(letter => !char.IsControl(letter)));
        name = name.Length == 0 ? "section" : name.Length > longest ? name[..longest] : name;
        string free = name;
        for (int i = 2; design.Shape.ImportedSections.Any(own => string.Equals(own.Name, free, StringComparison.Ordinal)); i++)
            free = $"{name} {i}";
        return free;
    }
}
