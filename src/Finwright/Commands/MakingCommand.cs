using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Verdicts;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>What the commands for print, pour and cure have in common: a design file, or a mesh with settings.</summary>
internal abstract class MakingCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file; or a mesh (STL, or 3MF with one part) as it is printed, z up.");
    private readonly Option<string?> _settings = Inputs.Text("--settings", "file", "With a mesh: its settings (docs/part-settings.md), or a design file whose settings are taken; left out: every default.");
    private readonly Option<bool> _json = Inputs.Json();
    private readonly AssessmentDepth _depth;

    protected MakingCommand(string name, string description, string example, AssessmentDepth depth)
        : base(name, description, example)
    {
        _depth = depth;
        Add(_file);
        Add(_settings);
        Add(_json);
    }

    /// <inheritdoc/>
    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        Check(arguments, streams, cancellation);
        string file = arguments.GetRequiredValue(_file);
        bool json = arguments.GetValue(_json);
        using Assessor assessor = OpenAssessor();
        using ProgressLine progress = new(streams);
        MakingResult result = MeshFile.IsMesh(file)
            ? assessor.Make(Path.GetFileNameWithoutExtension(file), MeshFile.Read(file), SettingsFile.Read(arguments.GetValue(_settings)), _depth, progress, cancellation)
            : arguments.GetValue(_settings) is null
                ? MakingResult.Of(assessor.Assess(DesignFile.Read(file), _depth, progress, cancellation))
                : throw new WrongInputException("--settings goes with a mesh; a design file holds its own settings.", "Leave --settings out, or name an STL or 3MF file.");
        result = Refine(result, arguments);
        progress.Clear();
        if (json)
        {
            WriteJson(streams, result);
        }
        else if (IsWorkedOut(result))
        {
            WriteText(streams, result);
            FindingText.Write(streams.Out, result.Findings, file, streams.Width);
        }
        else
        {
            FindingText.Write(streams.Error, result.Findings, file, streams.Width);
            streams.Error.WriteLine();
            streams.Error.WriteLine($"finwright: {FindingText.Count(result.Findings)}; nothing could be worked out.");
        }

        return result.InputIsWrong ? ExitCode.WrongInput : result.HasErrors || Verdicts(result).Any(verdict => verdict.State == VerdictState.Fails) ? ExitCode.Fails : ExitCode.Good;
    }

    /// <summary>Reads further options and refuses those that are wrong, before any work is done.</summary>
    protected virtual void Check(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
    }

    /// <summary>Takes further options into account; nothing unless a command has some.</summary>
    protected virtual MakingResult Refine(MakingResult result, ParseResult arguments) => result;

    /// <summary>Whether there is an answer.</summary>
    protected abstract bool IsWorkedOut(MakingResult result);

    /// <summary>The verdicts that decide the exit code.</summary>
    protected abstract IReadOnlyList<Verdict> Verdicts(MakingResult result);

    /// <summary>Writes the answer as JSON, also when there is none.</summary>
    protected abstract void WriteJson(TextStreams streams, MakingResult result);

    /// <summary>Writes the answer as text.</summary>
    protected abstract void WriteText(TextStreams streams, MakingResult result);
}
