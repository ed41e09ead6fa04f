using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Library;

/// <summary>What the maker keeps for more than one design.</summary>
public sealed class LibraryTable
{
    /// <summary>Longest name.</summary>
    public const int NameLength = 80;

    private readonly StoreConnection _store;

    internal LibraryTable(StoreConnection store) => _store = store;

    /// <summary>Keeps a thing.</summary>
    /// <param name="content">What it is.</param>
    /// <returns>The item with its number.</returns>
    /// <exception cref="StoreException">There is one of that kind and name.</exception>
    public LibraryItem Add(LibraryContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        return _store.Change(() =>
        {
            RefuseTaken(content.Kind, content.Name, 0);
            return Get(_store.Insert("library_item", ("kind", content.Kind), ("name", content.Name), ("made_at", _store.Time.GetUtcNow()), ("text", content.Write())));
        });
    }

    /// <summary>Keeps a thing as it is now.</summary>
    /// <param name="id">Its number.</param>
    /// <param name="content">What it is; of the same kind as before.</param>
    /// <exception cref="StoreException">It is not there, or another of its kind has that name.</exception>
    public LibraryItem Change(long id, LibraryContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        return _store.Change(() =>
        {
            LibraryItem before = Get(id);
            if (before.Kind != content.Kind)
                throw new StoreException(StoreProblem.Wrong, "A thing of the library cannot become one of another kind.", "Keep it as a thing of its own.");
            RefuseTaken(content.Kind, content.Name, id);
            _store.Update("library_item", id, ("name", content.Name), ("text", content.Write()));
            return Get(id);
        });
    }

    /// <summary>Everything that is there, by kind and name.</summary>
    /// <param name="kind">Of which kind; null for all.</param>
    public IReadOnlyList<LibraryItem> List(LibraryKind? kind = null) => _store.All(
        "SELECT * FROM library_item WHERE deleted_at IS NULL AND ($kind IS NULL OR kind = $kind) ORDER BY kind, name COLLATE NOCASE, id", Read, ("kind", kind));

    /// <summary>What was deleted and can be had back, the latest first.</summary>
    /// <param name="kind">Of which kind.</param>
    public IReadOnlyList<LibraryItem> Deleted(LibraryKind kind) => _store.All(
        "SELECT * FROM library_item WHERE deleted_at IS NOT NULL AND kind = $kind ORDER BY deleted_at DESC, id", Read, ("kind", kind));

    /// <summary>A thing by its number, deleted ones too; null when there is none.</summary>
    public LibraryItem? Find(long id) => _store.First("SELECT * FROM library_item WHERE id = $id", Read, ("id", id));

    /// <summary>A name that is free: the wanted one, or with a number behind it.</summary>
    /// <param name="kind">Of which kind.</param>
    /// <param name="wanted">The name that is wanted.</param>
    public string FreeName(LibraryKind kind, string wanted)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        string stem = wanted.Trim();
        stem = stem.Length > NameLength - 4 ? stem[..(NameLength - 4)] : stem;
        string name = stem;
        for (int number = 2; IsTaken(kind, name, 0); number++)
            name = $"{stem} {number}";
        return name;
    }

    /// <summary>Takes a thing out; for 30 days it can be had back. Designs that took it keep what they took.</summary>
    public void Delete(long id) => new StoreBin(_store).Put(BinKind.Library, id);

    /// <summary>Has a deleted thing back.</summary>
    /// <exception cref="StoreException">It was not deleted, or its name was given to another.</exception>
    public void Restore(long id) => _store.Change(() =>
    {
        LibraryItem item = Get(id);
        RefuseTaken(item.Kind, item.Name, id);
        new StoreBin(_store).TakeBack(BinKind.Library, id);
    });

    private LibraryItem Get(long id) => Find(id) ?? throw new StoreException(StoreProblem.Wrong, $"The library has no number {id}.", "It may have been thrown away; look at the list.");

    private bool IsTaken(LibraryKind kind, string name, long but) =>
        _store.Count("SELECT count(*) FROM library_item WHERE kind = $kind AND name = $name COLLATE NOCASE AND deleted_at IS NULL AND id <> $id", ("kind", kind), ("name", name), ("id", but)) > 0;

    private void RefuseTaken(LibraryKind kind, string name, long but)
    {
        if (string.IsNullOrWhiteSpace(name))
            throw new StoreException(StoreProblem.Wrong, "It has no name.", "Give it one.");
        if (name.Length > NameLength)
            throw new StoreException(StoreProblem.Wrong, $"The name has {name.Length} characters; at most {NameLength} are kept.", "Shorten it.");
        if (IsTaken(kind, name, but))
            throw new StoreException(StoreProblem.Wrong, $"The library has one of that kind that is called \"{name}\".", "Give this one another name, or change the one that is there.");
    }

    private static LibraryItem Read(Row row) =>
        new(row.Whole("id"), row.Word<LibraryKind>("kind"), row.Text("name"), row.Text("text"), row.Moment("made_at"), row.MomentOrNull("deleted_at"));
}
