using Finwright.Design;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Drafts;

/// <summary>Where a draft stands.</summary>
/// <param name="DesignId">Number of its design.</param>
/// <param name="BaseId">The revision that it came from, or was last kept as.</param>
/// <param name="Position">The step that it shows; 0 is how it began.</param>
/// <param name="Steps">How many steps there are after the beginning; those after <paramref name="Position"/> were undone.</param>
/// <param name="KeptAt">When it was last written.</param>
public sealed record Draft(long DesignId, long BaseId, int Position, int Steps, DateTimeOffset KeptAt);

/// <summary>One step of a draft.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Said">What was changed, in words; empty for the beginning.</param>
/// <param name="Place">Where: a path in the design file; empty for several places.</param>
/// <param name="Text">The design after it.</param>
public sealed record DraftStep(int Number, string Said, string Place, string Text);

/// <summary>What is being changed in designs and is not yet a revision, with every step that can be undone.</summary>
public sealed class DraftTable
{
    private readonly StoreConnection _store;

    internal DraftTable(StoreConnection store) => _store = store;

    /// <summary>The draft of a design; null when nothing is being changed.</summary>
    /// <param name="design">Number of the design.</param>
    public Draft? Find(long design) => _store.First(
        """
        SELECT design_id, base_id, position, kept_at, (SELECT coalesce(max(number), 0) FROM draft_step WHERE draft_step.design_id = draft.design_id) AS steps
        FROM draft WHERE design_id = $design
        """,
        row => new Draft(row.Whole("design_id"), row.Whole("base_id"), (int)row.Whole("position"), (int)row.Whole("steps"), row.Moment("kept_at")),
        ("design", design));

    /// <summary>Begins a draft, in place of one that is there.</summary>
    /// <param name="design">Number of the design.</param>
    /// <param name="revision">The revision that it begins with.</param>
    /// <param name="text">The text of that revision.</param>
    public Draft Begin(long design, long revision, string text) => _store.Change(() =>
    {
        _store.Execute("DELETE FROM draft_step WHERE design_id = $design", ("design", design));
        _store.Execute("DELETE FROM draft WHERE design_id = $design", ("design", design));
        _store.Execute(
            "INSERT INTO draft (design_id, base_id, position, kept_at) VALUES ($design, $base, 0, $at)",
            ("design", design), ("base", revision), ("at", _store.Time.GetUtcNow()));
        Write(design, new(0, "", "", text));
        return Find(design)!;
    });

    /// <summary>Keeps a step; those with its number and above are gone.</summary>
    /// <param name="design">Number of the design.</param>
    /// <param name="step">The step; its number is at most one above that of the step shown.</param>
    /// <exception cref="StoreException">There is no draft, or a step before it is missing.</exception>
    public Draft Keep(long design, DraftStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return _store.Change(() =>
        {
            Draft draft = Need(design);
            if (step.Number < 1 || step.Number > draft.Steps + 1)
                throw new StoreException(StoreProblem.Wrong, $"Step {step.Number} does not follow what is kept of the draft: {draft.Steps} steps.", "Open the design again.");
            _store.Execute("DELETE FROM draft_step WHERE design_id = $design AND number >= $number", ("design", design), ("number", step.Number));
            Write(design, step);
            return Show(design, step.Number);
        });
    }

    /// <summary>Shows an earlier or later step: undo and redo.</summary>
    /// <param name="design">Number of the design.</param>
    /// <param name="position">Number of the step.</param>
    /// <exception cref="StoreException">There is no such step.</exception>
    public Draft Move(long design, int position) => _store.Change(() =>
    {
        Draft draft = Need(design);
        return position >= 0 && position <= draft.Steps
            ? Show(design, position)
            : throw new StoreException(StoreProblem.Wrong, $"The draft has no step {position}; it has {draft.Steps}.", "Open the design again.");
    });

    /// <summary>Notes that what the draft shows was kept as a revision.</summary>
    /// <param name="design">Number of the design.</param>
    /// <param name="revision">The revision.</param>
    public Draft Rest(long design, long revision) => _store.Change(() =>
    {
        Draft draft = Need(design);
        _store.Execute("UPDATE draft SET base_id = $base WHERE design_id = $design", ("base", revision), ("design", design));
        return draft with { BaseId = revision };
    });

    /// <summary>A step.</summary>
    /// <param name="design">Number of the design.</param>
    /// <param name="number">Number of the step.</param>
    /// <exception cref="StoreException">There is none.</exception>
    public DraftStep Step(long design, int number) =>
        FindStep(design, number) ?? throw new StoreException(StoreProblem.Wrong, $"The draft has no step {number}.", "Open the design again.");

    /// <summary>The design that a draft shows; null when nothing is being changed, or the step is lost.</summary>
    /// <param name="design">Number of the design.</param>
    public DesignReading? Read(long design) => Find(design) is { } draft && FindStep(design, draft.Position) is { } step ? DesignReader.Read(step.Text) : null;

    private DraftStep? FindStep(long design, int number) => _store.First(
        "SELECT number, said, place, text FROM draft_step WHERE design_id = $design AND number = $number",
        row => new DraftStep((int)row.Whole("number"), row.Text("said"), row.Text("place"), row.Text("text")),
        ("design", design), ("number", number));

    private Draft Need(long design) =>
        Find(design) ?? throw new StoreException(StoreProblem.Wrong, $"There is no draft of design number {design}.", "Open the design again.");

    private Draft Show(long design, int position)
    {
        _store.Execute("UPDATE draft SET position = $position, kept_at = $at WHERE design_id = $design", ("position", position), ("at", _store.Time.GetUtcNow()), ("design", design));
        return Find(design)!;
    }

    private void Write(long design, DraftStep step) => _store.Execute(
        "INSERT INTO draft_step (design_id, number, said, place, text) VALUES ($design, $number, $said, $place, $text)",
        ("design", design), ("number", step.Number), ("said", step.Said), ("place", step.Place), ("text", step.Text));
}
