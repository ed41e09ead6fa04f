using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>A command that changes what is kept of builds and says in a sentence what it did.</summary>
internal abstract class BuiltChange : StoreCommand
{
    /// <inheritdoc cref="StoreCommand(string, string, string, bool)"/>
    protected BuiltChange(string name, string description, string example)
        : base(name, description, example, changes: true)
    {
    }

    /// <inheritdoc/>
    protected sealed override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string did = "";
        Build? build = null;
        store.Together(() => (did, build) = Change(arguments, store));
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new BuildDoneAnswer($"Finwright {ProgramVersion.Text}", did, BuildAnswer.Of(store, build!))));
        else
            streams.Out.WriteLine(Wrapping.Wrap(did, streams.Width));
        return ExitCode.Good;
    }

    /// <summary>Makes the change: all of it or nothing.</summary>
    /// <returns>What was done in a sentence, and the build that it was about.</returns>
    protected abstract (string Did, Build Build) Change(ParseResult arguments, WorkshopStore store);
}
