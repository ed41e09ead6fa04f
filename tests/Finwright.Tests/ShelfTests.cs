using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>The shelf, builds and stock through the command line.</summary>
public sealed class ShelfTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_design_is_kept_revised_and_had_back_as_it_was()
    {
        string first = Design("Mudflat", 360), second = Design("Mudflat", 340);
        Good("shelf", "add", first, "--note", "as drawn", "--tags", "slalom, estuary");
        Good("shelf", "revise", "mudflat", second, "--note", "shorter");
        Good("shelf", "restore", "Mudflat@1");
        JsonElement shown = Good("shelf", "show", "Mudflat", "--json").Json();
        Assert.Equal([(1, null), (2, "Mudflat@1"), (3, "Mudflat@1")], shown.GetProperty("revisions").EnumerateArray().Select(r => (r.GetProperty("number").GetInt32(), r.GetProperty("parent").GetString())));
        string taken = _folder["taken.fin.json"];
        Good("shelf", "take", "Mudflat@2", taken);
        Assert.Equal(Measured(second), Measured(taken));
        Assert.NotEqual(Measured(first), Measured(taken), StringComparer.Ordinal);

        Good("shelf", "delete", "Mudflat");
        Assert.Contains("is empty", Good("shelf").Out, StringComparison.Ordinal);
        Run("shelf", "show", "Mudflat").IsRefusal();
        Good("shelf", "restore", "mudflat");
        Assert.Equal(3, Good("shelf", "--json").Json().GetProperty("designs")[0].GetProperty("revisions").GetInt32());
    }

    [Fact]
    public void Fields_that_differ_are_told_against_the_parent_or_another_revision()
    {
        Good("shelf", "add", Design("Mudflat", 360));
        Run("shelf", "diff", "Mudflat").IsRefusal();
        Good("shelf", "revise", "Mudflat", Design("Mudflat", 340));
        Assert.Contains("Mudflat@1 -> Mudflat@2\n  shape.outline.span_mm: 360 -> 340 mm (-5.6 %)\n", Good("shelf", "diff", "Mudflat").Out, StringComparison.Ordinal);
        JsonElement change = Assert.Single(Good("shelf", "diff", "Mudflat@2", "Mudflat@1", "--json").Json().GetProperty("changes").EnumerateArray());
        Assert.Equal(("$.shape.outline.span_mm", 340, 360), (change.GetProperty("path").GetString(), change.GetProperty("old_value").GetDouble(), change.GetProperty("new_value").GetDouble()));
        Assert.Contains("No field differs", Good("shelf", "diff", "Mudflat", "Mudflat@2").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_is_searched_by_name_tag_and_note()
    {
        Good("shelf", "add", Design("Mudflat", 360), "--tags", "weed", "--note", "the deep one");
        Good("shelf", "add", Design("Lagoon", 330));
        Assert.Equal(["Mudflat"], Found("weed"), StringComparer.Ordinal);
        Assert.Equal(["Mudflat"], Found("DEEP mud"), StringComparer.Ordinal);
        Assert.Equal(["Lagoon"], Found("lag"), StringComparer.Ordinal);
        Assert.Equal(["Lagoon", "Mudflat"], Found(""), StringComparer.Ordinal);
        Assert.Empty(Found("deep lag"));

        IEnumerable<string?> Found(string words) => [.. Good("shelf", "list", "--search", words, "--json").Json().GetProperty("designs").EnumerateArray().Select(design => design.GetProperty("name").GetString())];
    }

    [Fact]
    public void What_cannot_be_kept_is_told_and_nothing_is_kept()
    {
        string design = Design("Mudflat", 360);
        Good("shelf", "add", design);
        Assert.Contains("already", Run("shelf", "add", design, "--name", "MUDFLAT").IsRefusal().Error, StringComparison.Ordinal);
        Assert.Contains("the same as Mudflat@1", Run("shelf", "revise", "Mudflat", design).IsRefusal().Error, StringComparison.Ordinal);
        Assert.Contains("revision 7", Run("shelf", "take", "Mudflat@7", _folder["x.fin.json"]).IsRefusal().Error, StringComparison.Ordinal);
        Assert.Contains("ends like the number of a revision", Run("shelf", "rename", "Mudflat", "Mudflat@2").IsRefusal().Error, StringComparison.Ordinal);
        Run("shelf", "add", _folder.Write("bad.fin.json", "{ \"name\": 3 }")).IsRefusal();
        Run("shelf", "add", _folder["none.fin.json"]).IsRefusal();
        Run("shelf", "restore", "Mudflat").IsRefusal();
        Run("shelf", "restore", "Nowhere").IsRefusal();
        Assert.Single(Good("shelf", "--json").Json().GetProperty("designs").EnumerateArray());
    }

    [Fact]
    public void A_build_takes_what_it_says_from_the_stock_and_keeps_its_design_on_the_shelf()
    {
        Good("shelf", "add", Design("Mudflat", 360));
        Good("stock", "add", "filament", "grey PETG", "--batch", "B7", "--quantity", "1000", "--price", "22", "--currency", "EUR");
        Good("stock", "add", "filament", "red PETG", "--quantity", "500", "--price", "15", "--currency", "EUR");
        Good("stock", "add", "resin", "slow", "--quantity", "1000", "--price", "30", "--currency", "EUR");
        Good("built", "add", "Mudflat", "--filament", "grey PETG", "--resin", "slow", "--plastic-g", "200", "--resin-ml", "190");
        Assert.Equal((800, 810), (Left("grey PETG/B7"), Left("slow")));
        // A part of another spool is taken from that one; the rest stays with the build's own.
        Good("built", "part", "Mudflat 1", "base", "--filament", "red PETG", "--plastic-g", "50");
        Assert.Equal((850, 450, 810), (Left("grey PETG/B7"), Left("red PETG"), Left("slow")));
        Good("built", "change", "Mudflat 1", "--plastic-g", "260", "--mass-g", "415,5");
        Assert.Equal((790, 450), (Left("grey PETG/B7"), Left("red PETG")));
        Good("stock", "use", "slow", "--quantity", "12.5", "--build", "Mudflat 1", "--note", "a spilt cup");
        Assert.Equal(797.5, Left("slow"));
        JsonElement build = Good("built", "--json").Json().GetProperty("builds")[0];
        Assert.Equal(("Mudflat@1", 415.5, "grey PETG/B7"), (build.GetProperty("revision").GetString(), build.GetProperty("mass_g").GetDouble(), build.GetProperty("filament").GetString()));

        // 210 of 1000 g at 22, 50 of 500 g at 15, 202.5 of 1000 ml at 30 euros.
        JsonElement shown = Good("built", "show", "Mudflat 1", "--quick", "--json").Json();
        Assert.Equal(210 * 0.022 + 50 * 0.03 + 202.5 * 0.03, shown.GetProperty("taken_from_stock").GetDouble(), 6);
        Assert.Equal("EUR", shown.GetProperty("stock_currency").GetString());

        Assert.Contains("Mudflat 1", Run("shelf", "delete", "Mudflat").IsRefusal().Error, StringComparison.Ordinal);
        Good("built", "delete", "Mudflat 1");
        Good("shelf", "delete", "Mudflat");
        Assert.Contains("Restore the design first", Run("built", "restore", "Mudflat 1").IsRefusal().Error, StringComparison.Ordinal);
        Good("shelf", "restore", "Mudflat");
        Good("built", "restore", "Mudflat 1");
        Assert.Contains("Mudflat 1", Good("shelf", "show", "Mudflat").Out, StringComparison.Ordinal);

        double Left(string label) => Good("stock", "--json").Json().GetProperty("items").EnumerateArray()
            .Single(item => label.Split('/')[0] == item.GetProperty("name").GetString()).GetProperty("left").GetDouble();
    }

    [Theory]
    [InlineData("built", "add", "Mudflat", "--plastic-g", "-3")]
    [InlineData("built", "add", "Mudflat", "--filament", "none")]
    [InlineData("built", "add", "Mudflat", "--made-on", "2027-02-30")]
    [InlineData("built", "add", "Mudflat@9")]
    [InlineData("built", "change", "none", "--mass-g", "3")]
    [InlineData("built", "photo", "none", "a.jpg")]
    [InlineData("stock", "add", "metal", "x", "--quantity", "3")]
    [InlineData("stock", "add", "rod", "x")]
    [InlineData("stock", "use", "x", "--quantity", "3")]
    [InlineData("stock", "restore", "first")]
    [InlineData("shelf", "list", "--store", "")]
    public void Wrong_words_are_refused_with_what_to_do(params string[] words)
    {
        Good("shelf", "add", Design("Mudflat", 360));
        Run(words).IsRefusal();
        Assert.Empty(Good("built", "--json").Json().GetProperty("builds").EnumerateArray());
    }

    private string Design(string name, int span)
    {
        string file = _folder[$"{name}-{span}.fin.json"];
        if (!File.Exists(file))
            Assert.Equal(ExitCode.Good, ProgramRun.Of("new", file, "--name", name, "--span-mm", $"{span}", "--area-cm2", "290").ExitCode);
        return file;
    }

    private static string Measured(string file) => ProgramRun.Of("check", file, "--json").Json().GetProperty("planform").GetRawText();

    private ProgramRun Run(params string[] words) => words.Contains("--store", StringComparer.Ordinal) ? ProgramRun.Of(words) : ProgramRun.Of([.. words, "--store", _folder["workshop.finstore"]]);

    private ProgramRun Good(params string[] words)
    {
        ProgramRun run = Run(words);
        Assert.True(run.ExitCode == ExitCode.Good, run.Error);
        Assert.Equal("", run.Error);
        return run;
    }
}
