using System.Text.RegularExpressions;

namespace Finwright.Page.Help;

/// <summary>A row of a table in one of the house's documents.</summary>
/// <param name="Chapter">Heading of the second order above it.</param>
/// <param name="Section">Heading of the third order above it; empty for none.</param>
/// <param name="Heads">Names of the columns.</param>
/// <param name="Cells">What stands in them, as plain text.</param>
internal sealed record DocumentRow(string Chapter, string Section, IReadOnlyList<string> Heads, IReadOnlyList<string> Cells)
{
    /// <summary>What stands in a column; empty where there is none of that name.</summary>
    public string this[string head] => Heads.Index().Where(own => own.Item == head && own.Index < Cells.Count).Select(own => Cells[own.Index]).FirstOrDefault("");
}

/// <summary>Tables of documents that the program carries along.</summary>
internal static partial class DocumentTable
{
    /// <summary>Every row of every table, in the order of the document.</summary>
    /// <param name="resource">Name of the document among the program's resources.</param>
    public static IReadOnlyList<DocumentRow> Read(string resource)
    {
        using Stream stream = typeof(DocumentTable).Assembly.GetManifestResourceStream(resource)!;
        using StreamReader reader = new(stream);
        List<DocumentRow> rows = [];
        (string chapter, string section) = ("", "");
        string[]? heads = null;
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
                (chapter, section) = (line[3..].Trim(), "");
            else if (line.StartsWith("### ", StringComparison.Ordinal))
                section = line[4..].Trim();
            if (!line.StartsWith('|'))
            {
                heads = null;
                continue;
            }

            string[] cells = [.. Bars().Split(line.Trim().Trim('|')).Select(cell => Plain(cell.Replace("\\|", "|", StringComparison.Ordinal)))];
            if (heads is null)
                heads = cells;
            else if (!cells[0].StartsWith("---", StringComparison.Ordinal))
                rows.Add(new(chapter, section, heads, cells));
        }

        return rows;
    }

    private static string Plain(string cell) => Links().Replace(cell, "${text}").Replace("`", "", StringComparison.Ordinal).Replace("**", "", StringComparison.Ordinal).Trim();

    [GeneratedRegex(@"(?<!\\)\|", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Bars();

    [GeneratedRegex(@"\[(?<text>[^\]]*)\]\([^)]*\)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Links();
}
