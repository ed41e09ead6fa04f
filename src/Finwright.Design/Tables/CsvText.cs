using System.Buffers;
using System.Globalization;
using System.Text;

namespace Finwright.Design.Tables;

/// <summary>
/// Cells of CSV as they are written: separated by commas, decimals with a point (RFC 4180, Common Format and MIME Type for Comma-Separated Values Files, 2005).
/// A text that a spreadsheet would take for a formula gets an apostrophe in front, which <see cref="CsvRow.Text"/> takes off again.
/// </summary>
public static class CsvText
{
    private const char Guard = '\'';

    private static readonly SearchValues<char> Formula = SearchValues.Create("=+-@"), Special = SearchValues.Create(",;\t\"\r\n");

    /// <summary>A number; empty for none. Read back, it is the same to the last bit.</summary>
    public static string Number(double? value) => value is double number ? number.ToString(CultureInfo.InvariantCulture) : "";

    /// <summary>A whole number; empty for none.</summary>
    public static string Whole(int? value) => value is int number ? number.ToString(CultureInfo.InvariantCulture) : "";

    /// <summary>A day, year first; empty for none.</summary>
    public static string Day(DateOnly? value) => value is DateOnly day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "";

    /// <summary>A person's words, harmless for spreadsheets. Signs that no text has become question marks in a diamond.</summary>
    public static string Words(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string plain = text.Any(IsNoText) ? string.Concat(text.Select(sign => IsNoText(sign) ? '\uFFFD' : sign)) : text;
        string written = IsFormula(plain) ? Guard + plain : plain;
        // Spaces at the ends, and a # that would begin a comment, are kept by quotes.
        return written.Length > 0 && (written[0] is '#' || char.IsWhiteSpace(written[0]) || char.IsWhiteSpace(written[^1])) ? Quoted(written) : Safe(written);
    }

    /// <summary>A line of cells that are written already.</summary>
    public static string Line(params IEnumerable<string> cells) => string.Join(',', cells) + "\n";

    /// <summary>A text without its apostrophe, where it has one.</summary>
    internal static string Unguarded(string text) => text.Length > 0 && text[0] == Guard && IsFormula(text[1..]) ? text[1..] : text;

    /// <summary>Whether a sign has no place in a table.</summary>
    internal static bool IsNoText(char sign) => char.IsControl(sign) && sign is not ('\t' or '\n' or '\r');

    // Apostrophes in front count as part of it, so that taking one off gives back what was there.
    private static bool IsFormula(string text)
    {
        ReadOnlySpan<char> rest = text.AsSpan().TrimStart(Guard);
        return rest.Length > 0 && (rest[0] is '\t' or '\r' || rest.TrimStart() is { Length: > 0 } seen && Formula.Contains(seen[0]));
    }

    private static string Safe(string text) => text.AsSpan().ContainsAny(Special) ? Quoted(text) : text;

    private static string Quoted(string text) => new StringBuilder(text).Replace("\"", "\"\"").Insert(0, '"').Append('"').ToString();
}
