using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.FromDesign;

/// <summary>Turns the sections of a design, its own and imported ones, into stations of a blade.</summary>
internal static class StationsFromDesign
{
    private const string Stations = "$.shape.sections", Imported = "$.shape.imported_sections";

    /// <summary>Makes the stations; null when an error was found.</summary>
    public static List<BladeStation>? Create(Shape shape, double span, List<Finding> found, Func<string, TextReader?>? openFile)
    {
        Dictionary<string, Section> imported = Import(shape, found, openFile);
        List<BladeStation> stations = [];
        if (shape.Sections.Count == 0)
            found.Add(new("too-few-stations", Severity.Error, Stations, "There are no stations; the blade needs a section.", "Give stations at 0 % and at 100 %, or leave \"sections\" out."));
        for (int i = 0; i < shape.Sections.Count; i++)
        {
            SectionStation station = shape.Sections[i];
            if (i > 0 && station.AtPercent <= shape.Sections[i - 1].AtPercent)
                found.Add(new(
                    "stations-out-of-order", Severity.Error, $"{Stations}[{i}].at_percent",
                    $"This station stands at {station.AtPercent:0.##} %, not below the one at {shape.Sections[i - 1].AtPercent:0.##} % before it.",
                    "List the stations from root to tip, each at a place of its own.")
                { Value = $"{station.AtPercent:0.##} %", Limit = $"{shape.Sections[i - 1].AtPercent:0.##} %" });
            if (SectionCatalogue.TryFind(station.Section, imported, out Section? section, out string problem))
                stations.Add(new(
                    Math.Min(station.AtPercent / 100, 1) * span,
                    new ScaledSection(section, station.ThicknessPercent / 100, station.CamberPercent / 100),
                    station.TwistDegrees * Math.PI / 180));
            else if (!shape.ImportedSections.Any(s => string.Equals(s.Name, station.Section, StringComparison.Ordinal)))
                found.Add(new("unknown-section", Severity.Error, $"{Stations}[{i}].section", problem, "Write one of the known names, or import the section."));
        }

        return found.Exists(f => f.IsError) ? null : stations;
    }

    private static Dictionary<string, Section> Import(Shape shape, List<Finding> found, Func<string, TextReader?>? openFile)
    {
        Dictionary<string, Section> sections = new(StringComparer.Ordinal);
        for (int i = 0; i < shape.ImportedSections.Count; i++)
        {
            ImportedSection given = shape.ImportedSections[i];
            string path = $"{Imported}[{i}]";
            bool fromFile = given.File is not null;
            if (!fromFile && given.Points.Count == 0)
            {
                found.Add(new("points-missing", Severity.Error, $"{path}.points", "The section has neither points nor a file of points.", "Give \"points\" or \"file\"."));
                continue;
            }

            if (Read(given, path, found, openFile) is not { } reading)
                continue;
            foreach (CoordinateProblem problem in reading.Problems)
                found.Add(fromFile
                    ? new("section-file", Severity.Error, $"{path}.file", problem.Line is int line ? $"{given.File}, line {line}: {problem.Message}" : $"{given.File}: {problem.Message}", "Correct the file of coordinates.")
                    : new("section-points", Severity.Error, problem.Line is int number ? $"{path}.points[{number - 1}]" : $"{path}.points", problem.Message, "Correct the points."));
            foreach (string note in reading.Notes)
                found.Add(new("section-adjusted", Severity.Note, fromFile ? $"{path}.file" : $"{path}.points", note, "Nothing need be done if this is what was meant."));
            if (reading.Section is not null && !sections.TryAdd(given.Name, reading.Section))
                found.Add(new("repeated-name", Severity.Error, $"{path}.name", $"Two imported sections are called \"{given.Name}\"; a station could not tell them apart.", "Give each a name of its own."));
        }

        return sections;
    }

    private static CoordinateReading? Read(ImportedSection given, string path, List<Finding> found, Func<string, TextReader?>? openFile)
    {
        if (given.File is not string file)
            return CoordinateReader.FromPoints(given.Name, given.Points);
        try
        {
            using TextReader? reader = openFile?.Invoke(file);
            if (reader is not null)
                return CoordinateReader.Read(given.Name, reader);
            found.Add(new("section-file-missing", Severity.Error, $"{path}.file", $"There is no file \"{file}\" beside the design.", "Put the file beside the design file, or give the points there."));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            found.Add(new("section-file-unreadable", Severity.Error, $"{path}.file", $"The file \"{file}\" cannot be read: {fault.Message}", "Check the file and its permissions."));
        }

        return null;
    }
}
