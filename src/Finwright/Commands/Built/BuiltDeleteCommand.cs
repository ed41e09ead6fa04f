using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>Takes a build off the list.</summary>
internal sealed class BuiltDeleteCommand : BuiltChange
{
    private readonly Argument<string> _build = Inputs.Needed("BUILD", "The build.");

    public BuiltDeleteCommand()
        : base("delete", $"Take a build off the list. For {StoreBin.Days} days \"built restore\" has it back. What it took from the stock stays taken.", "finwright built delete \"Eelgrass two\"") =>
        AddAll(_build);

    protected override (string Did, Build About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Build build = store.Builds.Get(arguments.GetRequiredValue(_build));
        store.Builds.Delete(build.Id);
        return ($"Deleted {ShelfText.Typed(build.Name)}. For {StoreBin.Days} days you can have it back: finwright built restore {ShelfText.Typed(build.Name)}", build);
    }
}
