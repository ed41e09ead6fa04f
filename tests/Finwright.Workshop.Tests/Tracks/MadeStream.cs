using System.Text;

namespace Finwright.Workshop.Tests.Tracks;

/// <summary>A file that is made while it is read: a beginning, then one piece over and over.</summary>
internal sealed class MadeStream(string beginning, string piece, long length, bool tellsLength = false) : Stream
{
    private readonly byte[] _beginning = Encoding.UTF8.GetBytes(beginning), _piece = Encoding.UTF8.GetBytes(piece);

    /// <summary>Bytes taken from it so far.</summary>
    public long Taken { get; private set; }

    public override bool CanRead => true;

    public override bool CanSeek => tellsLength;

    public override bool CanWrite => false;

    public override long Length => tellsLength ? length : throw new NotSupportedException();

    public override long Position { get => Taken; set => throw new NotSupportedException(); }

    public override int Read(byte[] buffer, int offset, int count)
    {
        int made = (int)Math.Min(count, length - Taken);
        for (int done = 0; done < made;)
        {
            bool begins = Taken < _beginning.Length;
            byte[] source = begins ? _beginning : _piece;
            int from = (int)(begins ? Taken : (Taken - _beginning.Length) % _piece.Length), part = Math.Min(made - done, source.Length - from);
            source.AsSpan(from, part).CopyTo(buffer.AsSpan(offset + done));
            done += part;
            Taken += part;
        }

        return made;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
