using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Bench;

/// <summary>Readings of the bench.</summary>
public sealed class BenchTable
{
    private readonly StoreConnection _store;

    internal BenchTable(StoreConnection store) => _store = store;

    /// <summary>Adds readings, all of them or none.</summary>
    /// <returns>The session with its number.</returns>
    /// <exception cref="StoreException">There are none, or the build is not there.</exception>
    public BenchSession Add(BenchSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        if (session.Readings.Count == 0)
            throw new StoreException(StoreProblem.Wrong, "There are no readings.", "Give at least one.");
        return _store.Change(() =>
        {
            new StoreBin(_store).RefuseWithoutBuild(session.BuildId);
            long id = _store.Insert("bench_session", ("build_id", session.BuildId), ("taken_on", session.TakenOn), ("root_hold", session.RootHold), ("note", session.Note));
            foreach ((int i, BenchReadingLine line) in session.Readings.Index())
            {
                _store.Insert(
                    "bench_reading",
                    ("session_id", id), ("line", i + 1), ("mass_kg", line.MassKg), ("at_mm", line.AtMm), ("at_chord", line.AtChord), ("read_at_mm", line.ReadAtMm), ("read_chord", line.ReadChord),
                    ("deflection_mm", line.DeflectionMm?.Value), ("deflection_deviation_mm", line.DeflectionMm?.Deviation),
                    ("twist_degrees", line.TwistDegrees?.Value), ("twist_deviation_degrees", line.TwistDegrees?.Deviation), ("note", line.Note));
            }

            return Get(id);
        });
    }

    /// <summary>Sessions of builds that are not deleted, the first first.</summary>
    /// <param name="build">Of which build; null for all.</param>
    public IReadOnlyList<BenchSession> List(long? build = null) =>
        [.. _store.All($"SELECT * FROM bench_session WHERE deleted_at IS NULL AND ($build IS NULL OR build_id = $build) AND {StoreBin.BuildIsThere} ORDER BY taken_on, id", ReadSession, ("build", build)).Select(WithReadings)];

    /// <summary>A session by its number, deleted ones too.</summary>
    /// <exception cref="StoreException">There is none.</exception>
    public BenchSession Get(long id) =>
        WithReadings(_store.First("SELECT * FROM bench_session WHERE id = $id", ReadSession, ("id", id)) ?? throw new StoreException(StoreProblem.Wrong, $"There are no readings number {id}.", "\"finwright bench list\" shows what there is."));

    /// <summary>Deletes a session; for 30 days it can be had back.</summary>
    public void Delete(long id) => new StoreBin(_store).Put(BinKind.Bench, id);

    /// <summary>Deletes a session, and the calibrations that came from it, all of it or nothing.</summary>
    /// <param name="store">The store that this is part of.</param>
    /// <param name="session">The session.</param>
    /// <returns>The calibrations that went with it.</returns>
    public IReadOnlyList<Learning.Calibration> DeleteWithTeachings(WorkshopStore store, BenchSession session)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(session);
        return _store.Change(() =>
        {
            Learning.Calibration[] taught = [.. store.Calibrations.List(session.BuildId).Where(own => own.Sessions.Contains(session.Id))];
            foreach (Learning.Calibration own in taught)
                store.Calibrations.Delete(own.Id);
            Delete(session.Id);
            return (IReadOnlyList<Learning.Calibration>)taught;
        });
    }

    /// <summary>Has a deleted session back.</summary>
    /// <exception cref="StoreException">It was not deleted, or its build is not there.</exception>
    public void Restore(long id) => _store.Change(() =>
    {
        StoreBin bin = new(_store);
        bin.RefuseWithoutBuild(Get(id).BuildId);
        bin.TakeBack(BinKind.Bench, id);
    });

    private BenchSession WithReadings(BenchSession session) =>
        session with { Readings = _store.All("SELECT * FROM bench_reading WHERE session_id = $id ORDER BY line", ReadLine, ("id", session.Id)) };

    private static BenchSession ReadSession(Row row) =>
        new(row.Whole("id"), row.Whole("build_id"), row.Day("taken_on"), row.Word<RootHold>("root_hold"), row.Text("note"), []);

    private static BenchReadingLine ReadLine(Row row) => new(
        (int)row.Whole("line"),
        row.Number("mass_kg"),
        row.Number("at_mm"),
        row.Word<ChordPlace>("at_chord"),
        row.Number("read_at_mm"),
        row.Word<ChordPlace>("read_chord"),
        Read(row, "deflection_mm", "deflection_deviation_mm"),
        Read(row, "twist_degrees", "twist_deviation_degrees"),
        row.Text("note"));

    private static ReadValue? Read(Row row, string value, string deviation) =>
        row.NumberOrNull(value) is double read && row.NumberOrNull(deviation) is double doubt ? new(read, doubt) : null;
}
