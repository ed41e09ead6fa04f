using System.Text;

namespace Finwright.Design.Reading;

/// <summary>Says in plain words what stops a text from being JSON, with line and column.</summary>
internal static class SyntaxFinding
{
    /// <summary>The finding for the place where reading stopped.</summary>
    /// <param name="utf8">The whole text.</param>
    /// <param name="line">Line, from 0.</param>
    /// <param name="byteInLine">Bytes into the line.</param>
    public static Finding At(byte[] utf8, int line, int byteInLine)
    {
        int lineStart = StartOf(utf8, line);
        int at = Math.Min(lineStart + byteInLine, utf8.Length);
        if (utf8.AsSpan(at).Trim(" \t\r\n"u8).IsEmpty)
        {
            int lastLine = utf8.AsSpan().TrimEnd(" \t\r\n"u8).Count((byte)'\n') + 1;
            return Broken(lastLine, $"The file ends on line {lastLine} before the design is complete: a quote, bracket or brace is still open, or a value is missing.", "Complete the file, or take the last good copy; it may have been cut off while it was saved.");
        }

        // Point at the start of a word such as NaN rather than into its middle.
        int start = at;
        while (start > lineStart && IsWordByte(utf8[start - 1]) && IsWordByte(utf8[at]))
            start--;
        int column = Encoding.UTF8.GetCharCount(utf8.AsSpan(lineStart, start - lineStart)) + 1;
        string place = $"Line {line + 1}, column {column}";
        (string message, string remedy) = Explain(utf8, start);
        return Broken(line + 1, $"{place}: {message}", remedy);
    }

    private static (string Message, string Remedy) Explain(byte[] utf8, int start)
    {
        int end = start;
        while (end < utf8.Length && end - start < 20 && IsWordByte(utf8[end]))
            end++;
        string word = Encoding.ASCII.GetString(utf8, start, end - start);
        string bare = word.TrimStart('-', '+');
        if (bare.Equals("nan", StringComparison.OrdinalIgnoreCase) || bare.StartsWith("inf", StringComparison.OrdinalIgnoreCase))
            return ($"{word} is not a number.", "Give a number, or leave the field out.");
        if (word.Length > 0 && char.IsAsciiLetter(word[0]))
            return ($"{JsonPath.Shown(word)} does not belong here.", "Put text and field names in double quotes; only true, false and null stand bare. A comma may be missing before it.");

        Rune.DecodeFromUtf8(utf8.AsSpan(start), out Rune rune, out _);
        return rune.Value switch
        {
            '\'' => ("a single quote does not belong here.", "Put text and field names in double quotes."),
            '"' => ("a new field or value begins where it is not expected.", "Put a comma before it, or a colon between the field's name and its value; a text must not run over the end of its line."),
            '}' or ']' => ($"{rune} closes something that is not open here, or a value is missing before it.", "Match each opening brace and bracket with its own closing one."),
            ',' => ("a comma stands where a value is expected.", "Take the extra comma out, or put the value before it."),
            '+' or '.' or (>= '0' and <= '9') => ("a number is not written as it should be.", "Write numbers like 12.5 or -3: a decimal point, no comma, no plus sign, no leading zero; put a comma between values."),
            < ' ' => ("a line break or control character stands inside a text.", "End the text with a double quote on the same line; write \\n for a line break in it."),
            _ => ($"{(Rune.IsControl(rune) ? "an unprintable character" : rune.ToString())} does not belong here.", "Look for a missing comma, quote or bracket just before it."),
        };
    }

    private static Finding Broken(int line, string message, string remedy) =>
        new("not-json", Severity.Error, JsonPath.Root, message, remedy) { Line = line };

    private static int StartOf(byte[] utf8, int line)
    {
        int start = 0;
        for (int i = 0; i < line; i++)
        {
            int length = utf8.AsSpan(start).IndexOf((byte)'\n');
            if (length < 0)
                break;
            start += length + 1;
        }

        return start;
    }

    private static bool IsWordByte(byte b) => char.IsAsciiLetterOrDigit((char)b) || b is (byte)'-' or (byte)'_' or (byte)'+';
}
