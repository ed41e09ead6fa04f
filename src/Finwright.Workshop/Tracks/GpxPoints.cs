using System.Globalization;
using System.Xml;
using Finwright.Design;

namespace Finwright.Workshop.Tracks;

/// <summary>Gathers the points of one file while its tags go by.</summary>
/// <param name="mostPoints">Most points that are taken.</param>
internal sealed class GpxPoints(int mostPoints)
{
    private const int LongestText = 64;
    private const int CheckEvery = 4096;
    private readonly char[] _text = new char[LongestText + 1];
    private readonly List<TrackPoint> _points = [];
    private long _startTicks;
    private int _segmentAt = -1;
    private int _wayPoints, _seen;
    private Skipped _noTime, _outside, _noFix;

    /// <summary>Whether the file began as GPX.</summary>
    public bool IsGpx { get; private set; }

    /// <summary>How many points were taken.</summary>
    public int Count => _points.Count;

    /// <summary>Reads to the end of the file.</summary>
    /// <returns>Why the file is refused; null when it was read.</returns>
    public Finding? ReadAll(XmlReader reader, CancellationToken cancellation)
    {
        while (reader.Read())
        {
            if (reader.NodeType != XmlNodeType.Element)
                continue;
            if (reader.Depth > GpxFile.DeepestTag)
                return TooDeep(reader);
            if (reader.Depth == 0)
            {
                if (reader.LocalName != "gpx")
                    return GpxFile.Refusal("gpx-not", $"The file is XML, but begins with the tag {Shown(reader.LocalName)} instead of gpx.", "Export the track from the receiver as GPX; its own formats are not read.", LineOf(reader));
                IsGpx = true;
                continue;
            }

            if ((++_seen & (CheckEvery - 1)) == 0)
                cancellation.ThrowIfCancellationRequested();
            switch (reader.LocalName)
            {
                case "trk" or "trkseg":
                    _segmentAt = _points.Count;
                    break;
                case "trkpt":
                    if (ReadPoint(reader, cancellation) is Finding refusal)
                        return refusal;
                    break;
                case "wpt" or "rtept":
                    _wayPoints++;
                    break;
            }
        }

        return null;
    }

    /// <summary>The track, with what was found on the way.</summary>
    /// <param name="broken">That the file breaks off; null when it does not.</param>
    public TrackReading Finish(Finding? broken)
    {
        if (_points.Count < 2)
            return new(null, [NoTrack(broken)]);
        List<Finding> findings = [];
        if (broken is not null)
            findings.Add(broken);
        Add(findings, _noTime, "gpx-no-time", "no time that can be read", "they say where, but not how fast");
        Add(findings, _outside, "gpx-outside", "no position on the globe", "latitude must lie within -90 to 90 and longitude within -180 to 180 degrees");
        Add(findings, _noFix, "gpx-no-fix", "no position by satellites, by what the receiver itself says (fix none)", "such places are guessed");
        return new(new(new DateTimeOffset(_startTicks, TimeSpan.Zero), _points), findings);
    }

    private static void Add(List<Finding> findings, Skipped skipped, string code, string what, string why)
    {
        if (skipped.Count > 0)
            findings.Add(new(code, Severity.Caution, "track", $"{skipped.Count} {(skipped.Count == 1 ? "point has" : "points have")} {what}: {why}. Left out, from line {skipped.Line} on.", "Nothing, if few; else see how the receiver was set, or export the track anew.") { Line = skipped.Line });
    }

    private Finding NoTrack(Finding? broken)
    {
        if (_noTime.Count > 0 && _noTime.Count >= _outside.Count + _noFix.Count)
            return GpxFile.Refusal("gpx-no-times", $"None of the {_noTime.Count} points tells a time that can be read, so no speed follows from them: this is a drawn or thinned line, not a recording.", "Export the track as recorded, with the time of each point.", _noTime.Line);
        if (_outside.Count > 0)
            return GpxFile.Refusal("gpx-no-positions", $"None of the {_outside.Count} points lies on the globe.", "Export the track anew; its latitudes and longitudes are not in degrees.", _outside.Line);
        if (_noFix.Count > 0)
            return GpxFile.Refusal("gpx-no-fixes", $"None of the {_noFix.Count} points had satellites, by what the receiver says.", "Start the receiver under open sky and wait for a position before you sail.", _noFix.Line);
        if (broken is not null)
            return GpxFile.Refusal("gpx-broken", $"The file is broken at line {broken.Line}, before two points of a track could be read.", "Export the track anew.", broken.Line);
        string found = _points.Count == 1 ? "only one point" : _wayPoints > 0 ? $"no track, only {_wayPoints} way points or points of routes" : "no points of a track";
        return GpxFile.Refusal("gpx-no-track", $"The file holds {found}.", "Export the recorded track, with its points and their times.");
    }

