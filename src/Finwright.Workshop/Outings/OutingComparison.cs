using System.Globalization;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Outings;

/// <summary>Two builds compared by every run of every track that is kept of them.</summary>
/// <param name="Comparison">What it comes to.</param>
/// <param name="Source">Where all speeds come from: positions as soon as one track tells no speed, so that like is compared with like.</param>
/// <param name="IsReduced">Whether measured speeds were set aside for that.</param>
/// <param name="First">Outings with the first build.</param>
/// <param name="Second">Outings with the second build.</param>
public sealed record OutingComparison(FairComparison Comparison, SpeedSource Source, bool IsReduced, IReadOnlyList<Outing> First, IReadOnlyList<Outing> Second)
{
    /// <summary>Compares.</summary>
    /// <param name="store">The store.</param>
    /// <param name="first">The first build.</param>
    /// <param name="second">The second build.</param>
    /// <param name="positionsOnly">Whether to reckon from positions even where the receiver tells speeds.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="StoreException">A track is damaged.</exception>
    public static OutingComparison Of(WorkshopStore store, Build first, Build second, bool positionsOnly = false, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        IReadOnlyList<Outing> firstOutings = store.Outings.List(first.Id), secondOutings = store.Outings.List(second.Id);
        (List<ComparedRun> a, HashSet<SpeedSource> sourcesA) = Runs(firstOutings, positionsOnly);
        (List<ComparedRun> b, HashSet<SpeedSource> sourcesB) = Runs(secondOutings, positionsOnly);
        sourcesA.UnionWith(sourcesB);
        bool isReduced = sourcesA.Count > 1;
        if (isReduced)
            (a, b) = (Runs(firstOutings, true).Runs, Runs(secondOutings, true).Runs);
        SpeedSource source = positionsOnly || sourcesA.Contains(SpeedSource.Positions) ? SpeedSource.Positions : SpeedSource.Measured;
        return new(FairComparison.Of(a, b), source, isReduced, firstOutings, secondOutings);

        (List<ComparedRun> Runs, HashSet<SpeedSource> Sources) Runs(IReadOnlyList<Outing> outings, bool fromPositions)
        {
            List<ComparedRun> runs = [];
            HashSet<SpeedSource> sources = [];
            foreach (Outing outing in outings)
            {
                cancellation.ThrowIfCancellationRequested();
                if (OutingTracks.Of(store, outing) is not { } track)
                    continue;
                TrackMeasures measures = TrackMeasures.Of(track, fromPositions);
                BestSpeed[] bests = [.. measures.Runs.Select(run => run.BestTenSeconds).OfType<BestSpeed>()];
                if (bests.Length > 0)
                    sources.Add(measures.Source);
                string number = outing.Id.ToString(CultureInfo.InvariantCulture);
                runs.AddRange(bests.Select(best => new ComparedRun(number, outing.SailedOn, outing.SailM2, outing.WindLowKnots * SpeedUnits.Knot, outing.WindHighKnots * SpeedUnits.Knot, best.Speed, best.Error)));
            }

            return (runs, sources);
        }
    }
}
