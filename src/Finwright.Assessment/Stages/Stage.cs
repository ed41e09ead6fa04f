using Finwright.Design;

namespace Finwright.Assessment.Stages;

/// <summary>One step from the design to its results: a pure function of the declared part of the design and of the stages before it.</summary>
public abstract class Stage
{
    private protected Stage(string name, int version, string words, double share, Func<FinDesign, FinDesign> reads, IReadOnlyList<Stage> after)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(share);
        (Name, Version, Words, Share, Reads, After) = (name, version, words, share, reads, after);
    }

    /// <summary>Name, unique in the graph.</summary>
    public string Name { get; }

    /// <summary>Raised whenever the same inputs would give another result, so that kept results are not taken for new ones.</summary>
    public int Version { get; }

    /// <summary>What is being done, for a person.</summary>
    public string Words { get; }

    /// <summary>Share of the whole work, in any unit common to the stages.</summary>
    public double Share { get; }

    /// <summary>
    /// The part of the design that the stage may read; everything else is at its default. The stage is handed nothing but this,
    /// so a result can never depend on a field that its key does not hold.
    /// </summary>
    public Func<FinDesign, FinDesign> Reads { get; }

    /// <summary>Stages whose results this one uses.</summary>
    public IReadOnlyList<Stage> After { get; }

    /// <summary>Runs the stage, or takes its result from the cache.</summary>
    internal abstract void Run(StageRun run);

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>A stage that makes a <typeparamref name="T"/>.</summary>
/// <typeparam name="T">What the stage makes; immutable.</typeparam>
public sealed class Stage<T> : Stage
    where T : class
{
    private readonly Func<StageWork, T?> _make;

    /// <summary>Declares a stage.</summary>
    /// <param name="name">Name, unique in the graph.</param>
    /// <param name="version">Raised whenever the same inputs would give another result.</param>
    /// <param name="words">What is being done, for a person.</param>
    /// <param name="share">Share of the whole work, in any unit common to the stages; positive.</param>
    /// <param name="reads">The part of the design that the stage may read; the rest left at its default.</param>
    /// <param name="after">Stages whose results this one uses.</param>
    /// <param name="make">The work itself; null, with an error among the findings, when it cannot be done.</param>
    public Stage(string name, int version, string words, double share, Func<FinDesign, FinDesign> reads, IReadOnlyList<Stage> after, Func<StageWork, T?> make)
        : base(name, version, words, share, reads, after) => _make = make;

    internal override void Run(StageRun run) => run.Run(this, _make);
}
