using Finwright.Design;
using Finwright.Geometry.Solids;

namespace Finwright.Assessment.Stages;

/// <summary>
/// Brings one design through the stages that are asked for: each once, in the order that the stages declare, from the cache where it can be.
/// </summary>
/// <remarks>Not for use from several threads; one run holds the results of one design.</remarks>
public sealed class StageRun
{
    private readonly FinDesign _design;
    private readonly IStageCache _cache;
    private readonly Func<ISolidKernel> _kernel;
    private readonly IProgress<StageProgress>? _progress;
    private readonly Dictionary<Stage, Outcome> _outcomes = [];
    private readonly List<Finding> _findings = [];
    private double _shareDone;
    private double _shareOfAll = 1;
    private double _fraction;

    /// <summary>Begins a run.</summary>
    /// <param name="design">The design, whole.</param>
    /// <param name="cache">Results kept from earlier runs.</param>
    /// <param name="kernel">Gives the solid kernel when a stage first needs it.</param>
    /// <param name="progress">Takes reports; null when nobody listens.</param>
    /// <param name="cancellation">Stops the run between and inside stages.</param>
    /// <param name="curves">Keeps curves of sections between designs; the run's own memory when null.</param>
    public StageRun(FinDesign design, IStageCache cache, Func<ISolidKernel> kernel, IProgress<StageProgress>? progress, CancellationToken cancellation, IStageCache? curves = null) =>
        (_design, _cache, _kernel, _progress, Cancellation, Curves) = (design, cache, kernel, progress, cancellation, curves ?? new MemoryStageCache());

    /// <summary>What all stages so far noticed, in the order of the work.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    internal CancellationToken Cancellation { get; }

    internal ISolidKernel Kernel => _kernel();

    internal IStageCache Curves { get; }

    /// <summary>Key of a stage's result for this design; nothing is run.</summary>
    public StageKey KeyOf(Stage stage)
    {
        ArgumentNullException.ThrowIfNull(stage);
        return StageKey.Of([stage.Name, $"{stage.Version}", DesignWriter.Write(stage.Reads(_design)), .. stage.After.Select(before => KeyOf(before).Hex)]);
    }

    /// <summary>Runs stages with everything they need.</summary>
    /// <param name="stages">The stages asked for.</param>
    /// <exception cref="OperationCanceledException">The run was stopped; nothing of the stage at work is kept.</exception>
    public void Reach(params IReadOnlyList<Stage> stages)
    {
        ArgumentNullException.ThrowIfNull(stages);
        List<Stage> order = [];
        foreach (Stage stage in stages)
            AddInOrder(stage, order);
        _shareOfAll = order.Sum(stage => stage.Share);
        _shareDone = 0;
        foreach (Stage stage in order)
        {
            Cancellation.ThrowIfCancellationRequested();
            Report(stage, 0);
            if (!_outcomes.ContainsKey(stage) && stage.After.All(before => _outcomes[before].Value is not null))
                stage.Run(this);
            _outcomes.TryAdd(stage, new(null));
            _shareDone += stage.Share;
        }

        if (order.Count > 0)
            _progress?.Report(new(order[^1].Name, 1, order[^1].Words));
    }

    /// <summary>Result of a stage reached before; null when it could not be made.</summary>
    public T? ValueOf<T>(Stage<T> stage)
        where T : class => _outcomes.TryGetValue(stage, out Outcome outcome) ? (T?)outcome.Value : null;

    internal void Run<T>(Stage<T> stage, Func<StageWork, T?> make)
        where T : class
    {
        StageKey key = KeyOf(stage);
        if (!_cache.TryGet(key, out StageResult<T>? result))
            result = Make(stage, key, make);
        _outcomes[stage] = new(result.Value);
        _findings.AddRange(result.Findings);
    }

    internal void Report(Stage stage, double partOfStage)
    {
        if (_progress is null)
            return;
        double fraction = (_shareDone + stage.Share * Math.Clamp(partOfStage, 0, 1)) / _shareOfAll;
        _fraction = Math.Max(_fraction, fraction);
        _progress.Report(new(stage.Name, _fraction, stage.Words));
    }

    private StageResult<T> Make<T>(Stage<T> stage, StageKey key, Func<StageWork, T?> make)
        where T : class
    {
        StageWork work = new(stage, stage.Reads(_design), this);
        try
        {
            StageResult<T> result = new(make(work), [.. work.Findings]);
            if (result.Value is null && !result.Findings.Any(finding => finding.IsError))
                throw new InvalidOperationException($"Stage {stage.Name} made nothing and found no error.");
            _cache.Keep(key, result);
            return result;
        }
        catch (SolidException problem)
        {
            // The kernel refuses what slipped through every check: the maker gets a finding, not a crash. It is not kept,
            // because a kernel short of memory may succeed the next time.
            work.Findings.Add(new(
                "solid-failed",
                Severity.Error,
                "$.shape",
                $"While {stage.Words} the solid could not be built: {problem.Message}",
                "Take away the last feature that you added, or change its place a little, and try again."));
            return new(null, [.. work.Findings]);
        }
    }

    private static void AddInOrder(Stage stage, List<Stage> order)
    {
        if (order.Contains(stage))
            return;
        foreach (Stage before in stage.After)
            AddInOrder(before, order);
        order.Add(stage);
    }

    private readonly record struct Outcome(object? Value);
}
