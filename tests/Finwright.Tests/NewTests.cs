using Finwright.Design;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class NewTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Families => ["upright", "raked", "steep-rake", "wide-delta"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Families))]
    public void New_of_each_family_writes_a_design_without_errors(string family)
    {
        ProgramRun run = ProgramRun.Of("new", _folder["mine.fin.json"], "--family", family);
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.Equal("mine", Read().Name);
        ProgramRun check = ProgramRun.Of("check", _folder["mine.fin.json"]);
        Assert.Equal(ExitCode.Good, check.ExitCode);
    }

    [Theory]
    [InlineData("two-bolt-tapered", "base-only")]
    [InlineData("two-bolt-deep", "base-only")]
    [InlineData("long-slot", "base-only")]
    public void New_for_each_box_writes_a_design_without_errors(string box, string fixing)
    {
        ProgramRun.Of("new", _folder["mine.fin.json"], "--family", "raked", "--box", box, "--fixing", fixing);
        ProgramRun check = ProgramRun.Of("check", _folder["mine.fin.json"]);
        Assert.True(check.ExitCode == ExitCode.Good, check.Out + check.Error);
    }

    [Fact]
    public void New_with_clamp_rods_writes_rods_that_fit_a_thick_root()
    {
        ProgramRun.Of("new", _folder["mine.fin.json"], "--family", "wide-delta", "--fixing", "clamp-rods");
        Assert.Equal(2, Read().Hardware.ClampRods.Count);
        ProgramRun check = ProgramRun.Of("check", _folder["mine.fin.json"]);
        Assert.True(check.ExitCode == ExitCode.Good, check.Out + check.Error);
    }

    [Fact]
    public void New_of_the_deepest_blade_writes_a_design_without_errors()
    {
        ProgramRun.Of("new", _folder["mine.fin.json"], "--span-mm", "800", "--area-cm2", "1400");
        ProgramRun check = ProgramRun.Of("check", _folder["mine.fin.json"]);
        Assert.True(check.ExitCode == ExitCode.Good, check.Out + check.Error);
    }

    [Fact]
    public void New_puts_each_number_where_it_belongs()
    {
        ProgramRun run = ProgramRun.Of(
            "new", _folder["mine.fin.json"], "--family", "wide-delta", "--name", "Sanderling", "--span-mm", "205,5", "--root-chord-mm", "230",
            "--rake-degrees", "40", "--tip-chord-percent", "20", "--thickness-percent", "9", "--box", "long-slot", "--fixing", "base-only");
        Assert.Equal(ExitCode.Good, run.ExitCode);
        FinDesign design = Read();
        Assert.Equal("Sanderling", design.Name);
        Assert.Equal(new Outline { Family = OutlineFamily.WideDelta, SpanMm = 205.5, RootChordMm = 230, RakeDegrees = 40, TipChordPercent = 20 } with { LeadingEdge = design.Shape.Outline.LeadingEdge, TrailingEdge = design.Shape.Outline.TrailingEdge }, design.Shape.Outline);
        Assert.Equal(9, design.Shape.Sections[0].ThicknessPercent);
        Assert.Equal(BoxKind.LongSlot, design.Base.Box);
        Assert.Equal(Fixing.BaseOnly, design.Base.Fixing);
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void New_with_points_gives_the_same_area_as_the_family(string family)
    {
        ProgramRun.Of("new", _folder["family.fin.json"], "--family", family);
        ProgramRun.Of("new", _folder["points.fin.json"], "--family", family, "--points");
        double Area(string name) => ProgramRun.Of("check", _folder[name], "--json").Json().GetProperty("planform").GetProperty("area_cm2").GetDouble();
        FinDesign free = DesignReader.ReadFile(_folder["points.fin.json"]).Design!;
        Assert.Equal(OutlineFamily.Free, free.Shape.Outline.Family);
        Assert.True(free.Shape.Outline.LeadingEdge.Count >= 4);
        // Points are written to a thousandth of a millimetre: on 300 mm of edge that is 0.003 cm².
        Assert.Equal(Area("family.fin.json"), Area("points.fin.json"), 0.01);
    }

    [Fact]
    public void New_measured_box_takes_the_makers_measurements()
    {
        ProgramRun run = ProgramRun.Of("new", _folder["mine.fin.json"], "--box", "measured", "--box-length-mm", "140", "--box-width-mm", "17", "--box-depth-mm", "38");
        Assert.Equal(ExitCode.Good, run.ExitCode);
        Assert.Equal(140, Read().Base.Measured!.HullLengthMm);
        ProgramRun.Of("new", _folder["other.fin.json"], "--box", "measured").IsRefusal();
    }

    [Fact]
    public void New_full_writes_every_field()
    {
        ProgramRun.Of("new", _folder["short.fin.json"]);
        ProgramRun.Of("new", _folder["full.fin.json"], "--full", "--name", "short");
        Assert.Contains("\"bath_celsius\"", File.ReadAllText(_folder["full.fin.json"]), StringComparison.Ordinal);
        Assert.DoesNotContain("\"bath_celsius\"", File.ReadAllText(_folder["short.fin.json"]), StringComparison.Ordinal);
        Assert.Equal(DesignWriter.Write(DesignReader.ReadFile(_folder["short.fin.json"]).Design!), DesignWriter.Write(DesignReader.ReadFile(_folder["full.fin.json"]).Design!));
    }

    [Fact]
    public void New_never_replaces_a_file_unless_told()
    {
        string file = _folder.Write("mine.fin.json", "precious");
        ProgramRun.Of("new", file).IsRefusal();
        Assert.Equal("precious", File.ReadAllText(file));
        Assert.Equal(ExitCode.Good, ProgramRun.Of("new", file, "--overwrite").ExitCode);
        Assert.Equal("mine", Read().Name);
    }

    [Fact]
    public void New_demo_is_the_file_of_the_examples_folder()
    {
        foreach (string name in DemoDesigns.Names)
        {
            string file = _folder[name + ".fin.json"];
            Assert.Equal(ExitCode.Good, ProgramRun.Of("new", file, "--demo", name).ExitCode);
            Assert.False(DesignReader.ReadFile(file).HasErrors);
        }

        Assert.Equal(3, DemoDesigns.Names.Count);
        ProgramRun.Of("new", _folder["x.fin.json"], "--demo", "banana").IsRefusal();
    }

    [Theory]
    [InlineData("--span-mm", "-200")]
    [InlineData("--span-mm", "99999")]
    [InlineData("--area-cm2", "0")]
    [InlineData("--rake-degrees", "400")]
    [InlineData("--thickness-percent", "0")]
    [InlineData("--family", "free")]
    public void New_with_an_impossible_number_writes_nothing(string option, string value)
    {
        ProgramRun.Of("new", _folder["mine.fin.json"], option, value).IsRefusal();
        Assert.Empty(_folder.Files());
    }

    [Fact]
    public void New_with_area_and_root_chord_is_refused() =>
        ProgramRun.Of("new", _folder["mine.fin.json"], "--area-cm2", "250", "--root-chord-mm", "110").IsRefusal();

    [Fact]
    public void New_into_a_missing_folder_or_onto_a_folder_is_refused()
    {
        ProgramRun.Of("new", _folder["missing/mine.fin.json"]).IsRefusal();
        ProgramRun.Of("new", _folder.Path, "--overwrite").IsRefusal();
        Assert.Empty(_folder.Files());
    }

    private FinDesign Read() => DesignReader.ReadFile(_folder["mine.fin.json"]).Design!;
}
