using System.Text.Json;
using Finwright.Design;
using Finwright.Design.Tables;

namespace Finwright.Workshop.Exchange.Tables;

/// <summary>What came of taking a table in.</summary>
/// <param name="Added">How many rows came in.</param>
/// <param name="Known">How many were there already, with the same content.</param>
public sealed record TableTaken(int Added, int Known);

/// <summary>What the tables of the workshop share.</summary>
internal static class TableForm
{
    /// <summary>Longest text in a cell.</summary>
    public const int LongestText = 10_000;

    /// <summary>The words of an enumeration, as files have them.</summary>
    public static IReadOnlyDictionary<string, T> Words<T>()
        where T : struct, Enum => Enum.GetValues<T>().ToDictionary(WordOf, value => value, StringComparer.Ordinal);

    /// <summary>A word of an enumeration.</summary>
    public static string WordOf<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());

    /// <summary>Refuses a table in which anything is wrong.</summary>
    /// <exception cref="ExchangeException">With everything that is wrong.</exception>
    public static void Refuse(IReadOnlyList<Finding> findings)
    {
        if (findings.Count > 0)
            throw new ExchangeException($"{findings.Count} {(findings.Count == 1 ? "error" : "errors")} in the table; nothing was taken in.", "Correct the lines as said.", findings);
    }

    /// <summary>The rows of a table, each read; refused when anything is wrong with the table by then.</summary>
    public static List<(int Line, T Own)> Rows<T>(CsvTable table, Func<CsvRow, T> read)
    {
        List<(int Line, T Own)> rows = [];
        foreach (CsvRow row in table.Rows)
        {
            if (!table.IsHopeless)
                rows.Add((row.Line, read(row)));
        }

        return rows;
    }
}
