using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Gives a design other tags.</summary>
internal sealed class ShelfTagCommand : ShelfChange
{
    private readonly Argument<string> _name = Inputs.Needed("NAME", "The design on the shelf.");
    private readonly Argument<string> _tags = Inputs.Needed("TAGS", "Words to find it by, separated by commas; they take the place of those it has. \"\" takes all away.");

    public ShelfTagCommand()
        : base("tag", "Give a design on the shelf the words to find it by.", "finwright shelf tag \"Fairway upright\" slalom,estuary") =>
        AddAll(_name, _tags);

    protected override (string Did, Revision? About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Revision latest = LatestOf(store, arguments.GetRequiredValue(_name));
        IReadOnlyList<string> tags = Inputs.Words(arguments.GetRequiredValue(_tags));
        store.Shelf.Tag(latest.DesignId, tags);
        return (tags.Count == 0 ? $"\"{latest.DesignName}\" has no tags now." : $"\"{latest.DesignName}\" is tagged {string.Join(", ", tags)}.", latest);
    }
}
