using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;
using Finwright.Terminal;
using Finwright.Water.Sailing;

namespace Finwright.Commands;

/// <summary>Says what a fin does when it sails.</summary>
internal sealed class WaterCommand : ProgramCommand
{
    private const string SweptQuantity = "leeway=";
    private const double GreatestLeewayDegrees = 25;

    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file.");
    private readonly Option<string?> _sweep = Inputs.Text("--sweep", "leeway=first:last:step", "Give forces over leeway at cruise speed, in degrees, within -25 to 25.");
    private readonly Option<string?> _against = Inputs.Text("--against", "FILE", "Design of a fin that you know: how far has the centre of effort moved?");
    private readonly Option<bool> _json = Inputs.Json();

    public WaterCommand()
        : base(
            "water",
            "Sail the fin: leeway, drag, centre of effort, how far it is from letting go, load case by load case, and what to change. The sections of a new fin take up to half a minute; after that they are remembered.",
            "finwright water my-fin.fin.json --sweep leeway=0:15:0.5")
    {
        Add(_file);
        foreach (Option option in (Option[])[_sweep, _against, _json])
            Add(option);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        Sweep? sweep = SweepOf(arguments.GetValue(_sweep));
        bool json = arguments.GetValue(_json);
        using Assessor assessor = OpenAssessor();
        using ProgressLine progress = new(streams);
        AssessmentResult result = assessor.Assess(DesignFile.Read(file), AssessmentDepth.Water, progress, cancellation);
        AssessmentResult? reference = null;
        if (arguments.GetValue(_against) is string other)
        {
            reference = assessor.Assess(DesignFile.Read(other), AssessmentDepth.Water, progress, cancellation);
            progress.Clear();
            if (reference.Afloat is null)
            {
                FindingText.Write(streams.Error, reference.Findings, other, streams.Width);
                throw new WrongInputException($"The fin to compare with, \"{other}\", could not be worked out.", "Correct its design file, or leave --against out.");
            }
        }

        progress.Clear();
        WaterSummary summary = WaterSummary.Of(result, ProgramVersion.Text, reference);
        if (sweep is not null && result.Afloat is { Surface: { } surface } afloat)
        {
            double speed = afloat.Balance[LoadCaseKind.Cruise].Speed;
            summary = summary with { Sweep = [.. sweep.Values.Select(degrees => SweepSummary.Of(surface.Solve(afloat.Flow(speed, double.DegreesToRadians(degrees)))))] };
        }

        if (json)
        {
            streams.Out.Write(AnswerJson.Write(summary));
        }
        else if (result is { Design: { } design, Afloat: { } sailed })
        {
            IReadOnlyList<Verdict> verdicts = reference is null ? result.Verdicts : WaterVerdicts.Of(design, sailed, reference.Afloat, reference.Design?.Name);
            WaterText.Write(streams, summary, verdicts, sweep is not null);
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

    private static Sweep? SweepOf(string? text)
    {
        if (text is null)
            return null;
        return text.StartsWith(SweptQuantity, StringComparison.Ordinal)
            ? Sweep.Read("--sweep leeway", text[SweptQuantity.Length..], -GreatestLeewayDegrees, GreatestLeewayDegrees, "degrees", "beyond which the fin is a bluff body")
            : throw new WrongInputException($"--sweep takes leeway=first:last:step, not \"{(text.Length <= 40 ? text : text[..37] + "...")}\".", "Write for example --sweep leeway=0:15:0.5.");
    }
}
