using System.CommandLine;
using System.CommandLine.Invocation;
using Finwright.Assessment.Packing;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Prints a help page: what the command does, how it is called, what can be given, an example, the exit codes.</summary>
/// <param name="streams">Where to write.</param>
internal sealed class HelpPage(TextStreams streams) : SynchronousCommandLineAction
{
    private const int Column = 30;

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        Write(parseResult.CommandResult.Command);
        return (int)ExitCode.Good;
    }

    private void Write(Command command)
    {
        Line(command.Description ?? "");
        Heading("How to call it");
        string call = ProgramCommand.PathOf(command);
        if (command is ProgramCommand)
            Line($"  {call}{string.Concat(command.Arguments.Select(a => a.Arity.MinimumNumberOfValues > 0 ? $" {a.Name}" : $" [{a.Name}]"))} [options]");
        if (command.Subcommands.Count > 0)
            Line($"  {call} COMMAND ...");
        if (command.Arguments.Count > 0)
        {
            Heading("What to give");
            foreach (Argument argument in command.Arguments)
                Row(argument.Name, argument.Description ?? "");
        }

        if (command.Subcommands.Count > 0)
        {
            Heading("Commands");
            foreach (Command sub in command.Subcommands)
                Row(sub.Name, sub.Description ?? "");
        }

        Heading("Options");
        foreach (Option option in command.Options.Concat(command is RootCommand ? [] : Above(command).SelectMany(p => p.Options).Where(o => o.Recursive)))
            Row(option.HelpName is { Length: > 0 } value ? $"{option.Name} {value}" : option.Name, option.Description ?? "");

        Heading("Example");
        string example = command is ProgramCommand { Example: var own } ? own : "finwright new my-fin.fin.json --family upright --span-mm 360 --area-cm2 300";
        Line("  " + example);

        Heading("Exit codes");
        Line("  0 good; 1 the fin cannot be made as described, or a verdict fails; 2 a file, an option or a folder is wrong; 3 a fault in the program; 130 stopped by Ctrl-C.");
        if (command is RootCommand)
        {
            Heading("Where things are written");
            Line("  Numbers, findings and JSON go to standard output. Progress, and whatever keeps a command from answering, go to standard error.");
        }
    }

    private static IEnumerable<Command> Above(Command command) => command.Parents.OfType<Command>().SelectMany(parent => Above(parent).Prepend(parent));

    private void Heading(string text)
    {
        streams.Out.WriteLine();
        streams.Out.WriteLine(text);
    }

    private void Line(string text)
    {
        int indent = text.Length - text.TrimStart().Length;
        streams.Out.WriteLine(new string(' ', indent) + Wrapping.Wrap(text.TrimStart(), streams.Width, indent, indent));
    }

    private void Row(string left, string right)
    {
        string first = $"  {left}".PadRight(Column);
        if (first.Length > Column || first[^1] != ' ')
            first += "\n" + new string(' ', Column);
        streams.Out.WriteLine(first + Wrapping.Wrap(right, streams.Width, Column, Column));
    }
}
