using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Exchange.Tables;

/// <summary>Readings of the bench as a table in CSV, the one that docs/bench-readings.md describes.</summary>
public static class ReadingsCsv
{
    /// <summary>Writes all readings of a build, each day under a comment that tells the day and how the root was held.</summary>
    /// <param name="store">The store.</param>
    /// <param name="build">The build.</param>
    /// <returns>The table's text.</returns>
    /// <exception cref="ExchangeException">There are no readings of it.</exception>
    public static string Write(WorkshopStore store, Build build)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(build);
        IReadOnlyList<BenchSession> sessions = store.Bench.List(build.Id);
        return sessions.Count > 0
            ? BenchReadings.Write([.. sessions.Select(own => new BenchReadingsBlock($"{own.TakenOn:yyyy-MM-dd}, root {TableForm.WordOf(own.RootHold)}{(own.Note.Length > 0 ? $", {own.Note}" : "")}", own.Readings))])
            : throw new ExchangeException($"There are no readings of \"{build.Name}\".", "\"finwright bench add\" takes some in.");
    }

    /// <summary>Takes readings of one day in, all of them or none; readings that are there already are not doubled.</summary>
    /// <param name="stream">The table.</param>
    /// <param name="store">The store.</param>
    /// <param name="build">The build.</param>
    /// <param name="day">The day.</param>
    /// <param name="hold">How the root was held.</param>
    /// <param name="span">Depth of the fin's tip below the hull, metres: nothing hangs beyond it.</param>
    /// <returns>How many came in.</returns>
    /// <exception cref="ExchangeException">Something is wrong in the table.</exception>
    /// <exception cref="StoreException">The store cannot be changed.</exception>
    public static TableTaken Read(Stream stream, WorkshopStore store, Build build, DateOnly day, RootHold hold, double span)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(build);
        BenchReadingsContent content = BenchReadings.Read(stream);
        TableForm.Refuse(content.Findings);
        TableForm.Refuse([.. content.Lines.SelectMany(line => line.Beyond(span))]);
        return store.Connection.Change(() =>
        {
            BenchReadingLine[] lines = [.. content.Lines.Select((own, i) => own with { Line = i + 1 })];
            if (store.Bench.List(build.Id).Any(own => own.TakenOn == day && own.RootHold == hold && own.Readings.SequenceEqual(lines)))
                return new TableTaken(0, lines.Length);
            store.Bench.Add(new(0, build.Id, day, hold, "", lines));
            return new TableTaken(lines.Length, 0);
        });
    }
}
