using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>What a fin takes, costs, and how long it takes.</summary>
internal sealed class PlanCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Option<bool> _json = Inputs.Json();

    public PlanCommand()
        : base(
            "plan",
            "Add up: what to buy, what the fin and a spare copy cost by your prices, and every step from the first print to sailing with its time and cautions.",
            "finwright plan my-fin.fin.json")
    {
        Add(_file);
        Add(_json);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        using Assessor assessor = OpenAssessor();
        using ProgressLine progress = new(streams);
        AssessmentResult result = assessor.Assess(DesignFile.Read(file), AssessmentDepth.Cure, progress, cancellation);
        progress.Clear();
        PlanSummary summary = PlanSummary.Of(MakingResult.Of(result), ProgramVersion.Text);
        if (arguments.GetValue(_json))
        {
            streams.Out.Write(AnswerJson.Write(summary));
        }
        else if (result.Plan is not null)
        {
            PlanText.Write(streams, summary);
            FindingText.Write(streams.Out, result.Findings, file, streams.Width);
        }
        else
        {
            FindingText.Write(streams.Error, result.Findings, file, streams.Width);
            streams.Error.WriteLine();
            streams.Error.WriteLine($"finwright: {FindingText.Count(result.Findings)}; nothing could be worked out.");
        }

        return DesignFile.ExitCodeOf(result);
    }
}
