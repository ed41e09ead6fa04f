using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>A command that changes what is kept of builds.</summary>
internal abstract class BuiltChange : StoreChange<Build>
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected BuiltChange(string name, string description, string example)
        : base(name, description, example)
    {
    }

    /// <inheritdoc/>
    protected sealed override object Answer(WorkshopStore store, string madeBy, string did, Build about) => new BuildDoneAnswer(madeBy, did, BuildAnswer.Of(store, about));
}
