using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>Stores as earlier programs wrote them.</summary>
internal static class EarlierStore
{
    /// <summary>The text that their one revision holds; no design, so that nothing brings it up to date.</summary>
    public const string Text = "{\"name\":\"Old\"}";

    /// <summary>What each version brought, filled by SQL of that version.</summary>
    private static readonly string[] Rows =
    [
        $$"""
        INSERT INTO design (id, name, tags, added_at) VALUES (4, 'Old', '["slalom"]', '2026-01-02T03:04:05.678Z');
        INSERT INTO revision (id, design_id, number, hash, note, made_at, made_by, text)
            VALUES (7, 4, 1, '{{new string('0', 64)}}', 'first', '2026-01-02T03:04:05.678Z', 'Finwright 0.5', '{{Text}}');
        INSERT INTO picture VALUES (7, '<svg/>');
        """,
        """
        INSERT INTO build (id, revision_id, name, made_on, plastic_g) VALUES (3, 7, 'Old one', '2026-02-03', 180.5);
        INSERT INTO bench_session (id, build_id, taken_on, root_hold) VALUES (2, 3, '2026-02-04', 'clamped');
        INSERT INTO bench_reading (session_id, line, mass_kg, at_mm, at_chord, read_at_mm, read_chord, deflection_mm, deflection_deviation_mm)
            VALUES (2, 1, 10, 190, 'mid-chord', 190, 'mid-chord', 8.25, 0.2);
        """,
        "INSERT INTO outing (id, sailed_on, place, build_id, grip) VALUES (5, '2026-03-04', 'the bay', 3, 4); INSERT INTO track VALUES (5, 'a.gpx', '" + "1111111111111111111111111111111111111111111111111111111111111111" + "', x'010203');",
        "",
        $$"""
        INSERT INTO draft (design_id, base_id, position, kept_at) VALUES (4, 7, 1, '2026-04-05T06:07:08.900Z');
        INSERT INTO draft_step (design_id, number, said, place, text) VALUES (4, 0, '', '', '{{Text}}'), (4, 1, 'longer', '$.shape.outline.span_mm', '{{Text}}');
        """,
        "INSERT INTO run_sheet VALUES (6, 4, 3, 'pour', 'Pour day', '2026-05-06T07:08:09.100Z', 'Finwright 0.6', '{}'); INSERT INTO run_entry VALUES (6, 'tick:1', 'done', '2026-05-06T07:10:09.100Z');",
    ];

    /// <summary>Makes a store of a version, with rows in all of its tables that matter.</summary>
    public static void Make(TemporaryStore place, int version)
    {
        using SqliteConnection database = place.Database();
        using (SqliteTransaction transaction = database.BeginTransaction())
        {
            StoreSchema.Upgrade(database, transaction, 0, version);
            transaction.Commit();
        }

        for (int i = 0; i < version; i++)
            database.Run(Rows[i]);
    }
}
