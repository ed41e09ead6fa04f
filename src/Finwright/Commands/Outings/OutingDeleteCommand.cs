using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>Takes an outing off the list.</summary>
internal sealed class OutingDeleteCommand : OutingChange
{
    private readonly Argument<long> _number = OutingNumber.Argument("The number of the outing.");

    public OutingDeleteCommand()
        : base("delete", $"Take an outing and its track off the list. For {StoreBin.Days} days \"outing restore\" has it back.", "finwright outing delete 1") =>
        AddAll(_number);

    protected override (string Did, Outing About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Outing outing = store.Outings.Get(arguments.GetValue(_number));
        store.Outings.Delete(outing.Id);
        return ($"Deleted outing {outing.Id} of {ShelfText.Day(outing.SailedOn)}. For {StoreBin.Days} days you can have it back: finwright outing restore {outing.Id}", outing);
    }
}
