using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Making.Files;
using Finwright.Making.Pores;
using Finwright.Papers.Tests.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Words;

public sealed class NamesTests
{
    private static readonly NameWords German = Tongues.German.Words.Names;

    [Theory]
    [InlineData("fin", "Finne")]
    [InlineData("blade", "Blatt")]
    [InlineData("blade 1 of 2", "Blatt 1 von 2")]
    [InlineData("base", "Basis")]
    [InlineData("gauge", "Lehre")]
    [InlineData("bracket for the camera", "bracket for the camera")]
    public void Parts(string name, string expected) => Assert.Equal(expected, German.Part(name));

    [Fact]
    public void Every_resin_that_comes_along_has_a_German_name_that_tells_its_own_one_too()
    {
        Assert.All(ResinLibrary.All, resin => Assert.EndsWith($"({resin.Name})", German.Resin(resin.Name), StringComparison.Ordinal));
        Assert.All(ResinLibrary.All, resin => Assert.Equal(resin.Name, Tongues.English.Words.Names.Resin(resin.Name)));
        Assert.NotEqual(new Pour().Resin, German.Resin(new Pour().Resin), StringComparer.Ordinal);
        Assert.Equal("the harbour shop's blue tin", German.Resin("the harbour shop's blue tin"));
    }

    [Theory]
    [InlineData("blade 2 front", "Blatt 2 vorn")]
    [InlineData("fin rear", "Finne hinten")]
    [InlineData("base front", "Basis vorn")]
    [InlineData("blade further 1", "Blatt zusätzlich 1")]
    [InlineData("feed", "Zulauf")]
    [InlineData("vent 3", "Entlüftung 3")]
    [InlineData("feed blade 1 front", "Zulauf Blatt 1 vorn")]
    [InlineData("my port", "my port")]
    public void Ports(string name, string expected) => Assert.Equal(expected, German.Port(name));

    [Theory]
    [InlineData("tip up", "Spitze nach oben")]
    [InlineData("trailing edge up, root tilted down 30°", "Hinterkante nach oben, Wurzel um 30° nach unten geneigt")]
    [InlineData("root up, leading edge tilted down 12° and port side tilted down 45°", "Wurzel nach oben, Vorderkante um 12° nach unten geneigt und Backbordseite um 45° nach unten geneigt")]
    [InlineData("+x side up, -z side tilted down 30°", "Seite +x nach oben, Seite −z um 30° nach unten geneigt")]
    public void Attitudes(string name, string expected) => Assert.Equal(expected, German.Attitude(name));

