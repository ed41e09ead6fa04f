namespace Finwright.Papers.Pages;

/// <summary>How wide texts are, and how they are broken into lines.</summary>
internal static class TextMeasure
{
    // Letters of a unit with what stands behind it. Other short words after a number stay with it too, which harms nothing.
    private const int LongestUnit = 6;

    /// <summary>Width of a text, in the unit of the size.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Size of its type.</param>
    /// <param name="bold">Whether it is bold.</param>
    public static double Width(string text, double size, bool bold = false)
    {
        InterFont font = InterFont.Of(bold);
        return size * InterFont.Printable(text).EnumerateRunes().Sum(font.Advance);
    }

    /// <summary>A text of one line, shortened with "…" when it is wider than its room.</summary>
    public static string Fitted(string text, double width, double size, bool bold = false)
    {
        string whole = InterFont.Printable(text), fitted = whole;
        for (int length = whole.Length; Width(fitted, size, bold) > width && length > 0;)
            fitted = string.Concat(whole.AsSpan(0, --length).TrimEnd(), "…");
        return fitted;
    }

    /// <summary>Breaks a text into lines between words; a word longer than a line after a hyphen, slash, dot or underline, else anywhere.</summary>
    /// <param name="text">The text; a line break in it stays.</param>
    /// <param name="width">Room of a line, in the unit of the size.</param>
    /// <param name="size">Size of its type.</param>
    /// <param name="bold">Whether it is bold.</param>
    /// <returns>At least one line.</returns>
    public static IReadOnlyList<string> Lines(string text, double width, double size, bool bold = false)
    {
        List<string> lines = [];
        foreach (string paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            string line = "";
            foreach (string word in Words(paragraph, width, size, bold))
            {
                string longer = line.Length == 0 ? word : $"{line} {word}";
                if (Width(longer, size, bold) <= width)
                {
                    line = longer;
                    continue;
                }

                if (line.Length > 0)
                    lines.Add(line);
                line = word;
                while (Width(line, size, bold) > width && line.Length > 1)
                {
                    int cut = Cut(line, width, size, bold);
                    lines.Add(line[..cut]);
                    line = line[cut..];
                }
            }

            lines.Add(line);
        }

        return lines;
    }

    // What stays on one line: words between plain blanks, and a number with its unit where that fits a line.
    private static List<string> Words(string paragraph, double width, double size, bool bold)
    {
        List<string> words = [];
        foreach (string word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            bool isUnit = word.Length <= LongestUnit && words.Count > 0 && char.IsAsciiDigit(words[^1][^1]) && Width($"{words[^1]} {word}", size, bold) <= width;
            if (isUnit)
                words[^1] += $" {word}";
            else
                words.Add(word);
        }

        return words;
    }

    // How much of a long word stays on the line.
    private static int Cut(string word, double width, double size, bool bold)
    {
        int most = 1;
        while (most < word.Length - 1 && Width(word[..(most + 1)], size, bold) <= width)
            most++;
        if (most > 1 && char.IsHighSurrogate(word[most - 1]))
            most--;
        int after = word.AsSpan(0, most).LastIndexOfAny("-/._") + 1;
        return after > most / 2 ? after : most;
    }
}
