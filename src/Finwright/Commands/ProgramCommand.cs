using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Stages;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>One command of the program, with what its help page says beyond the options.</summary>
internal abstract class ProgramCommand : Command
{
    /// <summary>Declares a command.</summary>
    /// <param name="name">The word that calls it.</param>
    /// <param name="description">What it does, in one or two sentences.</param>
    /// <param name="example">A call that works as it stands.</param>
    protected ProgramCommand(string name, string description, string example)
        : base(name, description)
    {
        Example = example;
        // The command line calls Run itself; the parser only has to see that a command with commands below it can be called by itself.
        SetAction(static _ => { });
    }

    /// <summary>A call that works as it stands.</summary>
    public string Example { get; }

    /// <summary>The words that call it, with the program's own.</summary>
    public string Call => PathOf(this);

    /// <summary>Keeps results of stages beyond this call; null for none, as the program ends after it.</summary>
    public IStageCache? Results { get; set; }

    /// <summary>Does the work.</summary>
    /// <param name="arguments">The parsed command line.</param>
    /// <param name="streams">Where to write.</param>
    /// <param name="cancellation">Set by Ctrl-C.</param>
    public abstract ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation);

    /// <summary>The words that call a command, with the program's own.</summary>
    public static string PathOf(Command command) =>
        command is RootCommand ? "finwright" : command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? $"{PathOf(parent)} {command.Name}" : command.Name;

    /// <summary>Opens what works designs out; the caller disposes of it.</summary>
    protected Assessor OpenAssessor() => new(Results, curves: CacheFolder.OpenCurves());
}
