namespace Finwright.Terminal;

/// <summary>
/// Where the program writes. The answer (numbers, findings, JSON) goes to <see cref="Out"/>; whatever keeps a command from
/// answering, and progress, go to <see cref="Error"/>.
/// </summary>
/// <param name="Out">Standard output.</param>
/// <param name="Error">Standard error.</param>
/// <param name="Width">Columns that text is wrapped to.</param>
/// <param name="ShowsProgress">Whether a person watches standard error, so that a line there may be redrawn.</param>
internal sealed record TextStreams(TextWriter Out, TextWriter Error, int Width, bool ShowsProgress)
{
    /// <summary>Columns used when the output is not a terminal, and at most: longer lines are hard to read.</summary>
    public const int PlainWidth = 80;

    /// <summary>The program's own streams, in UTF-8 without a mark.</summary>
    public static TextStreams OfProcess()
    {
        Console.OutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new(Console.Out, Console.Error, ConsoleWidth(), !Console.IsErrorRedirected);
    }

    private static int ConsoleWidth()
    {
        if (Console.IsOutputRedirected)
            return PlainWidth;
        try
        {
            return Math.Clamp(Console.WindowWidth, 40, PlainWidth);
        }
        catch (IOException)
        {
            return PlainWidth;
        }
    }
}