    [Fact]
    public void Every_attitude_that_a_search_tries_is_said_in_German_with_the_same_angles()
    {
        IReadOnlyList<PourAttitude> all = PourAttitude.Spread(Placement.Identity);
        Assert.InRange(all.Count, 150, 300);
        foreach (PourAttitude attitude in all)
        {
            string german = German.Attitude(attitude.Name);
            EnglishLeft.None(german);
            Assert.Equal(Digits(attitude.Name), Digits(german));
        }

        Assert.Equal(all.Select(each => each.Name).Distinct(StringComparer.Ordinal).Count(), all.Select(each => German.Attitude(each.Name)).Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData("front box bolt: nut pocket", "vordere Finnenschraube: Muttertasche")]
    [InlineData("clamp rod 2: socket pocket", "Spannstange 2: Tasche für den Steckschlüssel")]
    [InlineData("carbon rod: bore", "Kohlestab: Bohrung")]
    [InlineData("cross pin: hole", "Querstift: Loch")]
    [InlineData("tracker: lid", "tracker: Deckel")]
    [InlineData("rear box bolt: nut pocket, way in", "hintere Finnenschraube: Muttertasche, Einführung")]
    public void Features(string name, string expected) => Assert.Equal(expected, German.Feature(name));

    [Fact]
    public void Sizes_carry_the_readers_decimal_mark_and_inches_behind_what_is_sold_by_the_millimetre()
    {
        HardwareItem rod = new(HardwareKind.CarbonRod, "6 mm carbon rod", 0.2, 1, "carbon rod 2"), strip = new(HardwareKind.StripSheet, "0.4 mm sheet, 18.5 mm wide", 0.3, 1, "slot in the trailing edge");
        HardwareItem nut = new(HardwareKind.Nut, "M6 cross nut, 10 x 12.5 mm", 0, 2, "box bolts, in the base"), washer = new(HardwareKind.Nut, "M6 hexagon nut (ISO 4032) and washer", 0, 1, "clamp rod, at the top edge of the base");
        Assert.Equal("Kohlestab 6 mm", German.Size(rod, Tongues.German));
        Assert.Equal("Streifen, 0,4 mm dick, 18,5 mm breit", German.Size(strip, Tongues.German));
        Assert.Equal("Quermutter M6, 10 × 12,5 mm", German.Size(nut, Tongues.GermanInch));
        Assert.Equal("Sechskantmutter M6 (ISO 4032) mit Scheibe", German.Size(washer, Tongues.German));
        Assert.Equal("Schlitz in der Hinterkante", German.Place(strip));
        Assert.Equal("Kohlestab 2", German.Place(rod));
        Assert.Equal("Finnenschrauben, in der Basis", German.Place(nut));
        Assert.Equal("Spannstange, an der Oberkante der Basis", German.Place(washer));
        NameWords english = Tongues.English.Words.Names;
        Assert.Equal("0.4 mm sheet, 18.5 mm wide", english.Size(strip, Tongues.English));
        Assert.Equal("6 mm (0.236 in) carbon rod", english.Size(rod, Tongues.EnglishInch));
        Assert.Equal("0.4 mm (0.016 in) sheet, 18.5 mm (0.728 in) wide", english.Size(strip, Tongues.EnglishInch));
        Assert.Equal("M6 cross nut, 10 x 12,5 mm", english.Size(nut, Tongues.Of(PaperLanguage.English, PaperUnits.Metric, DecimalMark.Comma)));
    }

    [Fact]
    public void Every_kind_of_hardware_and_every_feature_of_a_design_is_named_in_German()
    {
        HashSet<HardwareKind> kinds = [];
        HashSet<FeatureKind> features = [];
        foreach (AssessmentResult result in Fins())
        {
            Assert.NotNull(result.Solids);
            foreach (HardwareItem item in result.Hardware)
            {
                kinds.Add(item.Kind);
                EnglishLeft.None(German.Size(item, Tongues.German));
                EnglishLeft.None(German.Place(item));
                Assert.Equal(Digits(item.Size), Digits(German.Size(item, Tongues.German)));
                Assert.False(string.Equals(item.Size, German.Size(item, Tongues.German), StringComparison.Ordinal), item.Size);
            }

            foreach (PlacedFeature feature in result.Solids.Features)
            {
                features.Add(feature.Kind);
                EnglishLeft.None(German.Feature(feature.Name));
            }

            foreach (string part in result.Parts?.Parts.Select(part => part.Name) ?? [])
                EnglishLeft.None(German.Part(part));
            foreach (string port in result.Parts?.Ports.Select(port => port.Name) ?? [])
                EnglishLeft.None(German.Port(port));
        }

        Assert.Equal(Enum.GetValues<HardwareKind>(), kinds.Order());
        Assert.Equal(Enum.GetValues<FeatureKind>(), features.Order());
    }

    [Theory]
    [InlineData("sandbar")]
    [InlineData("eelgrass")]
    [InlineData("fairway")]
    public void Parts_ports_and_attitudes_of_the_demos_are_named_in_German(string demo)
    {
        AssessmentResult result = demo switch { "sandbar" => MadeFins.Sandbar, "eelgrass" => PouredFins.Eelgrass, _ => MadeFins.Fairway };
        Assert.NotEmpty(result.Poured!.Parts);
        Assert.All(result.Poured.Parts, part =>
        {
            EnglishLeft.None(German.Part(part.Name));
            EnglishLeft.None(German.Attitude(part.Held(part.Attitude)));
            Assert.All(part.Ports, port => EnglishLeft.None(German.Port(port.Name)));
        });
        Assert.All(result.Printed!.Plates.SelectMany(plate => plate.Stops).SelectMany(stop => stop.Items), item => EnglishLeft.None(German.Feature(item.Name)));
    }

    // Each with what the others cannot have.
    private static IEnumerable<AssessmentResult> Fins()
    {
        yield return Worked(design => design with
        {
            Shape = design.Shape with { Strip = new() { ToPercent = 70 }, TrailingEdgeMm = 2 },
            Hardware = design.Hardware with { Cavities = [new() { Name = "Peilsender", Kind = CavityKind.Cylinder, AtDepthMm = 150, AtChordPercent = 62, LengthMm = 14, RoomMm = 4 }] },
            Parts = design.Parts with { Cuts = [new() { AtDepthMm = 250 }] },
        });
        yield return Worked(design => design with
        {
            Base = design.Base with { Box = BoxKind.LongSlot, Fixing = Fixing.BaseOnly, Slot = new() { LengthMm = 230 } },
            Hardware = new() { Cavities = [new() { AtDepthMm = 120, AtChordPercent = 40, LengthMm = 20, HeightMm = 12, RoomMm = 6 }] },
        });
        yield return Worked(design => design with
        {
            Base = design.Base with { Fixing = Fixing.ClampRods },
            Hardware = new() { BoxBolts = new() { Nut = NutKind.Square }, ClampRods = [new() { FromFrontMm = 50 }, new() { FromFrontMm = 95, Nut = NutKind.Cross }] },
        });
        yield return Worked(design => design with
        {
            Base = design.Base with { Fixing = Fixing.BaseOnly, Printed = BasePrinting.AsOne },
            Hardware = new() { BoxBolts = new() { Nut = NutKind.Cross } },
            Pour = design.Pour with { Ports = design.Pour.Ports with { Further = [new() { AtDepthMm = 100, AtChordPercent = 40 }] } },
        });
    }

    private static AssessmentResult Worked(Func<FinDesign, FinDesign> change) => MadeFins.Worked("fairway-upright", AssessmentDepth.Parts, change);

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));
}
