using System.CommandLine;
using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>Compares two builds by the runs of their tracks.</summary>
internal sealed class OutingCompareCommand : StoreCommand
{
    private readonly Argument<string> _first = Inputs.Needed("BUILD", "The first build.");
    private readonly Argument<string> _second = Inputs.Needed("OTHER", "The build to compare it with.");
    private readonly Option<bool> _positions = Inputs.Switch("--positions-only", "Work speeds out from positions even where the receiver tells its own.");

    public OutingCompareCommand()
        : base("compare", "Was one fin faster? Runs of two builds with the same sail in the same wind, day by day, with the range that the runs leave.", "finwright outing compare \"Fairway one\" \"Fairway two\"", changes: false) =>
        AddAll(_first, _second, _positions);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        Build first = store.Builds.Get(arguments.GetRequiredValue(_first)), second = store.Builds.Get(arguments.GetRequiredValue(_second));
        if (first.Id == second.Id)
            throw new WrongInputException($"{ShelfText.Typed(first.Name)} is compared with itself.", "Name two builds.");
        bool positionsOnly = arguments.GetValue(_positions);
        (IReadOnlyList<Outing> firstOutings, List<ComparedRun> firstRuns) = RunsOf(store, first, positionsOnly, cancellation);
        (IReadOnlyList<Outing> secondOutings, List<ComparedRun> secondRuns) = RunsOf(store, second, positionsOnly, cancellation);
        FairComparison comparison = FairComparison.Of(firstRuns, secondRuns);
        CompareAnswer answer = CompareAnswer.Of(
            comparison,
            CompareSideAnswer.Of(first.Name, firstOutings.Count, firstOutings.Count(outing => outing.HasTrack), comparison.First),
            CompareSideAnswer.Of(second.Name, secondOutings.Count, secondOutings.Count(outing => outing.HasTrack), comparison.Second));
        if (WantsJson(arguments))
        {
            streams.Out.Write(AnswerJson.Write(answer));
            return ExitCode.Good;
        }

        CompareText.Write(streams, answer);
        return ExitCode.Good;
    }

    private static (IReadOnlyList<Outing> Outings, List<ComparedRun> Runs) RunsOf(WorkshopStore store, Build build, bool positionsOnly, CancellationToken cancellation)
    {
        IReadOnlyList<Outing> outings = store.Outings.List(build.Id);
        List<ComparedRun> runs = [];
        foreach (Outing outing in outings)
        {
            cancellation.ThrowIfCancellationRequested();
            if (store.Outings.Track(outing.Id) is not { } kept)
                continue;
            TrackMeasures measures = TrackMeasures.Of(KeptTracks.Unpacked(kept, outing), positionsOnly);
            foreach (BestSpeed best in measures.Runs.Select(run => run.BestTenSeconds).OfType<BestSpeed>())
            {
                runs.Add(new(
                    outing.Id.ToString(CultureInfo.InvariantCulture), outing.SailedOn, outing.SailM2, outing.WindLowKnots * SpeedUnits.Knot, outing.WindHighKnots * SpeedUnits.Knot, best.Speed, best.Error));
            }
        }

        return (outings, runs);
    }
}
