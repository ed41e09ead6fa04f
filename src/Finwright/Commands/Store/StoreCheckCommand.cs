using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Store;

/// <summary>Checks the store from its first page to its last.</summary>
internal sealed class StoreCheckCommand : StoreCommand
{
    public StoreCheckCommand()
        : base("check", "Check the store from its first page to its last: pages, references, texts against their hashes.", "finwright store check", changes: false) => AddAll();

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        StoreCheck check = StoreCheck.Of(store, cancellation);
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(new StoreAnswer<StoreCheck>("finwright-store-check", $"Finwright {ProgramVersion.Text}", check)));
        }
        else
        {
            if (check.Contents is { } contents)
                StoreText.Write(streams, contents);
            if (check.Findings.Count > 0)
                FindingText.Write(streams.Out, check.Findings, store.Path, streams.Width);
            else if (check.Contents is { Exists: true })
                streams.Out.WriteLine("\nThe store is sound.");
        }

        return check.Findings.Count == 0 ? ExitCode.Good : ExitCode.Fails;
    }
}
