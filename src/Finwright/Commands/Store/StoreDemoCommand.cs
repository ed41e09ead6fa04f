using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Season;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Store;

/// <summary>Loads an invented season to try things with.</summary>
internal sealed class StoreDemoCommand : StoreCommand
{
    public StoreDemoCommand()
        : base(
            "demo",
            "Load an invented season to try things with: three designs with their revisions, six builds, bench readings, outings with tracks. No fin was measured for it. Best into a store of its own.",
            "finwright store demo --store demo.finstore",
            changes: true) => AddAll();

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        StoreContents contents = DemoSeason.Load(store, Demo, $"Finwright {ProgramVersion.Text}", cancellation);
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(new StoreAnswer<StoreContents>("finwright-store-demo", $"Finwright {ProgramVersion.Text}", contents)));
            return ExitCode.Good;
        }

        streams.Out.WriteLine("The demo season is loaded. It is invented: no fin was built, measured or sailed.");
        streams.Out.WriteLine();
        StoreText.Write(streams, contents);
        streams.Out.WriteLine();
        streams.Out.WriteLine(Wrapping.Wrap("Next: finwright outing compare \"Fairway grey\" \"Fairway black\"", streams.Width));
        return ExitCode.Good;
    }

    private static FinDesign Demo(string name) => DesignReader.Read(DemoDesigns.Find(name)!).Design!;
}
