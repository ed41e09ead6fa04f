using Finwright.Workshop.Exchange.Archives;

namespace Finwright.Workshop.Exchange.Stores;

/// <summary>The file form of a whole store: docs/exchange.md describes it.</summary>
internal static class StoreForm
{
    /// <summary>What <c>workshop.json</c> says it is.</summary>
    public const string Kind = "finwright-workshop";

    /// <summary>Version of the layout; the tables have a version of their own.</summary>
    public const int Layout = 1;

    /// <summary>The list of contents.</summary>
    public const string List = "workshop.json";

    /// <summary>About how many bytes of rows go into one entry.</summary>
    public const int EntryBytes = 4 << 20;

    /// <summary>How large such a file may be; a row with its track is one line of an entry.</summary>
    public static readonly ArchiveLimits Limits = new(File: 2L << 30, Entries: 20_000, Entry: 64 << 20, Total: 4L << 30);

    /// <summary>The list of contents as it is written.</summary>
    /// <param name="Kind">What it is.</param>
    /// <param name="Layout">Version of the layout.</param>
    /// <param name="Version">Version of the tables.</param>
    /// <param name="MadeBy">The program and its version.</param>
    /// <param name="Tables">The tables, by name.</param>
    /// <param name="Files">The entries.</param>
    public sealed record Contents(string Kind, int Layout, int Version, string MadeBy, IReadOnlyList<ListedTable> Tables, IReadOnlyList<SealedFile> Files);

    /// <summary>A table in the list.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Columns">Its columns, in the order in which rows have them.</param>
    /// <param name="Rows">How many rows.</param>
    /// <param name="Entries">The entries that hold them, in their order.</param>
    public sealed record ListedTable(string Name, IReadOnlyList<string> Columns, long Rows, IReadOnlyList<string> Entries);
}
