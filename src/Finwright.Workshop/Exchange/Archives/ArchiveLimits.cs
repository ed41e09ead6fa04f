namespace Finwright.Workshop.Exchange.Archives;

/// <summary>How large an archive may be: beyond what an honest one needs, and small enough that a hostile one costs little.</summary>
/// <param name="File">Largest file, bytes.</param>
/// <param name="Entries">Most entries.</param>
/// <param name="Entry">Largest entry, unpacked, bytes. One entry is held in memory at a time.</param>
/// <param name="Total">All entries together, unpacked, bytes.</param>
internal sealed record ArchiveLimits(long File, int Entries, int Entry, long Total)
{
    /// <summary>How many times its packed size a large entry may have; deflate itself reaches 1032. What is denser is written unpacked.</summary>
    public const int Ratio = 200;

    /// <summary>From which size on the ratio matters, bytes.</summary>
    public const int LargeEntry = 1 << 20;

    /// <summary>Longest name of an entry.</summary>
    public const int NameLength = 100;

    /// <summary>Whether an entry is denser than honest text is.</summary>
    public static bool IsTooDense(long length, long packed) => length > LargeEntry && length > Ratio * packed;
}
