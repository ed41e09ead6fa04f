using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands;

/// <summary>A command that looks into the workshop's store, or changes it.</summary>
internal abstract class StoreCommand : ProgramCommand
{
    private readonly bool _changes;
    private readonly Option<string?> _store = Inputs.Text("--store", "file", $"The workshop's store; else the file that {StorePlace.Variable} names, else {StorePlace.FileName} among your own data.");
    private readonly Option<bool> _json = Inputs.Json();

    /// <summary>Declares a command.</summary>
    /// <param name="name">The word that calls it.</param>
    /// <param name="description">What it does, in one or two sentences.</param>
    /// <param name="example">A call that works as it stands.</param>
    /// <param name="changes">Whether it changes the store, and so makes one that is not there.</param>
    protected StoreCommand(string name, string description, string example, bool changes)
        : base(name, description, example) => _changes = changes;

    /// <inheritdoc/>
    public sealed override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string path = PathOf(arguments);
        using WorkshopStore store = WorkshopStore.Open(path, create: _changes);
        if (store.Refusal is { Problem: not StoreProblem.Wrong } refusal)
        {
            if (_changes)
                throw refusal;
            streams.Error.WriteLine("finwright: " + Assessment.Packing.Wrapping.Wrap($"{refusal.Message} It is only read. {refusal.Remedy}", streams.Width, 11, 11));
        }

        return Run(arguments, store, streams, cancellation);
    }

    /// <summary>Does the work.</summary>
    /// <param name="arguments">The parsed command line.</param>
    /// <param name="store">The store.</param>
    /// <param name="streams">Where to write.</param>
    /// <param name="cancellation">Set by Ctrl-C.</param>
    protected abstract ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation);

    /// <summary>Adds what is given to the command, and after it the options that all commands of the store share.</summary>
    protected void AddAll(params ReadOnlySpan<Symbol> given)
    {
        foreach (Symbol symbol in given)
        {
            if (symbol is Argument argument)
                Add(argument);
            else
                Add((Option)symbol);
        }

        Add(_store);
        Add(_json);
    }

    /// <summary>Whether the answer is wanted as JSON.</summary>
    protected bool WantsJson(ParseResult arguments) => arguments.GetValue(_json);

    /// <summary>The store's file.</summary>
    /// <exception cref="WrongInputException">None is named, and the system names no place.</exception>
    protected string PathOf(ParseResult arguments)
    {
        string? path = arguments.GetValue(_store) is string named ? named : StorePlace.OfUser();
        return string.IsNullOrWhiteSpace(path) ? throw new WrongInputException("The name of the store is empty.", $"Name its file with --store, for example --store {StorePlace.FileName}.") : path;
    }
}
