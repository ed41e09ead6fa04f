using System.CommandLine;
using Finwright.Commands;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Every command of the program, those below others too.</summary>
internal static class ProgramCommands
{
    public static IReadOnlyList<ProgramCommand> All { get; } = [.. Below(CommandLine.Root(new(TextWriter.Null, TextWriter.Null, TextStreams.PlainWidth, ShowsProgress: false)))];

    private static IEnumerable<ProgramCommand> Below(Command command) =>
        command.Subcommands.SelectMany(sub => Below(sub).Concat(sub is ProgramCommand own ? [own] : []));
}
