using System.Buffers.Binary;

namespace Finwright.Workshop.Storing.Rescue;

/// <summary>
/// The pages of a database file as they lie there, without asking whether they make sense: the file, and over it the whole changes of
/// the log beside it.
/// </summary>
/// <remarks>SQLite, "Database File Format", sections 1.2, 1.3 and 4.</remarks>
internal sealed class DatabasePages
{
    private const int UsualSize = 4096, LogHeader = 32, FrameHeader = 24;

    private readonly byte[] _file;
    private readonly Dictionary<int, ReadOnlyMemory<byte>> _log = [];

    private DatabasePages(byte[] file)
    {
        _file = file;
        Size = SizeOf(file);
        Count = (file.Length + Size - 1) / Size;
    }

    /// <summary>Bytes of a page.</summary>
    public int Size { get; }

    /// <summary>How many pages there are, numbered from 1.</summary>
    public int Count { get; private set; }

    /// <summary>What the first page says of the version of the tables; null when it says nothing that can be.</summary>
    public int? Version => Page(1) is { Length: >= 64 } first && BinaryPrimitives.ReadInt32BigEndian(first[60..]) is >= 1 and int version && version <= StoreSchema.Current ? version : null;

    /// <summary>Reads a file and the log beside it.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static DatabasePages Read(string path)
    {
        DatabasePages pages = new(File.ReadAllBytes(path));
        string log = path + "-wal";
        if (File.Exists(log))
            pages.TakeLog(File.ReadAllBytes(log));
        return pages;
    }

    /// <summary>A page; shorter where the file ends in it, empty behind its end.</summary>
    public ReadOnlySpan<byte> Page(int number)
    {
        if (_log.TryGetValue(number, out ReadOnlyMemory<byte> page))
            return page.Span;
        long start = (long)(number - 1) * Size;
        return number < 1 || start >= _file.Length ? [] : _file.AsSpan((int)start, (int)Math.Min(Size, _file.Length - start));
    }

    /// <summary>Takes over the changes of a log that were finished.</summary>
    private void TakeLog(byte[] log)
    {
        if (log.Length < LogHeader || Number(log, 8) != Size)
            return;
        // The last bit says in which order the sums take the bytes.
        bool isBig = (log[3] & 1) != 0;
        ReadOnlySpan<byte> salt = log.AsSpan(16, 8);
        (uint, uint) sum = Sum((0, 0), log.AsSpan(0, 24), isBig);
        if (sum != ((uint)Number(log, 24), (uint)Number(log, 28)))
            return;
        Dictionary<int, ReadOnlyMemory<byte>> change = [];
        for (int at = LogHeader; at + FrameHeader + Size <= log.Length; at += FrameHeader + Size)
        {
            Span<byte> head = log.AsSpan(at, FrameHeader);
            sum = Sum(Sum(sum, head[..8], isBig), log.AsSpan(at + FrameHeader, Size), isBig);
            if (!head.Slice(8, 8).SequenceEqual(salt) || sum != ((uint)Number(log, at + 16), (uint)Number(log, at + 20)))
                return;
            change[Number(log, at)] = log.AsMemory(at + FrameHeader, Size);
            if (Number(log, at + 4) is int count and > 0)
            {
                foreach ((int number, ReadOnlyMemory<byte> page) in change)
                    _log[number] = page;
                change.Clear();
                Count = Math.Max(Count, count);
            }
        }
    }

    private static int Number(byte[] bytes, int at) => BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(at));

    /// <summary>Section 4.2.</summary>
    private static (uint, uint) Sum((uint First, uint Second) sum, ReadOnlySpan<byte> bytes, bool isBig)
    {
        for (int i = 0; i + 8 <= bytes.Length; i += 8)
        {
            uint a = isBig ? BinaryPrimitives.ReadUInt32BigEndian(bytes[i..]) : BinaryPrimitives.ReadUInt32LittleEndian(bytes[i..]);
            uint b = isBig ? BinaryPrimitives.ReadUInt32BigEndian(bytes[(i + 4)..]) : BinaryPrimitives.ReadUInt32LittleEndian(bytes[(i + 4)..]);
            sum.First = unchecked(sum.First + a + sum.Second);
            sum.Second = unchecked(sum.Second + b + sum.First);
        }

        return sum;
    }

    private static int SizeOf(byte[] file)
    {
        if (file.Length < 24)
            return UsualSize;
        int size = BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(16)) is var told && told == 1 ? 65536 : told;
        // Believed where the fixed numbers behind it are what they must be.
        return size >= 512 && (size & (size - 1)) == 0 && file[21] == 64 && file[22] == 32 && file[23] == 32 && file.Length % size == 0 ? size : UsualSize;
    }
}
