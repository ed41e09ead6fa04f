using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Stages;
using Finwright.Commands;
using Finwright.Commands.Bench;
using Finwright.Commands.Built;
using Finwright.Commands.Exchange;
using Finwright.Commands.Outings;
using Finwright.Commands.Shelf;
using Finwright.Commands.Stock;
using Finwright.Commands.Store;
using Finwright.Terminal;
using Finwright.Workshop.Storing;

namespace Finwright;

/// <summary>The command line: finds the command, runs it, and is the one place where exceptions end.</summary>
internal static class CommandLine
{
    private static readonly Option<bool> Trace = new("--trace")
    {
        Description = "On a fault, show the technical details too.",
        Arity = ArgumentArity.Zero,
        Recursive = true,
    };

    /// <summary>Runs the program.</summary>
    /// <param name="arguments">The words after the program's name.</param>
    /// <param name="streams">Where to write.</param>
    /// <param name="cancellation">Set by Ctrl-C.</param>
    /// <param name="results">Keeps results of stages between calls of one process; null for none.</param>
    public static ExitCode Run(IReadOnlyList<string> arguments, TextStreams streams, CancellationToken cancellation, IStageCache? results = null)
    {
        RootCommand root = Root(streams);
        ParseResult parsed = root.Parse(arguments.Count == 0 ? ["--help"] : arguments, new() { ResponseFileTokenReplacer = null });
        if (parsed.Action is HelpPage or VersionLine)
            return (ExitCode)((SynchronousCommandLineAction)parsed.Action).Invoke(parsed);
        string called = parsed.CommandResult.Command is ProgramCommand named ? named.Call : "finwright";
        if (CommandLineProblem.In(parsed) is string problem)
            return Refuse(streams, problem, $"See {called} --help.");
        ProgramCommand command = (ProgramCommand)parsed.CommandResult.Command;
        command.Results = results;

        try
        {
            return command.Run(parsed, streams, cancellation);
        }
        catch (WrongInputException wrong)
        {
            return Refuse(streams, wrong.Message, wrong.Remedy);
        }
        catch (StoreException refusal)
        {
            return Refuse(streams, refusal.Message, refusal.Remedy);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            streams.Error.WriteLine("finwright: stopped; nothing was written.");
            return ExitCode.Stopped;
        }
#pragma warning disable CA1031 // The one place where every exception ends.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Say(streams, $"A fault in the program: {fault.Message}");
            Say(streams, parsed.GetValue(Trace) ? fault.ToString() : $"What to do: run it again with --trace and report what it says, with the design file. Your files are as they were.");
            return ExitCode.Fault;
        }
    }

    /// <summary>The program's commands, with those below them.</summary>
    /// <param name="streams">Where help goes.</param>
    internal static RootCommand Root(TextStreams streams)
    {
        RootCommand root = new("Finwright makes windsurf fins that you can print: a plain design file goes in; watertight parts to print, what the fin does in the water, and the numbers come out.")
        {
            new NewCommand(),
            new CheckCommand(),
            new PackCommand(),
            new PapersCommand(),
            new WaterCommand(),
            new StrengthCommand(),
            new BenchCommand(),
            new PrintCommand(),
            new MotionCommand(),
            new PourCommand(),
            new CureCommand(),
            new CureSlabCommand(),
            new PlanCommand(),
            new MaterialsCommand(),
            new ResinsCommand(),
            new SectionCommand(),
            new SchemaCommand(),
            new ShelfCommand(),
            new BuiltCommand(),
            new CompareCommand(),
            new StockCommand(),
            new OutingCommand(),
            new StoreContentsCommand(),
            new ExportCommand(),
            new ImportCommand(),
            new ServeCommand(),
            Trace,
        };
        root.Directives.Clear();
        foreach (Option option in root.Options)
        {
            if (option is HelpOption help)
            {
                help.Action = new HelpPage(streams);
                help.Description = "Show this page.";
            }
            else if (option is VersionOption version)
            {
                version.Action = new VersionLine(streams);
                version.Description = "Show the program's version.";
            }
        }

        return root;
    }

    private static ExitCode Refuse(TextStreams streams, string problem, string remedy)
    {
        Say(streams, problem);
        Say(streams, $"What to do: {remedy}");
        return ExitCode.WrongInput;
    }

    private static void Say(TextStreams streams, string text) =>
        streams.Error.WriteLine("finwright: " + Wrapping.Wrap(text, streams.Width, 11, 11));

    private sealed class VersionLine(TextStreams streams) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            streams.Out.WriteLine($"finwright {ProgramVersion.Text}");
            return (int)ExitCode.Good;
        }
    }
}
