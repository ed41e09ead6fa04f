using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>A command that changes the shelf.</summary>
internal abstract class ShelfChange : StoreChange<Revision?>
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected ShelfChange(string name, string description, string example)
        : base(name, description, example)
    {
    }

    /// <inheritdoc/>
    protected sealed override object Answer(WorkshopStore store, string madeBy, string did, Revision? about) => new ShelfDoneAnswer(madeBy, did, about is null ? null : RevisionAnswer.Of(about));

    /// <summary>The latest revision of a design by its name.</summary>
    protected static Revision LatestOf(WorkshopStore store, string name) => store.Shelf.Get(new Reference(name.Trim(), null));
}
