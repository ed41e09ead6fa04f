using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Finwright.Workshop.Exchange.Archives;

/// <summary>
/// Reads a zip file from anyone: everything that its headers say is checked before anything is unpacked, and nothing is ever unpacked
/// onto the disk. Read are plain files, stored or deflated; encrypted, split and 64-bit archives are refused.
/// </summary>
internal sealed class ArchiveReader
{
    private const int LongestComment = ushort.MaxValue;

    private readonly Stream _stream;
    private readonly ArchiveLimits _limits;
    private readonly Dictionary<string, Entry> _entries = new(StringComparer.Ordinal);

    /// <summary>Opens an archive.</summary>
    /// <param name="stream">The file; must be able to seek. Left open.</param>
    /// <param name="limits">How large it may be.</param>
    /// <exception cref="ExchangeException">It is no zip file, is damaged, too large, or holds what it may not.</exception>
    public ArchiveReader(Stream stream, ArchiveLimits limits)
    {
        (_stream, _limits) = (stream, limits);
        if (stream.Length > limits.File)
            throw Refused($"The file has {Megabytes(stream.Length)}; such a file has {Megabytes(limits.File)} at most.");
        try
        {
            ReadDirectory();
        }
        catch (EndOfStreamException problem)
        {
            throw Damaged("it ends too early", problem);
        }
    }

    /// <summary>Names of the entries, in the order of the archive.</summary>
    public IReadOnlyCollection<string> Names => _entries.Keys;

    /// <summary>Whether there is an entry of that name.</summary>
    public bool Has(string name) => _entries.ContainsKey(name);

    /// <summary>What an entry holds.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="ExchangeException">It is not there, or damaged.</exception>
    public byte[] Read(string name)
    {
        if (!_entries.TryGetValue(name, out Entry? entry))
            throw Refused($"The file does not hold \"{name}\".");
        byte[] packed = new byte[entry.Packed], bytes = new byte[entry.Length];
        _stream.Position = entry.Data;
        _stream.ReadExactly(packed);
        if (entry.Method == ZipForm.Stored)
            bytes = packed;
        else
            Inflate(packed, bytes, name);
        return Crc32.Of(bytes) == entry.Sum ? bytes : throw Damaged($"the check sum of \"{name}\" is not what it should be");
    }

