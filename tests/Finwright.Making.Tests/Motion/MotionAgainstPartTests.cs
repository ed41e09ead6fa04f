using Finwright.Making.Motion;

namespace Finwright.Making.Tests.Motion;

public sealed class MotionAgainstPartTests
{
    // Ten layers of a square of 40 mm round the middles of the lines, 4 mm of filament each: with lines of 0.45 mm the part is 40.45 mm wide.
    private static readonly PlannedPart Plan = new()
    {
        Size = new(0.04045, 0.04045, 0.002),
        LineWidth = 0.45e-3,
        LayerHeight = 0.2e-3,
        Layers = 10,
        Plastic = new(40e-3 * MotionText.Filament, 38e-3 * MotionText.Filament, 42e-3 * MotionText.Filament),
    };

    [Fact]
    public void File_of_the_part_fits_its_plan_in_either_direction()
    {
        MotionComparison comparison = MotionAgainstPart.Compare(Tower(10), Plan);
        Assert.Empty(comparison.Findings);
        Assert.Equal(0.04045, comparison.Size.X, 1e-12);
        Assert.Equal(0.002, comparison.Size.Z, 1e-12);
        Assert.Equal(10, comparison.Layers);
        Assert.Equal(40e-3 * MotionText.Filament, comparison.Plastic, 1e-17);
        Assert.Empty(MotionAgainstPart.Compare(Tower(10), Plan with { Size = new(0.0408, 0.0401, 0.0021) }).Findings);
    }

    [Fact]
    public void What_does_not_fit_is_told()
    {
        string[] Codes(MotionSummary file, PlannedPart plan) => [.. MotionAgainstPart.Compare(file, plan).Findings.Select(f => f.Code)];
        Assert.Equal(["size-differs"], Codes(Tower(10), Plan with { Size = new(0.0500, 0.04045, 0.002) }));
        Assert.Equal(["height-differs"], Codes(Tower(10), Plan with { Size = new(0.04045, 0.04045, 0.003) }));
        Assert.Equal(["layers-differ"], Codes(Tower(10), Plan with { Layers = 12 }));
        Assert.Equal(["plastic-differs"], Codes(Tower(10), Plan with { Plastic = Plan.Plastic.Times(1.2) }));
        Assert.Equal(["layer-heights-differ"], Codes(Tower(10), Plan with { LayerHeight = 0.15e-3 }));
        Assert.Contains("50 % of the plan", MotionAgainstPart.Compare(Tower(10), Plan with { Size = new(0.0809, 0.0809, 0.004) }).Findings[0].Message, StringComparison.Ordinal);
        Assert.Equal(["nothing-laid"], Codes(MotionText.Summary("G1 X1 F100\n"), Plan));
    }

    [Fact]
    public void Brim_is_a_note_and_skirt_nothing()
    {
        string brim = string.Concat(Enumerable.Range(1, 10).Select(i => MotionText.Square(0.2, 40 + 0.9 * i, 50 - 0.45 * i)));
        MotionComparison with = MotionAgainstPart.Compare(Tower(10, brim), Plan with { Plastic = Plan.Plastic.Times(2) });
        Assert.Equal("brim", Assert.Single(with.Findings).Code);
        Assert.Empty(MotionAgainstPart.Compare(Tower(10, MotionText.Square(0.2, 60, 40)), Plan).Findings);
    }

    private static MotionSummary Tower(int layers, string before = "") =>
        MotionText.Summary("G21\nM83\n" + before + string.Concat(Enumerable.Range(1, layers).Select(i => MotionText.Square(0.2 * i))));
}
