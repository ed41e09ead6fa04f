using Finwright.Assessment.Stages;

namespace Finwright.Terminal;

/// <summary>One line on standard error that says what is being done and how far it has come; silent when nobody watches.</summary>
/// <param name="streams">Where the program writes.</param>
internal sealed class ProgressLine(TextStreams streams) : IProgress<StageProgress>, IDisposable
{
    private string _shown = "";

    /// <inheritdoc/>
    public void Report(StageProgress value) => Show($"{(int)(100 * value.Fraction),3} %  {value.Words}");

    /// <summary>Takes the line away, so that other text can be written.</summary>
    public void Clear() => Show("");

    /// <inheritdoc/>
    public void Dispose() => Clear();

    private void Show(string text)
    {
        if (!streams.ShowsProgress || string.Equals(text, _shown, StringComparison.Ordinal))
            return;
        if (text.Length >= streams.Width)
            text = text[..(streams.Width - 1)];
        // Overwritten with blanks rather than by an escape sequence: works on every terminal.
        streams.Error.Write('\r' + text.PadRight(_shown.Length) + (text.Length == 0 ? "\r" : ""));
        streams.Error.Flush();
        _shown = text;
    }
}
