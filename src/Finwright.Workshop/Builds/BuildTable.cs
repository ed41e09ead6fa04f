using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Builds;

/// <summary>What was built.</summary>
public sealed class BuildTable
{
    private const string Columns =
        "build.*, (SELECT design.name || '@' || revision.number FROM revision JOIN design ON design.id = revision.design_id WHERE revision.id = build.revision_id) AS revision";

    private readonly StoreConnection _store;

    internal BuildTable(StoreConnection store) => _store = store;

    /// <summary>Adds a build.</summary>
    /// <returns>The build with its number.</returns>
    /// <exception cref="StoreException">Its name is taken or unusable, or its revision is not there.</exception>
    public Build Add(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return _store.Change(() =>
        {
            Check(build);
            return Get(_store.Insert("build", Values(build)));
        });
    }

    /// <summary>Keeps a build as it is now.</summary>
    public Build Change(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return _store.Change(() =>
        {
            Check(build);
            _store.Update("build", Get(build.Id).Id, Values(build));
            return Get(build.Id);
        });
    }

    /// <summary>Builds, the latest first.</summary>
    /// <param name="design">Of which design; null for all.</param>
    public IReadOnlyList<Build> List(long? design = null) => _store.All(
        $"""
        SELECT {Columns} FROM build WHERE deleted_at IS NULL
            AND ($design IS NULL OR revision_id IN (SELECT id FROM revision WHERE design_id = $design))
        ORDER BY coalesce(made_on, '9999-12-31') DESC, id DESC
        """,
        ReadBuild,
        ("design", design));

    /// <summary>A build by its name, whatever the capitals; null when there is none.</summary>
    public Build? Find(string name) =>
        _store.First($"SELECT {Columns} FROM build WHERE deleted_at IS NULL AND name = $name COLLATE NOCASE", ReadBuild, ("name", (name ?? "").Trim()));

    /// <summary>A build by its name.</summary>
    /// <exception cref="StoreException">There is none.</exception>
    public Build Get(string name) => Find(name) ?? throw new StoreException(StoreProblem.Wrong, $"There is no build \"{name}\".", "\"finwright built list\" shows what there is.");

    /// <summary>A build by its number, deleted ones too.</summary>
    /// <exception cref="StoreException">There is none.</exception>
    public Build Get(long id) =>
        _store.First($"SELECT {Columns} FROM build WHERE id = $id", ReadBuild, ("id", id)) ?? throw new StoreException(StoreProblem.Wrong, $"There is no build number {id}.", "\"finwright built list\" shows what there is.");

    /// <summary>Parts of a build, by name.</summary>
    public IReadOnlyList<BuildPart> Parts(long build) => _store.All(
        "SELECT * FROM build_part WHERE build_id = $build ORDER BY part",
        row => new BuildPart(row.Text("part"), row.DayOrNull("printed_on"), row.WholeOrNull("filament_id"), row.NumberOrNull("plastic_g"), row.NumberOrNull("print_hours"), row.Text("note")),
        ("build", build));

    /// <summary>Keeps a part of a build, in place of what was kept of it before.</summary>
    public void Keep(long build, BuildPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        _store.Change(() =>
        {
            if (string.IsNullOrWhiteSpace(part.Part))
                throw new StoreException(StoreProblem.Wrong, "The part has no name.", "Name it as the build sheet does.");
            _store.Execute("DELETE FROM build_part WHERE build_id = $build AND part = $part", ("build", build), ("part", part.Part));
            _store.Insert("build_part", ("build_id", Get(build).Id), ("part", part.Part), ("printed_on", part.PrintedOn), ("filament_id", part.FilamentId), ("plastic_g", part.PlasticGrams), ("print_hours", part.PrintHours), ("note", part.Note));
        });
    }

    /// <summary>Photos of a build.</summary>
    public IReadOnlyList<BuildPhoto> Photos(long build) =>
        _store.All("SELECT path, caption FROM build_photo WHERE build_id = $build ORDER BY rowid", row => new BuildPhoto(row.Text("path"), row.Text("caption")), ("build", build));

