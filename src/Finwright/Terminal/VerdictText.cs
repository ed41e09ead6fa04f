using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;

namespace Finwright.Terminal;

/// <summary>A verdict as plain text: mark and word, numbers, what was found, why it matters, what to do.</summary>
internal static class VerdictText
{
    private const int Indent = 12;

    /// <summary>Writes one verdict with a blank line before it.</summary>
    public static void Write(TextStreams streams, Verdict verdict)
    {
        TextWriter o = streams.Out;
        o.WriteLine();
        string head = $"{StateWords.Mark(verdict.State)} {StateWords.Word(verdict.State)}".PadRight(Indent);
        Block(head, verdict.Numbers.Length > 0 ? $"{verdict.Checked}: {verdict.Numbers}" : verdict.Checked);
        Block(new(' ', Indent), verdict.Found);
        if (verdict.State == VerdictState.Holds)
            return;
        Block(new(' ', Indent), $"Why it matters: {verdict.Why}");
        if (verdict.Change.Length > 0)
            Block(new(' ', Indent), $"What to do: {verdict.Change}");

        void Block(string first, string text) => o.WriteLine(first + Wrapping.Wrap(text, streams.Width, Indent, first.Length));
    }
}
