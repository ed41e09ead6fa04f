using System.Buffers.Binary;
using System.Text;

namespace Finwright.Workshop.Storing.Rescue;

/// <summary>Reads rows and the entries of indexes page by page. Whatever makes no sense is left out, and nothing is followed twice.</summary>
/// <param name="pages">The pages.</param>
/// <remarks>SQLite, "Database File Format", sections 1.5, 1.6 and 2.1.</remarks>
internal sealed class PageReader(DatabasePages pages)
{
    private const byte TableInterior = 5, TableLeaf = 13, IndexInterior = 2, IndexLeaf = 10;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Whether a page holds rows of a table.</summary>
    public bool IsTableLeaf(int page) => Kind(page) == TableLeaf;

    /// <summary>The pages of a tree, the leaves among them last; the root first.</summary>
    /// <param name="root">The root.</param>
    /// <param name="seen">Pages met before, which are not entered again; those met now are added.</param>
    public IReadOnlyList<int> Tree(int root, HashSet<int> seen)
    {
        List<int> found = [];
        Stack<int> open = new([root]);
        while (open.TryPop(out int page))
        {
            if (page < 1 || page > pages.Count || !seen.Add(page))
                continue;
            found.Add(page);
            if (Kind(page) is not (TableInterior or IndexInterior))
                continue;
            ReadOnlySpan<byte> bytes = pages.Page(page);
            foreach (int cell in Cells(page))
            {
                if (cell + 4 <= bytes.Length)
                    open.Push(BinaryPrimitives.ReadInt32BigEndian(bytes[cell..]));
            }

            int last = Start(page) + 8;
            if (last + 4 <= bytes.Length)
                open.Push(BinaryPrimitives.ReadInt32BigEndian(bytes[last..]));
        }

        return found;
    }

    /// <summary>The rows on a page of a table that can be read whole.</summary>
    /// <param name="page">The page.</param>
    /// <param name="broken">How many could not.</param>
    public IReadOnlyList<SalvagedRow> Rows(int page, out int broken)
    {
        broken = 0;
        List<SalvagedRow> rows = [];
        if (Kind(page) != TableLeaf)
            return rows;
        ReadOnlySpan<byte> bytes = pages.Page(page);
        foreach (int cell in Cells(page))
        {
            int at = cell;
            if (Variable(bytes, ref at) is long length && Variable(bytes, ref at) is long id && Payload(page, at, length, isTable: true) is byte[] payload && Record(payload) is { } values)
                rows.Add(new(id, values));
            else
                broken++;
        }

        return rows;
    }

    /// <summary>The numbers of the rows that the entries of an index on a page name.</summary>
    public IReadOnlyList<long> Named(int page)
    {
        List<long> ids = [];
        byte kind = Kind(page);
        if (kind is not (IndexLeaf or IndexInterior))
            return ids;
        ReadOnlySpan<byte> bytes = pages.Page(page);
        foreach (int cell in Cells(page))
        {
            int at = cell + (kind == IndexInterior ? 4 : 0);
            if (Variable(bytes, ref at) is long length && Payload(page, at, length, isTable: false) is byte[] payload && Record(payload) is [.., long id])
                ids.Add(id);
        }

        return ids;
    }

    /// <summary>The pages that the file says are free; what lies on them was deleted.</summary>
    public IReadOnlySet<int> Free()
    {
        HashSet<int> free = [];
        ReadOnlySpan<byte> first = pages.Page(1);
        int trunk = first.Length >= 40 ? BinaryPrimitives.ReadInt32BigEndian(first[32..]) : 0;
        while (trunk >= 1 && trunk <= pages.Count && free.Add(trunk))
        {
            ReadOnlySpan<byte> bytes = pages.Page(trunk);
            if (bytes.Length < 8)
                break;
            int count = Math.Clamp(BinaryPrimitives.ReadInt32BigEndian(bytes[4..]), 0, bytes.Length / 4 - 2);
            for (int i = 0; i < count; i++)
                free.Add(BinaryPrimitives.ReadInt32BigEndian(bytes[(8 + 4 * i)..]));
            trunk = BinaryPrimitives.ReadInt32BigEndian(bytes);
        }

        return free;
    }

    // The first page begins with the header of the file.
    private static int Start(int page) => page == 1 ? 100 : 0;

    private byte Kind(int page) => pages.Page(page) is var bytes && bytes.Length > Start(page) + 8 ? bytes[Start(page)] : (byte)0;

