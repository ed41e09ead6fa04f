using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Stages;
using Finwright.Page.Editing;
using Finwright.Page.Works;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Compare;

/// <summary>Two revisions that are compared: shape and inputs at once, the rest as it is kept or comes from work in the background.</summary>
public sealed class Comparison(Desk desk) : IDisposable
{
    private readonly Lock _gate = new();
    private CancellationTokenSource _stopping = new();
    private Task _work = Task.CompletedTask;

    /// <summary>The answer so far; null before both were read.</summary>
    public CompareSummary? Summary { get; private set; }

    /// <summary>The first.</summary>
    public ComparedSide? First { get; private set; }

    /// <summary>The second.</summary>
    public ComparedSide? Second { get; private set; }

    /// <summary>What is being worked out; null when nothing is.</summary>
    public WorkUnderWay? Work { get; private set; }

    /// <summary>Whether the reader stopped the work.</summary>
    public bool IsStopped { get; private set; }

    /// <summary>Whether all results of both are there.</summary>
    public bool IsComplete { get; private set; }

    /// <summary>Why nothing can be compared, and what to do.</summary>
    public (string Message, string Remedy)? Refusal { get; private set; }

    /// <summary>Something is new.</summary>
    public event Action? Changed;

    /// <summary>Compares two others.</summary>
    /// <param name="first">The first as a person names it: a design, or name@number.</param>
    /// <param name="second">The second.</param>
    public void Open(string first, string second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        Stop();
        lock (_gate)
        {
            (Summary, First, Second, Work, IsStopped, IsComplete, Refusal) = (null, null, null, null, false, false, null);
            _stopping.Dispose();
            _stopping = new();
            CancellationToken stop = _stopping.Token;
            _work = Task.Run(() => Run(first, second, stop), CancellationToken.None);
        }
    }

    /// <summary>Stops what is being worked out and waits for it to end.</summary>
    public void Stop()
    {
        _stopping.Cancel();
        _work.Wait();
        if (Work is not null)
            (Work, IsStopped) = (null, true);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Stop();
        _stopping.Dispose();
    }

    private void Run(string first, string second, CancellationToken stop)
    {
        try
        {
            using Assessor assessor = new(curves: CacheFolder.OpenCurves());
            Revision one = Named(first), other = Named(second);
            First = Side(one, assessor, stop);
            Second = Side(other, assessor, stop);
            Tell();
            Work = new("working out", 0);
            Changed?.Invoke();
            First = First with { Results = Complete(one, assessor, "A", 0, stop) };
            Tell();
            Second = Second with { Results = Complete(other, assessor, "B", 0.5, stop) };
            (Work, IsComplete) = (null, true);
            Tell();
        }
        catch (OperationCanceledException)
        {
            // The reader stopped it, or went elsewhere.
        }
        catch (StoreException problem)
        {
            (Work, Refusal) = (null, (problem.Message, problem.Remedy));
            Changed?.Invoke();
        }
#pragma warning disable CA1031 // Whatever goes wrong in the background is told on the page; nobody else would hear of it.
        catch (Exception problem)
#pragma warning restore CA1031
        {
            (Work, Refusal) = (null, ($"A fault in the program: {problem.Message}", "Your designs are kept. Compare others, or try once more."));
            Changed?.Invoke();
        }
    }

    private Revision Named(string name) => desk.Ask(store => store.Shelf.Get(Reference.Parse(name)));

    /// <summary>What is there at once: shape and bench, or all when it was kept.</summary>
    private ComparedSide Side(Revision revision, Assessor assessor, CancellationToken stop)
    {
        AssessmentResult result = assessor.Assess(desk.Ask(store => store.Shelf.Read(revision.Id)), AssessmentDepth.Bench, cancellation: stop);
        if (result.InputIsWrong || result.Design is not { } design)
            throw new StoreException(StoreProblem.Wrong, $"{revision.Label} cannot be compared. {result.Findings.First(finding => finding.IsError).Message}", "Open it, and change what its sheet says.");
        return new()
        {
            Kind = ComparedKind.Revision,
            Label = revision.Label,
            Design = design,
            Blade = result.Blade,
            Results = desk.Ask(store => Predictions.Kept(store, revision, desk.ProgramVersion)) ?? FinResults.Of(result).Only(Predictions.Quick),
        };
    }

    private FinResults Complete(Revision revision, Assessor assessor, string letter, double from, CancellationToken stop)
    {
        if (desk.Ask(store => Predictions.Kept(store, revision, desk.ProgramVersion)) is { } kept)
            return kept;
        // The store is free for others meanwhile.
        FinResults results = FinResults.Of(assessor.Assess(desk.Ask(store => store.Shelf.Read(revision.Id)), AssessmentDepth.Everything, new Teller(this, letter, from), stop));
        try
        {
            desk.Change(store => Predictions.Keep(store, revision, desk.ProgramVersion, results));
        }
        catch (StoreException)
        {
            // It is compared all the same, and worked out again another time.
        }

        return results;
    }

    private void Tell()
    {
        if (First is { } first && Second is { } second)
            Summary = desk.Ask(store => CompareSummary.Of(store, first, second, desk.ProgramVersion));
        Changed?.Invoke();
    }

    private sealed class Teller(Comparison comparison, string letter, double from) : IProgress<StageProgress>
    {
        private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(300);

        private long _told;

        void IProgress<StageProgress>.Report(StageProgress value)
        {
            if (_told != 0 && TimeProvider.System.GetElapsedTime(_told) < Often)
                return;
            _told = TimeProvider.System.GetTimestamp();
            comparison.Work = new($"{letter}: {value.Words}", from + 0.5 * value.Fraction);
            comparison.Changed?.Invoke();
        }
    }
}