    private Finding? ReadPoint(XmlReader reader, CancellationToken cancellation)
    {
        int line = LineOf(reader);
        double latitude = double.NaN, longitude = double.NaN;
        if (reader.MoveToFirstAttribute())
        {
            do
            {
                if (reader.LocalName == "lat")
                    latitude = Number(Text(reader));
                else if (reader.LocalName == "lon")
                    longitude = Number(Text(reader));
            }
            while (reader.MoveToNextAttribute());
            reader.MoveToElement();
        }

        PointTold told = new() { Speed = double.NaN };
        if (!reader.IsEmptyElement && ReadInside(reader, ref told, cancellation) is Finding refusal)
            return refusal;
        if (told.HasNoFix)
            _noFix.Add(line);
        else if (!(Math.Abs(latitude) <= 90 && Math.Abs(longitude) <= 180))
            _outside.Add(line);
        else if (!told.HasTime)
            _noTime.Add(line);
        else if (_points.Count == mostPoints)
            return GpxFile.Refusal("gpx-too-many-points", $"The track has more than {mostPoints} points, the most that are read.", "Export the outing alone, not the log of a season.", line);
        else
            Take(latitude, longitude, told);
        return null;
    }

    private void Take(double latitude, double longitude, PointTold told)
    {
        if (_points.Count == 0)
            _startTicks = told.Ticks;
        const double Degree = Math.PI / 180;
        _points.Add(new((double)(told.Ticks - _startTicks) / TimeSpan.TicksPerSecond, latitude * Degree, longitude * Degree, told.Speed)
        {
            Satellites = told.Satellites,
            Dilution = told.Dilution,
            StartsSegment = _segmentAt == _points.Count,
        });
    }

    private Finding? ReadInside(XmlReader reader, ref PointTold told, CancellationToken cancellation)
    {
        int depth = reader.Depth;
        while (reader.Read() && reader.Depth > depth)
        {
            if (reader.NodeType != XmlNodeType.Element)
                continue;
            if (reader.Depth > GpxFile.DeepestTag)
                return TooDeep(reader);
            if ((++_seen & (CheckEvery - 1)) == 0)
                cancellation.ThrowIfCancellationRequested();
            string name = reader.LocalName;
            if (name is not ("time" or "speed" or "sat" or "hdop" or "fix") || reader.IsEmptyElement)
                continue;
            // The text is the next node, if there is one; what comes after it is read by the loop.
            if (!reader.Read() || reader.NodeType is not (XmlNodeType.Text or XmlNodeType.CDATA))
            {
                if (reader.NodeType == XmlNodeType.EndElement && reader.Depth <= depth)
                    break;
                continue;
            }

            ReadOnlySpan<char> text = Text(reader);
            switch (name)
            {
                case "time" when IsoTime.TryRead(text, out long ticks):
                    told.Ticks = ticks;
                    told.HasTime = true;
                    break;
                case "speed" when double.IsNaN(told.Speed) && Number(text) is >= 0 and < 1e6 and double speed:
                    told.Speed = speed;
                    break;
                case "sat" when Number(text) is >= 0 and <= 255 and double satellites:
                    // None told apart from nothing told: fewer than one cannot have given a position.
                    told.Satellites = (byte)Math.Max(1, satellites);
                    break;
                case "hdop" when Number(text) is > 0 and < 1e6 and double dilution:
                    told.Dilution = (float)dilution;
                    break;
                case "fix" when text is "none":
                    told.HasNoFix = true;
                    break;
            }
        }

        return null;
    }

    /// <summary>The text of a node without white space round it; nothing when it is longer than any number or time.</summary>
    private ReadOnlySpan<char> Text(XmlReader reader)
    {
        int length = 0;
        while (length < _text.Length)
        {
            int read = reader.ReadValueChunk(_text, length, _text.Length - length);
            if (read == 0)
                break;
            length += read;
        }

        return length > LongestText ? [] : _text.AsSpan(0, length).Trim();
    }

    private static double Number(ReadOnlySpan<char> text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : double.NaN;

    private static int LineOf(XmlReader reader) => ((IXmlLineInfo)reader).LineNumber;

    private static string Shown(string name) => name.Length <= 40 ? name : name[..40] + "…";

    private static Finding TooDeep(XmlReader reader) =>
        GpxFile.Refusal("gpx-too-deep", $"Tags are nested deeper than {GpxFile.DeepestTag}; those of a track never are.", "Export the track anew; this file is damaged or made up.", LineOf(reader));

    private struct PointTold
    {
        public long Ticks;
        public double Speed;
        public float Dilution;
        public byte Satellites;
        public bool HasTime, HasNoFix;
    }

    private struct Skipped
    {
        public int Count, Line;

        public void Add(int line)
        {
            if (Count++ == 0)
                Line = line;
        }
    }
}
