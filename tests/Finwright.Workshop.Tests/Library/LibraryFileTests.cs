using Finwright.Design;
using Finwright.Making.Files;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;
using Finwright.Workshop.Library;

namespace Finwright.Workshop.Tests.Library;

public sealed class LibraryFileTests
{
    public static TheoryData<LibraryKind> PartKinds { get; } = [.. Enum.GetValues<LibraryKind>().Where(kind => kind is not (LibraryKind.Material or LibraryKind.Resin))];

    [Theory]
    [MemberData(nameof(PartKinds))]
    public void A_part_reads_back_as_it_was_written(LibraryKind kind)
    {
        DesignPart part = DesignPart.Of(kind, "Mine", "first\nsecond", Rich);
        LibraryReading reading = LibraryFile.Read(kind, part.Write());
        Assert.Empty(reading.Findings);
        DesignPart back = Assert.IsType<DesignPart>(reading.Content);
        Assert.Equal(("Mine", "first\nsecond"), (back.Name, back.Note));
        Assert.Equal(part.Write(), back.Write());
    }

    [Theory]
    [MemberData(nameof(PartKinds))]
    public void Taking_a_part_changes_its_fields_and_no_others(LibraryKind kind)
    {
        FinDesign plain = SampleFins.Design("Fairway"), taken = DesignPart.Of(kind, "Mine", "", Rich).Into(plain, isKnown: false).Design!;
        string[] fields = [.. PartFields.Of(kind)];
        foreach ((string path, string before, string after) in Leaves(plain).Zip(Leaves(taken), (a, b) => (a.Path, a.Text, b.Text)))
            Assert.True(before == after || fields.Contains(path), path);
        // What it brings is what the rich design has.
        Assert.All(fields, field => Assert.Equal(Leaves(Rich).First(leaf => leaf.Path == field).Text, Leaves(taken).First(leaf => leaf.Path == field).Text));
    }

