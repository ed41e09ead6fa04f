using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>Has a deleted design back, or makes an old revision the latest.</summary>
internal sealed class ShelfRestoreCommand : ShelfChange
{
    private readonly Argument<string> _name = Inputs.Needed("NAME", "A design that was deleted; or NAME@2, a revision that is to be the latest again.");

    public ShelfRestoreCommand()
        : base("restore", "Have a deleted design back; or keep an old revision once more, as the latest. Nothing that came between is lost.", "finwright shelf restore \"Fairway upright@1\"") =>
        AddAll(_name);

    protected override (string Did, Revision? About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Reference reference = Reference.Parse(arguments.GetRequiredValue(_name));
        if (reference.Number is not null)
        {
            Revision old = store.Shelf.Get(reference);
            Revision latest = store.Shelf.Again(old.Id, $"Finwright {ProgramVersion.Text}");
            return ($"Kept {old.Label} once more, as {latest.Label}.", latest);
        }

        if (store.Shelf.Find(reference.Name) is { } there)
            throw new WrongInputException($"\"{there.Name}\" is on the shelf.", $"Name the revision that is to be the latest again, for example {Reference.Of(there.Name, 1)}.");
        store.Shelf.Restore(reference.Name);
        Revision back = LatestOf(store, reference.Name);
        return ($"\"{back.DesignName}\" is on the shelf again.", back);
    }
}
