using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.FromDesign;
using Finwright.Page.Works;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Drafts;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Editing;

/// <summary>
/// A design that is open: what it is now, every step back, and what is known of it. All tabs that show the design share it, so none can
/// overwrite another. Each change is on the disk within <see cref="Patience"/>.
/// </summary>
public sealed class DesignSession : IDisposable
{
    /// <summary>For how long a change may wait for the next one before both are written.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(400);

    // So long after it failed, writing is tried again.
    private static readonly TimeSpan BeforeRetry = TimeSpan.FromSeconds(5);

    // What the screen shows is coarser than what is printed, mm.
    private const double ScreenToleranceMm = 0.1;

    private readonly Desk _desk;
    private readonly WorkFloor _floor;
    private readonly Assessor _shapes = new();
    private readonly Lock _gate = new();
    private readonly Lock _writing = new();
    private readonly ITimer _writer;
    private Draft _draft;
    private DraftStep _shown;
    private readonly List<DraftStep> _unwritten = [];

    internal DesignSession(Desk desk, WorkFloor floor, TimeProvider time, ShelvedDesign shelved)
    {
        (_desk, _floor) = (desk, floor);
        (DesignId, Name) = (shelved.Id, shelved.Name);
        (_draft, _shown, Base) = desk.Note(store =>
        {
            // A draft that a rescued store holds in part is begun anew.
            Draft? known = store.Drafts.Find(shelved.Id) is { } kept && store.Drafts.Read(shelved.Id)?.Design is not null ? kept : null;
            string text = DesignWriter.Write(store.Shelf.Read(shelved.Latest.Id).Design!);
            // Where nothing may be written, the design is looked at all the same.
            if (known is null && store.Refusal is not null)
                return (new(shelved.Id, shelved.Latest.Id, 0, 0, shelved.Latest.MadeAt), new(0, "", "", text), shelved.Latest);
            Draft draft = known ?? store.Drafts.Begin(shelved.Id, shelved.Latest.Id, text);
            return (draft, store.Drafts.Step(shelved.Id, draft.Position), store.Shelf.Find(draft.BaseId)!);
        });
        BaseDesign = desk.Ask(store => store.Shelf.Read(Base.Id)).Design!;
        BaseHash = HashOf(BaseDesign);
        DesignReading reading = DesignReader.Read(_shown.Text);
        Now = Drawn(new() { Design = reading.Design!, Version = 1, Findings = reading.Findings }, reading);
        _writer = time.CreateTimer(_ => WriteLater(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _floor.Ask(this);
    }

    /// <summary>Number of the design on the shelf.</summary>
    public long DesignId { get; }

    /// <summary>Its name.</summary>
    public string Name { get; internal set; }

    /// <summary>The revision that the draft came from, or was last kept as.</summary>
    public Revision Base { get; private set; }

    /// <summary>The design as that revision has it.</summary>
    public FinDesign BaseDesign { get; private set; }

    /// <summary>What is known now.</summary>
    public Standing Now { get; private set; }

    /// <summary>Whether the draft differs from its revision.</summary>
    public bool Differs => HashOf(Now.Design) != BaseHash;

    /// <summary>Whether there is a step to take back.</summary>
    public bool CanUndo => _shown.Number > 0;

    /// <summary>Whether there is a step that was taken back.</summary>
    public bool CanRedo => _shown.Number < _draft.Steps;

    /// <summary>What undoing would take back; empty when there is nothing.</summary>
    public string LastSaid => _shown.Said;

    /// <summary>Number of the step that is shown; 0 for the revision itself.</summary>
    internal int StepNumber => _shown.Number;

    /// <summary>Results of the revision that the draft came from, when they were seen while nothing differed from it.</summary>
    internal (long Revision, Workshop.Comparing.FinResults Results)? BaseResults { get; set; }

    /// <summary>Whether a tab shows the design.</summary>
    internal bool IsWatched => Changed is not null;

    /// <summary>Whether a hand is moving something: what takes long can wait until it rests.</summary>
    internal bool IsMoving => _moves;

    /// <summary>What taking the next step again would do; empty when there is nothing.</summary>
    public string NextSaid => CanRedo ? _desk.Note(store => store.Drafts.Step(DesignId, _shown.Number + 1)).Said : "";

    /// <summary>When the draft was last on the disk.</summary>
    public DateTimeOffset KeptAt => _draft.KeptAt;

    /// <summary>Why the last changes are not on the disk yet, with what to do; null when they are. Writing is tried again until it works.</summary>
    public StoreException? NotKept { get; private set; }

    private string BaseHash { get; set; }

    /// <summary>Something is new: the design, what is known of it, or how far the work has come.</summary>
    public event Action? Changed;

    /// <summary>Changes one field.</summary>
    /// <param name="path">The field, such as <c>$.shape.outline.span_mm</c>.</param>
    /// <param name="value">Its value in the file's own unit; null leaves it out.</param>
    /// <param name="said">What is changed, in words.</param>
    /// <param name="goesOn">Whether the hand is still moving: such changes of one place become one step.</param>
    /// <returns>What is said against the change when it cannot be made; empty when it was made, if perhaps with findings of its own.</returns>
    public IReadOnlyList<Finding> Set(string path, System.Text.Json.Nodes.JsonNode? value, string said, bool goesOn = false) =>
        Change(path, said, design => DesignEdit.Set(design, path, value), goesOn);

    /// <summary>Changes the design.</summary>
    /// <param name="place">Where: a path in the design file; empty for several places.</param>
    /// <param name="said">What is changed, in words.</param>
    /// <param name="change">Gives the changed design as it reads.</param>
    /// <param name="goesOn">Whether the hand is still moving.</param>
    /// <inheritdoc cref="Set" path="/returns"/>
    public IReadOnlyList<Finding> Change(string place, string said, Func<FinDesign, DesignReading> change, bool goesOn = false)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (_desk.Refusal is { } refusal)
            return [new("store-refuses", Severity.Error, place, refusal.Message, refusal.Remedy)];
        bool same;
        lock (_gate)
        {
            DesignReading reading = change(Now.Design);
            if (reading.Design is not { } design)
                return reading.Findings;
            string text = DesignWriter.Write(design);
            if (text == _shown.Text)
                return [];
            // A hand that moves one thing makes one step.
            same = goesOn && _moves && _shown.Number > 0 && _shown.Place == place;
            _shown = new(same ? _shown.Number : _shown.Number + 1, said, place, text);
            _draft = _draft with { Position = _shown.Number, Steps = _shown.Number };
            _moves = goesOn;
            if (same && _unwritten is [.., { } last] && last.Number == _shown.Number)
                _unwritten[^1] = _shown;
            else
                _unwritten.Add(_shown);
            Now = Drawn(Now with { Design = design, Version = Now.Version + 1, Findings = reading.Findings, Reach = Reach.Shape, Fault = null }, reading);
        }

        // Outside the gate: who writes takes its own first.
        if (same)
            _writer.Change(Patience, Timeout.InfiniteTimeSpan);
        else
            Write();
        _floor.Ask(this);
        Changed?.Invoke();
        return [];
    }

    private bool _moves;

    /// <summary>The hand let go: what it did is one step, on the disk.</summary>
    public void LetGo()
    {
        lock (_gate)
            _moves = false;
        Write();
        Changed?.Invoke();
    }

    /// <summary>Takes the last step back.</summary>
    public void Undo() => Step(-1);

    /// <summary>Takes a step that was taken back again.</summary>
    public void Redo() => Step(1);

    /// <summary>Keeps the draft as a further revision on the shelf.</summary>
    /// <param name="note">What was tried.</param>
    /// <exception cref="StoreException">Nothing changed since the revision, or the store cannot be changed.</exception>
    public Revision KeepAsRevision(string note)
    {
        Revision kept;
        Write();
        lock (_gate)
        {
            FinDesign design = Now.Design;
            string? picture = Now.Shape?.Blade is { } blade && Now.ShapeVersion == Now.Version ? ShelfPicture.Of(blade) : null;
            kept = _desk.Change(store =>
            {
                Revision revision = store.Shelf.Revise(DesignId, new(design, picture, note, _desk.MadeBy), Base.Id);
                store.Drafts.Rest(DesignId, revision.Id);
                return revision;
            });
            (Base, BaseDesign, BaseHash) = (kept, design, HashOf(design));
        }

        Changed?.Invoke();
        return kept;
    }

    /// <summary>Shows a revision in place of the draft: a step like any other, that can be taken back.</summary>
    /// <param name="revision">The revision.</param>
    public IReadOnlyList<Finding> TakeUp(Revision revision)
    {
        ArgumentNullException.ThrowIfNull(revision);
        DesignReading reading = _desk.Ask(store => store.Shelf.Read(revision.Id));
        return Change("", $"as revision {revision.Number}", _ => reading);
    }

    /// <summary>Gives the design another name, on the shelf and in its file.</summary>
    /// <param name="name">The name.</param>
    /// <exception cref="Workshop.Storing.StoreException">The name is taken or cannot be used; nothing changed.</exception>
    public void Rename(string name)
    {
        name = (name ?? "").Trim();
        _desk.Change(store => store.Shelf.Rename(DesignId, name));
        Name = name;
        Set("$.name", name, "name");
        Changed?.Invoke();
    }

    /// <summary>Stops what is being worked out, until the next change or until <see cref="GoOn"/>.</summary>
    public void Stop() => _floor.Stop(this);

    /// <summary>Works out what is missing.</summary>
    public void GoOn() => _floor.Ask(this);

    /// <summary>Works out print, pour and cure of the design as it is now, also where they are not worked out by themselves.</summary>
    public void AskForMaking()
    {
        MakingAskedFor = Now.Version;
        _floor.Ask(this);
    }

    /// <summary>The version whose print, pour and cure were asked for; 0 for none.</summary>
    internal long MakingAskedFor { get; private set; }

    /// <summary>Closes the design if nobody looks at it and all that was changed is on the disk.</summary>
    /// <returns>Whether it is closed.</returns>
    internal bool TryClose()
    {
        if (IsWatched)
            return false;
        Write();
        if (NotKept is not null)
            return false;
        Dispose();
        return true;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _floor.Leave(this);
        Write();
        _writer.Dispose();
        _shapes.Dispose();
    }

    internal void Publish(long version, Func<Standing, Standing> update)
    {
        lock (_gate)
        {
            if (Now.Version != version)
                return;
            Now = update(Now);
        }

        Changed?.Invoke();
    }

    /// <summary>Keeps what was worked out with the revision, when the design is still that revision: shelf and comparisons need not work it out again.</summary>
    internal void KeepResults(long version, Func<FinResults> results)
    {
        lock (_gate)
        {
            if (Now.Version != version || Differs)
                return;
        }

        Revision revision = Base;
        if (_desk.Ask(store => Predictions.Kept(store, revision, _desk.ProgramVersion)) is not null)
            return;
        FinResults all = results();
        try
        {
            _desk.Change(store => Predictions.Keep(store, revision, _desk.ProgramVersion, all));
        }
        catch (Workshop.Storing.StoreException)
        {
            // They are shown all the same, and worked out again another time.
        }
    }

    private void Step(int by)
    {
        Write();
        lock (_gate)
        {
            int to = _shown.Number + by;
            if (to < 0 || to > _draft.Steps)
                return;
            if (_desk.Refusal is not null)
                return;
            try
            {
                (_draft, _shown) = _desk.Note(store => (store.Drafts.Move(DesignId, to), store.Drafts.Step(DesignId, to)));
            }
            catch (StoreException problem)
            {
                NotKept = problem;
                return;
            }

            _moves = false;
            DesignReading reading = DesignReader.Read(_shown.Text);
            Now = Drawn(Now with { Design = reading.Design!, Version = Now.Version + 1, Findings = reading.Findings, Reach = Reach.Shape, Fault = null }, reading);
        }

        _floor.Ask(this);
        Changed?.Invoke();
    }

    private void WriteLater()
    {
        bool was = NotKept is not null;
        Write();
        if (was != NotKept is not null)
            Changed?.Invoke();
    }

    private void Write()
    {
        lock (_writing)
        {
            DraftStep[] steps;
            lock (_gate)
                steps = [.. _unwritten];
            if (steps.Length == 0)
                return;
            try
            {
                Draft kept = _desk.Note(store => store.Together(() => steps.Select(step => store.Drafts.Keep(DesignId, step)).ToArray()[^1]));
                lock (_gate)
                {
                    // A hand that went on meanwhile has put another in the place of the last.
                    _unwritten.RemoveAll(step => Array.Exists(steps, written => ReferenceEquals(written, step)));
                    _draft = _draft with { KeptAt = kept.KeptAt };
                    NotKept = null;
                }
            }
            catch (StoreException problem)
            {
                // A full disk must not take away what was typed: it stays here, and is tried again.
                NotKept = problem;
                _writer.Change(BeforeRetry, Timeout.InfiniteTimeSpan);
                return;
            }
        }
    }

    /// <summary>Draws the shape at once: outline, sections, skin.</summary>
    private Standing Drawn(Standing standing, DesignReading reading)
    {
        if (reading.HasErrors)
            return standing;
        AssessmentResult shape = _shapes.Assess(reading, AssessmentDepth.Shape);
        TriangleMesh? skin = shape.Blade is null || shape.Design is null ? null : BladeFromDesign.Skin(shape.Design.Shape with { SkinToleranceMm = ScreenToleranceMm }, shape.Blade, []);
        return skin is null
            ? standing with { Findings = shape.Findings }
            : standing with { Findings = shape.Findings, Shape = shape, Skin = skin, ShapeVersion = standing.Version };
    }

    private static string HashOf(FinDesign design) => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(DesignWriter.Canonical(design)));
}