    /// <summary>Where the cells of a page begin.</summary>
    private List<int> Cells(int page)
    {
        List<int> cells = [];
        ReadOnlySpan<byte> bytes = pages.Page(page);
        int start = Start(page), array = start + (Kind(page) is TableInterior or IndexInterior ? 12 : 8);
        int count = BinaryPrimitives.ReadUInt16BigEndian(bytes[(start + 3)..]);
        for (int i = 0; i < count && array + 2 * i + 2 <= bytes.Length; i++)
        {
            int cell = BinaryPrimitives.ReadUInt16BigEndian(bytes[(array + 2 * i)..]);
            if (cell >= array && cell < bytes.Length)
                cells.Add(cell);
        }

        return cells;
    }

    /// <summary>The bytes of a cell, from its page and the pages it flows over to; null when they are not all there.</summary>
    private byte[]? Payload(int page, int at, long length, bool isTable)
    {
        if (length < 0 || length > (long)pages.Count * pages.Size)
            return null;
        int usable = pages.Size;
        long most = isTable ? usable - 35 : (usable - 12) * 64 / 255 - 23, least = (usable - 12) * 32 / 255 - 23;
        long kept = least + (length - least) % (usable - 4);
        int local = (int)(length <= most ? length : kept <= most ? kept : least);
        ReadOnlySpan<byte> bytes = pages.Page(page);
        if (at + local + (local < length ? 4 : 0) > bytes.Length)
            return null;
        byte[] payload = new byte[length];
        bytes.Slice(at, local).CopyTo(payload);
        int filled = local, next = local < length ? BinaryPrimitives.ReadInt32BigEndian(bytes[(at + local)..]) : 0;
        HashSet<int> seen = [];
        while (filled < length)
        {
            ReadOnlySpan<byte> overflow = next >= 1 && next <= pages.Count && seen.Add(next) ? pages.Page(next) : [];
            int part = (int)Math.Min(usable - 4, length - filled);
            if (overflow.Length < 4 + part)
                return null;
            overflow.Slice(4, part).CopyTo(payload.AsSpan(filled));
            filled += part;
            next = BinaryPrimitives.ReadInt32BigEndian(overflow);
            // A chain that goes on where its record ends, or ends before, is not the chain of this record.
            if ((next == 0) != (filled == length))
                return null;
        }

        return payload;
    }

    /// <summary>The values of a record; null when it makes no sense.</summary>
    private static object?[]? Record(ReadOnlySpan<byte> payload)
    {
        int at = 0;
        if (Variable(payload, ref at) is not long header || header < at || header > payload.Length)
            return null;
        List<object?> values = [];
        int body = (int)header;
        while (at < header)
        {
            if (Variable(payload[..(int)header], ref at) is not long type || type is < 0 or 10 or 11)
                return null;
            long length = type switch { <= 4 => type, 5 => 6, 6 or 7 => 8, 8 or 9 => 0, _ => (type - 12) / 2 };
            if (length > payload.Length - body)
                return null;
            ReadOnlySpan<byte> value = payload.Slice(body, (int)length);
            body += (int)length;
            if (type >= 13 && type % 2 == 1)
            {
                if (TextOf(value) is not string text)
                    return null;
                values.Add(text);
            }
            else
            {
                values.Add(type switch { 0 => null, 7 => BinaryPrimitives.ReadDoubleBigEndian(value), 8 => 0L, 9 => 1L, >= 12 => value.ToArray(), _ => Whole(value) });
            }
        }

        return body == payload.Length ? [.. values] : null;
    }

    private static string? TextOf(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return bytes.Contains((byte)0) ? null : Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    private static long Whole(ReadOnlySpan<byte> bytes)
    {
        long value = (sbyte)bytes[0];
        foreach (byte next in bytes[1..])
            value = (value << 8) | next;
        return value;
    }

    /// <summary>A number of one to nine bytes; null when the bytes end in it.</summary>
    private static long? Variable(ReadOnlySpan<byte> bytes, ref int at)
    {
        long value = 0;
        for (int i = 0; i < 9; i++)
        {
            if (at >= bytes.Length)
                return null;
            byte next = bytes[at++];
            if (i == 8)
                return (value << 8) | next;
            value = (value << 7) | (long)(next & 0x7F);
            if (next < 0x80)
                return value;
        }

        return null;
    }
}
