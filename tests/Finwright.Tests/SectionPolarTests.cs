using System.Globalization;
using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class SectionPolarTests : IDisposable
{
    private static readonly string[] Fields = ["alphaDegrees", "cl", "cd", "cm", "xTransitionUpper", "xTransitionLower", "xSeparationUpper", "converged"];
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Section_with_a_Reynolds_number_gives_a_row_for_each_angle_in_the_order_asked()
    {
        JsonElement polar = ProgramRun.Of("section", "naca-0012", "--reynolds", "2e6", "--alpha", "4:-4:-2", "--n", "9", "--json").Json().GetProperty("polar");
        Assert.Equal(2e6, polar.GetProperty("reynolds_number").GetDouble());
        JsonElement[] rows = [.. polar.GetProperty("rows").EnumerateArray()];
        Assert.Equal([4, 2, 0, -2, -4], rows.Select(row => row.GetProperty("alphaDegrees").GetDouble()));
        Assert.All(rows, row => Assert.All(Fields, field => Assert.True(row.TryGetProperty(field, out _), field)));
        Assert.All(rows, row => Assert.True(row.GetProperty("converged").GetBoolean()));
        // A symmetric section, equally finished: lift is odd, drag is even.
        Assert.Equal(rows[0].GetProperty("cl").GetDouble(), -rows[4].GetProperty("cl").GetDouble(), 1e-6);
        Assert.Equal(rows[0].GetProperty("cd").GetDouble(), rows[4].GetProperty("cd").GetDouble(), 1e-8);
        Assert.Equal(rows[0].GetProperty("xTransitionUpper").GetDouble(), rows[4].GetProperty("xTransitionLower").GetDouble(), 1e-6);
    }

    [Fact]
    public void Section_tripped_at_a_place_turns_turbulent_there_at_the_latest()
    {
        JsonElement row = ProgramRun.Of("section", "naca-0010", "--reynolds", "1e6", "--alpha", "0", "--trip-upper", "0.1", "--json").Json().GetProperty("polar").GetProperty("rows")[0];
        Assert.InRange(row.GetProperty("xTransitionUpper").GetDouble(), 0, 0.11);
        Assert.InRange(row.GetProperty("xTransitionLower").GetDouble(), 0.2, 1);
    }

    [Fact]
    public void Section_polar_as_text_fits_80_columns_and_leaves_the_coordinates_out()
    {
        ProgramRun run = ProgramRun.Of("section", "naca-0010", "--reynolds", "1e6", "--alpha", "0:12:4", "--trip", "0.05");
        Assert.Equal(ExitCode.Good, run.ExitCode);
        string[] lines = run.Out.Split('\n');
        Assert.All(lines, line => Assert.True(line.Length <= 80, line));
        Assert.Contains("Reynolds number 1,000,000", run.Out, StringComparison.Ordinal);
        Assert.Contains("tripped at 5 %", run.Out, StringComparison.Ordinal);
        Assert.Equal(4, lines.Count(line => line.Length > 20 && double.TryParse(line[..9], CultureInfo.InvariantCulture, out _)));
    }

    [Fact]
    public void Section_without_a_Reynolds_number_has_no_polar() =>
        Assert.False(ProgramRun.Of("section", "naca-0010", "--json").Json().TryGetProperty("polar", out _));

    [Theory]
    [InlineData("outside -20 to 20", "--alpha", "0:25:1")]
    [InlineData("outside -20 to 20", "--alpha", "-21:0:1")]
    [InlineData("the step is 0", "--alpha", "0:5:0")]
    [InlineData("leads away", "--alpha", "0:5:-1")]
    [InlineData("leads away", "--alpha", "5:0:1")]
    [InlineData("at most 401", "--alpha", "0:20:0.01")]
    [InlineData("first:last:step", "--alpha", "0:5")]
    [InlineData("first:last:step", "--alpha", "a:b:c")]
    [InlineData("first:last:step", "--alpha", "0:NaN:1")]
    [InlineData("outside 1 to 14", "--n", "0")]
    [InlineData("outside 1 to 14", "--n", "40")]
    [InlineData("not on the section", "--trip", "1.5")]
    [InlineData("not on the section", "--trip-lower", "-0.1")]
    [InlineData("4 to 20 %", "--thickness-percent", "3")]
    [InlineData("4 to 20 %", "--thickness-percent", "40")]
    public void Section_polar_with_a_bad_number_is_refused_with_one_message(string words, string option, string value) =>
        Assert.Contains(words, OneLine(ProgramRun.Of("section", "naca-0010", "--reynolds", "1e6", option, value).IsRefusal()), StringComparison.Ordinal);

    [Theory]
    [InlineData("1e4")]
    [InlineData("2e7")]
    [InlineData("0")]
    [InlineData("-1e6")]
    public void Section_polar_outside_the_Reynolds_numbers_of_the_method_is_refused(string reynolds) =>
        Assert.Contains("outside 50000 to 10000000", OneLine(ProgramRun.Of("section", "naca-0010", "--reynolds", reynolds).IsRefusal()), StringComparison.Ordinal);

    [Theory]
    [InlineData("--alpha", "0:5:1")]
    [InlineData("--n", "9")]
    [InlineData("--trip", "0.1")]
    public void Section_with_options_of_the_polar_alone_is_refused(string option, string value) =>
        Assert.Contains("needs --reynolds", OneLine(ProgramRun.Of("section", "naca-0010", option, value).IsRefusal()), StringComparison.Ordinal);

    [Fact]
    public void Section_left_as_printed_drags_more_than_polished()
    {
        double Drag(string finish, string printed = "auto") => ProgramRun.Of("section", "naca-0010", "--reynolds", "1e6", "--n", "5", "--alpha", "2", "--finish", finish, "--printed", printed, "--chord-mm", "120", "--json").Json()
            .GetProperty("polar").GetProperty("rows")[0].GetProperty("cd").GetDouble();
        // Lying, the layers are steps across the stream, far above what trips; standing, they are fine grooves along it.
        Assert.True(Drag("bare-print", "lying") > 1.2 * Drag("polished"));
        Assert.InRange(Drag("bare-print", "standing") / Drag("polished"), 1, 1.2);
        Assert.InRange(Drag("grit-400") / Drag("polished"), 0.99, 1.1);
    }

    [Theory]
    [InlineData("needs --chord-mm", "--finish", "polished")]
    [InlineData("only matters with --finish", "--chord-mm", "120")]
    [InlineData("takes one of polished, grit-400, bare-print", "--finish", "shiny")]
    [InlineData("outside 10 to 500", "--finish", "polished", "--chord-mm", "5")]
    public void Section_with_half_a_finish_is_refused(string words, params string[] options) =>
        Assert.Contains(words, OneLine(ProgramRun.Of(["section", "naca-0010", "--reynolds", "1e6", .. options]).IsRefusal()), StringComparison.Ordinal);

    [Fact]
    public void Section_with_two_trips_for_one_side_is_refused() =>
        ProgramRun.Of("section", "naca-0010", "--reynolds", "1e6", "--trip", "0.1", "--trip-upper", "0.2").IsRefusal();

    [Fact]
    public void Section_of_one_side_only_is_refused()
    {
        string side = string.Join('\n', Enumerable.Range(0, 30).Select(i => $"{1 - i / 29.0:0.0000} {0.1 * Math.Sqrt(1 - i / 29.0) * (i / 29.0):0.00000}"));
        ProgramRun.Of("section", _folder.Write("half.dat", side), "--reynolds", "1e6").IsRefusal();
    }

    private static string OneLine(ProgramRun run) => string.Join(' ', run.Error.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
