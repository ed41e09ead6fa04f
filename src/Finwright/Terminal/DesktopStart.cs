using Finwright.Commands;
using Finwright.Page.Hosting;

namespace Finwright.Terminal;

/// <summary>The program started without a word and without a terminal, as by a double click: it serves the page, and shows in the browser what keeps it from that.</summary>
internal static class DesktopStart
{
    private static readonly string[] Displays = ["DISPLAY", "WAYLAND_DISPLAY"];

    // So long what went wrong can be read, and loaded again; then nobody is looking any more.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    /// <summary>Whether this process was started so. Only where the system tells it: on Linux; elsewhere a script says "serve".</summary>
    public static bool IsOne() => OperatingSystem.IsLinux()
        && IsSo(Environment.GetEnvironmentVariable, [Target(0), Target(1), Target(2)]);

    /// <summary>Whether a process was started so.</summary>
    /// <param name="variable">Its environment.</param>
    /// <param name="streams">What its input, output and errors lead to, as the system names it.</param>
    internal static bool IsSo(Func<string, string?> variable, IReadOnlyList<string> streams) =>
        Displays.Any(name => !string.IsNullOrEmpty(variable(name)))
        // Away from a desktop a person types, or a program reads what comes.
        && streams[0] == "/dev/null"
        && !streams[1].StartsWith("pipe:", StringComparison.Ordinal)
        && !streams.Any(stream => stream.StartsWith("/dev/pts/", StringComparison.Ordinal) || stream.StartsWith("/dev/tty", StringComparison.Ordinal));

    /// <summary>Serves the page until nobody has it open any more.</summary>
    public static ExitCode Run(TextStreams streams, CancellationToken cancellation)
    {
        using StringWriter said = new() { NewLine = "\n" };
        ExitCode code = CommandLine.Run(["serve", ServeCommand.EndsAloneSwitch], streams with { Error = said }, cancellation);
        streams.Error.Write(said);
        if (code is not (ExitCode.Good or ExitCode.Stopped))
            Show(said.ToString(), streams, cancellation).GetAwaiter().GetResult();
        return code;
    }

    private static async Task Show(string said, TextStreams streams, CancellationToken cancellation)
    {
        const string start = "finwright: ", advice = "What to do: ";
        string[] texts = [.. said.Split(start, StringSplitOptions.RemoveEmptyEntries).Select(text => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))];
        string remedy = Array.Find(texts, text => text.StartsWith(advice, StringComparison.Ordinal))?[advice.Length..] ?? "";
        await using TroublePage page = await TroublePage.Start(string.Join(' ', texts.Where(text => !text.StartsWith(advice, StringComparison.Ordinal))), remedy, cancellation);
        DesktopBrowser.Open(page.Address, streams);
        try
        {
            await Task.Delay(Patience, cancellation);
        }
        catch (OperationCanceledException)
        {
            return;
        }
    }

    private static string Target(int stream)
    {
        try
        {
            return File.ResolveLinkTarget($"/proc/self/fd/{stream}", returnFinalTarget: false)?.FullName is { } target
                // What has no name in a folder is shown as if it lay beside the link.
                ? Path.GetFileName(target) is { } name && name.Contains(':', StringComparison.Ordinal) ? name : target
                : "";
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }
}
