using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Page.Works;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;
using Thread = System.Threading.Thread;

namespace Finwright.Page.Editing;

/// <summary>Puts a design or revision from the shelf beside the open one: its shape at once, what it does in the water later, in the background and after the open design.</summary>
/// <param name="desk">The store.</param>
/// <param name="session">The open design, which goes first.</param>
/// <param name="view">The tab.</param>
public sealed class BesideBench(Desk desk, DesignSession session, SheetView view) : IDisposable
{
    // What the screen shows is coarser than what is printed, mm.
    private const double ScreenToleranceMm = 0.1;

    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1), LongestWait = TimeSpan.FromMinutes(2);

    private CancellationTokenSource? _stopping;

    /// <summary>What stands beside: name@number; null for nothing.</summary>
    public string? Label { get; private set; }

    /// <summary>Why what was asked for does not stand there; null when it does.</summary>
    public string? Problem { get; private set; }

    /// <summary>Version of the program as it names what it keeps.</summary>
    internal static string VersionOf(Desk desk) => desk.MadeBy.StartsWith("Finwright ", StringComparison.Ordinal) ? desk.MadeBy["Finwright ".Length..] : desk.MadeBy;

    /// <summary>Puts something beside.</summary>
    /// <param name="label">A design's name, or name@number; null or empty for nothing.</param>
    public void Put(string? label)
    {
        if (string.Equals(label ?? "", Label ?? "", StringComparison.Ordinal) && Problem is null)
            return;
        _stopping?.Cancel();
        _stopping = null;
        (Label, Problem) = (null, null);
        if (string.IsNullOrWhiteSpace(label))
        {
            view.PutBeside(null);
            return;
        }

        try
        {
            (Revision revision, DesignReading reading, FinResults? kept) = desk.Ask(store =>
            {
                Revision found = store.Shelf.Get(Reference.Parse(label));
                return (found, store.Shelf.Read(found.Id), Predictions.Kept(store, found, VersionOf(desk)));
            });
            if (Drawn(revision, reading, kept) is not { } beside)
            {
                Problem = $"{revision.Label} cannot be drawn: open it to see why.";
                view.PutBeside(null);
                return;
            }

            Label = revision.Label;
            view.PutBeside(beside);
            _stopping = new();
            CancellationToken stop = _stopping.Token;
            new Thread(() => Work(beside, revision, stop)) { IsBackground = true, Name = "beside", Priority = ThreadPriority.Lowest }.Start();
        }
        catch (StoreException problem)
        {
            Problem = $"{problem.Message} Choose another one.";
            view.PutBeside(null);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _stopping?.Cancel();

    private static BesideDesign? Drawn(Revision revision, DesignReading reading, FinResults? kept)
    {
        using Assessor assessor = new();
        AssessmentResult shape = assessor.Assess(reading, AssessmentDepth.Shape);
        return shape is { Blade: { } blade, Design: { } design } && BladeFromDesign.Skin(design.Shape with { SkinToleranceMm = ScreenToleranceMm }, blade, []) is { } skin
            ? new(revision.Label, design, shape, skin, Sailing: null) { Results = kept ?? FinResults.Of(shape) }
            : null;
    }

    private void Work(BesideDesign beside, Revision revision, CancellationToken stop)
    {
        try
        {
            Wait(() => session.Now.Reach >= Reach.Sailing, stop);
            using Assessor assessor = new(new MemoryStageCache(), curves: CacheFolder.OpenCurves());
            AssessmentResult sailing = assessor.Assess(beside.Design, AssessmentDepth.Strength, cancellation: stop);
            bool isKept = beside.Results!.Groups.Contains(ResultGroup.Plan);
            Publish(beside with { Sailing = sailing, Results = isKept ? beside.Results : FinResults.Of(sailing) }, stop);
            if (isKept)
                return;
            Wait(() => session.Now.Reach >= Reach.Everything, stop);
            FinResults all = FinResults.Of(assessor.Assess(beside.Design, AssessmentDepth.Everything, cancellation: stop));
            if (beside.Design.Name.Length > 0 && all.Problem is null)
                desk.Note(store =>
                {
                    Predictions.Keep(store, revision, VersionOf(desk), all);
                    return true;
                });
            Publish(beside with { Sailing = sailing, Results = all }, stop);
        }
        catch (OperationCanceledException)
        {
            // Another design was put there.
        }
#pragma warning disable CA1031 // A fault in what is only looked at beside must not end the program; the numbers beside stay unknown.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Problem = fault.Message;
            view.PutBeside(beside);
        }
    }

    private void Publish(BesideDesign beside, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        view.PutBeside(beside);
    }

    // The open design goes first, unless nothing comes of it. What waits to be asked for there waits here too.
    private void Wait(Func<bool> holds, CancellationToken stop)
    {
        for (TimeSpan waited = TimeSpan.Zero; waited < LongestWait && !holds(); waited += session.Now.IsMakingOnRequest ? TimeSpan.Zero : Look)
        {
            stop.WaitHandle.WaitOne(Look);
            stop.ThrowIfCancellationRequested();
        }
    }
}
