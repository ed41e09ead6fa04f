using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Outings;

/// <summary>A command that changes what is kept of outings and says in a sentence what it did.</summary>
internal abstract class OutingChange : StoreCommand
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected OutingChange(string name, string description, string example)
        : base(name, description, example, changes: true)
    {
    }

    /// <inheritdoc/>
    protected sealed override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        (string did, Outing outing) = Change(arguments, store, cancellation);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new OutingDoneAnswer($"Finwright {ProgramVersion.Text}", did, OutingAnswer.Of(store, outing))));
        else
            streams.Out.WriteLine(Wrapping.Wrap(did, streams.Width));
        return ExitCode.Good;
    }

    /// <summary>Makes the change: all of it or nothing.</summary>
    /// <returns>What was done in a sentence, and the outing that it was about.</returns>
    protected abstract (string Did, Outing Outing) Change(ParseResult arguments, WorkshopStore store, CancellationToken cancellation);
}
