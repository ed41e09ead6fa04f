using Finwright.Design;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.FromDesign;

/// <summary>
/// Takes the points of section files into the design, so that everything after depends on the design alone and not on what
/// lies on the disk.
/// </summary>
public static class SectionFiles
{
    private const string Sections = "$.shape.imported_sections";

    /// <summary>Replaces each named section file by its points.</summary>
    /// <param name="design">The design; its file names are checked not to lead out of the folder.</param>
    /// <param name="folder">Folder of the design file; null when the design came from no file.</param>
    /// <param name="findings">Receives an error for each file that is missing or cannot be used.</param>
    /// <returns>The design with points only; unchanged sections where a file could not be used.</returns>
    public static FinDesign Embed(FinDesign design, string? folder, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(findings);
        if (design.Shape.ImportedSections.All(section => section.File is null))
            return design;
        ImportedSection[] sections = [.. design.Shape.ImportedSections];
        for (int i = 0; i < sections.Length; i++)
            if (sections[i].File is string file && Points(sections[i].Name, file, folder, $"{Sections}[{i}].file", findings) is { } points)
                sections[i] = sections[i] with { File = null, Points = points };
        return design with { Shape = design.Shape with { ImportedSections = sections } };
    }

    /// <summary>Takes the coordinates of a section from text.</summary>
    /// <param name="name">Name that the section shall have.</param>
    /// <param name="reader">The text.</param>
    /// <returns>What came of reading, and the section with its points as a design holds it; null when there are problems.</returns>
    public static (CoordinateReading Reading, ImportedSection? Section) Take(string name, TextReader reader)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(reader);
        // One character more than is taken, so that it can be said that the text is too long.
        char[] buffer = new char[CoordinateText.MostCharacters + 1];
        string text = new(buffer, 0, reader.ReadBlock(buffer));
        CoordinateReading reading = CoordinateReader.Read(name, new StringReader(text));
        return (reading, reading.Section is null ? null : new() { Name = name, Points = [.. CoordinateText.Read(new StringReader(text)).Rows.Select(row => (double[])[row.Point.X, row.Point.Y])] });
    }

    private static IReadOnlyList<IReadOnlyList<double>>? Points(string name, string file, string? folder, string path, ICollection<Finding> findings)
    {
        if (folder is null)
        {
            findings.Add(new("section-file-missing", Severity.Error, path, $"The section file \"{file}\" cannot be found, because the design was not read from a folder.", "Give the points in the design itself."));
            return null;
        }

        CoordinateReading reading;
        ImportedSection? section;
        try
        {
            using StreamReader reader = new(Path.Combine(folder, file));
            (reading, section) = Take(name, reader);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "there is no such file beside the design" : problem.Message.TrimEnd('.');
            findings.Add(new("section-file-missing", Severity.Error, path, $"The section file \"{file}\" cannot be read: {why}.", "Put the file beside the design file, or correct its name."));
            return null;
        }

        foreach (CoordinateProblem problem in reading.Problems)
        {
            string place = problem.Line is int line ? $", line {line}" : "";
            findings.Add(new("section-file-unusable", Severity.Error, path, $"{file}{place}: {problem.Message}", "Correct the file; it should hold two columns of numbers, x and y, once round the section."));
        }

        return section?.Points;
    }
}
