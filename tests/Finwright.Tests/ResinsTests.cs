using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class ResinsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Resins_lists_all_and_shows_one_with_the_source_of_each_number()
    {
        ProgramRun all = ProgramRun.Of("resins"), one = ProgramRun.Of("resins", "laminating-slow");
        JsonElement[] resins = [.. ProgramRun.Of("resins", "--json").Json().GetProperty("resins").EnumerateArray()];
        Assert.True(resins.Length >= 5);
        Assert.All(resins, resin => Assert.Contains(resin.GetProperty("name").GetString()!, all.Out, StringComparison.Ordinal));
        Assert.Contains("heat_of_reaction_j_per_g", one.Out, StringComparison.Ordinal);
        MakingText.Fits(all);
        MakingText.Fits(one);
    }

    [Fact]
    public void A_copy_of_a_resin_reads_back_the_same_and_is_not_overwritten_unasked()
    {
        string copy = _folder["mine.resin.json"];
        Assert.Equal(ExitCode.Good, ProgramRun.Of("resins", "laminating-slow", "--copy", copy).ExitCode);
        Assert.Equal(ProgramRun.Of("resins", "laminating-slow", "--json").Out, ProgramRun.Of("resins", copy, "--json").Out);
        ProgramRun.Of("resins", "casting-slow", "--copy", copy).IsRefusal();
        Assert.Equal(ExitCode.Good, ProgramRun.Of("resins", "casting-slow", "--copy", copy, "--overwrite").ExitCode);
    }

    [Theory]
    [InlineData("honey")]
    [InlineData("missing.resin.json")]
    [InlineData("--copy", "a.resin.json")]
    [InlineData("laminating-slow", "--copy", "a.txt")]
    [InlineData("laminating-slow", "--overwrite")]
    [InlineData("fit")]
    [InlineData("fit", "missing.csv")]
    [InlineData("fit", "--pot-life-grams", "100")]
    [InlineData("fit", "--pot-life-minutes", "0")]
    [InlineData("fit", "--pot-life-minutes", "40", "--from", "honey")]
    [InlineData("fit", "--pot-life-minutes", "40", "--name", "My Resin")]
    [InlineData("fit", "--pot-life-minutes", "40", "--save", "a.txt")]
    [InlineData("fit", "--pot-life-minutes", "40", "--overwrite")]
    public void A_wrong_call_is_refused(params string[] words) => ProgramRun.Of(["resins", .. words]).IsRefusal();

    [Theory]
    [InlineData("junk")]
    [InlineData("mass_g,100\nroom_celsius,21.5\ncup_diameter_mm,65\n0,22\n5,hot\n")]
    [InlineData("mass_g,100\nmass_g,100\n0;22\n")]
    [InlineData("\u0001\u0002\u0003")]
    [InlineData("")]
    public void Junk_in_place_of_readings_is_refused_with_what_is_wrong(string text) =>
        Assert.Contains("in the readings", MakingText.Words(ProgramRun.Of("resins", "fit", _folder.Write("a.csv", text)).IsRefusal().Error), StringComparison.Ordinal);

    [Fact]
    public void A_shorter_pot_life_on_the_data_sheet_means_a_faster_resin_and_the_file_saved_is_one_that_cure_slab_takes()
    {
        string file = _folder["mine.resin.json"];
        double fast = Rate("20"), slow = Rate("60", "--save", file, "--name", "mine");
        // The reaction is one curve against time times rate while the cup is still cool: a third of the time takes more than twice the rate.
        Assert.True(fast > 2 * slow && slow > 0, $"{fast} {slow}");
        ProgramRun slab = ProgramRun.Of("cure-slab", "--resin", file, "--json");
        Assert.Equal("mine", slab.Json().GetProperty("resin").GetString());
        MakingText.Fits(ProgramRun.Of("resins", "fit", "--pot-life-minutes", "40"));

        double Rate(string minutes, params string[] options) =>
            ProgramRun.Of(["resins", "fit", "--pot-life-minutes", minutes, .. options, "--json"]).Json().GetProperty("rate_factor").GetProperty("value").GetDouble();
    }
}
