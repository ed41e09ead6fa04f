namespace Finwright.Workshop.Tracks;

/// <summary>Passes a file of tags on to its reader, and stops it where no honest file goes: too many bytes, or too many without a tag.</summary>
/// <param name="stream">The file; not closed.</param>
/// <param name="mostBytes">Most bytes of the file.</param>
internal sealed class GuardedStream(Stream stream, long mostBytes) : Stream
{
    /// <summary>Most bytes from one &lt; to the next, and of a marked section (CDATA): the reader holds these whole, and this bounds its memory.</summary>
    public const int MostWithoutTag = 256 * 1024;

    // Marked sections are not looked for in text of two or more bytes a sign, so that such a file must be short.
    private const long MostWideBytes = 16 * 1024 * 1024;
    private const int HeadLength = 4096, TailLength = 8;
    private readonly byte[] _head = new byte[HeadLength], _tail = new byte[TailLength];
    private byte[] _window = [];
    private long _read, _sinceTag, _sectionStart = -1;
    private int _tailLength;

    private static ReadOnlySpan<byte> SectionStart => "<![CDATA["u8;

    private static ReadOnlySpan<byte> SectionEnd => "]]>"u8;

    /// <summary>The first bytes of the file, as far as they were read.</summary>
    public ReadOnlySpan<byte> Head => _head.AsSpan(0, (int)Math.Min(_read, HeadLength));

    /// <summary>Why the stream ended before the file did; null while it did not.</summary>
    public GuardStop? Stop { get; private set; }

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position { get => _read; set => throw new NotSupportedException(); }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        if (Stop is not null)
            return 0;
        int read = stream.Read(buffer);
        ReadOnlySpan<byte> fresh = buffer[..read];
        if (_read < HeadLength)
            fresh[..(int)Math.Min(read, HeadLength - _read)].CopyTo(_head.AsSpan((int)_read));
        long longestSection = LongestSection(fresh);
        _read += read;
        int first = fresh.IndexOf((byte)'<');
        long widest = first < 0 ? _sinceTag + read : _sinceTag + first;
        _sinceTag = first < 0 ? widest : read - fresh.LastIndexOf((byte)'<');
        if (Math.Max(widest, longestSection) > MostWithoutTag)
            Stop = GuardStop.NoTag;
        else if (_read > (Head[..Math.Min(4, Head.Length)].ContainsAny((byte)0, (byte)0xFE, (byte)0xFF) ? Math.Min(mostBytes, MostWideBytes) : mostBytes))
            Stop = GuardStop.TooLong;
        // Ending here makes the reader stop with a broken file, and what stopped it is told by the reason.
        return Stop is null ? read : 0;
    }

    /// <summary>Length of the longest marked section that is open or ends in these bytes, as far as it is known.</summary>
    private long LongestSection(ReadOnlySpan<byte> fresh)
    {
        // Marks may lie across two reads: the last bytes of the read before come along. None is as short as to be found twice.
        int length = _tailLength + fresh.Length;
        if (_window.Length < length)
            _window = new byte[length];
        _tail.AsSpan(0, _tailLength).CopyTo(_window);
        fresh.CopyTo(_window.AsSpan(_tailLength));
        ReadOnlySpan<byte> window = _window.AsSpan(0, length);
        long start = _read - _tailLength, longest = 0;
        for (int at = 0; ;)
        {
            int mark = window[at..].IndexOf(_sectionStart < 0 ? SectionStart : SectionEnd);
            if (mark < 0)
                break;
            at += mark;
            if (_sectionStart < 0)
            {
                _sectionStart = start + at;
                at += SectionStart.Length;
            }
            else
            {
                longest = Math.Max(longest, start + at - _sectionStart);
                _sectionStart = -1;
                at += SectionEnd.Length;
            }
        }

        _tailLength = Math.Min(length, TailLength);
        window[^_tailLength..].CopyTo(_tail);
        return _sectionStart < 0 ? longest : Math.Max(longest, start + length - _sectionStart);
    }

    /// <inheritdoc/>
    public override void Flush()
    {
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}

/// <summary>Why a guarded stream was ended.</summary>
internal enum GuardStop
{
    /// <summary>The file is longer than allowed.</summary>
    TooLong,

    /// <summary>A tag or a piece of text is longer than allowed.</summary>
    NoTag,
}
