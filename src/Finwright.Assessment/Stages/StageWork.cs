using Finwright.Design;
using Finwright.Geometry.Solids;

namespace Finwright.Assessment.Stages;

/// <summary>What a stage has at hand while it works.</summary>
public sealed class StageWork
{
    private readonly Stage _stage;
    private readonly StageRun _run;

    internal StageWork(Stage stage, FinDesign design, StageRun run) => (_stage, Design, _run) = (stage, design, run);

    /// <summary>The declared part of the design; everything else is at its default.</summary>
    public FinDesign Design { get; }

    /// <summary>Where the stage puts what it notices.</summary>
    public ICollection<Finding> Findings { get; } = new List<Finding>();

    /// <summary>Stops the work; a long stage looks at it again and again.</summary>
    public CancellationToken Cancellation => _run.Cancellation;

    /// <summary>The solid kernel; made on first use.</summary>
    public ISolidKernel Kernel => _run.Kernel;

    /// <summary>Keeps curves of sections, which many designs share.</summary>
    public IStageCache Curves => _run.Curves;

    /// <summary>Takes reports of how much of this stage is done, 0 to 1.</summary>
    public IProgress<double> Progress => new Part(_stage, _run);

    /// <summary>Result of a stage before this one.</summary>
    /// <exception cref="ArgumentException">The stage was not declared as coming before.</exception>
    public T Of<T>(Stage<T> before)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(before);
        if (!_stage.After.Contains(before))
            throw new ArgumentException($"Stage {_stage.Name} does not declare that it comes after {before.Name}.", nameof(before));
        return _run.ValueOf(before)!;
    }

    private sealed class Part(Stage stage, StageRun run) : IProgress<double>
    {
        public void Report(double value) => run.Report(stage, value);
    }
}
