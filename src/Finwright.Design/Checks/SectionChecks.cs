using System.Text.RegularExpressions;
using Finwright.Design.Reading;

namespace Finwright.Design.Checks;

/// <summary>Stations in order from root to tip, sections that exist, and imported sections that say where their points are.</summary>
internal static partial class SectionChecks
{
    private const string Stations = "$.shape.sections";
    private const string Imported = "$.shape.imported_sections";

    /// <summary>Fewer points than this cannot show a nose and two sides.</summary>
    private const int FewestPoints = 8;

    public static IEnumerable<Finding> Of(Shape shape) =>
        [.. OfOrder(shape.Sections), .. OfNames(shape), .. OfImported(shape.ImportedSections)];

    private static IEnumerable<Finding> OfOrder(IReadOnlyList<SectionStation> stations)
    {
        if (stations.Count < 2)
        {
            yield return new("too-few-stations", Severity.Error, Stations, $"There {(stations.Count == 1 ? "is 1 station" : "are no stations")}; the blade needs a section at the root and one at the tip.", "Give stations at 0 % and at 100 %, or leave \"sections\" out.");
            yield break;
        }

        if (stations[0].AtPercent > 0)
            yield return EndMissing(0, stations[0].AtPercent, "first", "root", 0);
        if (stations[^1].AtPercent < 100)
            yield return EndMissing(stations.Count - 1, stations[^1].AtPercent, "last", "tip", 100);

        for (int i = 1; i < stations.Count; i++)
        {
            double before = stations[i - 1].AtPercent, here = stations[i].AtPercent;
            if (here <= before)
            {
                yield return new("stations-out-of-order", Severity.Error, $"{Stations}[{i}].at_percent", here < before ? $"This station stands at {Quantity.Text(here, "%")}, before the one at {Quantity.Text(before, "%")} that precedes it." : $"Two stations stand at {Quantity.Text(here, "%")}; the blade has one section at each place.", "List the stations from root to tip, each at a place of its own.")
                {
                    Value = Quantity.Text(here, "%"),
                    Limit = Quantity.Text(before, "%"),
                };
            }
        }
    }

    private static Finding EndMissing(int index, double at, string which, string end, double wanted) =>
        new("stations-incomplete", Severity.Error, $"{Stations}[{index}].at_percent", $"The {which} station stands at {Quantity.Text(at, "%")}, so nothing says what the section at the {end} is.", $"Let the {which} station stand at {Quantity.Text(wanted, "%")}.")
        {
            Value = Quantity.Text(at, "%"),
            Limit = Quantity.Text(wanted, "%"),
        };

    private static IEnumerable<Finding> OfNames(Shape shape)
    {
        var imported = shape.ImportedSections.Select(section => section.Name).ToHashSet(StringComparer.Ordinal);
        for (int i = 0; i < shape.Sections.Count; i++)
        {
            string name = shape.Sections[i].Section;
            if (imported.Contains(name) || FormulaName().IsMatch(name.Trim()))
                continue;
            string near = NearestName.Among(name, imported) is string meant ? $"Did you mean \"{meant}\"? " : "";
            yield return new("unknown-section", Severity.Error, $"{Stations}[{i}].section", $"There is no section \"{JsonPath.Shown(name)}\".", $"{near}Write a name such as \"naca-0010\", \"naca-2412\", \"naca-0010-35\" or \"naca-16-009\", or the name of an imported section.")
            {
                Value = JsonPath.Shown(name),
            };
        }

        var used = shape.Sections.Select(station => station.Section).ToHashSet(StringComparer.Ordinal);
        for (int i = 0; i < shape.ImportedSections.Count; i++)
        {
            if (!used.Contains(shape.ImportedSections[i].Name))
                yield return new("not-used", Severity.Note, $"{Imported}[{i}].name", $"No station uses the section \"{JsonPath.Shown(shape.ImportedSections[i].Name)}\".", "Name it in a station, or take it out.");
        }
    }

    private static IEnumerable<Finding> OfImported(IReadOnlyList<ImportedSection> sections)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < sections.Count; i++)
        {
            ImportedSection section = sections[i];
            string path = $"{Imported}[{i}]";
            if (string.IsNullOrWhiteSpace(section.Name))
                yield return new("blank-name", Severity.Error, $"{path}.name", "The section has no name, so no station can use it.", "Give it a name.");
            else if (FormulaName().IsMatch(section.Name.Trim()))
                yield return new("name-taken", Severity.Error, $"{path}.name", $"\"{section.Name}\" is the name of a section that the program knows by formula.", "Give it a name of its own.");
            else if (!names.Add(section.Name))
                yield return new("repeated-name", Severity.Error, $"{path}.name", $"Two imported sections are called \"{JsonPath.Shown(section.Name)}\"; a station could not tell them apart.", "Give each a name of its own.");

            if (section.File is null && section.Points.Count == 0)
                yield return new("points-missing", Severity.Error, $"{path}.points", "The section has neither points nor a file of points.", "Give \"points\" or \"file\".");
            else if (section.File is not null && section.Points.Count > 0)
                yield return new("points-given-twice", Severity.Error, $"{path}.file", "The section has points here and a file of points as well.", "Take one of the two out.");
            else if (section.File is string file && FileName.Problem(file) is string problem)
                yield return new("file-outside-folder", Severity.Error, $"{path}.file", $"\"{JsonPath.Shown(file)}\" {problem}.", "Put the file beside the design file and write its name alone.") { Value = JsonPath.Shown(file) };
            else if (section.Points.Count is > 0 and < FewestPoints)
                yield return new("too-few-points", Severity.Error, $"{path}.points", $"The section has {section.Points.Count} points; fewer than {FewestPoints} cannot show its form.", "Give more points; 40 to 200 are usual.") { Value = $"{section.Points.Count} points", Limit = $"{FewestPoints} points" };
        }
    }

    // Which digits make a section is known where sections are made; here only the form of the name counts.
    [GeneratedRegex(@"^naca[- ]?(16-[0-9]{3}|[0-9]{4}(-[0-9]{2})?)\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FormulaName();
}
