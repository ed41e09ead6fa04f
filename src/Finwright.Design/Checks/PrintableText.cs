using System.Buffers;
using System.Text;

namespace Finwright.Design.Checks;

/// <summary>What may stand in a text that goes on papers, in file names and in other files.</summary>
internal static class PrintableText
{
    /// <summary>Characters as a reader counts them: one outside the basic plane is one, not two.</summary>
    public static int Length(string text) => text.EnumerateRunes().Count();

    /// <summary>Whether the text holds control characters or half characters.</summary>
    /// <param name="text">The text.</param>
    /// <param name="mayHaveLines">Whether line breaks and tabs are fine.</param>
    public static bool IsUnprintable(string text, bool mayHaveLines)
    {
        ReadOnlySpan<char> rest = text;
        while (!rest.IsEmpty)
        {
            if (Rune.DecodeFromUtf16(rest, out Rune rune, out int used) != OperationStatus.Done)
                return true;
            if (Rune.IsControl(rune) && !(mayHaveLines && rune.Value is '\n' or '\r' or '\t'))
                return true;
            rest = rest[used..];
        }

        return false;
    }
}
