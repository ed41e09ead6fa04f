using System.Globalization;
using System.Text;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Tests.Tracks;

/// <summary>Sails a board over the globe by given speeds and courses, and writes down what a receiver would.</summary>
internal sealed class TrackMaker
{
    private const double Degree = Math.PI / 180;
    private readonly List<TrackPoint> _points = [];
    private readonly double _step;
    private readonly bool _tellsSpeed;
    private double _latitude, _longitude;
    private long _ticks;

    public TrackMaker(double rate = 1, bool tellsSpeed = true, double latitudeDegrees = 52.5, double longitudeDegrees = 5.4)
    {
        (_step, _tellsSpeed, _latitude, _longitude) = (1 / rate, tellsSpeed, latitudeDegrees * Degree, longitudeDegrees * Degree);
        Add(0);
    }

    public static DateTimeOffset Start { get; } = new(2026, 7, 14, 11, 5, 0, TimeSpan.Zero);

    public int Count => _points.Count;

    public double Time => _points[^1].Time;

    public Track Track => new(Start, [.. _points]);

    public TrackPoint this[int index] { get => _points[index]; set => _points[index] = value; }

    /// <summary>Sails straight on, or along a circle.</summary>
    public TrackMaker Sail(double speed, double seconds, double courseDegrees = 90, double turnDegreesPerSecond = 0)
    {
        int steps = (int)Math.Round(seconds / _step);
        for (int i = 0; i < steps; i++)
        {
            Move(speed * _step, (courseDegrees + turnDegreesPerSecond * (i + 0.5) * _step) * Degree);
            _ticks += (long)Math.Round(_step * TimeSpan.TicksPerSecond);
            Add(speed);
        }

        return this;
    }

    /// <summary>Lets time go by without a point.</summary>
    public TrackMaker Wait(double seconds, double driftMetres = 0, bool newSegment = false)
    {
        _ticks += (long)Math.Round(seconds * TimeSpan.TicksPerSecond);
        Move(driftMetres, 0);
        Add(0);
        if (newSegment)
            _points[^1] = _points[^1] with { StartsSegment = true };
        return this;
    }

    /// <summary>The track as a GPX file.</summary>
    public string Gpx(bool version10 = false)
    {
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"{(version10 ? "1.0" : "1.1")}\" creator=\"test\" xmlns=\"http://www.topografix.com/GPX/1/{(version10 ? 0 : 1)}\">\n<trk><name>afternoon</name><trkseg>\n");
        foreach (TrackPoint point in _points)
        {
            if (point.StartsSegment)
                text.Append("</trkseg><trkseg>\n");
            string speed = double.IsNaN(point.Speed) ? "" : version10 ? $"<speed>{point.Speed:R}</speed>" : $"<extensions><x:data xmlns:x=\"urn:test\"><x:hr>120</x:hr><x:speed>{point.Speed:R}</x:speed></x:data></extensions>";
            text.Append(CultureInfo.InvariantCulture, $"<trkpt lat=\"{point.Latitude / Degree:F9}\" lon=\"{point.Longitude / Degree:F9}\"><ele>0.5</ele><time>{Start.AddTicks((long)Math.Round(point.Time * 1e7)):yyyy-MM-ddTHH:mm:ss.fffZ}</time>{speed}</trkpt>\n");
        }

        return text.Append("</trkseg></trk></gpx>\n").ToString();
    }

    // Radii of curvature of the ellipsoid WGS 84 (NIMA TR8350.2, 2000): the step of a second is exact to a few parts in a million.
    private void Move(double metres, double course)
    {
        const double A = 6_378_137, F = 1 / 298.257223563, E2 = F * (2 - F);
        double w = 1 - E2 * Math.Sin(_latitude) * Math.Sin(_latitude);
        double north = metres * Math.Cos(course), east = metres * Math.Sin(course);
        _longitude += east / (A / Math.Sqrt(w) * Math.Cos(_latitude + north / A / 2));
        _latitude += north / (A * (1 - E2) / (w * Math.Sqrt(w)));
        _longitude = Math.IEEERemainder(_longitude, 2 * Math.PI);
    }

    private void Add(double speed) => _points.Add(new((double)_ticks / TimeSpan.TicksPerSecond, _latitude, _longitude, _tellsSpeed ? speed : double.NaN));
}
