using System.CommandLine;
using System.Diagnostics;
using Finwright.Assessment.Packing;
using Finwright.Page.Hosting;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Serves the page to this computer's browser until it is stopped.</summary>
internal sealed class ServeCommand : StorePathCommand
{
    private readonly Option<int?> _port = Inputs.Whole("--port", $"Port on this computer; {PageSettings.UsualPort} if left out, 0 for any that is free.", 0, 65535);
    private readonly Option<bool> _noBrowser = Inputs.Switch("--no-browser", "Do not open the browser; only tell the address.");

    public ServeCommand()
        : base(
            "serve",
            "Open the page: design, understand and make a fin in the browser. Only this computer can reach it, and nothing leaves it. Ctrl-C ends it.",
            "finwright serve --no-browser") => AddAll(_port, _noBrowser);

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        PageSettings settings = new()
        {
            StorePath = PathOf(arguments),
            MadeBy = $"Finwright {ProgramVersion.Text}",
            Port = arguments.GetValue(_port) ?? PageSettings.UsualPort,
            Demos = DemoDesigns.Names.ToDictionary(name => name, name => DemoDesigns.Find(name)!, StringComparer.Ordinal),
        };
        return Serve(settings, WantsJson(arguments), !arguments.GetValue(_noBrowser), streams, cancellation).GetAwaiter().GetResult();
    }

    private static async Task<ExitCode> Serve(PageSettings settings, bool asJson, bool opens, TextStreams streams, CancellationToken cancellation)
    {
        PageHost host;
        try
        {
            host = await PageHost.Start(settings, cancellation);
        }
        catch (IOException taken) when (taken.Message.StartsWith("Port ", StringComparison.Ordinal))
        {
            throw new WrongInputException(taken.Message, "Go to the page that is open already, or give another port: finwright serve --port 0");
        }

        await using (host)
        {
            Uri entry = host.Entry();
            if (asJson)
            {
                streams.Out.WriteLine(AnswerJson.Write(new { Format = "finwright-serve", Address = entry.AbsoluteUri }));
            }
            else
            {
                streams.Out.WriteLine($"The page is at {entry}");
                streams.Out.WriteLine("This address lets one browser in, once. Ctrl-C ends it; everything is kept as you go.");
            }

            streams.Out.Flush();
            if (opens)
                OpenBrowser(entry, streams);
            await host.Run(cancellation);
        }

        return ExitCode.Good;
    }

    private static void OpenBrowser(Uri entry, TextStreams streams)
    {
        try
        {
            using Process? browser = OperatingSystem.IsLinux()
                ? Process.Start(new ProcessStartInfo("xdg-open", [entry.AbsoluteUri]) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true })
                : Process.Start(new ProcessStartInfo(entry.AbsoluteUri) { UseShellExecute = true });
        }
        catch (Exception problem) when (problem is System.ComponentModel.Win32Exception or InvalidOperationException)
        {
            streams.Error.WriteLine("finwright: No browser could be opened. Open the address above in one.");
        }
    }
}
