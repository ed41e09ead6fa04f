using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Learning;

/// <summary>What builds and bench have taught.</summary>
public sealed class CalibrationTable
{
    private readonly StoreConnection _store;

    internal CalibrationTable(StoreConnection store) => _store = store;

    /// <summary>Keeps calibrations, all of them or none.</summary>
    /// <returns>The calibrations with their numbers.</returns>
    public IReadOnlyList<Calibration> Add(IReadOnlyList<Calibration> calibrations)
    {
        ArgumentNullException.ThrowIfNull(calibrations);
        return _store.Change(() => (IReadOnlyList<Calibration>)[.. calibrations.Select(Add)]);
    }

    /// <summary>Calibrations that no deleted build taught, the first first.</summary>
    /// <param name="build">From which build; null for all.</param>
    public IReadOnlyList<Calibration> List(long? build = null) =>
        [.. _store.All($"SELECT * FROM calibration WHERE deleted_at IS NULL AND ($build IS NULL OR build_id = $build) AND {StoreBin.BuildIsThere} ORDER BY made_at, id", Read, ("build", build)).Select(WithSessions)];

    /// <summary>Deletes a calibration; for 30 days it can be had back.</summary>
    public void Delete(long id) => new StoreBin(_store).Put(BinKind.Calibration, id);

    /// <summary>Has a deleted calibration back.</summary>
    /// <exception cref="StoreException">It was not deleted, or its build is not there.</exception>
    public void Restore(long id) => _store.Change(() =>
    {
        StoreBin bin = new(_store);
        if (_store.First("SELECT * FROM calibration WHERE id = $id", Read, ("id", id)) is { BuildId: long build })
            bin.RefuseWithoutBuild(build);
        bin.TakeBack(BinKind.Calibration, id);
    });

    private Calibration Add(Calibration calibration)
    {
        long id = _store.Insert(
            "calibration",
            ("made_at", calibration.MadeAt), ("made_by", calibration.MadeBy), ("build_id", calibration.BuildId), ("filament_id", calibration.FilamentId), ("resin_id", calibration.ResinId),
            ("quantity", calibration.Quantity), ("factor", calibration.Factor), ("low", calibration.Low), ("high", calibration.High), ("note", calibration.Note));
        foreach (long session in calibration.Sessions)
            _store.Execute("INSERT INTO calibration_session (calibration_id, session_id) VALUES ($id, $session)", ("id", id), ("session", session));
        return calibration with { Id = id };
    }

    private Calibration WithSessions(Calibration calibration) => calibration with
    {
        Sessions = _store.All("SELECT session_id FROM calibration_session WHERE calibration_id = $id ORDER BY session_id", row => row.Whole("session_id"), ("id", calibration.Id)),
    };

    private static Calibration Read(Row row) => new(
        row.Whole("id"),
        row.Moment("made_at"),
        row.Text("made_by"),
        row.WholeOrNull("build_id"),
        row.WholeOrNull("filament_id"),
        row.WholeOrNull("resin_id"),
        row.Word<LearnedQuantity>("quantity"),
        row.Number("factor"),
        row.Number("low"),
        row.Number("high"),
        [],
        row.Text("note"));
}
