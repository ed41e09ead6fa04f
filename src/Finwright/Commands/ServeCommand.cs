using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Page.Hosting;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Serves the page to this computer's browser until it is stopped.</summary>
internal sealed class ServeCommand : StorePathCommand
{
    /// <summary>The word for ending when nobody looks any more.</summary>
    public const string EndsAloneSwitch = "--ends-alone";

    private readonly Option<int?> _port = Inputs.Whole("--port", $"Port on this computer; {PageSettings.UsualPort} if left out, 0 for any that is free.", 0, 65535);
    private readonly Option<bool> _endsAlone = Inputs.Switch(EndsAloneSwitch, "End by itself when the page was open and nobody has had it open for a quarter of an hour.");
    private readonly Option<bool> _noBrowser = Inputs.Switch("--no-browser", "Do not open the browser; only tell the address.");

    public ServeCommand()
        : base(
            "serve",
            "Open the page: design, understand and make a fin in the browser. Only this computer can reach it, and nothing leaves it. Ctrl-C ends it.",
            "finwright serve --no-browser") => AddAll(_port, _noBrowser, _endsAlone);

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        PageSettings settings = new()
        {
            StorePath = PathOf(arguments),
            MadeBy = $"Finwright {ProgramVersion.Text}",
            Port = arguments.GetValue(_port) ?? PageSettings.UsualPort,
            EndsAlone = arguments.GetValue(_endsAlone),
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
        catch (PortTakenException taken)
        {
            Uri running = await RunningPage.Entry(settings, cancellation)
                ?? throw new WrongInputException(taken.Message, "Give another port: finwright serve --port 0");
            Tell(running, "It is served already, by a program that was started earlier; this one ends.", asJson, opens, streams);
            return ExitCode.Good;
        }

        await using (host)
        {
            Tell(host.Entry(), "Ctrl-C ends it; everything is kept as you go.", asJson, opens, streams);
            await host.Run(cancellation);
        }

        return ExitCode.Good;
    }

    private static void Tell(Uri entry, string more, bool asJson, bool opens, TextStreams streams)
    {
        if (asJson)
        {
            streams.Out.WriteLine(AnswerJson.Write(new { Format = "finwright-serve", Address = entry.AbsoluteUri }));
        }
        else
        {
            streams.Out.WriteLine($"The page is at {entry}");
            streams.Out.WriteLine($"This address lets one browser in, once. {more}");
        }

        streams.Out.Flush();
        if (opens)
            DesktopBrowser.Open(entry, streams);
    }
}
