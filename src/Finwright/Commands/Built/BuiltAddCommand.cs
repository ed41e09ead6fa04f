using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>Keeps that a fin was built.</summary>
internal sealed class BuiltAddCommand : BuiltChange
{
    private readonly Argument<string> _design = Inputs.Needed("NAME", "The design on the shelf, or the revision that was built, as NAME@2.");
    private readonly Option<string?> _name = Inputs.Text("--name", "text", "What this fin is called, as it stands on it; the design's name and a number if left out.");
    private readonly BuildInputs _inputs = new();

    public BuiltAddCommand()
        : base("add", "Keep that a fin was built: of which revision, of which batches, what it took and weighs. More can be said later with \"built change\".", "finwright built add \"Fairway upright\" --plastic-g 186 --resin-ml 190 --mass-g 412") =>
        AddAll([_design, _name, .. _inputs.All]);

    protected override (string Did, Build About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Revision revision = store.Shelf.Get(Reference.Parse(arguments.GetRequiredValue(_design)));
        Build build = store.Together(() =>
        {
            Build added = store.Builds.Add(_inputs.Into(new() { RevisionId = revision.Id, Name = arguments.GetValue(_name) ?? FreeName(store, revision.DesignName) }, arguments, store));
            BuildStock.Take(store, added);
            return added;
        });
        return ($"Kept {ShelfText.Typed(build.Name)}, built of {build.Revision}.", build);
    }

    private static string FreeName(WorkshopStore store, string design)
    {
        int number = 1;
        while (store.Builds.Find($"{design} {number}") is not null)
            number++;
        return $"{design} {number}";
    }
}