    /// <summary>Notes where a photo of a build lies.</summary>
    public void Keep(long build, BuildPhoto photo)
    {
        ArgumentNullException.ThrowIfNull(photo);
        _store.Change(() =>
        {
            _store.Execute("DELETE FROM build_photo WHERE build_id = $build AND path = $path", ("build", build), ("path", photo.Path));
            _store.Insert("build_photo", ("build_id", Get(build).Id), ("path", photo.Path), ("caption", photo.Caption));
        });
    }

    /// <summary>Forgets where a photo of a build lies; the photo itself stays.</summary>
    public void Forget(long build, BuildPhoto photo)
    {
        ArgumentNullException.ThrowIfNull(photo);
        _store.Change(() => _store.Execute("DELETE FROM build_photo WHERE build_id = $build AND path = $path", ("build", build), ("path", photo.Path)));
    }

    /// <summary>Takes a build off the list; for 30 days it can be had back.</summary>
    public void Delete(long id) => new StoreBin(_store).Put(BinKind.Build, id);

    /// <summary>Has a deleted build back.</summary>
    /// <param name="name">Its name; the latest deleted of that name.</param>
    public void Restore(string name) => _store.Change(() =>
    {
        BinItem item = new StoreBin(_store).List().FirstOrDefault(item => item.Kind == BinKind.Build && string.Equals(item.Name, name, StringComparison.OrdinalIgnoreCase))
            ?? throw new StoreException(StoreProblem.Wrong, $"No build \"{name}\" lies among the deleted things.", "\"finwright store bin\" lists them.");
        Restore(item.Id);
    });

    /// <summary>Has a deleted build back by its number.</summary>
    /// <param name="id">Number of the build.</param>
    /// <exception cref="StoreException">It was not deleted, another build has its name by now, or its design is not on the shelf.</exception>
    public void Restore(long id) => _store.Change(() =>
    {
        Check(Get(id));
        new StoreBin(_store).TakeBack(BinKind.Build, id);
    });

    private void Check(Build build)
    {
        string name = build.Name.Trim();
        if (name.Length is 0 or > 80 || name.Any(char.IsControl))
            throw new StoreException(StoreProblem.Wrong, "A build needs a name of 1 to 80 characters.", "Give it one.");
        if (Find(name) is { } other && other.Id != build.Id)
            throw new StoreException(StoreProblem.Wrong, $"There is a build \"{other.Name}\" already.", "Give this one another name.");
        if (_store.Count("SELECT count(*) FROM revision JOIN design ON design.id = revision.design_id WHERE revision.id = $id AND design.deleted_at IS NULL", ("id", build.RevisionId)) == 0)
            throw new StoreException(StoreProblem.Wrong, "The design of this build is not on the shelf.", "Restore the design first, or name another one.");
    }

    private static (string Name, object? Value)[] Values(Build build) =>
    [
        ("revision_id", build.RevisionId), ("name", build.Name.Trim()), ("made_on", build.MadeOn), ("filament_id", build.FilamentId), ("resin_id", build.ResinId),
        ("plastic_g", build.PlasticGrams), ("resin_ml", build.ResinMl), ("mass_g", build.MassGrams), ("print_hours", build.PrintHours),
        ("room_celsius", build.RoomCelsius), ("bath_celsius", build.BathCelsius), ("peak_celsius", build.PeakCelsius),
        ("cost", build.Cost), ("currency", build.Currency), ("problems", build.Problems), ("note", build.Note),
    ];

    private static Build ReadBuild(Row row) => new()
    {
        Id = row.Whole("id"),
        RevisionId = row.Whole("revision_id"),
        Revision = row.Text("revision"),
        Name = row.Text("name"),
        MadeOn = row.DayOrNull("made_on"),
        FilamentId = row.WholeOrNull("filament_id"),
        ResinId = row.WholeOrNull("resin_id"),
        PlasticGrams = row.NumberOrNull("plastic_g"),
        ResinMl = row.NumberOrNull("resin_ml"),
        MassGrams = row.NumberOrNull("mass_g"),
        PrintHours = row.NumberOrNull("print_hours"),
        RoomCelsius = row.NumberOrNull("room_celsius"),
        BathCelsius = row.NumberOrNull("bath_celsius"),
        PeakCelsius = row.NumberOrNull("peak_celsius"),
        Cost = row.NumberOrNull("cost"),
        Currency = row.Text("currency"),
        Problems = row.Text("problems"),
        Note = row.Text("note"),
    };
}
