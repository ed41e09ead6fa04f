using System.Text.RegularExpressions;

namespace Finwright.Page.Help;

/// <summary>A term of the trade.</summary>
/// <param name="Chapter">What it belongs to, in English.</param>
/// <param name="Name">The term, in English.</param>
/// <param name="Symbol">Its symbol; empty for none.</param>
/// <param name="Unit">Its SI unit; empty for none.</param>
/// <param name="Meaning">What it means, in English.</param>
public sealed record Term(string Chapter, string Name, string Symbol, string Unit, string Meaning);

/// <summary>The words of the trade as the house uses them: the same on page, paper, file and command line.</summary>
public static partial class Glossary
{
    /// <summary>All terms, chapter by chapter.</summary>
    public static IReadOnlyList<Term> All { get; } = Read();

    /// <summary>The address of a term within the page.</summary>
    public static string IdOf(Term term)
    {
        ArgumentNullException.ThrowIfNull(term);
        return "term-" + string.Concat(term.Name.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-'));
    }

    private static Term[] Read()
    {
        using Stream stream = typeof(Glossary).Assembly.GetManifestResourceStream("glossary.md")!;
        using StreamReader reader = new(stream);
        List<Term> terms = [];
        string chapter = "";
        int name = 0, symbol = -1, unit = -1, meaning = -1;
        bool isBody = false;
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
                (chapter, isBody) = (line[3..].Trim(), false);
            if (!line.StartsWith('|'))
                continue;
            string[] cells = [.. Cells().Split(line.Trim().Trim('|')).Select(cell => Plain(cell.Replace("\\|", "|", StringComparison.Ordinal)))];
            if (cells.Contains("Meaning", StringComparer.Ordinal))
                (name, symbol, unit, meaning, isBody) = (0, Array.IndexOf(cells, "Symbol"), Array.IndexOf(cells, "Unit"), Array.IndexOf(cells, "Meaning"), true);
            else if (isBody && cells.Length > meaning && !cells[0].StartsWith("---", StringComparison.Ordinal) && cells[meaning].Length > 0)
                terms.Add(new(chapter, cells[name], At(symbol), At(unit), cells[meaning]));

            string At(int index) => index >= 0 && index < cells.Length ? cells[index] : "";
        }

        return [.. terms];
    }

    private static string Plain(string cell) => cell.Replace("`", "", StringComparison.Ordinal).Replace("**", "", StringComparison.Ordinal).Trim();

    [GeneratedRegex(@"(?<!\\)\|", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Cells();
}
