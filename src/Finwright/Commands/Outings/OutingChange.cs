using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>A command that changes what is kept of outings.</summary>
internal abstract class OutingChange : StoreChange<Outing>
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected OutingChange(string name, string description, string example)
        : base(name, description, example)
    {
    }

    /// <inheritdoc/>
    protected sealed override object Answer(WorkshopStore store, string madeBy, string did, Outing about) => new OutingDoneAnswer(madeBy, did, OutingAnswer.Of(store, about));
}
