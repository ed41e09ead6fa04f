using System.Globalization;
using System.Text;
using Finwright.Design;
using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Tests.Tracks;

public sealed class GpxFileTests
{
    private const string Head = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n", Tail = "</trkseg></trk></gpx>";

    [Theory]
    [InlineData(true, false)]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public void A_written_track_is_read_back_point_by_point(bool tellsSpeed, bool version10)
    {
        TrackMaker maker = new(10, tellsSpeed);
        maker.Sail(11.5, 20).Wait(30, newSegment: true).Sail(9, 20);
        TrackReading reading = Read(maker.Gpx(version10));
        Assert.Empty(reading.Findings);
        Track track = reading.Track!;
        Assert.Equal(TrackMaker.Start, track.Start);
        Assert.Equal(maker.Count, track.Points.Count);
        for (int i = 0; i < maker.Count; i++)
        {
            TrackPoint made = maker[i], read = track.Points[i];
            Assert.Equal(made.Time, read.Time, 1e-9);
            Assert.Equal(made.Latitude, read.Latitude, 2e-11);
            Assert.Equal(made.Longitude, read.Longitude, 2e-11);
            Assert.Equal(made.Speed, read.Speed);
            Assert.Equal(i == 0 || made.StartsSegment, read.StartsSegment);
        }
    }

    [Fact]
    public void What_a_receiver_says_of_its_position_is_read()
    {
        TrackReading reading = Read(Head
            + "<trkpt lat='52' lon='5'><time>2026-07-14T11:00:00Z</time><fix>3d</fix><sat>9</sat><hdop>1.25</hdop></trkpt>"
            + "<trkpt lat='52' lon='5'><time>2026-07-14T11:00:01Z</time><fix>none</fix></trkpt>"
            + "<trkpt lon=' 5 ' lat=' 52 '><time> 2026-07-14T13:00:02.25+02:00 </time><sat>400</sat><hdop>-1</hdop><extensions><speed>-3</speed><v><Speed>7</Speed><speed> 8e0 </speed></v></extensions></trkpt>"
            + "<trkpt lat='52' lon='5'><time>2026-07-14T11:00:03</time><extensions><speed>NaN</speed></extensions></trkpt>" + Tail);
        Track track = reading.Track!;
        Assert.Equal(3, track.Points.Count);
        Assert.Equal((9, 1.25f), (track.Points[0].Satellites, track.Points[0].Dilution));
        Assert.Equal((0, 0f, 8.0, 2.25), (track.Points[1].Satellites, track.Points[1].Dilution, track.Points[1].Speed, track.Points[1].Time));
        Assert.True(double.IsNaN(track.Points[2].Speed));
        Assert.Equal("gpx-no-fix", Assert.Single(reading.Findings).Code);
    }

    [Fact]
    public void Points_without_time_or_off_the_globe_are_left_out_counted_and_placed()
    {
        string good = "<trkpt lat='52' lon='5'><time>2026-07-14T11:00:00Z</time></trkpt>\n<trkpt lat='52' lon='5.001'><time>2026-07-14T11:00:01Z</time></trkpt>\n";
        TrackReading reading = Read(Head + good
            + "<trkpt lat='52' lon='5'/>\n<trkpt lat='52' lon='5'><time></time></trkpt>\n<trkpt lat='52' lon='5'><time>yesterday</time></trkpt>\n<trkpt lat='52' lon='5'><time>2026-02-30T11:00:00Z</time></trkpt>\n"
            + string.Concat(((string[])["NaN", "INF", "1e400", "-1e400", "91", "", "0x34", "52,5", new string('5', 500)]).Select(lat => $"<trkpt lat='{lat}' lon='5'><time>2026-07-14T11:00:05Z</time></trkpt>\n"))
            + "<trkpt lon='5'><time>2026-07-14T11:00:05Z</time></trkpt>\n<trkpt lat='5' lon='-180.001'><time>2026-07-14T11:00:05Z</time></trkpt>\n" + Tail);
        Assert.Equal(2, reading.Track!.Points.Count);
        Finding noTime = reading.Findings.Single(finding => finding.Code == "gpx-no-time"), outside = reading.Findings.Single(finding => finding.Code == "gpx-outside");
        Assert.StartsWith("4 points", noTime.Message, StringComparison.Ordinal);
        Assert.Equal(5, noTime.Line);
        Assert.StartsWith("11 points", outside.Message, StringComparison.Ordinal);
        Assert.Equal(9, outside.Line);
    }

