using System.Buffers.Binary;
using System.IO.Compression;

namespace Finwright.Workshop.Tracks;

/// <summary>A track as few bytes, to be kept; read back, every point is the same to the last bit.</summary>
/// <remarks>
/// Four bytes FWTR, a byte with the version, four bytes with the length of the rest (lowest first), then packed and with a check sum (RFC 1950): when the track begins, how many points it has, and their numbers column by column (<see cref="TrackColumn"/>).
/// About 6 bytes a point for a recorder that tells positions to 1e-7 degrees.
/// </remarks>
public static class TrackForm
{
    private const byte Version = 1;
    private const int LengthBytes = 4, HeadBytes = 9;
    private const double Degree = Math.PI / 180;

    private static ReadOnlySpan<byte> Mark => "FWTR"u8;

    /// <summary>Packs a track.</summary>
    /// <param name="track">At most <see cref="Track.MostPoints"/> points.</param>
    /// <exception cref="ArgumentException">The track has more points, or one whose time or place is no number or not on the globe.</exception>
    public static byte[] Write(Track track)
    {
        ArgumentNullException.ThrowIfNull(track);
        TrackPoint[] points = [.. track.Points];
        if (points.Length > Track.MostPoints)
            throw new ArgumentException($"The track has {points.Length} points; {Track.MostPoints} are kept at most.", nameof(track));
        int bad = track.FirstUnsound();
        if (bad >= 0)
            throw new ArgumentException($"Point {bad} of the track has a time, place or speed that cannot be.", nameof(track));
        using MemoryStream stream = new();
        stream.Write(Mark);
        stream.WriteByte(Version);
        stream.Write(stackalloc byte[LengthBytes]);
        using (ZLibStream packed = new(stream, CompressionLevel.Optimal, leaveOpen: true))
        using (BinaryWriter writer = new(packed))
        {
            writer.Write(track.Start.UtcTicks);
            writer.Write((short)track.Start.TotalOffsetMinutes);
            writer.Write7BitEncodedInt(points.Length);
            TrackColumn.Write(writer, Array.ConvertAll(points, point => point.Time), 1);
            TrackColumn.Write(writer, Array.ConvertAll(points, point => point.Latitude), Degree);
            TrackColumn.Write(writer, Array.ConvertAll(points, point => point.Longitude), Degree);
            TrackColumn.Write(writer, Array.ConvertAll(points, point => point.Speed), 1);
            TrackColumn.Write(writer, Array.ConvertAll(points, point => (double)point.Dilution), 1);
            foreach (TrackPoint point in points)
                writer.Write(point.Satellites);
            foreach (TrackPoint point in points)
                writer.Write(point.StartsSegment);
        }

        byte[] bytes = stream.ToArray();
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(HeadBytes - LengthBytes), bytes.Length - HeadBytes);
        return bytes;
    }

    /// <summary>Unpacks a track.</summary>
    /// <param name="bytes">What <see cref="Write"/> made.</param>
    /// <exception cref="InvalidDataException">The bytes are no track, are of a later version, or are damaged.</exception>
    public static Track Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < HeadBytes || !bytes.StartsWith(Mark))
            throw new InvalidDataException("The bytes kept of this track are no track.");
        if (bytes[Mark.Length] != Version)
            throw new InvalidDataException($"The bytes kept of this track are of version {bytes[Mark.Length]}; this program knows version {Version}.");
        if (BinaryPrimitives.ReadInt32LittleEndian(bytes[(HeadBytes - LengthBytes)..]) != bytes.Length - HeadBytes)
            throw new InvalidDataException("The bytes kept of this track are not all there.");
        using MemoryStream stream = new(bytes[HeadBytes..].ToArray(), writable: false);
        using ZLibStream packed = new(stream, CompressionMode.Decompress);
        using BinaryReader reader = new(packed);
        try
        {
            Track track = Read(reader);
            if (packed.ReadByte() >= 0)
                throw new InvalidDataException("The bytes kept of this track go on beyond its end.");
            return track;
        }
        catch (Exception fault) when (fault is EndOfStreamException or FormatException or ArgumentOutOfRangeException)
        {
            throw new InvalidDataException("The bytes kept of this track are damaged.", fault);
        }
    }

    private static Track Read(BinaryReader reader)
    {
        long ticks = reader.ReadInt64();
        TimeSpan offset = TimeSpan.FromMinutes(reader.ReadInt16());
        int count = reader.Read7BitEncodedInt();
        if (count is < 0 or > Track.MostPoints || Math.Abs(offset.TotalHours) > 14 || ticks < TimeSpan.TicksPerDay || ticks > DateTime.MaxValue.Ticks - TimeSpan.TicksPerDay)
            throw new InvalidDataException("The bytes kept of this track are damaged at their head.");
        double[] times = TrackColumn.Read(reader, count, 1), latitudes = TrackColumn.Read(reader, count, Degree), longitudes = TrackColumn.Read(reader, count, Degree);
        double[] speeds = TrackColumn.Read(reader, count, 1), dilutions = TrackColumn.Read(reader, count, 1);
        byte[] satellites = reader.ReadBytes(count), segments = reader.ReadBytes(count);
        if (segments.Length < count || satellites.Length < count)
            throw new InvalidDataException("The bytes kept of this track end early.");
        TrackPoint[] points = new TrackPoint[count];
        for (int i = 0; i < count; i++)
        {
            points[i] = new(times[i], latitudes[i], longitudes[i], speeds[i]) { Dilution = (float)dilutions[i], Satellites = satellites[i], StartsSegment = segments[i] == 1 };
            if (segments[i] > 1)
                throw new InvalidDataException($"Point {i} of the track kept says neither that a segment starts nor that none does.");
        }

        Track track = new(new DateTimeOffset(new DateTime(ticks, DateTimeKind.Utc)).ToOffset(offset), points);
        int bad = track.FirstUnsound();
        return bad < 0 ? track : throw new InvalidDataException($"Point {bad} of the track kept has a time, place or speed that cannot be.");
    }
}
