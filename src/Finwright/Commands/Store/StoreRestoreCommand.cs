using System.CommandLine;
using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Store;

/// <summary>Has a deleted thing back.</summary>
internal sealed class StoreRestoreCommand : StoreCommand
{
    private readonly Argument<string> _kind = Inputs.Needed("KIND", $"What it is, as \"finwright store bin\" says: {string.Join(", ", Choice.All<BinKind>())}.");
    private readonly Argument<string> _number = Inputs.Needed("NUMBER", "Its number, as \"finwright store bin\" says.");

    public StoreRestoreCommand()
        : base("restore", "Have a deleted thing back.", "finwright store restore outing 12", changes: true) => AddAll(_kind, _number);

    protected override bool Makes => false;

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string word = arguments.GetRequiredValue(_kind), text = arguments.GetRequiredValue(_number);
        if (Choice.Find<BinKind>(word) is not BinKind kind)
            throw new WrongInputException($"\"{Inputs.Shorten(word)}\" is no kind of thing that can be deleted.", $"Give one of {string.Join(", ", Choice.All<BinKind>())}.");
        if (!long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number))
            throw new WrongInputException($"\"{Inputs.Shorten(text)}\" is no number of a deleted thing.", "Give the number that \"finwright store bin\" shows.");
        BinItem item = store.Bin.List().FirstOrDefault(item => item.Kind == kind && item.Id == number)
            ?? throw new WrongInputException($"No {Choice.Of(kind)} {number} lies among the deleted things.", "\"finwright store bin\" lists them.");
        store.Restore(kind, number);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new StoreAnswer<BinItem>("finwright-store-restore", $"Finwright {ProgramVersion.Text}", item)));
        else
            streams.Out.WriteLine($"Back again: {Choice.Of(kind)} {number}, {item.Name}.");
        return ExitCode.Good;
    }
}
