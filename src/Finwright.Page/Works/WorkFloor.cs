using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Page.Editing;
using Finwright.Workshop.Comparing;
using Thread = System.Threading.Thread;

namespace Finwright.Page.Works;

/// <summary>
/// Works open designs out in the background, one at a time: the one that was changed last first. A change stops what was under way, save
/// the quick look, which is over before a hand has moved on.
/// </summary>
public sealed class WorkFloor : IDisposable
{
    // So long the browser is left to draw what the hand did, before every core is busy.
    private static readonly TimeSpan BeforeQuick = TimeSpan.FromMilliseconds(40);

    // So long nothing must have changed before the work that takes seconds begins.
    private static readonly TimeSpan BeforeSailing = TimeSpan.FromMilliseconds(250), BeforeMaking = TimeSpan.FromSeconds(3);

    // Progress is told at most this often.
    private static readonly TimeSpan Telling = TimeSpan.FromMilliseconds(200);

    private readonly Lock _gate = new();
    private readonly List<DesignSession> _waiting = [];
    private readonly AutoResetEvent _called = new(initialState: false);
    private readonly CancellationTokenSource _closing = new();
    private readonly Thread _worker;
    private readonly MemoryStageCache _stages = new();
    private readonly DiskStageCache? _curves = CacheFolder.OpenCurves();
    private readonly Assessor _assessor;
    private readonly TimeProvider _time;
    private DesignSession? _atWork;
    private bool _comesBack;
    private CancellationTokenSource? _stopping;

    /// <summary>Opens the floor; its worker waits for work.</summary>
    /// <param name="time">The clock.</param>
    public WorkFloor(TimeProvider time)
    {
        _time = time;
        _assessor = OpenAssessor();
        _worker = new(Work) { IsBackground = true, Name = "work floor", Priority = ThreadPriority.BelowNormal };
        _worker.Start();
    }

    /// <summary>Whether print, pour and cure are worked out by themselves; else when they are asked for.</summary>
    internal Func<bool> WorksAhead { get; init; } = () => true;

    /// <summary>An assessor for other work in the background: it need not work out again what was worked out here.</summary>
    internal Assessor OpenAssessor() => new(_stages, curves: _curves);

    /// <summary>Asks for a design to be worked out as it is now.</summary>
    internal void Ask(DesignSession session)
    {
        if (session.Now.IsStopped)
            session.Publish(session.Now.Version, now => now with { IsStopped = false });
        lock (_gate)
        {
            _waiting.Remove(session);
            _waiting.Add(session);
            _stopping?.Cancel();
        }

        _called.Set();
    }

    /// <summary>Stops the work on a design.</summary>
    internal void Stop(DesignSession session)
    {
        Leave(session);
        session.Publish(session.Now.Version, now => now with { IsStopped = true, Work = null });
    }

