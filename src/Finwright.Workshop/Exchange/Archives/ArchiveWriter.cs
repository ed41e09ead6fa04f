using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Finwright.Workshop.Exchange.Archives;

/// <summary>Writes a zip file that any program opens: the same entries give the same bytes, whatever the day.</summary>
internal sealed class ArchiveWriter
{
    // Midnight of 1 January 1980, where the dates of zip files begin.
    private const ushort Time = 0, Date = 1 << 5 | 1, Version = 20;

    private readonly Stream _stream;
    private readonly ArchiveLimits _limits;
    private readonly string _remedy;
    private readonly List<(string Name, ushort Method, uint Sum, uint Packed, uint Length, uint Offset)> _entries = [];
    private long _total;

    /// <summary>Begins an archive.</summary>
    /// <param name="stream">Where it goes; left open.</param>
    /// <param name="limits">How large it may become: what is written can be read again.</param>
    /// <param name="remedy">What to do when it becomes too large.</param>
    public ArchiveWriter(Stream stream, ArchiveLimits limits, string remedy) => (_stream, _limits, _remedy) = (stream, limits, remedy);

    /// <summary>Adds an entry.</summary>
    /// <param name="name">Its name: lower-case letters, digits, dots, dashes and slashes.</param>
    /// <param name="bytes">What it holds.</param>
    /// <exception cref="ExchangeException">The archive becomes too large.</exception>
    public void Add(string name, ReadOnlySpan<byte> bytes)
    {
        _total += bytes.Length;
        if (bytes.Length > _limits.Entry || _total > _limits.Total || _entries.Count >= _limits.Entries)
            throw TooLarge();
        using MemoryStream packed = new();
        using (DeflateStream deflate = new(packed, CompressionLevel.Optimal, leaveOpen: true))
            deflate.Write(bytes);
        bool stored = packed.Length >= bytes.Length || ArchiveLimits.IsTooDense(bytes.Length, packed.Length);
        ReadOnlySpan<byte> data = stored ? bytes : packed.GetBuffer().AsSpan(0, (int)packed.Length);
        if (_stream.Position + data.Length > _limits.File)
            throw TooLarge();
        _entries.Add((name, stored ? ZipForm.Stored : ZipForm.Deflated, Crc32.Of(bytes), (uint)data.Length, (uint)bytes.Length, (uint)_stream.Position));
        byte[] header = new byte[ZipForm.LocalLength];
        BinaryPrimitives.WriteUInt32LittleEndian(header, ZipForm.Local);
        Common(header.AsSpan(4), _entries[^1]);
        _stream.Write(header);
        _stream.Write(Encoding.ASCII.GetBytes(name));
        _stream.Write(data);
    }

    /// <summary>Ends the archive.</summary>
    public void Complete()
    {
        long start = _stream.Position;
        foreach (var entry in _entries)
        {
            byte[] header = new byte[ZipForm.CentralLength];
            BinaryPrimitives.WriteUInt32LittleEndian(header, ZipForm.Central);
            BinaryPrimitives.WriteUInt16LittleEndian(header.AsSpan(4), Version);
            Common(header.AsSpan(6), entry);
            BinaryPrimitives.WriteUInt32LittleEndian(header.AsSpan(42), entry.Offset);
            _stream.Write(header);
            _stream.Write(Encoding.ASCII.GetBytes(entry.Name));
        }

        byte[] end = new byte[ZipForm.EndLength];
        BinaryPrimitives.WriteUInt32LittleEndian(end, ZipForm.End);
        BinaryPrimitives.WriteUInt16LittleEndian(end.AsSpan(8), (ushort)_entries.Count);
        BinaryPrimitives.WriteUInt16LittleEndian(end.AsSpan(10), (ushort)_entries.Count);
        BinaryPrimitives.WriteUInt32LittleEndian(end.AsSpan(12), (uint)(_stream.Position - start));
        BinaryPrimitives.WriteUInt32LittleEndian(end.AsSpan(16), (uint)start);
        _stream.Write(end);
    }

    // What local and central headers have alike: version, flags, method, time, date, sum, sizes, length of the name.
    private static void Common(Span<byte> header, (string Name, ushort Method, uint Sum, uint Packed, uint Length, uint Offset) entry)
    {
        BinaryPrimitives.WriteUInt16LittleEndian(header, Version);
        BinaryPrimitives.WriteUInt16LittleEndian(header[4..], entry.Method);
        BinaryPrimitives.WriteUInt16LittleEndian(header[6..], Time);
        BinaryPrimitives.WriteUInt16LittleEndian(header[8..], Date);
        BinaryPrimitives.WriteUInt32LittleEndian(header[10..], entry.Sum);
        BinaryPrimitives.WriteUInt32LittleEndian(header[14..], entry.Packed);
        BinaryPrimitives.WriteUInt32LittleEndian(header[18..], entry.Length);
        BinaryPrimitives.WriteUInt16LittleEndian(header[22..], (ushort)entry.Name.Length);
    }

    private ExchangeException TooLarge() => new("There is more to write than such a file may hold.", _remedy);
}
