using System.CommandLine;
using System.CommandLine.Parsing;
using Finwright.Commands;

namespace Finwright.Terminal;

/// <summary>What is wrong with a command line, in words that name the word at fault.</summary>
internal static class CommandLineProblem
{
    /// <summary>The first thing that is wrong, or null when the command can run.</summary>
    /// <param name="parsed">The command line as the parser understood it.</param>
    public static string? In(ParseResult parsed)
    {
        IReadOnlyList<string> unknown = parsed.UnmatchedTokens;
        if (parsed.CommandResult.Command is not ProgramCommand command)
            return unknown.Count == 0 ? "A command is missing." : $"There is no command \"{unknown[0]}\"; the commands are {Names(parsed)}.";

        // The parser takes a misspelt option for the file, and then blames the file that follows it.
        ArgumentResult[] given = [.. parsed.CommandResult.Children.OfType<ArgumentResult>()];
        bool literal = parsed.Tokens.Any(token => token.Type == TokenType.DoubleDash);
        string? option = literal ? null : given.SelectMany(argument => argument.Tokens.Select(token => token.Value)).Concat(unknown).FirstOrDefault(LooksLikeOption);
        if (option is not null)
            return $"\"{Words(command)}\" has no option \"{option}\".";
        if (given.FirstOrDefault(argument => argument.Tokens.Count == 0) is { } missing)
            return $"\"{Words(command)}\" needs {missing.Argument.HelpName}: {missing.Argument.Description}";
        if (unknown.Count > 0)
            return $"\"{Words(command)}\" does not know what to do with \"{unknown[0]}\".";
        return parsed.Errors.Count > 0 ? parsed.Errors[0].Message : null;
    }

    // As the person typed it after the program's name.
    private static string Words(ProgramCommand command) => command.Call["finwright ".Length..];

    private static bool LooksLikeOption(string word) => word.Length > 1 && word[0] == '-';

    private static string Names(ParseResult parsed) =>
        string.Join(", ", parsed.RootCommandResult.Command.Subcommands.Select(command => command.Name));
}
