using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Reviewing;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Built;

/// <summary>Holds a build against its prediction, and says which assumption was off.</summary>
internal sealed class BuiltShowCommand : StoreCommand
{
    private readonly Argument<string> _build = Inputs.Needed("BUILD", "The build.");
    private readonly Option<bool> _quick = Inputs.Switch("--quick", "Only what is kept or at once: the bench. Else everything, a minute or two for a design that was not worked out before.");

    public BuiltShowCommand()
        : base(
            "show",
            "Hold a build against its prediction: weight, plastic, resin, time, peak temperature, cost, and every reading of the bench, each with its range; and which assumption was off.",
            "finwright built show \"Sandbar one\" --quick",
            changes: false) => AddAll(_build, _quick);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Build build = ComparedInput.BuildOf(store, arguments.GetRequiredValue(_build));
        using Assessor assessor = OpenAssessor();
        using ProgressLine progress = new(streams);
        ComparedInput input = new(store, assessor, isQuick: false, progress, cancellation);
        Workshop.Shelf.Revision revision = store.Shelf.Find(build.RevisionId)!;
        Workshop.Comparing.FinResults predicted = arguments.GetValue(_quick) ? input.KeptOrQuick(revision) : input.ResultsOf(revision);
        BuildReview review = BuildReview.Of(store, build, predicted, assessor, cancellation);
        progress.Clear();
        ReviewSummary summary = ReviewSummary.Of(store, review, ProgramVersion.Text);
        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(summary));
        else
            ReviewText.Write(streams, summary);
        return ExitCode.Good;
    }
}
