using System.Text;
using System.Xml;
using Finwright.Design;

namespace Finwright.Workshop.Tracks;

/// <summary>Reads tracks in the GPX format, version 1.1 and 1.0 (an open standard for positions in XML). The file streams by and is never held whole.</summary>
/// <remarks>
/// Read are the points of tracks (latitude, longitude, time), the speed of each where the file tells it (m/s; an element of version 1.0, in 1.1 an element named speed within
/// extensions, whatever its namespace), and what says how good a position is (sat, hdop, fix). Routes, way points and all else are passed over. Document types and entities
/// are refused, and nothing outside the file is ever fetched.
/// </remarks>
public static class GpxFile
{
    /// <summary>Longest file that is read, bytes.</summary>
    public const long LongestFile = 256L * 1024 * 1024;

    /// <summary>Deepest nesting of tags that is read; a track has about eight.</summary>
    public const int DeepestTag = 64;

    /// <summary>Reads a file.</summary>
    /// <param name="stream">The file, from its start; read once, not closed.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The track, or one error that says why there is none. A file that cannot be opened or read is an exception of the system.</returns>
    public static TrackReading Read(Stream stream, CancellationToken cancellation = default) => Read(stream, LongestFile, Track.MostPoints, cancellation);

    /// <summary>The same with other bounds.</summary>
    internal static TrackReading Read(Stream stream, long mostBytes, int mostPoints, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(stream);
        if (stream.CanSeek && stream.Length - stream.Position > mostBytes)
            return TooLong(mostBytes);
        GuardedStream guarded = new(stream, mostBytes);
        BoundedNames names = new();
        XmlReaderSettings settings = new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
            CloseInput = false,
            NameTable = names,
        };
        GpxPoints points = new(mostPoints);
        Finding? broken = null;
        try
        {
            using XmlReader reader = XmlReader.Create(guarded, settings);
            Finding? refusal = points.ReadAll(reader, cancellation);
            if (refusal is not null)
                return Refused(refusal);
        }
        catch (Exception fault) when (fault is XmlException or DecoderFallbackException)
        {
            if (guarded.Stop is GuardStop.TooLong)
                return TooLong(mostBytes);
            if (guarded.Stop is GuardStop.NoTag)
                return Refused("gpx-no-tags", $"The file goes on for more than {GuardedStream.MostWithoutTag / 1024} kB without a tag, or in one; the longest piece of a track has a few hundred bytes.", "Export the track anew; this file is damaged or made up.");
            if (names.IsFull)
                return Refused("gpx-too-many-names", "The file has more different names of tags than any track.", "Export the track anew; this file is damaged or made up.");
            if (!points.IsGpx)
                return NotGpx(guarded.Head);
            int? line = (fault as XmlException)?.LineNumber;
            broken = new("gpx-breaks-off", Severity.Caution, "file", $"The file is broken at line {line}, as when a recorder runs out of power; the {points.Count} points before it were kept.", "Nothing, if the track ends where you came ashore; else export it anew.") { Line = line };
        }

        return points.Finish(broken);
    }

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="cancellation">Stops it.</param>
    public static TrackReading ReadFile(string path, CancellationToken cancellation = default)
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0, FileOptions.SequentialScan);
        return Read(stream, cancellation);
    }

    /// <summary>A reading of nothing but its reason.</summary>
    internal static Finding Refusal(string code, string message, string remedy, int? line = null) => new(code, Severity.Error, "file", message, remedy) { Line = line };

    private static TrackReading Refused(string code, string message, string remedy) => Refused(Refusal(code, message, remedy));

    private static TrackReading Refused(Finding refusal) => new(null, [refusal]);

    private static TrackReading TooLong(long mostBytes) => Refused("gpx-too-long", $"The file is longer than {mostBytes / (1024 * 1024)} MB, the most that is read; a day at ten points a second has about 100 MB.",
        "Export the outing alone, not the log of a season.");

    private static TrackReading NotGpx(ReadOnlySpan<byte> head)
    {
        // Text of two bytes a sign reads the same without its zeros.
        string start = Encoding.Latin1.GetString(head).Replace("\0", "", StringComparison.Ordinal);
        if (head.Length == 0)
            return Refused("gpx-empty", "The file is empty.", "Export the track anew from the receiver.");
        if (start.Contains("<!DOCTYPE", StringComparison.OrdinalIgnoreCase) || start.Contains("<!ENTITY", StringComparison.OrdinalIgnoreCase))
            return Refused("gpx-document-type", "The file declares a document type or entities, which no track needs and which can be made to fill the memory or to fetch other files; they are not read.", "Export the track anew, or take the lines with <!DOCTYPE out.");
        if (head.StartsWith("PK\x03\x04"u8) || head is [0x1F, 0x8B, ..])
            return Refused("gpx-packed", "The file is packed (zip or gzip), not GPX in plain text.", "Unpack it first.");
        return Refused("gpx-not", "The file is no GPX: it does not begin as XML with a gpx tag.", "Export the track from the receiver as GPX; its own formats are not read.");
    }
}