    /// <summary>Works no more on a design that is closed.</summary>
    internal void Leave(DesignSession session)
    {
        lock (_gate)
        {
            _waiting.Remove(session);
            if (_atWork != session)
                return;
            // Decided here and not by what the session shows: that follows a moment later.
            _comesBack = false;
            _stopping?.Cancel();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _closing.Cancel();
        lock (_gate)
            _stopping?.Cancel();
        _called.Set();
        if (Thread.CurrentThread != _worker)
            _worker.Join();
        _stopping?.Dispose();
        _assessor.Dispose();
        _called.Dispose();
        _closing.Dispose();
    }

    private void Work()
    {
        while (!_closing.IsCancellationRequested)
        {
            if (Next() is not { } session)
            {
                _called.WaitOne();
                continue;
            }

            _closing.Token.WaitHandle.WaitOne(BeforeQuick);
            Standing now = session.Now;
            try
            {
                WorkOut(session, now, _stopping!.Token);
            }
            catch (OperationCanceledException)
            {
                PutBack(session, now);
            }
#pragma warning disable CA1031 // A fault in one design's work must not end the work on all others; it is told on the page.
            catch (Exception fault)
#pragma warning restore CA1031
            {
                session.Publish(now.Version, standing => standing with { Fault = fault.Message, Work = null });
            }
        }
    }

    private DesignSession? Next()
    {
        lock (_gate)
        {
            _stopping?.Dispose();
            _stopping = null;
            _atWork = null;
            if (_waiting.Count == 0 || _closing.IsCancellationRequested)
                return null;
            _atWork = _waiting[^1];
            _waiting.RemoveAt(_waiting.Count - 1);
            _comesBack = true;
            _stopping = CancellationTokenSource.CreateLinkedTokenSource(_closing.Token);
            return _atWork;
        }
    }

    // Another design came between: this one goes on when that is done.
    private void PutBack(DesignSession session, Standing now)
    {
        lock (_gate)
        {
            if (_comesBack && session.Now.Version == now.Version && !_waiting.Contains(session))
                _waiting.Insert(0, session);
        }

        session.Publish(now.Version, standing => standing with { Work = null });
    }

    private void WorkOut(DesignSession session, Standing now, CancellationToken stop)
    {
        long version = now.Version;
        session.Publish(version, standing => standing with { IsMakingOnRequest = false });
        if (now.ShapeVersion != version || now.Shape?.Blade is not { } blade || now.Shape.Design is not { } design)
        {
            session.Publish(version, standing => standing with { Work = null });
            return;
        }

        if (now.Reach < Reach.Quick && now.Sailing is { Polars.Family: not null } before)
        {
            AssessmentResult quick = QuickLook.Of(design, blade, before, _closing.Token);
            Show(quick);
            stop.ThrowIfCancellationRequested();
            Show(QuickLook.WithCurves(quick, stop));
        }

        Pause(BeforeSailing, stop);
        DesignReading reading = new(now.Design, DesignValidation.Check(now.Design));
        Teller progress = new(session, version, _time);
        AssessmentResult sailing = _assessor.Assess(reading, AssessmentDepth.Strength, progress, stop);
        session.Publish(version, standing => standing with
        {
            Sailing = sailing,
            SailingVersion = version,
            SailingIsQuick = false,
            Findings = sailing.Findings,
            Reach = Reach.Sailing,
            Work = null,
        });
        bool isAsked = session.MakingAskedFor == version;
        if (!isAsked && !WorksAhead())
        {
            session.Publish(version, standing => standing with { IsMakingOnRequest = true });
            return;
        }

        if (!isAsked)
            Pause(BeforeMaking, stop);
        Make(AssessmentDepth.Pour, Reach.Poured);
        Make(AssessmentDepth.Cure, Reach.Everything);
        // Every stage is in the cache by now.
        session.KeepResults(version, () => FinResults.Of(_assessor.Assess(reading, AssessmentDepth.Everything, progress: null, stop)));

        void Show(AssessmentResult quick) => session.Publish(version, standing => standing with { Sailing = quick, SailingVersion = version, SailingIsQuick = true, Reach = Reach.Quick });

        void Make(AssessmentDepth depth, Reach reach)
        {
            AssessmentResult made = _assessor.Assess(reading, depth, progress, stop);
            session.Publish(version, standing => standing with
            {
                Made = made,
                MadeVersion = version,
                Findings = [.. sailing.Findings.Union(made.Findings).OrderByDescending(finding => finding.Severity)],
                Reach = reach,
                Work = null,
            });
        }
    }

    private static void Pause(TimeSpan length, CancellationToken stop)
    {
        stop.WaitHandle.WaitOne(length);
        stop.ThrowIfCancellationRequested();
    }

    private sealed class Teller(DesignSession session, long version, TimeProvider time) : IProgress<StageProgress>
    {
        private long _told;

        private void Tell(StageProgress value)
        {
            if (_told != 0 && time.GetElapsedTime(_told) < Telling)
                return;
            _told = time.GetTimestamp();
            session.Publish(version, standing => standing with { Work = new(value.Words, value.Fraction) });
        }

        void IProgress<StageProgress>.Report(StageProgress value) => Tell(value);
    }
}
