using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>Has a deleted build back.</summary>
internal sealed class BuiltRestoreCommand : BuiltChange
{
    private readonly Argument<string> _build = Inputs.Needed("BUILD", "The build that was deleted.");

    public BuiltRestoreCommand()
        : base("restore", "Have a deleted build back, with its parts, readings and photos.", "finwright built restore \"Eelgrass two\"") =>
        AddAll(_build);

    protected override (string Did, Build About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string name = arguments.GetRequiredValue(_build).Trim();
        if (store.Builds.Find(name) is { } there)
            throw new WrongInputException($"\"{there.Name}\" is on the list.", "Name a build that was deleted; \"finwright store bin\" lists them.");
        store.Builds.Restore(name);
        return ($"{ShelfText.Typed(name)} is on the list again.", store.Builds.Get(name));
    }
}
