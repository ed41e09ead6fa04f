namespace Finwright.Page.Help;

/// <summary>A term of the trade.</summary>
/// <param name="Chapter">What it belongs to, in English.</param>
/// <param name="Name">The term, in English.</param>
/// <param name="Symbol">Its symbol; empty for none.</param>
/// <param name="Unit">Its SI unit; empty for none.</param>
/// <param name="Meaning">What it means, in English.</param>
public sealed record Term(string Chapter, string Name, string Symbol, string Unit, string Meaning);

/// <summary>The words of the trade as the house uses them: the same on page, paper, file and command line.</summary>
public static class Glossary
{
    /// <summary>All terms, chapter by chapter.</summary>
    public static IReadOnlyList<Term> All { get; } = Read();

    /// <summary>The address of a term within the page.</summary>
    public static string IdOf(Term term)
    {
        ArgumentNullException.ThrowIfNull(term);
        return "term-" + string.Concat(term.Name.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-'));
    }

    private static Term[] Read() =>
    [
        .. DocumentTable.Read("glossary.md")
            .Where(row => row["Meaning"].Length > 0)
            .Select(row => new Term(row.Chapter, row.Cells[0], row["Symbol"], row["Unit"], row["Meaning"])),
    ];
}
