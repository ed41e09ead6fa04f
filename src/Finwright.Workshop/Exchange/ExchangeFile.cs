using System.Text;
using Finwright.Strength.Files;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Exchange.Stores;
using Finwright.Workshop.Exchange.Tables;

namespace Finwright.Workshop.Exchange;

/// <summary>What a file from elsewhere is.</summary>
public enum ExchangeKind
{
    /// <summary>Nothing that is known.</summary>
    Unknown,

    /// <summary>A design with its revisions.</summary>
    Bundle,

    /// <summary>A whole workshop.</summary>
    Workshop,

    /// <summary>Readings of the bench.</summary>
    Readings,

    /// <summary>Outings.</summary>
    Outings,

    /// <summary>The stock.</summary>
    Stock,

    /// <summary>A design file.</summary>
    Design,
}

/// <summary>Tells what a file is by what it holds, whatever its name.</summary>
public static class ExchangeFile
{
    private const int Looked = 64 * 1024;

    private static readonly (ExchangeKind Kind, IReadOnlyList<string> Columns)[] Tables = [(ExchangeKind.Readings, BenchReadings.Columns), (ExchangeKind.Outings, OutingsCsv.Columns), (ExchangeKind.Stock, StockCsv.Columns)];

    /// <summary>What a file is.</summary>
    /// <param name="stream">The file; must be able to seek. Left at its beginning.</param>
    /// <exception cref="ExchangeException">It is an archive that cannot be read.</exception>
    public static ExchangeKind KindOf(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        byte[] start = new byte[Looked];
        stream.Position = 0;
        int length = stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        ExchangeKind kind = start.AsSpan(0, length).StartsWith("PK"u8) ? KindOfArchive(stream) : KindOfText(Encoding.UTF8.GetString(start, 0, length));
        stream.Position = 0;
        return kind;
    }

    private static ExchangeKind KindOfArchive(Stream stream)
    {
        ArchiveReader archive = new(stream, StoreForm.Limits);
        return archive.Has(BundleForm.List) ? ExchangeKind.Bundle : archive.Has(StoreForm.List) ? ExchangeKind.Workshop : ExchangeKind.Unknown;
    }

    private static ExchangeKind KindOfText(string text)
    {
        string? first = text.TrimStart('\uFEFF').Split('\n', '\r').Select(line => line.Trim()).FirstOrDefault(line => line.Length > 0 && line[0] is not '#');
        if (first is null)
            return ExchangeKind.Unknown;
        if (first[0] == '{')
            return ExchangeKind.Design;
        HashSet<string> columns = [.. first.Split(',', ';', '\t').Select(name => name.Trim(' ', '"').ToLowerInvariant())];
        // By how many columns are known: a misspelt one is told by the reader of that table.
        (ExchangeKind kind, int known) = Tables.Select(own => (own.Kind, own.Columns.Count(columns.Contains))).MaxBy(own => own.Item2);
        return known > 1 ? kind : ExchangeKind.Unknown;
    }
}
