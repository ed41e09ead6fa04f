using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Shelf;

/// <summary>A command that changes the shelf and says in a sentence what it did.</summary>
internal abstract class ShelfChange : StoreCommand
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected ShelfChange(string name, string description, string example)
        : base(name, description, example, changes: true)
    {
    }

    /// <inheritdoc/>
    protected sealed override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        (string did, Revision? revision) = Change(arguments, store, streams, cancellation);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new ShelfDoneAnswer($"Finwright {ProgramVersion.Text}", did, revision is null ? null : RevisionAnswer.Of(revision))));
        else
            streams.Out.WriteLine(Wrapping.Wrap(did, streams.Width));
        return ExitCode.Good;
    }

    /// <summary>Makes the change.</summary>
    /// <returns>What was done in a sentence, and the revision that it was about.</returns>
    protected abstract (string Did, Revision? Revision) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation);

    /// <summary>The latest revision of a design by its name.</summary>
    protected static Revision LatestOf(WorkshopStore store, string name) => store.Shelf.Get(new Reference(name.Trim(), null));
}
