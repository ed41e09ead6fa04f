using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>Changes what is kept of a build.</summary>
internal sealed class BuiltChangeCommand : BuiltChange
{
    private readonly Argument<string> _build = Inputs.Needed("BUILD", "The build.");
    private readonly Option<string?> _name = Inputs.Text("--name", "text", "Another name for it.");
    private readonly BuildInputs _inputs = new();

    public BuiltChangeCommand()
        : base("change", "Add to what is kept of a build, or put it right. What is not given stays as it is.", "finwright built change \"Fairway grey\" --peak-celsius 41 --problems \"a bubble near the tip\"") =>
        AddAll([_build, _name, .. _inputs.All]);

    protected override (string Did, Build About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Build before = store.Builds.Get(arguments.GetRequiredValue(_build));
        Build after = _inputs.Into(before with { Name = arguments.GetValue(_name) ?? before.Name }, arguments, store);
        if (after == before)
            throw new WrongInputException("Nothing is to be changed.", "Say what, for example --mass-g 412.");
        store.Together(() => BuildStock.Take(store, after = store.Builds.Change(after)));
        return ($"Changed {ShelfText.Typed(after.Name)}.", after);
    }
}
