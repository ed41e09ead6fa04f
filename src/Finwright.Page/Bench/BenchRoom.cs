using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Page.Works;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Reviewing;
using Finwright.Workshop.Shelf;

namespace Finwright.Page.Bench;

/// <summary>Works out what the bench should show of what was built, one question at a time, beside the work on open designs.</summary>
/// <param name="desk">The store.</param>
/// <param name="time">The clock.</param>
public sealed class BenchRoom(Desk desk, TimeProvider time) : IDisposable
{
    private readonly Assessor _assessor = new(new MemoryStageCache(), curves: CacheFolder.OpenCurves());
    private readonly SemaphoreSlim _one = new(1, 1);

    private string ProgramVersion => desk.MadeBy.StartsWith("Finwright ", StringComparison.Ordinal) ? desk.MadeBy["Finwright ".Length..] : desk.MadeBy;

    /// <summary>The fin of a build as its bench is predicted: its revision, with what other builds of its batches taught.</summary>
    /// <param name="build">The build.</param>
    /// <returns>The design; null when it cannot be worked out.</returns>
    public FinDesign? DesignOf(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return desk.Ask(store => store.Shelf.Read(build.RevisionId) is { HasErrors: false, Design: { } design }
            ? Learned.For(store, build.FilamentId, build.ResinId, except: build.Id).Into(design)
            : null);
    }

    /// <summary>Holds a fin on the bench.</summary>
    /// <param name="design">The design.</param>
    /// <param name="hold">How its root is held.</param>
    /// <param name="stop">Stops the work.</param>
    public Task<FinHeld> Hold(FinDesign design, RootHold hold, CancellationToken stop) =>
        Alone(() => new FinHeld(_assessor.Assess(Held(design, hold), AssessmentDepth.Structure, cancellation: stop)), stop);

    /// <summary>Holds a build against its prediction.</summary>
    /// <param name="build">The build.</param>
    /// <param name="everything">Whether what is not kept is worked out, a minute or two; else only what can be said at once.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="stop">Stops the work.</param>
    public Task<(BuildReview Review, bool IsWhole)> Review(Build build, bool everything, IProgress<StageProgress>? progress, CancellationToken stop) => Alone(
        () =>
        {
            (Revision revision, DesignReading reading, FinResults? kept, IReadOnlyList<BenchSession> sessions) = desk.Ask(store =>
            {
                Revision own = store.Shelf.Find(build.RevisionId)!;
                return (own, store.Shelf.Read(own.Id), Predictions.Kept(store, own, ProgramVersion), store.Bench.List(build.Id));
            });
            FinResults predicted = kept ?? FinResults.Of(_assessor.Assess(reading, everything ? AssessmentDepth.Everything : AssessmentDepth.Bench, progress, stop));
            if (kept is null && everything)
                desk.Note(store => Kept(store, revision, predicted));
            else if (kept is null)
                predicted = predicted.Only(Predictions.Quick);
            // Worked out before the store is held: whoever waits for it waits for little.
            if (DesignOf(build) is { } learned)
            {
                foreach (RootHold hold in sessions.Select(session => session.RootHold).Distinct())
                    _assessor.Assess(Held(learned, hold), AssessmentDepth.Structure, cancellation: stop);
            }

            return (desk.Ask(store => BuildReview.Of(store, build, predicted, _assessor, stop)), kept is not null || everything);
        },
        stop);

    /// <summary>What a build teaches; nothing is kept yet.</summary>
    /// <param name="build">The build.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="stop">Stops the work.</param>
    public Task<Teaching> Teach(Build build, IProgress<StageProgress>? progress, CancellationToken stop) => Alone(
        () =>
        {
            (DesignReading reading, IReadOnlyList<BuildPart> parts, bool isKept) = desk.Ask(store =>
                (store.Shelf.Read(build.RevisionId), store.Builds.Parts(build.Id), Predictions.Kept(store, store.Shelf.Find(build.RevisionId)!, ProgramVersion) is not null));
            if (!isKept)
                _assessor.Assess(reading, Teaching.DepthFor(build, parts), progress, stop);
            return desk.Ask(store => Teaching.Of(
                store, build, Teaching.Predicted(store, build, _assessor, ProgramVersion, cancellation: stop), _assessor, ProgramVersion, time.GetUtcNow(), cancellation: stop));
        },
        stop);

    /// <summary>Results of a revision as they are kept; null when none are.</summary>
    public FinResults? KeptOf(long revision) => desk.Ask(store => store.Shelf.Find(revision) is { } own ? Predictions.Kept(store, own, ProgramVersion) : null);

    /// <summary>Keeps the results of a revision.</summary>
    internal void Keep(Revision revision, FinResults results) => desk.Note(store => Kept(store, revision, results));

    /// <inheritdoc/>
    public void Dispose()
    {
        _assessor.Dispose();
        _one.Dispose();
    }

    private static DesignReading Held(FinDesign design, RootHold hold)
    {
        FinDesign held = design with { Base = design.Base with { RootHold = hold } };
        return new(held, DesignValidation.Check(held));
    }

    private bool Kept(Workshop.Storing.WorkshopStore store, Revision revision, FinResults results)
    {
        Predictions.Keep(store, revision, ProgramVersion, results);
        return true;
    }

    private async Task<T> Alone<T>(Func<T> work, CancellationToken stop)
    {
        await _one.WaitAsync(stop).ConfigureAwait(false);
        try
        {
            return await Task.Run(work, stop).ConfigureAwait(false);
        }
        finally
        {
            _one.Release();
        }
    }
}
