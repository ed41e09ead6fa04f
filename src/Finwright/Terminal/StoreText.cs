using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Storing.Rescue;

namespace Finwright.Terminal;

/// <summary>The workshop's store as plain text.</summary>
internal static class StoreText
{
    private const int CountColumns = 7;

    /// <summary>Writes where a store is and how much it holds.</summary>
    public static void Write(TextStreams streams, StoreContents contents)
    {
        TextWriter o = streams.Out;
        o.WriteLine($"The workshop's store: {contents.Path}");
        if (!contents.Exists)
        {
            o.WriteLine(Wrapping.Wrap("It is not there yet; the first thing that is kept makes it.", streams.Width));
            return;
        }

        o.WriteLine($"Version {contents.Version} of the tables, {Size(contents.Bytes)}");
        o.WriteLine();
        foreach ((int count, string what) in ((int, string)[])
        [
            (contents.Designs, "designs on the shelf"), (contents.Revisions, "revisions of them"), (contents.StockItems, "items in stock"), (contents.Builds, "builds"),
            (contents.BenchSessions, "sessions on the bench"), (contents.Outings, "outings"), (contents.Tracks, "of them with a track"), (contents.Calibrations, "calibrations"), (contents.Deleted, "deleted things that can be had back"),
        ])
            o.WriteLine($"{count,CountColumns}  {what}");
    }

    /// <summary>Writes what lies in the bin.</summary>
    public static void Write(TextStreams streams, IReadOnlyList<BinItem> items)
    {
        TextWriter o = streams.Out;
        if (items.Count == 0)
        {
            o.WriteLine("Nothing is deleted.");
            return;
        }

        o.WriteLine($"  {"kind",-13}{"number",6}  {"deleted",-10}  {"until",-10}  name");
        foreach (BinItem item in items)
            o.WriteLine($"  {Choice.Of(item.Kind),-13}{item.Id,6}  {Day(item.DeletedAt)}  {Day(item.GoneAfter)}  {item.Name}");
        o.WriteLine();
        o.WriteLine(Wrapping.Wrap($"\"finwright store restore KIND NUMBER\" has one back, for {StoreBin.Days} days. After that they go for good when something else is deleted.", streams.Width));
    }

    /// <summary>Writes what was saved of a damaged store.</summary>
    public static void Write(TextStreams streams, RescueReport report)
    {
        TextWriter o = streams.Out;
        o.WriteLine($"Wrote {report.Rescued}.");
        o.WriteLine();
        o.WriteLine($"  {"table",-22}{"kept",CountColumns}{"lost",CountColumns}");
        foreach (RescuedTable table in report.Tables)
            o.WriteLine($"  {table.Table,-22}{table.Kept,CountColumns}{(table.Lost == 0 ? "" : $"{table.Lost}"),CountColumns}".TrimEnd());
        foreach (string remark in report.Remarks)
        {
            o.WriteLine();
            o.WriteLine(Wrapping.Wrap(remark, streams.Width));
        }

        o.WriteLine();
        o.WriteLine(Wrapping.Wrap(
            report.Lost == 0 && report.Remarks.Count == 0
                ? "Every row that the store told of is there. Keep the damaged file until you have looked through the new one."
                : "Lost counts the rows that are known to have been there. Keep the damaged file until you have looked through the new one.",
            streams.Width));
        o.WriteLine(Wrapping.Wrap("Next: move the damaged file away together with any file of its name that ends in -wal or -shm, and put the new one in its place.", streams.Width));
    }

    /// <summary>How long a file is.</summary>
    public static string Size(long bytes) => bytes < 1_000_000
        ? string.Create(CultureInfo.InvariantCulture, $"{bytes / 1000.0:0.0} kB")
        : string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.0} MB");

    private static string Day(DateTimeOffset moment) => moment.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
