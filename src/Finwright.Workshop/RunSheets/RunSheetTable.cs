using System.Text.Json;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.RunSheets;

/// <summary>Run sheets, and what was done on them.</summary>
public sealed class RunSheetTable
{
    /// <summary>Keys of readings begin so.</summary>
    public const string ReadingKeys = "reading:";

    /// <summary>So many things may be entered on one sheet.</summary>
    public const int MostEntries = 2000;

    /// <summary>Longest key and longest value.</summary>
    public const int LongestKey = 80, LongestValue = 4000;

    private const string Columns = "id, design_id, build_id, kind, title, made_at, made_by";

    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web);

    private readonly StoreConnection _store;

    internal RunSheetTable(StoreConnection store) => _store = store;

    /// <summary>The time by the clock of the store.</summary>
    public DateTimeOffset Now => _store.Time.GetUtcNow();

    /// <summary>Keeps a new sheet.</summary>
    /// <returns>The sheet with its number.</returns>
    /// <exception cref="StoreException">Its design or build is not there, or it has no title.</exception>
    public RunSheet Add(RunSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return _store.Change(() =>
        {
            if (string.IsNullOrWhiteSpace(sheet.Title) || sheet.Title.Length > 200)
                throw new StoreException(StoreProblem.Wrong, "A run sheet needs a title of 1 to 200 characters.", "Give it one.");
            if (_store.Count("SELECT count(*) FROM design WHERE id = $id AND deleted_at IS NULL", ("id", sheet.DesignId)) == 0)
                throw new StoreException(StoreProblem.Wrong, "The design of this run sheet is not on the shelf.", "Restore the design first.");
            RefuseOtherBuild(sheet);
            return Get(_store.Insert(
                "run_sheet",
                ("design_id", sheet.DesignId), ("build_id", sheet.BuildId), ("kind", sheet.Kind), ("title", sheet.Title.Trim()),
                ("made_at", _store.Time.GetUtcNow()), ("made_by", sheet.MadeBy), ("plan", sheet.Plan)));
        });
    }

    /// <summary>Sheets, the latest first, without their plans.</summary>
    /// <param name="design">Of which design; null for all.</param>
    /// <param name="build">Of which build; null for all.</param>
    public IReadOnlyList<RunSheet> List(long? design = null, long? build = null) => _store.All(
        $"""
        SELECT {Columns}, '' AS plan FROM run_sheet
        WHERE ($design IS NULL OR design_id = $design) AND ($build IS NULL OR build_id = $build)
            AND design_id IN (SELECT id FROM design WHERE deleted_at IS NULL)
        ORDER BY made_at DESC, id DESC
        """,
        Read,
        ("design", design), ("build", build));

    /// <summary>A sheet; null when there is none.</summary>
    public RunSheet? Find(long id) => _store.First($"SELECT {Columns}, plan FROM run_sheet WHERE id = $id", Read, ("id", id));

    /// <summary>A sheet.</summary>
    /// <exception cref="StoreException">There is none.</exception>
    public RunSheet Get(long id) => Find(id) ?? throw new StoreException(StoreProblem.Wrong, $"There is no run sheet number {id}.", "Open the list of run sheets.");

    /// <summary>Everything that was entered on a sheet, taken back things too.</summary>
    public IReadOnlyList<RunEntry> Entries(long sheet) =>
        _store.All("SELECT key, value, at FROM run_entry WHERE sheet_id = $sheet ORDER BY key", row => new RunEntry(row.Text("key"), row.Text("value"), row.Moment("at")), ("sheet", sheet));

    /// <summary>Enters things; where a later value is there already, it stays.</summary>
    /// <param name="sheet">Number of the sheet.</param>
    /// <param name="entries">What is entered. A moment in the future counts as now: a clock that runs ahead must not win for ever.</param>
    /// <returns>How many of them count.</returns>
    /// <exception cref="StoreException">There is no such sheet, or it would hold too much.</exception>
    public int Enter(long sheet, IReadOnlyList<RunEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        return _store.Change(() =>
        {
            Get(sheet);
            DateTimeOffset now = _store.Time.GetUtcNow();
            int count = 0;
            foreach (RunEntry entry in entries)
            {
                if (entry.Key.Length is 0 or > LongestKey || entry.Value.Length > LongestValue)
                    throw new StoreException(StoreProblem.Wrong, $"A note on a run sheet has at most {LongestValue} characters.", "Shorten it.");
                count += _store.Execute(
                    """
                    INSERT INTO run_entry (sheet_id, key, value, at) VALUES ($sheet, $key, $value, $at)
                    ON CONFLICT (sheet_id, key) DO UPDATE SET value = excluded.value, at = excluded.at WHERE excluded.at > run_entry.at
                    """,
                    ("sheet", sheet), ("key", entry.Key), ("value", entry.Value), ("at", entry.At > now ? now : entry.At));
            }

            return _store.Count("SELECT count(*) FROM run_entry WHERE sheet_id = $sheet", ("sheet", sheet)) <= MostEntries
                ? count
                : throw new StoreException(StoreProblem.Wrong, $"A run sheet holds at most {MostEntries} things.", "Begin another sheet.");
        });
    }

    /// <summary>Gives a sheet to a build, or takes it from one.</summary>
    /// <param name="sheet">Number of the sheet.</param>
    /// <param name="build">Number of the build; null for none.</param>
    /// <exception cref="StoreException">There is no such sheet or build, or the build is of another design.</exception>
    public RunSheet GiveTo(long sheet, long? build) => _store.Change(() =>
    {
        RefuseOtherBuild(Get(sheet) with { BuildId = build });
        _store.Update("run_sheet", sheet, ("build_id", build));
        return Get(sheet);
    });

    /// <summary>Temperatures that were read on a sheet, in the order of time.</summary>
    /// <param name="sheet">Number of the sheet.</param>
    public IReadOnlyList<RunReading> Readings(long sheet) =>
        [.. Entries(sheet).Where(entry => entry.Key.StartsWith(ReadingKeys, StringComparison.Ordinal)).Select(entry => ReadingOf(entry.Value)).OfType<RunReading>().OrderBy(reading => reading.At)];

    /// <summary>A reading as it is kept; null when the text is none.</summary>
    public static RunReading? ReadingOf(string value)
    {
        if (string.IsNullOrEmpty(value))
            return null;
        try
        {
            return JsonSerializer.Deserialize<RunReading>(value, Form) is { Part.Length: > 0, Kelvin: > 0 } reading && double.IsFinite(reading.Kelvin) ? reading : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private void RefuseOtherBuild(RunSheet sheet)
    {
        if (sheet.BuildId is long build && _store.Count(
            "SELECT count(*) FROM build JOIN revision ON revision.id = build.revision_id WHERE build.id = $build AND build.deleted_at IS NULL AND revision.design_id = $design",
            ("build", build), ("design", sheet.DesignId)) == 0)
            throw new StoreException(StoreProblem.Wrong, "This build is not there, or is of another design.", "Choose a build of this design.");
    }

    private static RunSheet Read(Row row) => new()
    {
        Id = row.Whole("id"),
        DesignId = row.Whole("design_id"),
        BuildId = row.WholeOrNull("build_id"),
        Kind = row.Word<RunKind>("kind"),
        Title = row.Text("title"),
        MadeAt = row.Moment("made_at"),
        MadeBy = row.Text("made_by"),
        Plan = row.Text("plan"),
    };
}
