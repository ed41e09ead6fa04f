using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Finwright.Geometry.Sections;

/// <summary>Finds a section by the name a design file gives it.</summary>
public static partial class SectionCatalogue
{
    /// <summary>The kinds of names that are understood, for messages and help texts.</summary>
    public const string KnownForms =
        "\"naca-0010\" or \"naca-2412\" (four digits), \"naca-0010-35\" (modified four digits), \"naca-16-009\" (16-series), or the name of an imported section";

    private const int MostNamesListed = 12;

    /// <summary>Finds a section by name.</summary>
    /// <param name="name">
    /// Name as in the design file. Case, and hyphens or blanks around the digit groups, do not matter for formula sections;
    /// imported names must match exactly and go first.
    /// </param>
    /// <param name="imported">Imported sections by name; null for none.</param>
    /// <param name="section">The section, when found.</param>
    /// <param name="problem">Why there is none and what names are known; empty when found.</param>
    /// <returns>Whether the section was found.</returns>
    public static bool TryFind(
        string name,
        IReadOnlyDictionary<string, Section>? imported,
        [NotNullWhen(true)] out Section? section,
        out string problem)
    {
        ArgumentNullException.ThrowIfNull(name);
        problem = "";
        if (imported is not null && imported.TryGetValue(name, out section))
            return true;
        section = null;

        string text = name.Trim();
        Match sixteen = SixteenSeries().Match(text), four = FourDigits().Match(text);
        string? fault;
        if (sixteen.Success)
        {
            int thickness = Number(sixteen, "thickness");
            fault = thickness is < 1 or > FourDigitName.ThickestPercent
                ? $"Its thickness is {thickness} %; it must lie between 1 and {FourDigitName.ThickestPercent} %."
                : null;
            if (fault is null)
                section = new SixteenSeriesSection(Number(sixteen, "lift"), thickness);
        }
        else if (four.Success)
        {
            int camber = Number(four, "camber"), place = Number(four, "place"), thickness = Number(four, "thickness");
            fault = FourDigitName.Problem(camber, place, thickness);
            if (fault is null && !four.Groups["nose"].Success)
                section = new FourDigitSection(camber, place, thickness);
            else if (fault is null && Number(four, "thickest") is int tenths and (< 2 or > 6))
                fault = $"Its last digit, the place of the greatest thickness in tenths of the chord, is {tenths}; it must lie between 2 and 6.";
            else if (fault is null)
                section = new ModifiedFourDigitSection(camber, place, thickness, Number(four, "nose"), Number(four, "thickest"));
        }
        else
        {
            fault = $"Known are {KnownForms}.{ImportedNames(imported)}";
        }

        if (section is not null)
            return true;
        problem = $"There is no section \"{Shortened(name)}\". {fault}";
        return false;
    }

    private static int Number(Match match, string group) =>
        int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    private static string ImportedNames(IReadOnlyDictionary<string, Section>? imported)
    {
        if (imported is null || imported.Count == 0)
            return " No section was imported.";
        IEnumerable<string> names = imported.Keys.Order(StringComparer.Ordinal).Take(MostNamesListed).Select(n => $"\"{Shortened(n)}\"");
        string more = imported.Count > MostNamesListed ? $" and {imported.Count - MostNamesListed} more" : "";
        return $" Imported: {string.Join(", ", names)}{more}.";
    }

    // A name from a stranger's file may be of any length and hold control characters.
    private static string Shortened(string name)
    {
        const int longest = 60;
        string plain = new([.. name.Take(longest).Select(c => char.IsControl(c) ? '?' : c)]);
        return name.Length > longest ? plain + "…" : plain;
    }

    [GeneratedRegex("^naca[- ]?16-(?<lift>[0-9])(?<thickness>[0-9]{2})$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex SixteenSeries();

    [GeneratedRegex("^naca[- ]?(?<camber>[0-9])(?<place>[0-9])(?<thickness>[0-9]{2})(-(?<nose>[0-9])(?<thickest>[0-9]))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FourDigits();
}
