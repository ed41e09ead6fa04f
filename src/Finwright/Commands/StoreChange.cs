using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands;

/// <summary>A command that changes the workshop's store and says in a sentence what it did.</summary>
/// <typeparam name="T">What the change is about.</typeparam>
internal abstract class StoreChange<T> : StoreCommand
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected StoreChange(string name, string description, string example)
        : base(name, description, example, changes: true)
    {
    }

    /// <inheritdoc/>
    protected sealed override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        (string did, T about) = Change(arguments, store, streams, cancellation);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(Answer(store, $"Finwright {ProgramVersion.Text}", did, about)));
        else
            streams.Out.WriteLine(Wrapping.Wrap(did, streams.Width));
        return ExitCode.Good;
    }

    /// <summary>Makes the change: all of it or nothing.</summary>
    /// <returns>What was done in a sentence, and what it was about.</returns>
    protected abstract (string Did, T About) Change(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation);

    /// <summary>What was done, for JSON.</summary>
    /// <param name="store">The store.</param>
    /// <param name="madeBy">Program and version.</param>
    /// <param name="did">In a sentence.</param>
    /// <param name="about">What it was about.</param>
    protected abstract object Answer(WorkshopStore store, string madeBy, string did, T about);
}
