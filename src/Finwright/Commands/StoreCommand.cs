using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands;

/// <summary>A command that looks into the workshop's store, or changes it.</summary>
internal abstract class StoreCommand : StorePathCommand
{
    private readonly bool _changes;

    /// <summary>Declares a command.</summary>
    /// <param name="name">The word that calls it.</param>
    /// <param name="description">What it does, in one or two sentences.</param>
    /// <param name="example">A call that works as it stands.</param>
    /// <param name="changes">Whether it changes the store.</param>
    protected StoreCommand(string name, string description, string example, bool changes)
        : base(name, description, example) => _changes = changes;

    /// <summary>Whether a store that is not there is made: by changes that add something.</summary>
    protected virtual bool Makes => _changes;

    /// <inheritdoc/>
    public sealed override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string path = PathOf(arguments);
        using WorkshopStore store = WorkshopStore.Open(path, create: Makes);
        StoreException? refusal = store.Refusal;
        if (refusal is { Problem: not StoreProblem.Wrong })
        {
            if (_changes)
                throw refusal;
            Warn(refusal, streams);
        }

        ExitCode code = Run(arguments, store, streams, cancellation);
        // Damage may have been met only by looking.
        if (refusal is null && store.Refusal is { } met)
            Warn(met, streams);
        return code;
    }

    /// <summary>Does the work.</summary>
    /// <param name="arguments">The parsed command line.</param>
    /// <param name="store">The store.</param>
    /// <param name="streams">Where to write.</param>
    /// <param name="cancellation">Set by Ctrl-C.</param>
    protected abstract ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation);

    private static void Warn(StoreException refusal, TextStreams streams) =>
        streams.Error.WriteLine("finwright: " + Assessment.Packing.Wrapping.Wrap($"{refusal.Message} It is only read. {refusal.Remedy}", streams.Width, 11, 11));
}
