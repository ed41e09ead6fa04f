using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class SectionTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Section_gives_the_known_numbers_of_the_0010()
    {
        JsonElement answer = ProgramRun.Of("section", "naca-0010", "--json").Json();
        // 0.685083 t: integral of the four-digit thickness form, NACA TR-460 (1933), equation in "Geometry of the airfoils".
        Assert.Equal(0.0685083, answer.GetProperty("area_per_chord_squared").GetDouble(), 1e-6);
        // 1.1019 t², NACA TR-460.
        Assert.Equal(1.1019, answer.GetProperty("nose_radius_percent").GetDouble(), 1e-3);
        Assert.Equal(10, answer.GetProperty("thickness_percent").GetDouble(), 1e-2);
        Assert.Equal(81, answer.GetProperty("points_per_chord").GetArrayLength());
    }

    [Fact]
    public void Section_scales_blunts_and_counts_as_asked_with_a_comma_or_a_point()
    {
        JsonElement answer = ProgramRun.Of("section", "naca-0010", "--thickness-percent", "8,5", "--trailing-edge-percent", "0.8", "--points", "41", "--json").Json();
        Assert.Equal(8.5, answer.GetProperty("thickness_percent").GetDouble(), 1e-2);
        Assert.Equal(0.8, answer.GetProperty("trailing_edge_percent").GetDouble(), 1e-3);
        Assert.Equal(41, answer.GetProperty("points_per_chord").GetArrayLength());
    }

    [Fact]
    public void Section_prints_columns_from_the_trailing_edge_round_the_nose()
    {
        ProgramRun run = ProgramRun.Of("section", "naca-2412", "--points", "5");
        Assert.Equal(ExitCode.Good, run.ExitCode);
        string[] lines = [.. run.Out.TrimEnd().Split('\n')[^5..].Select(line => line.Trim())];
        Assert.StartsWith("1.0", lines[0], StringComparison.Ordinal);
        Assert.Equal("0.000000   0.000000", lines[2]);
    }

    [Fact]
    public void Section_reads_the_columns_it_wrote()
    {
        string columns = string.Join('\n', ProgramRun.Of("section", "naca-0012", "--points", "161").Out.TrimEnd().Split('\n')[^161..]);
        JsonElement answer = ProgramRun.Of("section", _folder.Write("mine.dat", columns), "--json").Json();
        Assert.Equal(12, answer.GetProperty("thickness_percent").GetDouble(), 0.05);
        Assert.Equal(0.0822, answer.GetProperty("area_per_chord_squared").GetDouble(), 3e-4);
    }

    [Fact]
    public void Section_of_ten_thousand_points_is_read()
    {
        string columns = string.Join('\n', ProgramRun.Of("section", "naca-0012", "--points", "10001").Out.TrimEnd().Split('\n')[^10001..]);
        ProgramRun run = ProgramRun.Of("section", _folder.Write("many.dat", columns), "--json");
        Assert.Equal(12, run.Json().GetProperty("thickness_percent").GetDouble(), 0.05);
    }

    [Theory]
    [InlineData("naca-00xx")]
    [InlineData("banana")]
    [InlineData("")]
    public void Section_of_an_unknown_name_is_refused(string name) => ProgramRun.Of("section", name).IsRefusal();

    [Theory]
    [InlineData("--thickness-percent", "0")]
    [InlineData("--thickness-percent", "-8")]
    [InlineData("--thickness-percent", "90")]
    [InlineData("--trailing-edge-percent", "-1")]
    [InlineData("--trailing-edge-percent", "30")]
    public void Section_with_a_number_out_of_range_is_refused(string option, string value) => ProgramRun.Of("section", "naca-0010", option, value).IsRefusal();

    [Fact]
    public void Section_from_a_bad_file_is_refused_with_the_line() =>
        Assert.Contains("3", ProgramRun.Of("section", _folder.Write("bad.dat", "my foil\n1 0\n0.5 sand\n0 0\n")).IsRefusal().Error, StringComparison.Ordinal);
}