    [Theory]
    [InlineData("2026-07-14T11:05:00Z", 0)]
    [InlineData("2026-07-14T11:05:00.5Z", 0.5)]
    [InlineData("2026-07-14T11:05:00.123456789012Z", 0.1234567)]
    [InlineData("2026-07-14T13:05:00+02:00", 0)]
    [InlineData("2026-07-14T05:35:00-0530", 0)]
    [InlineData("2026-07-14 11:05:01", 1)]
    [InlineData("2026-07-14T11:04:60Z", 0)]
    [InlineData("2026-07-14T11:05Z", double.NaN)]
    [InlineData("2026-07-14T24:05:00Z", double.NaN)]
    [InlineData("2026-13-14T11:05:00Z", double.NaN)]
    [InlineData("2026-07-14T11:05:00.Z", double.NaN)]
    [InlineData("2026-07-14T11:05:00+2", double.NaN)]
    [InlineData("2026-07-14T11:05:00+99:00", double.NaN)]
    [InlineData("0001-01-01T00:00:00+14:00", double.NaN)]
    [InlineData("9999-12-31T23:59:59-14:00", double.NaN)]
    [InlineData("1784026800", double.NaN)]
    public void Times_are_those_of_iso_8601(string text, double expected)
    {
        bool isTime = IsoTime.TryRead(text, out long ticks);
        Assert.Equal(!double.IsNaN(expected), isTime);
        if (isTime)
            Assert.Equal(expected, (ticks - TrackMaker.Start.UtcTicks) / 1e7, 1e-9);
    }

