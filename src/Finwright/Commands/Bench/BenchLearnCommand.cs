using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Reviewing;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Bench;

/// <summary>Learns from a build, so that the next prediction of its batches is better.</summary>
internal sealed class BenchLearnCommand : StoreCommand
{
    private readonly Argument<string> _build = Inputs.Needed("BUILD", "The build that teaches.");
    private readonly Option<string?> _note = Inputs.Text("--note", "text", "Your own words.");

    public BenchLearnCommand()
        : base(
            "learn",
            "Learn from a build: stiffness of walls and core from its readings, and plastic, resin and time from what was measured while it was made. What it teaches goes into the predictions of further builds of the same filament and resin; learning again takes the place of before.",
            "finwright bench learn \"Sandbar one\"",
            changes: true) => AddAll(_build, _note);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Build build = ComparedInput.BuildOf(store, arguments.GetRequiredValue(_build));
        using Assessor assessor = OpenAssessor();
        using ProgressLine progress = new(streams);
        FinResults predicted = Teaching.Predicted(store, build, assessor, ProgramVersion.Text, progress, cancellation);
        Teaching teaching = Teaching.Of(store, build, predicted, assessor, ProgramVersion.Text, TimeProvider.System.GetUtcNow(), arguments.GetValue(_note) ?? "", cancellation);
        progress.Clear();
        cancellation.ThrowIfCancellationRequested();
        IReadOnlyList<Calibration> kept = teaching.Keep(store);
        BenchLearnAnswer answer = new(build.Name, [.. kept.Select(CalibrationSummary.Of)], teaching.Remarks, teaching.NotTaught);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(answer));
        else
            BenchSessionText.WriteLearned(streams, answer);
        return ExitCode.Good;
    }
}

/// <summary>What a build taught.</summary>
/// <param name="Build">The build.</param>
/// <param name="Calibrations">What was kept.</param>
/// <param name="Remarks">What readings leave open.</param>
/// <param name="NotTaught">What it does not teach, and why.</param>
internal sealed record BenchLearnAnswer(string Build, IReadOnlyList<CalibrationSummary> Calibrations, IReadOnlyList<string> Remarks, IReadOnlyList<string> NotTaught)
{
    /// <summary>Says what the answer is.</summary>
    public string Kind { get; } = "finwright-bench-learn";
}
