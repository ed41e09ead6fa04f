using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>Corrects what is kept of an outing.</summary>
internal sealed class OutingChangeCommand : OutingChange
{
    private readonly Argument<long> _number = OutingNumber.Argument("The number of the outing.");
    private readonly OutingInputs _inputs = new();

    public OutingChangeCommand()
        : base("change", "Correct or add what is said of an outing; what is not given stays, and so does its track.", "finwright outing change 1 --spin-outs 2 --note \"let go in the chop\"") =>
        AddAll([_number, .. _inputs.All]);

    protected override (string Did, Outing About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        if (!_inputs.SaysSomething(arguments))
            throw new WrongInputException("Nothing is given to change.", "Give at least one option; \"finwright outing change --help\" lists them.");
        Outing outing = store.Outings.Change(_inputs.Into(store.Outings.Get(arguments.GetValue(_number)), arguments, store));
        return ($"Changed outing {outing.Id} of {ShelfText.Day(outing.SailedOn)}.", outing);
    }
}
