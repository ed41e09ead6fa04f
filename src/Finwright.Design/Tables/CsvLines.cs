using System.Text;

namespace Finwright.Design.Tables;

/// <summary>Lines of a file in CSV that is no table with column names; for those see <see cref="CsvTable"/>.</summary>
public static class CsvLines
{
    /// <summary>The text of a file; null when it is too large or no text.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <param name="largest">Largest file, bytes.</param>
    /// <param name="what">What it holds, in words.</param>
    /// <param name="problem">Why there is no text.</param>
    public static string? Decode(ReadOnlySpan<byte> utf8, int largest, string what, out Finding? problem)
    {
        problem = null;
        if (utf8.Length > largest)
        {
            problem = Wrong("too-large", $"The file is larger than {largest / 1024} kB; {what} need a few.", $"Check that it is the file of {what}.");
            return null;
        }

        if (utf8 is [0xEF, 0xBB, 0xBF, ..])
            utf8 = utf8[3..];
        try
        {
            string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(utf8);
            if (!text.Any(CsvText.IsNoText))
                return text;
            problem = Wrong("not-text", "The file holds signs that no text has.", "Save the table as CSV in UTF-8.");
        }
        catch (DecoderFallbackException)
        {
            problem = Wrong("not-text", "The file is no text in UTF-8.", "Save the table as CSV in UTF-8.");
        }

        return null;
    }

    /// <summary>The lines that are neither empty nor comments, each with its own separator: a semicolon, a tab, else a comma.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="longest">Most characters of a cell.</param>
    /// <param name="say">Is told of each line that cannot be cut into cells, and why; such lines have no cells.</param>
    public static IEnumerable<CsvLine> Read(string text, int longest, Action<Finding> say)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(say);
        return Lines();

        IEnumerable<CsvLine> Lines()
        {
            CsvScanner scanner = new(text);
            while (scanner.NextLine())
            {
                char separator = scanner.Separator();
                List<string>? cells = scanner.Cells(separator, longest, (code, message, remedy) => say(new(code, Severity.Error, $"line {scanner.Line}", message, remedy) { Line = scanner.Line }));
                yield return new(scanner.Line, separator, cells ?? []);
            }
        }
    }

    private static Finding Wrong(string code, string message, string remedy) => new(code, Severity.Error, "file", message, remedy);
}

/// <summary>One line in CSV.</summary>
/// <param name="Number">Its line in the file, from 1.</param>
/// <param name="Separator">What stands between its cells.</param>
/// <param name="Cells">Its cells.</param>
public sealed record CsvLine(int Number, char Separator, IReadOnlyList<string> Cells);
