using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>Has a deleted outing back.</summary>
internal sealed class OutingRestoreCommand : OutingChange
{
    private readonly Argument<long> _number = OutingNumber.Argument("The number of the outing that was deleted.");

    public OutingRestoreCommand()
        : base("restore", "Have a deleted outing back, with its track.", "finwright outing restore 1") =>
        AddAll(_number);

    protected override (string Did, Outing About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Outing outing = store.Outings.Get(arguments.GetValue(_number));
        store.Outings.Restore(outing.Id);
        return ($"Outing {outing.Id} of {ShelfText.Day(outing.SailedOn)} is on the list again.", outing);
    }
}
