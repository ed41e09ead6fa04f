using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Store;

/// <summary>Lists what was deleted and can be had back.</summary>
internal sealed class StoreBinCommand : StoreCommand
{
    public StoreBinCommand()
        : base("bin", "List what was deleted and can be had back, with until when.", "finwright store bin", changes: false) => AddAll();

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        IReadOnlyList<BinItem> items = store.Bin.List();
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new StoreAnswer<IReadOnlyList<BinItem>>("finwright-store-bin", $"Finwright {ProgramVersion.Text}", items)));
        else
            StoreText.Write(streams, items);
        return ExitCode.Good;
    }
}
