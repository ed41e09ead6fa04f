using Finwright.Design;

namespace Finwright.Making.Motion;

/// <summary>
/// Reads motion files: lines of letter and number words after ISO 6983, as printers take them. The file streams by and is never held whole.
/// </summary>
/// <remarks>
/// Words that move: G0 to G3 (arcs by I and J or by R, full circles, helices), on numbers alone the last of them; G28, G92, G4. Words that
/// change what numbers mean: G20, G21, G90, G91, G90.1, G91.1, M82, M83, M200, M221, T. Everything else is counted and otherwise passed over. Until
/// M82 or M83 is given, E follows G90 and G91. Comments (from a semicolon, or in brackets), line numbers, checksums, small letters and lines without spaces are read.
/// </remarks>
public static class MotionFile
{
    /// <summary>Longest line that is read, bytes; no line of words has a hundredth of it.</summary>
    public const int LongestLine = 64 * 1024;

    private const int BufferSize = 256 * 1024;

    /// <summary>Reads a motion file.</summary>
    /// <param name="stream">The file, from its start; read once, not closed.</param>
    /// <param name="options">What the file does not say; the usual when null.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>What the file does; or one error that says why it cannot be read. A file that cannot be opened or read is an exception of the system.</returns>
    /// <exception cref="ArgumentException">An option is no positive number.</exception>
    public static MotionReading Read(Stream stream, MotionOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(stream);
        MotionInterpreter interpreter = new((options ?? new()).Checked());
        Finding? refusal = Lines(stream, interpreter.Line, cancellation);
        return refusal is null ? interpreter.Finish() : new(null, [refusal]);
    }

    /// <summary>Reads a motion file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">What the file does not say; the usual when null.</param>
    /// <param name="cancellation">Stops it.</param>
    public static MotionReading ReadFile(string path, MotionOptions? options = null, CancellationToken cancellation = default)
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0, FileOptions.SequentialScan);
        return Read(stream, options, cancellation);
    }

    /// <summary>What is done with a line.</summary>
    /// <param name="line">The line without its end.</param>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="bytes">Its length with its end.</param>
    /// <returns>Why the file is refused; null to go on.</returns>
    internal delegate Finding? LineTaker(ReadOnlySpan<byte> line, long number, int bytes);

    /// <summary>Cuts a stream into lines.</summary>
    internal static Finding? Lines(Stream stream, LineTaker take, CancellationToken cancellation)
    {
        byte[] buffer = new byte[BufferSize + LongestLine];
        int held = 0;
        long number = 0, before = 0;
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            int read = stream.Read(buffer, held, BufferSize);
            if (before is 0 && Container(buffer.AsSpan(0, held + read), read is 0) is Finding container)
                return container;
            ReadOnlySpan<byte> fresh = buffer.AsSpan(held, read);
            int sign = Binary(fresh);
            if (sign >= 0)
            {
                long line = number + 1 + buffer.AsSpan(0, held + sign).Count((byte)'\n');
                return Refusal("not-text", line, $"Byte {before + held + sign + 1} of the file has the value {fresh[sign]}, which no text holds: this is not a motion file in plain text, or it is damaged.",
                    "Export the motion file as plain text, not in a packed or binary form.");
            }

            int count = held + read, start = 0;
            while (start < count)
            {
                int length = buffer.AsSpan(start, count - start).IndexOf((byte)'\n');
                if (length < 0)
                    break;
                if (length > LongestLine)
                    return TooLong(number + 1);
                int bare = length > 0 && buffer[start + length - 1] == (byte)'\r' ? length - 1 : length;
                number++;
                if (take(buffer.AsSpan(start, bare), number, length + 1) is Finding refusal)
                    return refusal;
                start += length + 1;
            }

            held = count - start;
            if (held > LongestLine)
                return TooLong(number + 1);
            if (read is 0)
            {
                int bare = held > 0 && buffer[start + held - 1] == (byte)'\r' ? held - 1 : held;
                return held > 0 ? take(buffer.AsSpan(start, bare), number + 1, held) : null;
            }

            before += start;
            buffer.AsSpan(start, held).CopyTo(buffer);
        }
    }

    /// <summary>A line number for a finding.</summary>
    internal static int ShownLine(long line) => (int)Math.Min(line, int.MaxValue);

    private static Finding TooLong(long line) => Refusal("line-too-long", line, $"Line {line} is longer than {LongestLine / 1024} kB; motion words never are, so this is not a motion file, or it is damaged.",
        "Make the file anew from the part; shorten comments that were written into it.");

    private static Finding Refusal(string code, long line, string message, string remedy) => new(code, Severity.Error, "file", message, remedy) { Line = ShownLine(line) };

    private static int Binary(ReadOnlySpan<byte> bytes)
    {
        // All control signs but tab, line feed, form feed and the like (9 to 13).
        int low = bytes.IndexOfAnyInRange((byte)0, (byte)8), high = bytes.IndexOfAnyInRange((byte)14, (byte)31);
        return low < 0 ? high : high < 0 ? low : Math.Min(low, high);
    }

    private static Finding? Container(ReadOnlySpan<byte> start, bool ended)
    {
        if (start.Length < 4 && !ended)
            return null;
        if (start.StartsWith("PK\x03\x04"u8))
            return new("packed-file", Severity.Error, "file", "The file is a zip container, not a motion file in plain text.", "Unpack it, or export the motion file as plain text.");
        if (start is [0x1F, 0x8B, ..])
            return new("packed-file", Severity.Error, "file", "The file is packed (gzip), not a motion file in plain text.", "Unpack it, or export the motion file as plain text.");
        if (start is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
            return new("not-text", Severity.Error, "file", "The file is text of two bytes a sign (UTF-16), which printers do not read.", "Save it as UTF-8.");
        return null;
    }
}
