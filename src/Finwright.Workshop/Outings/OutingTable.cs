using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Outings;

/// <summary>What was sailed.</summary>
public sealed class OutingTable
{
    private const string Columns =
        "outing.*, (SELECT name FROM build WHERE build.id = outing.build_id) AS build, EXISTS (SELECT 1 FROM track WHERE track.outing_id = outing.id) AS has_track";

    private readonly StoreConnection _store;

    internal OutingTable(StoreConnection store) => _store = store;

    /// <summary>Adds an outing with its track, both or none.</summary>
    /// <param name="outing">The outing.</param>
    /// <param name="track">Its track; null for none.</param>
    /// <returns>The outing with its number.</returns>
    /// <exception cref="StoreException">The track is kept already, or the build is not there.</exception>
    public Outing Add(Outing outing, KeptTrack? track)
    {
        ArgumentNullException.ThrowIfNull(outing);
        return _store.Change(() =>
        {
            if (track is not null && _store.Count("SELECT outing_id FROM track JOIN outing ON outing.id = track.outing_id WHERE hash = $hash AND deleted_at IS NULL", ("hash", track.Hash)) is > 0 and long other)
                throw new StoreException(StoreProblem.Wrong, $"The track \"{track.FileName}\" is kept already, with outing {other}.", $"\"finwright outing show {other}\" shows it.");
            long id = _store.Insert("outing", Values(outing));
            if (track is not null)
                _store.Insert("track", ("outing_id", id), ("file_name", track.FileName), ("hash", track.Hash), ("points", track.Points));
            return Get(id);
        });
    }

    /// <summary>Keeps an outing as it is now; its track stays.</summary>
    public Outing Change(Outing outing)
    {
        ArgumentNullException.ThrowIfNull(outing);
        return _store.Change(() =>
        {
            _store.Update("outing", Get(outing.Id).Id, Values(outing));
            return Get(outing.Id);
        });
    }

    /// <summary>Outings, the latest first.</summary>
    /// <param name="build">With which build; null for all.</param>
    public IReadOnlyList<Outing> List(long? build = null) =>
        _store.All($"SELECT {Columns} FROM outing WHERE deleted_at IS NULL AND ($build IS NULL OR build_id = $build) ORDER BY sailed_on DESC, id DESC", ReadOuting, ("build", build));

    /// <summary>An outing by its number, deleted ones too.</summary>
    /// <exception cref="StoreException">There is none.</exception>
    public Outing Get(long id) =>
        _store.First($"SELECT {Columns} FROM outing WHERE id = $id", ReadOuting, ("id", id)) ?? throw new StoreException(StoreProblem.Wrong, $"There is no outing number {id}.", "\"finwright outing list\" shows what there is.");

    /// <summary>The track of an outing; null when it has none.</summary>
    public KeptTrack? Track(long outing) =>
        _store.First("SELECT file_name, hash, points FROM track WHERE outing_id = $id", row => new KeptTrack(row.Text("file_name"), row.Text("hash"), row.Bytes("points")), ("id", outing));

    /// <summary>Deletes an outing; for 30 days it can be had back.</summary>
    public void Delete(long id) => new StoreBin(_store).Put(BinKind.Outing, id);

    /// <summary>Has a deleted outing back.</summary>
    public void Restore(long id) => new StoreBin(_store).TakeBack(BinKind.Outing, id);

    private static (string Name, object? Value)[] Values(Outing outing) =>
    [
        ("sailed_on", outing.SailedOn), ("place", outing.Place), ("wind_low_knots", outing.WindLowKnots), ("wind_high_knots", outing.WindHighKnots), ("sail", outing.Sail), ("sail_m2", outing.SailM2),
        ("board", outing.Board), ("rider", outing.Rider), ("build_id", outing.BuildId), ("grip", outing.Grip), ("spin_outs", outing.SpinOuts), ("speed", outing.Speed), ("feel", outing.Feel), ("note", outing.Note),
    ];

    private static Outing ReadOuting(Row row) => new()
    {
        Id = row.Whole("id"),
        SailedOn = row.Day("sailed_on"),
        Place = row.Text("place"),
        WindLowKnots = row.NumberOrNull("wind_low_knots"),
        WindHighKnots = row.NumberOrNull("wind_high_knots"),
        Sail = row.Text("sail"),
        SailM2 = row.NumberOrNull("sail_m2"),
        Board = row.Text("board"),
        Rider = row.Text("rider"),
        BuildId = row.WholeOrNull("build_id"),
        Build = row.Text("build"),
        Grip = row.CountOrNull("grip"),
        SpinOuts = row.CountOrNull("spin_outs"),
        Speed = row.CountOrNull("speed"),
        Feel = row.CountOrNull("feel"),
        Note = row.Text("note"),
        HasTrack = row.Whole("has_track") != 0,
    };
}
