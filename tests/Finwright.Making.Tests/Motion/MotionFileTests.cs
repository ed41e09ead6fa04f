using System.Text;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Making.Motion;

namespace Finwright.Making.Tests.Motion;

// Every expected number is worked out by hand beside it; tolerances are rounding unless said otherwise.
public sealed class MotionFileTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void Absolute_words_give_lengths_plastic_and_box()
    {
        MotionSummary s = MotionText.Summary(MotionText.Lines("G21", "G90", "M82", "G92 E0", "G1 X10 Y20 Z0.2 F1200", "G1 X40 E2", "G1 Y60 E5"));
        // 30 mm with 2 mm of filament, then 40 mm with 3 mm; the way there is √(10² + 20² + 0.2²).
        Assert.Equal(0.070, s.LaidLength, Rounding);
        Assert.Equal(Math.Sqrt(100 + 400 + 0.04) * 1e-3, s.TravelLength, Rounding);
        Assert.Equal(5e-3 * MotionText.Filament, s.PlasticVolume, 1e-18);
        Assert.Equal(new Bounds(new(0.010, 0.020, 0.0002), new(0.040, 0.060, 0.0002)), s.PartBox);
        MotionLayer layer = Assert.Single(s.Layers);
        Assert.Equal(0.0002, layer.Height, Rounding);
        Assert.Equal(5e-3 * MotionText.Filament, layer.Volume, 1e-18);
        Assert.Equal(6, layer.FirstLine);
        Assert.Equal(5, layer.LeavingLine);
    }

    [Theory]
    [InlineData("G1 X10 Y20 Z0.2 F1200\nG1 X40 E2\n")]
    [InlineData("g1x10y20z0.2f1200\ng1x40e2\n")]
    [InlineData("G1X10Y20Z.2F1200\r\nG1X40E2\r\n")]
    [InlineData("G01 X+10.000 Y20. Z00.2 F1200\n\n\t G01   X40 E2.0")]
    [InlineData("G1 (way) X10 (to) Y20 Z0.2 F1200 ; there\n;G1 X999\n(G1 X999)\nX40 E2\n")]
    [InlineData("N1 G1 X10 Y20 Z0.2 F1200\nN2 G1 X40 E2\n")]
    [InlineData("G91\nG1 X10 Y20 Z0.2 F1200\nG1 X30 E2\n")]
    [InlineData("M83\nG1 X10 Y20 Z0.2 F1200\nG1 X15 E1\nG1 X40 E1\n")]
    [InlineData("G90 G21 G1 X10 Y20 Z0.2 F1200\nG1 X40 E2 M107\n")]
    [InlineData("G20\nG1 X0.39370078740157 Y0.78740157480315 Z0.007874015748031 F47.244094488\nG1 X1.5748031496063 E0.078740157480315\n")]
    [InlineData("G92 X5 Y5\nG1 X15 Y25 Z0.2 F1200\nG92 E100\nG1 X45 E102\n")]
    [InlineData("M117 Layer 1*of 2 \"x\"\nSTART_PRINT BED=70 HOT=230\n@host words\nT0\nM104 S230\nG1 X10 Y20 Z0.2 F1200\nG1 X40 E2\n")]
    [InlineData("%\nO1000\nG1 X10 Y20 Z0.2 F1200\nG1 X40 E2\n%\n")]
    [InlineData("G 1 X 10 Y 20 Z 0.2 F 1200\nG1 X40 E2\n")]
    [InlineData("\uFEFFG1 X10 Y20 Z0.2 F1200\nG1 X40 E2\nM117 größer\n")]
    [InlineData("M200 D1.75\nG1 X10 Y20 Z0.2 F1200\nG1 X40 E4.8105637508\n")]
    public void Every_way_of_writing_the_same_path_gives_the_same_answer(string text)
    {
        MotionSummary s = MotionText.Summary(text);
        // 30 mm from (10, 20, 0.2) with 2 mm of filament: 2 × π/4 × 1.75² = 4.8105637508 mm³. Tolerance: 10⁻¹⁰ of it, printed digits.
        Assert.Equal(0.030, s.LaidLength, 1e-12);
        Assert.Equal(2e-3 * MotionText.Filament, s.PlasticVolume, 1e-18);
        Assert.Equal(0.010, s.PartBox!.Value.Minimum.X, 1e-12);
        Assert.Equal(0.040, s.PartBox!.Value.Maximum.X, 1e-12);
        Assert.Equal(0.020, s.PartBox!.Value.Maximum.Y, 1e-12);
        Assert.Equal(0.0002, s.Layers[0].Height, 1e-12);
    }

    [Fact]
    public void Plastic_counts_only_after_what_was_drawn_back_is_made_good()
    {
        MotionSummary s = MotionText.Summary(MotionText.Lines("M83", "G1 X0 Y0 Z0.2 F1200", "G1 X10 E1", "G1 E-2 F1800", "G0 X20", "G92 E0", "G1 E1.5", "G1 X30 E1", "G1 X35 E-0.3", "G1 X40 E0.3", "G1 E0.25"));
        // Laid: 1, then 1 of which 0.5 pays the rest of the debt; the wipe and what makes it good lay nothing; 0.25 comes out standing.
        Assert.Equal((1 + 0.5 + 0.25) * 1e-3 * MotionText.Filament, s.PlasticVolume, 1e-18);
        Assert.Equal(1.5e-3 * MotionText.Filament, s.PartVolume, 1e-18);
        Assert.Equal(0.25e-3 * MotionText.Filament, s.StandingVolume, 1e-18);
        Assert.Equal(2e-3, s.GreatestRetraction, Rounding);
        Assert.Equal(0.020, s.LaidLength, Rounding);
    }

    [Fact]
    public void Each_tool_owes_its_own_filament()
    {
        MotionSummary s = MotionText.Summary(MotionText.Lines("M83", "T0", "G1 Z0.2 F600", "G1 E-5", "T1", "G1 X10 E1", "T0", "G1 X20 E6"));
        // Tool 1 owes nothing and lays 1; tool 0 owes 5 of its 6.
        Assert.Equal(2e-3 * MotionText.Filament, s.PlasticVolume, 1e-18);
        Assert.Contains(MotionText.Read("T0\nT1\nG1 X1 E1 F100\n").Findings, f => f.Code == "several-tools");
    }

    [Theory]
    [InlineData("G3 X20 Y0 I10 J0 E1", 10 * Math.PI, 0, 20, -10, 0)] // half circle below, centre (10, 0)
    [InlineData("G2 X20 Y0 I10 J0 E1", 10 * Math.PI, 0, 20, 0, 10)] // half circle above
    [InlineData("G2 I10 E1", 20 * Math.PI, 0, 20, -10, 10)] // full circle
    [InlineData("G3 X0 Y0 I0 J5 E1", 10 * Math.PI, -5, 5, 0, 10)] // full circle, end given
    [InlineData("G3 X10 Y10 R10 E1", 5 * Math.PI, 0, 10, 0, 10)] // quarter, centre (0, 10)
    [InlineData("G3 X10 Y10 R-10 E1", 15 * Math.PI, 0, 20, -10, 10)] // the other three quarters, centre (10, 0)
    [InlineData("G2 X10 Y10 R10 E1", 5 * Math.PI, 0, 10, 0, 10)] // quarter, centre (10, 0)
    [InlineData("G2 X10 Y10 R-10 E1", 15 * Math.PI, -10, 10, 0, 20)] // three quarters, centre (0, 10)
    public void Arcs_have_their_exact_length_and_box(string line, double millimetres, double left, double right, double near, double far)
    {
        MotionSummary s = MotionText.Summary(MotionText.Lines("M83", "G1 X0 Y0 Z0.2 F1200", line));
        Assert.Equal(millimetres * 1e-3, s.LaidLength, 1e-12);
        Bounds box = s.PartBox!.Value;
        Assert.Equal(left, box.Minimum.X * 1e3, 1e-9);
        Assert.Equal(right, box.Maximum.X * 1e3, 1e-9);
        Assert.Equal(near, box.Minimum.Y * 1e3, 1e-9);
        Assert.Equal(far, box.Maximum.Y * 1e3, 1e-9);
    }

    [Fact]
    public void Helix_has_the_length_of_its_unrolled_line_and_centres_may_be_absolute()
    {
        // Unrolled: √((2π 10)² + 30²).
        Assert.Equal(Math.Sqrt(400 * Math.PI * Math.PI + 900) * 1e-3, MotionText.Summary("M83\nG1 X10 F1200\nG2 Z30 I-10 E1\n").LaidLength, 1e-12);
        Assert.Equal(10 * Math.PI * 1e-3, MotionText.Summary("M83\nG90.1\nG1 X40 Y5 F1200\nG3 X20 Y5 I30 J5 E1\n").LaidLength, 1e-12);
    }

    [Theory]
    [InlineData("G3 X30 Y0 R10 E1", "arc-radius")]
    [InlineData("G3 X0 Y0 R10 E1", "arc-radius")]
    [InlineData("G3 X10 Y0 E1", "arc-centre")]
    [InlineData("G3 X10 Y0 R5 I5 E1", "arc-centre")]
    [InlineData("G3 X10 Y0 I0 J0 E1", "arc-centre")]
    [InlineData("G18\nG3 X10 Z5 I5 K0 E1", "arc-plane")]
    [InlineData("G3 I5 P3 E1", "arc-turns")]
    [InlineData("G5 X10 Y0 I1 J1 P1 Q1 E1", "spline-move")]
    [InlineData("G1 X20000", "too-far")]
    [InlineData("G1 X-10000000000000000000000000", "too-far")]
    [InlineData("G91\nG1 X9000\nG1 X9000", "too-far")]
    [InlineData("G1 X1 E99999999999", "too-far")]
    [InlineData("G92 X99999999", "too-far")]
    [InlineData("G1 X1e9", "exponent")]
    [InlineData("G1 X1.5E+03 Y2", "exponent")]
    [InlineData("G1 X10 Y", "word-without-number")]
    [InlineData("G1 X10 X20", "word-twice")]
    [InlineData("G1 X10 G2 X20 I5", "two-moves")]
    [InlineData("G1 X10,5 Y3", "bad-word")]
    [InlineData("{\"json\": 1}", "bad-word")]
    [InlineData("G1 Xä", "bad-word")]
    [InlineData("<html>", "bad-word")]
    [InlineData("N3 G1 X10*99", "checksum")]
    [InlineData("N3 G1 X10*", "checksum")]
    [InlineData("G20\nM200 D1\nG1 X1 E1", "inch-volume")]
    public void What_cannot_be_read_is_refused_with_its_line(string lines, string code)
    {
        MotionReading reading = MotionText.Read("G1 X0 Y0 Z0.2 F1200\n" + lines + "\nG1 X1 Y1\n");
        Assert.Null(reading.Summary);
        Finding refusal = Assert.Single(reading.Findings);
        Assert.Equal(code, refusal.Code);
        Assert.Equal(Severity.Error, refusal.Severity);
        Assert.Equal(1 + lines.Split('\n').Length, refusal.Line);
        Assert.NotEmpty(refusal.Remedy);
    }

    [Theory]
    [InlineData("X10 Y10\n", "no-motion-word")]
    [InlineData("solid fin\nfacet normal 0 0 1\nvertex 1 2 3\n", "no-motion")]
    [InlineData("", "no-motion")]
    [InlineData("; only words\n", "no-motion")]
    [InlineData("PK\u0003\u0004rest", "packed-file")]
    [InlineData("G1 X1\nG1 \0X2\n", "not-text")]
    public void What_is_no_motion_file_is_refused(string text, string code) =>
        Assert.Equal(code, Assert.Single(MotionText.Read(text).Findings, f => f.IsError).Code);

    [Fact]
    public void Other_kinds_of_bytes_and_endless_lines_are_refused()
    {
        MotionReading Of(byte[] bytes)
        {
            using MemoryStream stream = new(bytes);
            return MotionFile.Read(stream, null, TestContext.Current.CancellationToken);
        }

        Assert.Equal("packed-file", Of([0x1F, 0x8B, 8, 0, 0]).Findings[0].Code);
        Assert.Equal("not-text", Of(Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("G1 X1")).ToArray()).Findings[0].Code);
        Assert.Equal("line-too-long", Of(Encoding.ASCII.GetBytes("G1 X1\n;" + new string('x', 70_000) + "\n")).Findings[0].Code);
        Assert.Equal("line-too-long", Of(Encoding.ASCII.GetBytes(";" + new string('x', 1_000_000))).Findings[0].Code);
        Assert.NotNull(Of(Encoding.ASCII.GetBytes("G1 X1\n;" + new string('x', 65_000) + "\n")).Summary);
    }

    [Fact]
    public void Checksum_of_the_signs_before_the_star_is_held()
    {
        string line = "N7 G1 X40 E2";
        int sum = line.Aggregate(0, (a, c) => a ^ c);
        Assert.Equal(0.040, MotionText.Summary($"G1 Z0.2 F600\n{line}*{sum} ; right\n").LaidLength, Rounding);
        Assert.True(MotionText.Summary($"G1 Z0.2 F600\n{line}*{sum}\n").IsNumbered);
        Assert.Equal("checksum", MotionText.Read($"G1 Z0.2 F600\n{line}*{sum ^ 1}\n").Findings[0].Code);
    }

    [Fact]
    public void Words_are_counted_by_name()
    {
        MotionSummary s = MotionText.Summary("G28\nG1 X1 F100\ng1 x2\nX3\nG92.1\nM862.3 P\"a\"\nSTART_PRINT A=1\nstart_print\nM600\nM12345678\nT1\n");
        Assert.Equal(2, s.Words["G1"]);
        Assert.Equal(1, s.Words["G92.1"]);
        Assert.Equal(1, s.Words["M862.3"]);
        Assert.Equal(2, s.Words["START_PRINT"]);
        Assert.Equal(1, s.Words["M12345678"]);
        Assert.Equal(1, s.Words["T"]);
        Assert.Equal(11, s.Lines);
    }

    [Fact]
    public void Time_by_feed_rates_is_way_over_speed_and_pauses()
    {
        // 100 mm at 20 mm/s, 3 mm of filament at 30 mm/s, half a second and two seconds of pause: 5 + 0.1 + 2.5 s.
        MotionSummary s = MotionText.Summary(MotionText.Lines("M83", "G1 X100 F1200", "G1 E-3 F1800", "G4 P500", "G4 S2"));
        Assert.Equal(7.6, s.LeastTime, 1e-9);
        // With acceleration a each of the two moves begins and ends at rest: v/a more (20 and 30 mm/s at 1 m/s²).
        Assert.Equal(7.65, s.Time, 1e-9);
    }

    [Fact]
    public void Greatest_flow_is_plastic_over_time_on_a_path_long_enough()
    {
        // 20 mm with 1 mm of filament at 40 mm/s: 2.405 mm³ in half a second; the short path's 0.1 mm on 0.1 mm does not count.
        MotionSummary s = MotionText.Summary(MotionText.Lines("M83", "G1 X1 Z0.2 F2400", "G1 X21 E1", "G1 X21.1 E0.1", "G1 X61 E1"));
        Assert.Equal(2e-3 * MotionText.Filament, s.GreatestFlow, 1e-15);
        Assert.Equal(3, s.GreatestFlowLine);
    }

    [Fact]
    public void What_one_should_know_about_a_file_is_told()
    {
        Assert.Contains(MotionText.Read("G1 X1 F100 E1").Findings, f => f.Code is "last-line-open");
        Assert.Contains(MotionText.Read("G1 X1 F100 E1\n").Findings, f => f.Code is "unit-not-stated");
        Assert.Contains(MotionText.Read("G21\nG1 X1 F100\n").Findings, f => f.Code is "no-extrusion");
        Assert.Contains(MotionText.Read("G21\nG1 X1 E1\n").Findings, f => f.Code is "no-feed" && f.Line is 2);
        Assert.Contains(MotionText.Read("G21\nG91\nM82\nG90\nG1 X1 E1 F1\nG91\nG1 X1 E1\n").Findings, f => f.Code is "modes-mixed" && f.Line is 7);
        Assert.DoesNotContain(MotionText.Read("G21\nG91\nM83\nG1 X1 E1 F1\nG91\nG1 X1 E1\nG90\nM83\nG1 X1 E1\n").Findings, f => f.Code is "modes-mixed");
        Assert.Contains(MotionText.Read("G21\nG1 X1 E1 F1\nG3 X5 Y0 I1 J0 E1\n").Findings, f => f.Code is "arc-not-round" && f.Line is 3);
        MotionReading flow = MotionText.Read("G21\nM221 S90\nG1 X10 E1 F1\n");
        Assert.Contains(flow.Findings, f => f.Code is "flow-changed" && f.Line is 2);
        Assert.Equal(0.9e-3 * MotionText.Filament, flow.Summary!.PlasticVolume, 1e-18);
    }

    [Fact]
    public void Line_cut_off_at_the_end_of_the_file_is_told_as_such()
    {
        MotionReading reading = MotionText.Read("G1 X1 F100 E1\nG1 X2 Y");
        Assert.Contains("cut short", reading.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_are_the_same_in_whatever_pieces_the_stream_gives_them()
    {
        string text = string.Concat(Enumerable.Range(1, 20).Select(i => MotionText.Square(0.2 * i)));
        MotionSummary whole = MotionText.Summary("M83\n" + text);
        using SlowStream slow = new(Encoding.ASCII.GetBytes("M83\n" + text), 7);
        MotionSummary pieces = MotionFile.Read(slow, null, TestContext.Current.CancellationToken).Summary!;
        Assert.Equal(whole.PlasticVolume, pieces.PlasticVolume);
        Assert.Equal(whole.Lines, pieces.Lines);
        Assert.Equal(whole.Layers, pieces.Layers);
        Assert.Equal(text.Length + 4, pieces.Bytes);
    }

    private sealed class SlowStream(byte[] bytes, int most) : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count) => base.Read(buffer, offset, Math.Min(most, count));
    }
}
