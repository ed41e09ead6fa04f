using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Stock;

/// <summary>A command that changes the stock and says in a sentence what it did.</summary>
internal abstract class StockChange : StoreCommand
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected StockChange(string name, string description, string example)
        : base(name, description, example, changes: true)
    {
    }

    /// <inheritdoc/>
    protected sealed override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        (string did, StockItem item) = Change(arguments, store);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new StockDoneAnswer($"Finwright {ProgramVersion.Text}", did, StockItemAnswer.Of(item))));
        else
            streams.Out.WriteLine(Wrapping.Wrap(did, streams.Width));
        return ExitCode.Good;
    }

    /// <summary>Makes the change.</summary>
    /// <returns>What was done in a sentence, and the item that it was about.</returns>
    protected abstract (string Did, StockItem Item) Change(ParseResult arguments, WorkshopStore store);

    /// <summary>How much is left, in words.</summary>
    protected static string LeftOf(StockItem item) => $"{item.Left:0.##} {Choice.Of(item.Unit)} of {ShelfText.Typed(item.Label)} are left.";
}
