using System.CommandLine;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright.Commands;

/// <summary>A command about the workshop's store: which file it is, and how the answer is wanted.</summary>
internal abstract class StorePathCommand : ProgramCommand
{
    private readonly Option<string?> _store = Inputs.Text("--store", "file", $"The workshop's store; else the file that {StorePlace.Variable} names, else {StorePlace.FileName} among your own data.");
    private readonly Option<bool> _json = Inputs.Json();

    /// <summary>Declares a command.</summary>
    /// <param name="name">The word that calls it.</param>
    /// <param name="description">What it does, in one or two sentences.</param>
    /// <param name="example">A call that works as it stands.</param>
    protected StorePathCommand(string name, string description, string example)
        : base(name, description, example)
    {
    }

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