    private static void Inflate(byte[] packed, byte[] bytes, string name)
    {
        using DeflateStream deflate = new(new MemoryStream(packed, writable: false), CompressionMode.Decompress);
        try
        {
            if (deflate.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false) != bytes.Length || deflate.ReadByte() >= 0)
                throw Damaged($"\"{name}\" is not as large as is said of it");
        }
        catch (InvalidDataException problem)
        {
            throw Damaged($"\"{name}\" cannot be unpacked", problem);
        }
    }

    private void ReadDirectory()
    {
        byte[] tail = new byte[(int)Math.Min(_stream.Length, ZipForm.EndLength + LongestComment)];
        _stream.Position = _stream.Length - tail.Length;
        _stream.ReadExactly(tail);
        int at = EndOf(tail);
        ReadOnlySpan<byte> end = tail.AsSpan(at);
        (int count, uint size, uint start) = (Short(end, 10), Long(end, 12), Long(end, 16));
        if (Short(end, 4) != 0 || Short(end, 6) != 0 || Short(end, 8) != count)
            throw Refused("The file is one part of a split archive.");
        if (count == ushort.MaxValue || size == uint.MaxValue || start == uint.MaxValue)
            throw Refused("The file is a 64-bit archive.");
        if (count > _limits.Entries)
            throw Refused($"The file has {count} entries; such a file has {_limits.Entries} at most.");
        if (start + (long)size != _stream.Length - tail.Length + at)
            throw Damaged("its directory does not lie where it should");
        if (size > count * (long)(ZipForm.CentralLength + 3 * byte.MaxValue + ArchiveLimits.NameLength))
            throw Damaged("its directory is larger than its entries need");
        byte[] directory = new byte[size];
        _stream.Position = start;
        _stream.ReadExactly(directory);
        List<Entry> found = Central(directory, count);
        foreach (Entry entry in found)
            Local(entry, start);
        RefuseOverlaps(found);
        foreach (Entry entry in found)
            _entries.Add(entry.Name, entry);
    }

    // From behind: the end whose comment reaches exactly to the end of the file.
    private static int EndOf(ReadOnlySpan<byte> tail)
    {
        for (int at = tail.Length - ZipForm.EndLength; at >= 0; at--)
        {
            if (Long(tail, at) == ZipForm.End && at + ZipForm.EndLength + Short(tail, at + 20) == tail.Length)
                return at;
        }

        throw Damaged("it is no zip file, or its end is missing");
    }

    private List<Entry> Central(ReadOnlySpan<byte> directory, int count)
    {
        List<Entry> found = [];
        HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
        long total = 0;
        for (int i = 0; i < count; i++)
        {
            if (directory.Length < ZipForm.CentralLength || Long(directory, 0) != ZipForm.Central)
                throw Damaged("its directory is broken");
            int nameLength = Short(directory, 28), whole = ZipForm.CentralLength + nameLength + Short(directory, 30) + Short(directory, 32);
            if (whole > directory.Length)
                throw Damaged("its directory is broken");
            string name = CheckedName(directory.Slice(ZipForm.CentralLength, nameLength));
            Entry entry = new(name, Short(directory, 8), Short(directory, 10), Long(directory, 16), Long(directory, 20), Long(directory, 24), Long(directory, 42));
            directory = directory[whole..];
            Check(entry);
            if (!names.Add(name))
                throw Refused($"The file holds \"{name}\" twice.");
            total += entry.Length;
            if (total > _limits.Total)
                throw Refused($"Unpacked, the file would have more than {Megabytes(_limits.Total)}.");
            // A folder by itself: some packers write them.
            if (name[^1] != '/')
                found.Add(entry);
            else if (entry.Length > 0)
                throw Damaged($"the folder \"{name}\" holds bytes");
        }

        return directory.IsEmpty ? found : throw Damaged("its directory holds more than its entries");
    }

    private void Check(Entry entry)
    {
        if ((entry.Flags & ZipForm.Encrypted) != 0)
            throw Refused($"\"{entry.Name}\" is encrypted.");
        if (entry.Method is not (ZipForm.Stored or ZipForm.Deflated) || (entry.Flags & ~(ZipForm.Harmless | ZipForm.SizesBehind)) != 0)
            throw Refused($"\"{entry.Name}\" is packed in a way that is not read here (method {entry.Method}).");
        if (entry.Length == uint.MaxValue || entry.Packed == uint.MaxValue)
            throw Refused("The file is a 64-bit archive.");
        if (entry.Length > _limits.Entry || entry.Packed > _limits.Entry)
            throw Refused($"\"{entry.Name}\" has {Megabytes(entry.Length)} unpacked; {Megabytes(_limits.Entry)} are the most.");
        if (ArchiveLimits.IsTooDense(entry.Length, entry.Packed) && entry.Method != ZipForm.Stored)
            throw Refused($"\"{entry.Name}\" would unpack to {entry.Length / Math.Max(1, entry.Packed)} times its size.");
        if (entry.Method == ZipForm.Stored && entry.Packed != entry.Length)
            throw Damaged($"\"{entry.Name}\" is not as large as is said of it");
    }

    /// <summary>Holds the header in front of the data against that in the directory, and finds where the data begin.</summary>
    private void Local(Entry entry, uint directory)
    {
        byte[] header = new byte[ZipForm.LocalLength];
        if (entry.Offset + (long)header.Length > directory)
            throw Damaged($"\"{entry.Name}\" does not lie where it should");
        _stream.Position = entry.Offset;
        _stream.ReadExactly(header);
        byte[] name = new byte[Short(header, 26)];
        _stream.ReadExactly(name);
        bool sizes = (entry.Flags & ZipForm.SizesBehind) != 0 || (Long(header, 14), Long(header, 18), Long(header, 22)) == (entry.Sum, entry.Packed, entry.Length);
        if (Long(header, 0) != ZipForm.Local || Short(header, 6) != entry.Flags || Short(header, 8) != entry.Method || !sizes || !string.Equals(Encoding.Latin1.GetString(name), entry.Name, StringComparison.Ordinal))
            throw Damaged($"the two headers of \"{entry.Name}\" disagree");
        entry.Data = entry.Offset + (long)header.Length + name.Length + Short(header, 28);
        if (entry.Data + entry.Packed > directory)
            throw Damaged($"\"{entry.Name}\" does not lie where it should");
    }

    // Entries that share bytes make a small file unpack to a huge one.
    private static void RefuseOverlaps(List<Entry> entries)
    {
        Entry[] inOrder = [.. entries.OrderBy(entry => entry.Offset)];
        for (int i = 1; i < inOrder.Length; i++)
        {
            if (inOrder[i - 1].Data + inOrder[i - 1].Packed > inOrder[i].Offset)
                throw Damaged($"\"{inOrder[i - 1].Name}\" and \"{inOrder[i].Name}\" lie over each other");
        }
    }

    private static string CheckedName(ReadOnlySpan<byte> bytes)
    {
        string name = Encoding.Latin1.GetString(bytes);
        if (name.Length is 0 or > ArchiveLimits.NameLength)
            throw Refused($"An entry has a name of {name.Length} characters.");
        if (name[0] is '/' or '\\' || name.Contains(':', StringComparison.Ordinal))
            throw Refused($"The entry \"{Shown(name)}\" names a place on the disk.");
        if (name.Split('/', '\\').Contains("..", StringComparer.Ordinal))
            throw Refused($"The entry \"{Shown(name)}\" would climb out of its folder.");
        return name.All(sign => char.IsAsciiLetterLower(sign) || char.IsAsciiDigit(sign) || sign is '.' or '-' or '/')
            ? name
            : throw Refused($"The file holds \"{Shown(name)}\", which does not belong there.");
    }

    private static string Shown(string name) => string.Concat(name.Select(sign => char.IsControl(sign) ? '?' : sign));

    private static int Short(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16LittleEndian(bytes[at..]);

    private static uint Long(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt32LittleEndian(bytes[at..]);

    private static string Megabytes(long bytes) => bytes < 1 << 20 ? $"{bytes} bytes" : $"{bytes >> 20} MB";

    private static ExchangeException Refused(string why) => new(why, "Have it exported again by Finwright. Nothing was taken in.");

    private static ExchangeException Damaged(string why, Exception? inner = null) => new($"The file is damaged: {why}.", "Copy or export it again. Nothing was taken in.", inner);

    /// <summary>One entry, as the directory tells of it.</summary>
    private sealed record Entry(string Name, int Flags, int Method, uint Sum, uint Packed, uint Length, uint Offset)
    {
        public long Data { get; set; }
    }
}
