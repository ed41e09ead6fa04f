using System.Globalization;
using System.Reflection;
using System.Text;
using System.Text.Json;
using Finwright.Commands.Outings;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>Tracks and outings through the command line.</summary>
public sealed class OutingTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_track_is_measured_as_it_was_sailed()
    {
        string file = _folder.Write("a.gpx", Track(14, 12.5, 13, 13.5, 12, 11.5));
        JsonElement answer = Good("outing", "measure", file, "--json").Json();
        Assert.Equal(("finwright-track", "measured", "2026-07-14"), (answer.GetProperty("kind").GetString(), answer.GetProperty("speed_source").GetString(), answer.GetProperty("day").GetString()));
        Assert.Equal(6, answer.GetProperty("runs").GetArrayLength());
        // A knot is 1852 m an hour.
        Assert.Equal(14, answer.GetProperty("ten_seconds").GetProperty("m_per_s").GetDouble(), 1e-9);
        Assert.Equal(14 * 3600 / 1852.0, answer.GetProperty("ten_seconds").GetProperty("knots").GetDouble(), 1e-6);
        Assert.Equal((14 + 13.5 + 13 + 12.5 + 12) / 5, answer.GetProperty("five_times_ten").GetProperty("m_per_s").GetDouble(), 1e-9);
        ProgramRun text = Good("outing", "measure", file);
        Assert.Contains("5 x 10 s  25.27  13.00", text.Out, StringComparison.Ordinal);
        Assert.Contains($"All {answer.GetProperty("points_recorded").GetInt32()} points were used.", text.Out, StringComparison.Ordinal);
        MakingText.Fits(text);
        JsonElement positions = Good("outing", "measure", file, "--positions-only", "--json").Json();
        Assert.Equal("positions", positions.GetProperty("speed_source").GetString());
        Assert.Equal(14, positions.GetProperty("ten_seconds").GetProperty("m_per_s").GetDouble(), 0.01);
    }

    [Fact]
    public void Files_that_are_no_track_are_refused_with_their_name()
    {
        foreach (string file in (string[])[_folder.Write("junk.gpx", "once upon a time"), _folder.Write("empty.gpx", ""), _folder.Write("entity.gpx", "<!DOCTYPE gpx [<!ENTITY a 'b'>]><gpx/>"), _folder["missing.gpx"], _folder.Path])
        {
            Assert.Contains(Path.GetFileName(file), Run("outing", "measure", file).IsRefusal().Error.ReplaceLineEndings("").Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Run("outing", "add", file).IsRefusal();
        }

        Assert.Empty(Good("outing", "--json").Json().GetProperty("outings").EnumerateArray());
    }

    [Fact]
    public void An_outing_is_kept_with_its_track_shown_changed_deleted_and_had_back()
    {
        Builds();
        string file = _folder.Write("a.gpx", Track(14, 13, 12, 13, 12));
        Assert.Contains("5 runs", Good("outing", "add", file, "--build", "fairway ONE", "--wind-knots", "18-22,5", "--sail-m2", "5,8", "--place", "lagoon", "--rider", "me", "--board", "slalom 68", "--grip", "4", "--spin-outs", "2", "--speed", "5", "--feel", "3", "--note", "choppy").Out, StringComparison.Ordinal);
        Assert.Contains("kept already", Run("outing", "add", file).IsRefusal().Error, StringComparison.Ordinal);
        Good("outing", "add", "--date", "2026-07-12", "--build", "Fairway two", "--wind-knots", "20");
        Good("outing", "change", "2", "--spin-outs", "0");
        JsonElement shown = Good("outing", "show", "1", "--json").Json(), outing = shown.GetProperty("outing");
        Assert.Equal(("2026-07-14", "Fairway one", "lagoon", 18, 22.5, 5.8, 4, 2, 5, 3, "a.gpx"), (
            outing.GetProperty("sailed_on").GetString(), outing.GetProperty("build").GetString(), outing.GetProperty("place").GetString(), outing.GetProperty("wind_low_knots").GetDouble(), outing.GetProperty("wind_high_knots").GetDouble(),
            outing.GetProperty("sail_m2").GetDouble(), outing.GetProperty("grip").GetInt32(), outing.GetProperty("spin_outs").GetInt32(), outing.GetProperty("speed").GetInt32(), outing.GetProperty("feel").GetInt32(), outing.GetProperty("track_file").GetString()));
        // What was kept says the same as the file.
        Assert.Equal(Good("outing", "measure", file, "--json").Json().GetProperty("runs").GetRawText().Replace(" ", "", StringComparison.Ordinal), shown.GetProperty("track").GetProperty("runs").GetRawText().Replace(" ", "", StringComparison.Ordinal));
        ProgramRun list = Good("outing"), text = Good("outing", "show", "1"), bare = Good("outing", "show", "2");
        Assert.Contains("20 kn", list.Out, StringComparison.Ordinal);
        Assert.Contains("18-22.5 kn", text.Out, StringComparison.Ordinal);
        Assert.Contains("let go  0 times", bare.Out, StringComparison.Ordinal);
        Assert.All((ProgramRun[])[list, text, bare], MakingText.Fits);
        Assert.Equal([1L], Numbers("--build", "Fairway one"));

        Good("outing", "delete", "1");
        Assert.Equal([2L], Numbers());
        // Its track may come anew while it is deleted.
        Good("outing", "restore", "1");
        Assert.Equal([1L, 2L], Numbers().Order());
        Run("outing", "restore", "1").IsRefusal();
        Run("outing", "delete", "7").IsRefusal();
        Run("outing", "change", "1").IsRefusal();

        long[] Numbers(params string[] words) => [.. Good(["outing", "list", "--json", .. words]).Json().GetProperty("outings").EnumerateArray().Select(item => item.GetProperty("number").GetInt64())];
    }

    [Fact]
    public void A_faster_fin_is_told_and_an_equal_one_is_not()
    {
        Builds();
        string[] same = ["--wind-knots", "18-22", "--sail-m2", "5.8"];
        Good(["outing", "add", _folder.Write("a.gpx", Track(14.2, 14, 14.4, 13.8, 14.1, 14, 13.9, 14.3, 14.2, 14)), "--build", "Fairway one", .. same]);
        Assert.Contains("not comparable", Good("outing", "compare", "Fairway one", "Fairway two").Out, StringComparison.Ordinal);
        Good(["outing", "add", _folder.Write("b.gpx", Track(12.9, 13, 13.2, 12.7, 13.1, 13, 12.8, 13.2, 13, 13.1)), "--build", "Fairway two", .. same]);
        JsonElement answer = Good("outing", "compare", "Fairway one", "Fairway two", "--json").Json();
        Assert.Equal(("first-faster", "within-days"), (answer.GetProperty("verdict").GetString(), answer.GetProperty("day_handling").GetString()));
        // Means 14.09 and 13.00 m/s.
        Assert.Equal(1.09 * 3600 / 1852, answer.GetProperty("difference_knots").GetDouble(), 1e-6);
        Assert.Equal((10, 10), (answer.GetProperty("first").GetProperty("runs_compared").GetInt32(), answer.GetProperty("second").GetProperty("runs_compared").GetInt32()));
        ProgramRun text = Good("outing", "compare", "Fairway two", "Fairway one");
        Assert.StartsWith("Fairway one is faster than Fairway two by", text.Out, StringComparison.Ordinal);
        MakingText.Fits(text);

        Good(["outing", "add", _folder.Write("c.gpx", Track(14, 14.2, 14.4, 13.9, 13.8, 14, 14.1, 14.3, 14.1, 14)), "--build", "Fairway three", .. same]);
        Assert.Contains("cannot be told apart", Good("outing", "compare", "Fairway one", "Fairway three").Out, StringComparison.Ordinal);
        // One track without speeds: all are reckoned from positions then.
        Assert.False(answer.GetProperty("measured_speeds_set_aside").GetBoolean());
        Good(["outing", "add", _folder.Write("d.gpx", Track(14, 14.2).Replace("<speed>", "<pace>", StringComparison.Ordinal).Replace("</speed>", "</pace>", StringComparison.Ordinal)), "--build", "Fairway three", .. same]);
        JsonElement mixed = Good("outing", "compare", "Fairway one", "Fairway three", "--json").Json();
        Assert.Equal(("positions", true), (mixed.GetProperty("speed_source").GetString(), mixed.GetProperty("measured_speeds_set_aside").GetBoolean()));
        Assert.Equal(12, mixed.GetProperty("second").GetProperty("runs_compared").GetInt32());
        MakingText.Fits(Good("outing", "compare", "Fairway one", "Fairway three"));
        Good("outing", "delete", "4");
        Run("outing", "compare", "Fairway one", "fairway one").IsRefusal();
        Run("outing", "compare", "Fairway one", "nowhere").IsRefusal();
        // Another sail is another thing.
        Good("outing", "change", "3", "--sail-m2", "7.0");
        Assert.Contains("same sail", Good("outing", "compare", "Fairway one", "Fairway three").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_receiver_that_did_not_know_the_date_is_asked_about()
    {
        string file = _folder.Write("a.gpx", Track(14, 13).Replace("2026-07-14", "1980-01-06", StringComparison.Ordinal));
        Assert.Contains("--date", Run("outing", "add", file).IsRefusal().Error, StringComparison.Ordinal);
        ProgramRun run = Good("outing", "add", file, "--date", "2026-07-14");
        Assert.Contains("Kept outing 1 of 2026-07-14", MakingText.Words(run.Out), StringComparison.Ordinal);
        Assert.Contains("1980-01-06; the day you gave was kept", MakingText.Words(run.Out), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("outing", "add")]
    [InlineData("outing", "add", "--date", "2026-07-14", "--build", "nowhere")]
    [InlineData("outing", "add", "--date", "2026-07-14", "--wind-knots", "22-18")]
    [InlineData("outing", "add", "--date", "2026-07-14", "--wind-knots", "strong")]
    [InlineData("outing", "add", "--date", "2026-07-14", "--wind-knots", "1-2-3")]
    [InlineData("outing", "add", "--date", "2026-07-14", "--sail-m2", "58")]
    [InlineData("outing", "add", "--date", "14.7.2026")]
    [InlineData("outing", "show", "1")]
    [InlineData("outing", "show", "-1")]
    [InlineData("outing", "list", "--build", "nowhere")]
    public void Wrong_words_are_refused_and_nothing_is_kept(params string[] words)
    {
        Run(words).IsRefusal();
        Assert.Empty(Good("outing", "--json").Json().GetProperty("outings").EnumerateArray());
    }

    [Fact]
    public void Every_field_of_the_answers_is_explained()
    {
        DirectoryInfo folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "finwright.slnx")))
            folder = folder.Parent!;
        string document = File.ReadAllText(Path.Combine(folder.FullName, "docs", "tracks.md"));
        Type[] records =
        [
            typeof(TrackAnswer), typeof(SpeedAnswer), typeof(BestAnswer), typeof(RunAnswer), typeof(CourseAnswer), typeof(RejectionAnswer), typeof(TrackFindingAnswer), typeof(OutingAnswer), typeof(OutingsAnswer), typeof(OutingDoneAnswer),
            typeof(OutingInFullAnswer), typeof(CompareAnswer), typeof(CompareSideAnswer),
        ];
        foreach (string field in records.SelectMany(record => record.GetProperties(BindingFlags.Public | BindingFlags.Instance)).Select(property => JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name)))
            Assert.True(document.Contains($"`{field}`", StringComparison.Ordinal) || document.Contains($"`{field}[]`", StringComparison.Ordinal), $"docs/tracks.md does not explain {field}.");
    }

    private void Builds()
    {
        string design = _folder.Write("fairway.fin.json", DemoDesigns.Find("fairway-upright")!);
        Good("shelf", "add", design, "--name", "Fairway");
        foreach (string name in (string[])["Fairway one", "Fairway two", "Fairway three"])
            Good("built", "add", "Fairway", "--name", name);
    }

    /// <summary>Out and back on a lagoon, a run for each speed (m/s) with 15 s of it, as a receiver tells it once a second.</summary>
    private static string Track(params double[] tops)
    {
        StringBuilder text = new("<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n");
        DateTime time = new(2026, 7, 14, 12, 0, 0, DateTimeKind.Utc);
        double latitude = 43.39, longitude = 3.61;
        for (int i = 0; i < tops.Length; i++)
        {
            double course = i % 2 == 0 ? Math.PI / 2 : 3 * Math.PI / 2;
            for (double speed = 6; speed < tops[i] - 0.5; speed += 1)
                Sail(speed, course);
            for (int s = 0; s < 15; s++)
                Sail(tops[i], course);
            for (double speed = tops[i] - 1; speed > 4; speed -= 2)
                Sail(speed, course);
            for (int s = 0; s < 6; s++)
                Sail(3.5, course + (s + 0.5) * Math.PI / 6);
        }

        return text.Append("</trkseg></trk></gpx>\n").ToString();

        void Sail(double speed, double course)
        {
            // Metres of a degree on WGS 84 at 43.39 degrees: 111 113 to the north, 81 030 to the east.
            latitude += speed * Math.Cos(course) / 111_113;
            longitude += speed * Math.Sin(course) / 81_030;
            time = time.AddSeconds(1);
            text.Append(CultureInfo.InvariantCulture, $"<trkpt lat=\"{latitude:F8}\" lon=\"{longitude:F8}\"><time>{time:yyyy-MM-ddTHH:mm:ssZ}</time><extensions><speed>{speed}</speed></extensions></trkpt>\n");
        }
    }

    private ProgramRun Run(params string[] words) => words is ["outing", "measure", ..] ? ProgramRun.Of(words) : ProgramRun.Of([.. words, "--store", _folder["workshop.finstore"]]);

    private ProgramRun Good(params string[] words)
    {
        ProgramRun run = Run(words);
        Assert.True(run.ExitCode == ExitCode.Good, run.Error + run.Out);
        Assert.Equal("", run.Error);
        return run;
    }
}
