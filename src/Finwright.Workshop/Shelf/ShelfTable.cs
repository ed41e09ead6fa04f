using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Finwright.Design;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Shelf;

/// <summary>What comes onto the shelf.</summary>
/// <param name="Design">The design, with the text of every file that it names (<see cref="DesignReading"/> read from a folder and assessed gives it).</param>
/// <param name="Picture">A small picture, SVG; null for none.</param>
/// <param name="Note">What is tried.</param>
/// <param name="MadeBy">The program and its version.</param>
public sealed record ShelfEntry(FinDesign Design, string? Picture, string Note, string MadeBy);

/// <summary>What was worked out of a revision, so that it need not be again.</summary>
/// <param name="MadeBy">The program and its version: another version works out anew.</param>
/// <param name="MadeAt">When.</param>
/// <param name="Results">The results as JSON.</param>
public sealed record KeptPrediction(string MadeBy, DateTimeOffset MadeAt, string Results);

/// <summary>Designs and their revisions.</summary>
public sealed class ShelfTable
{
    internal const int LongestNote = 2000;

    private const int LongestName = 80, MostTags = 20, LongestTag = 40;

    private const string RevisionColumns =
        "revision.id, revision.design_id, design.name AS design_name, revision.number, revision.hash, revision.note, revision.made_at, revision.made_by, "
        + "(SELECT d.name || '@' || p.number FROM revision p JOIN design d ON d.id = p.design_id WHERE p.id = revision.parent_id) AS parent";

    private readonly StoreConnection _store;

    internal ShelfTable(StoreConnection store) => _store = store;

    /// <summary>Puts a new design onto the shelf.</summary>
    /// <param name="name">Its name, to 80 characters.</param>
    /// <param name="entry">Its first revision.</param>
    /// <param name="tags">Words to find it by.</param>
    /// <param name="parent">The revision of another design that it was made from; null for none.</param>
    /// <exception cref="StoreException">The name is taken, or unusable.</exception>
    public Revision Add(string name, ShelfEntry entry, IReadOnlyList<string> tags, long? parent = null)
    {
        ArgumentNullException.ThrowIfNull(entry);
        name = CheckedName(name);
        return _store.Change(() =>
        {
            RefuseTaken(name, except: null);
            long design = _store.Insert("design", ("name", name), ("tags", JsonSerializer.Serialize(CheckedTags(tags))), ("added_at", _store.Time.GetUtcNow()));
            return Insert(design, 1, parent, entry);
        });
    }

