using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using Finwright.Workshop.Tracks;

namespace Finwright.Bench;

/// <summary>A long outing: ten hours at ten points a second, 360 000 points, with and without the receiver's speed.</summary>
[MemoryDiagnoser]
public class TracksBench
{
    private const int Points = 360_000;
    private byte[] _file = [];
    private byte[] _kept = [];
    private Track _track = null!;

    [Params(true, false)]
    public bool TellsSpeed { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        StringBuilder text = new("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n", Points * 200);
        DateTime start = new(2026, 7, 14, 8, 0, 0, DateTimeKind.Utc);
        double east = 0;
        for (int i = 0; i < Points; i++)
        {
            // Out and back, a run of 100 s at 8 to 14 m/s and a slow turn each time.
            int phase = i % 1100, way = i / 1100 % 2 == 0 ? 1 : -1;
            double speed = phase < 1000 ? 11 + 3 * Math.Sin(phase * Math.PI / 500 - Math.PI / 2) : 8 * Math.Cos((phase - 1000) * Math.PI / 100);
            east += way * speed * 0.1;
            string told = TellsSpeed ? $"<extensions><speed>{Math.Abs(speed):0.00}</speed></extensions>" : "";
            text.Append(CultureInfo.InvariantCulture, $"<trkpt lat=\"{52.5 + i * 1e-8:F7}\" lon=\"{5.4 + east / 67_800:F7}\"><ele>0.0</ele><time>{start.AddMilliseconds(100.0 * i):yyyy-MM-ddTHH:mm:ss.fffZ}</time>{told}</trkpt>\n");
        }

        _file = Encoding.UTF8.GetBytes(text.Append("</trkseg></trk></gpx>\n").ToString());
        _track = Read();
        _kept = TrackForm.Write(_track);
    }

    [Benchmark(Description = "read and measure")]
    public TrackMeasures ReadAndMeasure() => TrackMeasures.Of(Read());

    [Benchmark(Description = "read")]
    public Track Read()
    {
        using MemoryStream stream = new(_file);
        return GpxFile.Read(stream).Track!;
    }

    [Benchmark(Description = "pack to be kept")]
    public byte[] Pack() => TrackForm.Write(_track);

    [Benchmark(Description = "unpack what was kept")]
    public Track Unpack() => TrackForm.Read(_kept);
}