    [Fact]
    public void A_file_that_breaks_off_keeps_what_was_recorded()
    {
        TrackMaker maker = new();
        string text = maker.Sail(10, 100).Gpx();
        foreach (string broken in (string[])[text[..(text.Length * 2 / 3)], text[..(text.Length / 2)] + new string('\0', 4096), text[..^10]])
        {
            TrackReading reading = Read(broken);
            Finding finding = Assert.Single(reading.Findings);
            Assert.Equal("gpx-breaks-off", finding.Code);
            Assert.Equal(Severity.Caution, finding.Severity);
            Assert.InRange(reading.Track!.Points.Count, 45, 101);
            Assert.Contains($"the {reading.Track.Points.Count} points", finding.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("", "gpx-empty")]
    [InlineData("once upon a time", "gpx-not")]
    [InlineData("{\"type\": \"track\"}", "gpx-not")]
    [InlineData("PK\u0003\u0004 and so on", "gpx-packed")]
    [InlineData("<kml><Placemark/></kml>", "gpx-not")]
    [InlineData("<gpx></gpx>", "gpx-no-track")]
    [InlineData("<gpx", "gpx-not")]
    [InlineData("<gpx><trk><trkseg>", "gpx-broken")]
    [InlineData("<gpx><wpt lat='1' lon='2'/><rte><rtept lat='1' lon='2'/></rte></gpx>", "gpx-no-track")]
    [InlineData("<gpx><trk><trkseg><trkpt lat='1' lon='2'/><trkpt lat='1' lon='2'/></trkseg></trk></gpx>", "gpx-no-times")]
    [InlineData("<gpx><trk><trkseg><trkpt lat='152' lon='2'><time>2026-07-14T11:00:00Z</time></trkpt></trkseg></trk></gpx>", "gpx-no-positions")]
    [InlineData("<gpx><trk><trkseg><trkpt lat='52' lon='2'><fix>none</fix><time>2026-07-14T11:00:00Z</time></trkpt></trkseg></trk></gpx>", "gpx-no-fixes")]
    [InlineData("<gpx><trk><trkseg><trkpt lat='52' lon='2'><time>2026-07-14T11:00:00Z</time></trkpt></trkseg></trk></gpx>", "gpx-no-track")]
    [InlineData("<!DOCTYPE gpx><gpx></gpx>", "gpx-document-type")]
    [InlineData("<!DOCTYPE gpx SYSTEM 'file:///etc/passwd'><gpx></gpx>", "gpx-document-type")]
    [InlineData("<?xml version='1.0'?><!DOCTYPE gpx [<!ENTITY a 'ha'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'><!ENTITY c '&b;&b;&b;&b;&b;&b;&b;&b;'>]><gpx>&c;</gpx>", "gpx-document-type")]
    [InlineData("<?xml version='1.0'?><!DOCTYPE gpx [<!ENTITY x SYSTEM 'http://localhost/x'>]><gpx>&x;</gpx>", "gpx-document-type")]
    public void What_cannot_be_measured_is_refused_with_one_reason(string text, string code)
    {
        TrackReading reading = Read(text);
        Assert.Null(reading.Track);
        Finding finding = Assert.Single(reading.Findings);
        Assert.Equal(code, finding.Code);
        Assert.True(finding.IsError);
        Assert.NotEmpty(finding.Remedy);
    }

    [Fact]
    public void Entities_that_nobody_declared_end_the_file_there()
    {
        string point = "<trkpt lat='52' lon='5'><time>2026-07-14T11:00:0{0}Z</time></trkpt>";
        TrackReading reading = Read(Head + string.Format(CultureInfo.InvariantCulture, point, 0) + string.Format(CultureInfo.InvariantCulture, point, 1) + "<trkpt lat='52' lon='5'><time>&now;</time></trkpt>" + string.Format(CultureInfo.InvariantCulture, point, 3) + Tail);
        Assert.Equal(2, reading.Track!.Points.Count);
        Assert.Equal("gpx-breaks-off", Assert.Single(reading.Findings).Code);
    }

    [Fact]
    public void Text_of_two_bytes_a_sign_is_read_and_its_document_type_refused()
    {
        TrackMaker maker = new();
        string text = maker.Sail(10, 50).Gpx().Replace("UTF-8", "UTF-16", StringComparison.Ordinal);
        using MemoryStream stream = new([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(text)]), typed = new([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("<!DOCTYPE gpx><gpx/>")]);
        Assert.Equal(51, GpxFile.Read(stream, TestContext.Current.CancellationToken).Track!.Points.Count);
        Assert.Equal("gpx-document-type", Assert.Single(GpxFile.Read(typed, TestContext.Current.CancellationToken).Findings).Code);
    }

    [Fact]
    public void Deep_nesting_is_refused()
    {
        Assert.Equal("gpx-too-deep", Assert.Single(Read(Head + string.Concat(Enumerable.Repeat("<a>", 1000))).Findings).Code);
        Assert.Equal("gpx-too-deep", Assert.Single(Read(Head + "<trkpt lat='1' lon='1'><extensions>" + string.Concat(Enumerable.Repeat("<a>", 1000))).Findings).Code);
    }

    [Fact]
    public void A_file_too_long_by_its_length_is_refused_before_it_is_read()
    {
        using MadeStream stream = new(Head, "<x/>", 1_000_000_000, tellsLength: true);
        Assert.Equal("gpx-too-long", Assert.Single(GpxFile.Read(stream, TestContext.Current.CancellationToken).Findings).Code);
        Assert.Equal(0, stream.Taken);
    }

    // Each would fill the memory of a reader that holds pieces of a file whole.
    [Theory]
    [InlineData(Head, "<wpt lat='1' lon='1'><name>here</name></wpt>\n", "gpx-too-long")]
    [InlineData(Head, " ", "gpx-no-tags")]
    [InlineData("", " ", "gpx-no-tags")]
    [InlineData(Head + "<trkpt lat='", "5", "gpx-no-tags")]
    [InlineData(Head + "<trkpt ", "a='1' ", "gpx-no-tags")]
    [InlineData(Head + "<trkpt lat='1' lon='1'><time>", "2026", "gpx-no-tags")]
    [InlineData(Head + "<!--", "no end ", "gpx-no-tags")]
    [InlineData(Head + "<!--", "no end <", "gpx-too-long")]
    [InlineData(Head + "<?pi ", "no end <", "gpx-too-long")]
    [InlineData(Head + "<trkpt lat='1' lon='1'><time><![CDATA[", "no end <", "gpx-no-tags")]
    [InlineData(Head + "<trk><name><![CDATA[", "no end <", "gpx-no-tags")]
    [InlineData(Head + "<trk><name>", "<![CDATA[short]]>", "gpx-too-long")]
    [InlineData(Head + "<x>&#65;", "&#65;<y/>", "gpx-too-long")]
    public void A_gigabyte_without_an_end_is_refused_within_bounded_memory(string beginning, string piece, string code)
    {
        using MadeStream stream = new(beginning, piece, 1_000_000_000);
        long before = GC.GetAllocatedBytesForCurrentThread();
        // A smaller bound than the program's keeps the test quick; memory must not grow with it.
        TrackReading reading = GpxFile.Read(stream, 16 * 1024 * 1024, Track.MostPoints, TestContext.Current.CancellationToken);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Null(reading.Track);
        Assert.Equal(code, Assert.Single(reading.Findings).Code);
        Assert.True(allocated < 9_000_000, $"{allocated} bytes were taken");
        Assert.True(stream.Taken < 17_500_000, $"{stream.Taken} bytes were read");
    }

    [Fact]
    public void Nothing_but_new_names_is_refused()
    {
        StringBuilder text = new(Head);
        for (int i = 0; i < 100_000; i++)
            text.Append(CultureInfo.InvariantCulture, $"<n{i}/>");
        Assert.Equal("gpx-too-many-names", Assert.Single(Read(text.ToString()).Findings).Code);
    }

    [Fact]
    public void More_points_than_are_kept_are_refused()
    {
        string text = new TrackMaker().Sail(10, 200).Gpx();
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(text));
        Assert.Equal("gpx-too-many-points", Assert.Single(GpxFile.Read(stream, 1_000_000, 200, TestContext.Current.CancellationToken).Findings).Code);
    }

    [Fact]
    public void Damaged_files_are_read_or_refused_never_a_fault()
    {
        byte[] good = Encoding.UTF8.GetBytes(new TrackMaker().Sail(10, 30).Gpx());
        Random random = new(1);
        for (int round = 0; round < 400; round++)
        {
            byte[] bytes = [.. good];
            for (int hit = random.Next(1, 12); hit > 0; hit--)
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            using MemoryStream stream = new(bytes, 0, random.Next(bytes.Length + 1));
            TrackReading reading = GpxFile.Read(stream, TestContext.Current.CancellationToken);
            Assert.True(reading.Track is not null || reading.Findings.Count == 1);
            if (reading.Track is not null)
                _ = TrackMeasures.Of(reading.Track);
        }
    }

    [Fact]
    public void Reading_can_be_stopped()
    {
        using MadeStream stream = new(Head, "<wpt lat='1' lon='1'/>", 100_000_000);
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => GpxFile.Read(stream, source.Token));
    }

    [Theory]
    [InlineData(174.8, "2026-02-13T22:30:00Z", "2026-02-14")]
    [InlineData(-157.9, "2026-02-14T02:30:00Z", "2026-02-13")]
    [InlineData(5.4, "2026-02-14T12:30:00Z", "2026-02-14")]
    public void The_day_is_that_of_the_place(double longitude, string time, string expected)
    {
        TrackMeasures measures = TrackMeasures.Of(new(DateTimeOffset.Parse(time, CultureInfo.InvariantCulture), [new(0, 0, longitude * Math.PI / 180, double.NaN)]));
        Assert.Equal(DateOnly.Parse(expected, CultureInfo.InvariantCulture), measures.Day);
    }

    private static TrackReading Read(string text)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(text));
        return GpxFile.Read(stream, TestContext.Current.CancellationToken);
    }
}