    /// <summary>Puts a further revision of a design onto the shelf.</summary>
    /// <param name="design">Number of the design.</param>
    /// <param name="entry">The revision.</param>
    /// <param name="parent">The revision that it was made from; null for the latest.</param>
    /// <exception cref="StoreException">Nothing changed since the parent, or the design is not there.</exception>
    public Revision Revise(long design, ShelfEntry entry, long? parent = null)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return _store.Change(() =>
        {
            Revision latest = RefuseMissing(design);
            if (string.Equals(latest.Hash, HashOf(TextOf(entry.Design)), StringComparison.Ordinal))
                throw new StoreException(StoreProblem.Wrong, $"The design is the same as {latest.Label}: nothing was kept.", "Change something first.");
            return Insert(design, latest.Number + 1, parent ?? latest.Id, entry);
        });
    }

    /// <summary>Keeps an old revision once more, as the latest of its design.</summary>
    /// <param name="revision">Number of the old one.</param>
    /// <param name="madeBy">The program and its version.</param>
    /// <exception cref="StoreException">It is the latest already, or is not there.</exception>
    public Revision Again(long revision, string madeBy) => _store.Change(() =>
    {
        string text = Text(revision);
        Revision old = Find(revision)!, latest = Latest(old.DesignId) ?? throw new StoreException(StoreProblem.Wrong, $"\"{old.DesignName}\" is not on the shelf.", "Restore the design first.");
        if (string.Equals(old.Hash, latest.Hash, StringComparison.Ordinal))
            throw new StoreException(StoreProblem.Wrong, $"{old.Label} is the same as the latest, {latest.Label}: nothing was kept.", "Name another revision.");
        return Insert(old.DesignId, latest.Number + 1, revision, text, $"As {old.Label} again.", madeBy, Picture(revision));
    });

    /// <summary>Designs on the shelf, by name.</summary>
    /// <param name="search">Words that name, tags or a note must hold; empty for all.</param>
    public IReadOnlyList<ShelvedDesign> List(string search = "")
    {
        ArgumentNullException.ThrowIfNull(search);
        string[] words = search.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        IReadOnlyList<ShelvedDesign> all = Shelved(name: null);
        return words.Length == 0 ? all : [.. all.Where(design => Array.TrueForAll(words, word => Holds(design, word)))];
    }

    /// <summary>A design by its name, whatever the capitals; null when there is none.</summary>
    public ShelvedDesign? Find(string name) => Shelved((name ?? "").Trim()) is [var found, ..] ? found : null;

    /// <summary>A revision as a person names it.</summary>
    /// <param name="reference">Name, or name@number.</param>
    /// <exception cref="StoreException">There is none.</exception>
    public Revision Get(Reference reference)
    {
        Revision? found = reference.Number is int number
            ? FirstRevision("design.deleted_at IS NULL AND design.name = $name COLLATE NOCASE AND revision.number = $number", ("name", reference.Name), ("number", number))
            : FirstRevision("design.deleted_at IS NULL AND design.name = $name COLLATE NOCASE", ("name", reference.Name));
        return found ?? throw new StoreException(
            StoreProblem.Wrong,
            reference.Number is int missing ? $"There is no revision {missing} of \"{reference.Name}\" on the shelf." : $"There is no design \"{reference.Name}\" on the shelf.",
            "\"finwright shelf list\" shows what there is.");
    }

    /// <summary>A revision by its number in the store; null when there is none.</summary>
    public Revision? Find(long revision) => FirstRevision("revision.id = $id", ("id", revision));

    /// <summary>Revisions of a design, the first first.</summary>
    public IReadOnlyList<Revision> Revisions(long design) =>
        _store.All($"SELECT {RevisionColumns} FROM revision JOIN design ON design.id = revision.design_id WHERE design_id = $design ORDER BY number", ReadRevision, ("design", design));

    /// <summary>The text of a revision: a design file as it was kept.</summary>
    public string Text(long revision) =>
        _store.First("SELECT text FROM revision WHERE id = $id", row => row.Text("text"), ("id", revision))
        ?? throw new StoreException(StoreProblem.Wrong, $"There is no revision number {revision}.", "\"finwright shelf list\" shows what there is.");

    /// <summary>A revision as a design, brought up to the present format; it names no files.</summary>
    public DesignReading Read(long revision) => DesignReader.Read(Text(revision));

    /// <summary>The picture of a revision, SVG; null when there is none.</summary>
    public string? Picture(long revision) => _store.First("SELECT svg FROM picture WHERE revision_id = $id", row => row.Text("svg"), ("id", revision));

    /// <summary>What was worked out of a revision; null when nothing was kept.</summary>
    public KeptPrediction? Prediction(long revision) =>
        _store.First("SELECT made_by, made_at, results FROM prediction WHERE revision_id = $id", row => new KeptPrediction(row.Text("made_by"), row.Moment("made_at"), row.Text("results")), ("id", revision));

    /// <summary>Keeps what was worked out of a revision, in place of what was kept before.</summary>
    /// <param name="revision">Number of the revision.</param>
    /// <param name="madeBy">The program and its version.</param>
    /// <param name="results">The results as JSON.</param>
    public void KeepPrediction(long revision, string madeBy, string results) => _store.Change(() => _store.Execute(
        "INSERT OR REPLACE INTO prediction (revision_id, made_by, made_at, results) VALUES ($id, $by, $at, $results)",
        ("id", revision), ("by", madeBy), ("at", _store.Time.GetUtcNow()), ("results", results)));

    /// <summary>Gives a design another name.</summary>
    public void Rename(long design, string name) => _store.Change(() =>
    {
        RefuseMissing(design);
        RefuseTaken(CheckedName(name), design);
        _store.Update("design", design, ("name", CheckedName(name)));
    });

    /// <summary>Gives a design other tags.</summary>
    public void Tag(long design, IReadOnlyList<string> tags) => _store.Change(() =>
    {
        RefuseMissing(design);
        _store.Update("design", design, ("tags", JsonSerializer.Serialize(CheckedTags(tags))));
    });

    /// <summary>Takes a design off the shelf; for 30 days it can be had back.</summary>
    /// <exception cref="StoreException">Builds of it are kept: they would lose what they are builds of.</exception>
    public void Delete(long design) => _store.Change(() =>
    {
        IReadOnlyList<string> builds = _store.All(
            "SELECT build.name FROM build JOIN revision ON revision.id = build.revision_id WHERE revision.design_id = $design AND build.deleted_at IS NULL ORDER BY build.name",
            row => row.Text("name"),
            ("design", design));
        if (builds.Count > 0)
            throw new StoreException(StoreProblem.Wrong, $"{(builds.Count == 1 ? "A build hangs" : $"{builds.Count} builds hang")} on this design: {string.Join(", ", builds.Take(5))}.", "Delete the builds first.");
        new StoreBin(_store).Put(BinKind.Design, design);
    });

    /// <summary>Has a deleted design back.</summary>
    /// <param name="name">Its name; the latest deleted of that name.</param>
    public void Restore(string name) => _store.Change(() =>
    {
        BinItem item = new StoreBin(_store).List().FirstOrDefault(item => item.Kind == BinKind.Design && string.Equals(item.Name, name, StringComparison.OrdinalIgnoreCase))
            ?? throw new StoreException(StoreProblem.Wrong, $"No design \"{name}\" lies among the deleted things.", "\"finwright store bin\" lists them.");
        Restore(item.Id);
    });

    /// <summary>Has a deleted design back by its number.</summary>
    /// <param name="design">Number of the design.</param>
    /// <exception cref="StoreException">It was not deleted, or another design has its name by now.</exception>
    public void Restore(long design) => _store.Change(() =>
    {
        if (_store.First("SELECT name FROM design WHERE id = $id", row => row.Text("name"), ("id", design)) is string name)
            RefuseTaken(name, design);
        new StoreBin(_store).TakeBack(BinKind.Design, design);
    });

    private Revision Insert(long design, int number, long? parent, ShelfEntry entry) =>
        entry.Note.Length <= LongestNote
            ? Insert(design, number, parent, TextOf(entry.Design), entry.Note, entry.MadeBy, entry.Picture)
            : throw new StoreException(StoreProblem.Wrong, $"The note has {entry.Note.Length} characters; {LongestNote} are the most.", "Shorten it.");

    private Revision Insert(long design, int number, long? parent, string text, string note, string madeBy, string? picture)
    {
        long id = _store.Insert(
            "revision",
            ("design_id", design), ("number", number), ("parent_id", parent), ("hash", HashOf(text)), ("note", note), ("made_at", _store.Time.GetUtcNow()), ("made_by", madeBy), ("text", text));
        if (picture is not null)
            _store.Insert("picture", ("revision_id", id), ("svg", picture));
        return Find(id)!;
    }

    // Every field with its value: what a default is may change with the program, what was kept may not.
    private static string TextOf(FinDesign design) => DesignWriter.Write(design);

    private static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private Revision? Latest(long design) => FirstRevision("design.deleted_at IS NULL AND design.id = $design", ("design", design));

    private Revision RefuseMissing(long design) =>
        Latest(design) ?? throw new StoreException(StoreProblem.Wrong, $"There is no design number {design}.", "\"finwright shelf list\" shows what there is.");

    private Revision? FirstRevision(string where, params ReadOnlySpan<(string Name, object? Value)> values) =>
        _store.First($"SELECT {RevisionColumns} FROM revision JOIN design ON design.id = revision.design_id WHERE {where} ORDER BY number DESC LIMIT 1", ReadRevision, values);

    private void RefuseTaken(string name, long? except)
    {
        if (_store.Count("SELECT count(*) FROM design WHERE name = $name COLLATE NOCASE AND deleted_at IS NULL AND id IS NOT $except", ("name", name), ("except", except)) > 0)
            throw new StoreException(StoreProblem.Wrong, $"There is a design \"{name}\" on the shelf already.", "Give it another name, or keep this as a revision of that one.");
    }

    internal static string CheckedName(string name)
    {
        name = (name ?? "").Trim();
        if (name.Length is 0 or > LongestName || name.Any(char.IsControl))
            throw new StoreException(StoreProblem.Wrong, name.Length == 0 ? "The name is empty." : name.Length > LongestName ? $"The name has {name.Length} characters; {LongestName} are the most." : "The name holds signs that no text has.", "Give it another name.");
        return Reference.Parse(name).Number is null ? name : throw new StoreException(StoreProblem.Wrong, $"The name \"{name}\" ends like the number of a revision.", "Leave out the @ and what follows.");
    }

    internal static string[] CheckedTags(IReadOnlyList<string> tags)
    {
        string[] clean = [.. tags.Select(tag => tag.Trim()).Where(tag => tag.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)];
        if (clean.Length > MostTags || Array.Exists(clean, tag => tag.Length > LongestTag || tag.Any(char.IsControl)))
            throw new StoreException(StoreProblem.Wrong, $"A design has at most {MostTags} tags of at most {LongestTag} characters.", "Use fewer or shorter ones.");
        return clean;
    }

    private static bool Holds(ShelvedDesign design, string word) =>
        design.Name.Contains(word, StringComparison.OrdinalIgnoreCase)
        || design.Latest.Note.Contains(word, StringComparison.OrdinalIgnoreCase)
        || design.Tags.Any(tag => tag.Contains(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>Designs on the shelf, by name; only the one of a name when it is given.</summary>
    private IReadOnlyList<ShelvedDesign> Shelved(string? name) => _store.All(
        $"""
        SELECT design.added_at, design.tags, {RevisionColumns},
            (SELECT count(*) FROM revision r WHERE r.design_id = design.id) AS revisions,
            (SELECT count(*) FROM build JOIN revision r ON r.id = build.revision_id WHERE r.design_id = design.id AND build.deleted_at IS NULL) AS builds
        FROM design JOIN revision ON revision.design_id = design.id
            AND revision.number = (SELECT max(number) FROM revision r WHERE r.design_id = design.id)
        WHERE design.deleted_at IS NULL{(name is null ? "" : " AND design.name = $name COLLATE NOCASE")} ORDER BY design.name COLLATE NOCASE, design.id
        """,
        ReadShelved,
        name is null ? [] : [("name", name)]);

    private static ShelvedDesign ReadShelved(Row row)
    {
        Revision latest = ReadRevision(row);
        return new(latest.DesignId, latest.DesignName, JsonSerializer.Deserialize<string[]>(row.Text("tags")) ?? [], row.Moment("added_at"), (int)row.Whole("revisions"), (int)row.Whole("builds"), latest);
    }

    private static Revision ReadRevision(Row row) =>
        new(row.Whole("id"), row.Whole("design_id"), row.Text("design_name"), (int)row.Whole("number"), row.Text("parent"), row.Text("hash"), row.Text("note"), row.Moment("made_at"), row.Text("made_by"));
}