    [Fact]
    public void The_example_in_the_documents_is_read()
    {
        string document = File.ReadAllText(Path.Combine(Sources(), "docs", "libraries.md"));
        int start = document.IndexOf("```json", StringComparison.Ordinal) + 7;
        LibraryReading reading = LibraryFile.Read(LibraryKind.Box, document[start..document.IndexOf("```", start, StringComparison.Ordinal)]);
        Assert.Empty(reading.Findings);
        Assert.Equal(150.2, Assert.IsType<DesignPart>(reading.Content).Carrier.Base.Measured!.HullLengthMm);
        foreach (LibraryKind kind in PartKinds.Select(row => row.Data))
            Assert.Contains($"| `{LibraryFile.WordOf(kind)}` | {string.Join(", ", PartFields.Of(kind).Select(path => $"`{path[2..]}`"))} |", document, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "format": 1, "kind": "sail", "name": "x", "design": {} }""", "$.kind")]
    [InlineData("""{ "format": 2, "kind": "board", "name": "x", "design": {} }""", "$.format")]
    [InlineData("""{ "format": 1, "kind": "board", "name": " ", "design": {} }""", "$.name")]
    [InlineData("""{ "format": 1, "kind": "board", "name": "x" }""", "$.design")]
    [InlineData("""{ "format": 1, "kind": "board", "name": "x", "colour": 1, "design": {} }""", "$.colour")]
    [InlineData("""{ "format": 1, "kind": "board", "name": "x", "design": { "brief": { "sail_area_m2": 5 } } }""", "$.brief.sail_area_m2")]
    [InlineData("""{ "format": 1, "kind": "board", "name": "x", "design": { "brief": { "board_width_mm": 5 } } }""", "$.brief.board_width_mm")]
    [InlineData("""{ "format": 1, "kind": "board", "name": "x", "design": { "brief": { "board_width_mm": 700, "board_width_mm": 710 } } }""", "$.brief.board_width_mm")]
    [InlineData("""{ "format": 1, "kind": "board", "name": "x", "design": { "name": "evil" } }""", "$.name")]
    [InlineData("""[1]""", "$")]
    [InlineData("""{ "format": 1, """, "$")]
    [InlineData("", "$")]
    public void What_is_wrong_with_a_file_is_said_with_its_place(string text, string path)
    {
        LibraryReading reading = LibraryFile.Read(LibraryKind.Board, text);
        Assert.Null(reading.Content);
        Assert.Contains(reading.Findings, finding => finding.Path == path && finding.IsError && finding.Remedy.Length > 0);
    }

    [Fact]
    public void A_design_part_of_an_older_format_is_brought_up_to_date()
    {
        LibraryReading reading = LibraryFile.Read(LibraryKind.Board, """{ "format": 1, "kind": "board", "name": "x", "design": { "format": 2, "brief": { "board_width_mm": 655 } } }""");
        Assert.Equal(655, Assert.IsType<DesignPart>(reading.Content).Carrier.Brief.BoardWidthMm);
    }

    [Fact]
    public void A_material_of_ones_own_goes_in_whole_and_a_known_one_by_name()
    {
        FinDesign plain = SampleFins.Design("Fairway");
        PrintedPlastic known = MaterialLibrary.All.OfType<PrintedPlastic>().First();
        Assert.Equal(known.Name, new KeptMaterial(known).Into(plain, isKnown: true).Design!.Materials.Printed.Material);
        FinDesign own = new KeptMaterial(known with { Name = "mine", Title = "Mine", Density = new(1300, 1290, 1310) }).Into(plain, isKnown: false).Design!;
        Assert.Equal(("Mine", 1.3), (own.Print.Filament, own.Print.FilamentDensityGPerCm3));
        Assert.Equal("Mine", MaterialFile.Read(System.Text.Encoding.UTF8.GetBytes(own.Materials.Printed.Content!)).Material!.Title);
        Rod rod = MaterialLibrary.All.OfType<Rod>().First();
        FinDesign withRod = new KeptMaterial(rod with { Name = "mine" }).Into(plain, isKnown: false).Design!;
        Assert.NotNull(withRod.Materials.Rod.Content);
        Assert.Null(withRod.Materials.Printed.Content);
    }

    [Fact]
    public void A_resin_of_ones_own_goes_in_whole_and_a_known_one_by_name()
    {
        FinDesign plain = SampleFins.Design("Fairway");
        KeptResin known = new(ResinLibrary.Get("casting-slow"));
        Assert.Equal("casting-slow", known.Into(plain, isKnown: true).Design!.Pour.System.Name);
        FinDesign own = new KeptResin(known.Resin with { Name = "mine", Title = "Mine" }).Into(plain, isKnown: false).Design!;
        Assert.Equal((null, "Mine"), (own.Pour.System.Name, own.Pour.Resin));
        Assert.Equal("mine", ResinFile.Read(System.Text.Encoding.UTF8.GetBytes(own.Pour.System.Content!)).Resin!.Name);
    }

    // Every part differs from its default somewhere.
    private static FinDesign Rich
    {
        get
        {
            FinDesign blank = PartFields.Blank();
            return blank with
            {
                Brief = blank.Brief with { BoardWidthMm = 612, TailWidthMm = 400, SailAreaM2 = 5.3, RiderMassKg = 71, HangOutMm = 990, DraughtLimitMm = 310, Weed = Weed.Thick, WaterTemperatureCelsius = 9 },
                Base = blank.Base with
                {
                    Box = BoxKind.Measured,
                    LengthAllowanceMm = -0.2,
                    Measured = new() { HullLengthMm = 150, HullWidthMm = 16, FrontDepthMm = 40, DeepLengthMm = 138, Bolts = [new() { FromFrontMm = 40 }] },
                },
                Hardware = blank.Hardware with { BoxBolts = new() { Thread = Finwright.Design.Thread.M8 }, CarbonRods = [new() { RootChordPercent = 30 }] },
                Print = blank.Print with { Printer = "Garage", BedXMm = 300, Machine = new() { InnerSpeedMmPerS = 88 } },
                Prices = blank.Prices with { PrinterWatts = 95 },
            };
        }
    }

    // Fields one and two groups down, as text.
    private static List<(string Path, string Text)> Leaves(FinDesign design)
    {
        using System.Text.Json.JsonDocument document = System.Text.Json.JsonDocument.Parse(DesignWriter.Write(design));
        List<(string, string)> leaves = [];
        foreach (System.Text.Json.JsonProperty group in document.RootElement.EnumerateObject())
        {
            if (group.Value.ValueKind is not System.Text.Json.JsonValueKind.Object)
                leaves.Add(($"$.{group.Name}", group.Value.GetRawText()));
            else
                leaves.AddRange(group.Value.EnumerateObject().Select(field => ($"$.{group.Name}.{field.Name}", field.Value.GetRawText())));
        }

        return leaves;
    }

    private static string Sources([System.Runtime.CompilerServices.CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
