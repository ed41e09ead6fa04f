using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Store;

/// <summary>Says where the workshop's store is and what it holds; the commands that care for it hang below.</summary>
internal sealed class StoreContentsCommand : StoreCommand
{
    public StoreContentsCommand()
        : base("store", "Say where the workshop's store is and how much it holds; copy it, check it, have deleted things back.", "finwright store", changes: false)
    {
        AddAll();
        Add(new StoreCheckCommand());
        Add(new StoreBackupCommand());
        Add(new StoreRescueCommand());
        Add(new StoreBinCommand());
        Add(new StoreRestoreCommand());
        Add(new StoreDemoCommand());
    }

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        StoreContents contents = StoreContents.Of(store);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new StoreAnswer<StoreContents>("finwright-store", $"Finwright {ProgramVersion.Text}", contents)));
        else
            StoreText.Write(streams, contents);
        return ExitCode.Good;
    }
}
