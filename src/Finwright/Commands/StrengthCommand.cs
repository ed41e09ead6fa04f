using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Says whether a fin bends, twists, opens at its base or breaks.</summary>
internal sealed class StrengthCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Option<RootHold?> _root = Inputs.OneOf<RootHold>("--root", "How the root is held; else the design's own (base.root_hold).");
    private readonly Option<bool> _json = Inputs.Json();

    public StrengthCommand()
        : base(
            "strength",
            "Load the fin as sailing does: how far it bends and twists and what that does to its grip, where it is strained most, whether the joint opens, how it swings, and what to change. Estimates, never a certificate.",
            "finwright strength my-fin.fin.json")
    {
        Add(_file);
        Add(_root);
        Add(_json);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        DesignReading reading = DesignFile.Read(file);
        if (arguments.GetValue(_root) is RootHold root && reading is { HasErrors: false, Design: { } design })
            reading = reading with { Design = design with { Base = design.Base with { RootHold = root } } };
        using Assessor assessor = OpenAssessor();
        using ProgressLine progress = new(streams);
        AssessmentResult result = assessor.Assess(reading, AssessmentDepth.Strength, progress, cancellation);
        progress.Clear();
        StrengthSummary summary = StrengthSummary.Of(result, ProgramVersion.Text);
        if (arguments.GetValue(_json))
        {
            streams.Out.Write(AnswerJson.Write(summary));
        }
        else if (result.Loaded is not null)
        {
            StrengthText.Write(streams, summary, result.StrengthVerdicts);
            FindingText.Write(streams.Out, result.Findings, file, streams.Width);
        }
        else
        {
            FindingText.Write(streams.Error, result.Findings, file, streams.Width);
            streams.Error.WriteLine();
            streams.Error.WriteLine($"finwright: {FindingText.Count(result.Findings)}; nothing could be worked out.");
        }

        ExitCode code = DesignFile.ExitCodeOf(result);
        return code == ExitCode.Good && summary.Verdicts.Any(verdict => verdict.State == VerdictState.Fails) ? ExitCode.Fails : code;
    }
}
