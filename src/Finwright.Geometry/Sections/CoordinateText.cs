using System.Globalization;

namespace Finwright.Geometry.Sections;

/// <summary>Turns the text of a coordinate file into rows of two numbers, or says line by line why it cannot.</summary>
internal static class CoordinateText
{
    /// <summary>Largest text that is read, characters.</summary>
    public const int MostCharacters = 1 << 20;

    /// <summary>Most points that are read.</summary>
    public const int MostPoints = 20_000;

    /// <summary>Largest coordinate that is believed, in any unit.</summary>
    public const double LargestCoordinate = 1e6;

    private const int MostHeadingLines = 5;
    private const int MostProblems = 20;
    private const string CommentSigns = "#!%";

    /// <summary>Reads all rows.</summary>
    /// <returns>Rows in file order, and problems; with any problem the rows are not to be used.</returns>
    public static (List<CoordinateRow> Rows, List<CoordinateProblem> Problems) Read(TextReader reader)
    {
        List<CoordinateRow> rows = [];
        List<CoordinateProblem> problems = [];
        if (Whole(reader) is not string text)
        {
            problems.Add(new($"The file is larger than {MostCharacters / 1024} kB. A section needs a few hundred points at most.", null));
            return (rows, problems);
        }

        int block = 0, headings = 0, line = 0;
        bool afterBlank = false;
        foreach (string raw in text.ReplaceLineEndings("\n").Split('\n'))
        {
            line++;
            if (Junk(raw) is string junk)
            {
                problems.Add(new(junk, line));
                return (rows, problems);
            }

            string content = WithoutComment(raw).Trim();
            if (content.Length == 0)
            {
                // A line that holds only a comment parts nothing.
                afterBlank |= rows.Count > 0 && string.IsNullOrWhiteSpace(raw);
                continue;
            }

            List<string> words = Words(content);
            bool isPoint = TryPoint(words, out Point2 point, out string fault);
            if (!isPoint && IsHeading(words, content) && (rows.Count == 0 ? ++headings <= MostHeadingLines : afterBlank))
                continue;
            if (afterBlank)
                block++;
            afterBlank = false;
            if (isPoint)
                rows.Add(new(point, line, block));
            else
                problems.Add(new(fault, line));
            if (problems.Count == MostProblems || rows.Count > MostPoints)
                break;
        }

        if (rows.Count > MostPoints)
            problems.Add(new($"There are more than {MostPoints} points. Thin them out; a few hundred describe a section.", null));
        return (rows, problems);
    }

    /// <summary>Says why a coordinate cannot be used, or null.</summary>
    public static string? NumberProblem(double value) =>
        double.IsNaN(value) || double.IsInfinity(value)
            ? "A coordinate is not a finite number."
            : Math.Abs(value) > LargestCoordinate
                ? $"A coordinate is larger than {LargestCoordinate:0}, which is no section in any unit."
                : null;

    private static string? Whole(TextReader reader)
    {
        char[] buffer = new char[MostCharacters + 1];
        int count = reader.ReadBlock(buffer, 0, buffer.Length);
        return count > MostCharacters ? null : new string(buffer, 0, count).TrimStart('\uFEFF');
    }

    private static string? Junk(string line)
    {
        foreach (char c in line)
            if (c == '\uFFFD' || char.IsControl(c) && c is not ('\t' or '\f' or '\u001A'))
                return "This is not text. Give a plain text file with two columns of numbers, x and y.";
        return null;
    }

    private static string WithoutComment(string line)
    {
        int end = line.AsSpan().IndexOfAny(CommentSigns);
        int slashes = line.IndexOf("//", StringComparison.Ordinal);
        if (slashes >= 0 && (end < 0 || slashes < end))
            end = slashes;
        return end < 0 ? line : line[..end];
    }

    // Blanks, tabs and semicolons part words. A comma does so only at the end of a word, or when it stands between two numbers
    // that would otherwise be one word; inside one of two words it is a decimal comma.
    private static List<string> Words(string content)
    {
        List<string> words = [];
        foreach (string word in content.Replace('\u2212', '-').Split([' ', '\t', ';', '\f', '\u00A0', '\u001A'], StringSplitOptions.RemoveEmptyEntries))
            if (word.Trim(',') is { Length: > 0 } trimmed)
                words.Add(trimmed);
        return words.Count == 1 && words[0].Split(',') is { Length: 2 } both ? [.. both] : words;
    }

    private static bool TryPoint(List<string> words, out Point2 point, out string fault)
    {
        point = default;
        fault = "";
        if (words.Count == 1 && words[0].Contains(',', StringComparison.Ordinal))
            fault = $"\"{Shown(words[0])}\" can be read in more than one way. Part the two numbers with a blank or a semicolon.";
        else if (words.Count != 2)
            fault = $"{words.Count} {(words.Count == 1 ? "entry" : "entries")} where two numbers, x and y, are wanted.";
        else if (!TryNumber(words[0], out double x))
            fault = $"\"{Shown(words[0])}\" is not a number.";
        else if (!TryNumber(words[1], out double y))
            fault = $"\"{Shown(words[1])}\" is not a number.";
        else if ((NumberProblem(x) ?? NumberProblem(y)) is string problem)
            fault = problem;
        else
            point = new(x, y);
        return fault.Length == 0;
    }

    // Words of text or the numbers of a section, not a point with a slip in it: something that begins like a coordinate and has a partner is a point.
    private static bool IsHeading(List<string> words, string content)
    {
        if (!content.Any(char.IsLetter))
            return words.Count == 1 && char.IsAsciiDigit(words[0][0]) && words[0].All(sign => char.IsAsciiDigit(sign) || sign == '-');
        return words.Count != 2 || !(TryNumber(words[0], out double x) && (!double.IsInteger(x) || x is 0 or 1) || TryNumber(words[1], out double y) && !double.IsInteger(y));
    }

    private static bool TryNumber(string word, out double value) =>
        double.TryParse(
            word.Contains('.', StringComparison.Ordinal) ? word : word.Replace(',', '.'),
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out value);

    private static string Shown(string word) => word.Length > 30 ? word[..30] + "…" : word;
}
