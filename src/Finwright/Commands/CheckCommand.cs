using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Says what is wrong with a design and gives its numbers.</summary>
internal sealed class CheckCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Option<bool> _json = Inputs.Json();

    public CheckCommand()
        : base(
            "check",
            "Read a design file, work the fin out up to the parts on the bed, and say what was found: every finding with its place in the file and what to do, and the numbers of the fin. Writes no file.",
            "finwright check my-fin.fin.json")
    {
        Add(_file);
        Add(_json);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        using Assessor assessor = OpenAssessor();
        using ProgressLine progress = new(streams);
        AssessmentResult result = assessor.Assess(DesignFile.Read(file), AssessmentDepth.Parts, progress, cancellation);
        progress.Clear();
        FinSummary summary = FinSummary.Of(result, ProgramVersion.Text);
        if (arguments.GetValue(_json))
            streams.Out.Write(AnswerJson.Write(summary));
        else
            SummaryText.Write(streams, summary, file, result.Findings);
        return DesignFile.ExitCodeOf(result);
    }
}
