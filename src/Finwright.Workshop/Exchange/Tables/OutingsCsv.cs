using System.Text;
using Finwright.Design.Tables;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Exchange.Tables;

/// <summary>Outings without their tracks as a table in CSV.</summary>
public static class OutingsCsv
{
    private const string Day = "sailed_on", Place = "place", WindLow = "wind_low_knots", WindHigh = "wind_high_knots", Sail = "sail", SailArea = "sail_m2", Board = "board", Rider = "rider", Build = "build";
    private const string Grip = "grip", SpinOuts = "spin_outs", Speed = "speed", Feel = "feel", Note = "note";

    // Beyond any wind that is sailed in, and any sail.
    private const double StrongestWind = 100, LargestSail = 20;
    private const int MostSpinOuts = 10_000;

    private static readonly CsvRules Rules = new(
        "outings", "outing", [Day, Place, WindLow, WindHigh, Sail, SailArea, Board, Rider, Build, Grip, SpinOuts, Speed, Feel, Note], [Day], [Day, Place, WindLow, WindHigh, SailArea, Build])
    {
        LargestFile = 16 << 20,
        MostRows = 20_000,
        LongestCell = TableForm.LongestText,
        NeededRemedy = "Add it: every outing needs its day.",
    };

    /// <summary>Names of the columns.</summary>
    public static IReadOnlyList<string> Columns => Rules.Columns;

    /// <summary>Writes the outings of a store, the first first.</summary>
    /// <param name="store">The store.</param>
    /// <returns>The table's text.</returns>
    public static string Write(WorkshopStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        StringBuilder text = new(CsvText.Line(Columns));
        foreach (Outing own in store.Outings.List().Reverse())
        {
            text.Append(CsvText.Line(
                CsvText.Day(own.SailedOn),
                CsvText.Words(own.Place),
                CsvText.Number(own.WindLowKnots),
                CsvText.Number(own.WindHighKnots),
                CsvText.Words(own.Sail),
                CsvText.Number(own.SailM2),
                CsvText.Words(own.Board),
                CsvText.Words(own.Rider),
                CsvText.Words(own.Build),
                CsvText.Whole(own.Grip),
                CsvText.Whole(own.SpinOuts),
                CsvText.Whole(own.Speed),
                CsvText.Whole(own.Feel),
                CsvText.Words(own.Note)));
        }

        return text.ToString();
    }

    /// <summary>Takes outings in, all of them or none; one that is there already, with the same content, is not doubled.</summary>
    /// <param name="stream">The table.</param>
    /// <param name="store">The store.</param>
    /// <returns>How many came in.</returns>
    /// <exception cref="ExchangeException">Something is wrong in the table.</exception>
    /// <exception cref="StoreException">The store cannot be changed.</exception>
    public static TableTaken Read(Stream stream, WorkshopStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        CsvTable table = CsvTable.Read(stream, Rules);
        return store.Connection.Change(() =>
        {
            List<(int Line, Outing Own)> rows = TableForm.Rows(table, row => Outing(row, store));
            TableForm.Refuse(table.Findings);
            Dictionary<Outing, int> there = store.Outings.List().Select(Bare).CountBy(own => own).ToDictionary();
            int known = 0;
            foreach ((_, Outing own) in rows)
            {
                if (there.TryGetValue(own, out int count) && count > 0)
                    (there[own], known) = (count - 1, known + 1);
                else
                    store.Outings.Add(own, null);
            }

            return new TableTaken(rows.Count - known, known);
        });
    }

    private static Outing Outing(CsvRow row, WorkshopStore store)
    {
        string name = row.Text(Build);
        long? build = name.Length == 0 ? null : store.Builds.Find(name)?.Id;
        if (name.Length > 0 && build is null)
            row.Say(Build, "no-such-build", $"is \"{name}\", which is no build here", "Add the build first, or leave the cell empty.");
        return new()
        {
            SailedOn = row.NeededDay(Day),
            Place = row.Text(Place),
            WindLowKnots = row.Number(WindLow, 0, StrongestWind),
            WindHighKnots = row.Number(WindHigh, 0, StrongestWind),
            Sail = row.Text(Sail),
            SailM2 = row.Number(SailArea, 0, LargestSail),
            Board = row.Text(Board),
            Rider = row.Text(Rider),
            BuildId = build,
            Grip = row.Whole(Grip, 1, 5),
            SpinOuts = row.Whole(SpinOuts, 0, MostSpinOuts),
            Speed = row.Whole(Speed, 1, 5),
            Feel = row.Whole(Feel, 1, 5),
            Note = row.Text(Note),
        };
    }

    private static Outing Bare(Outing own) => own with { Id = 0, Build = "", HasTrack = false };
}
