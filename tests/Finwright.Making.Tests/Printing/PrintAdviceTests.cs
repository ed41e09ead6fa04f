using Finwright.Making.Printing;
using Finwright.Making.Tests.Layers;

namespace Finwright.Making.Tests.Printing;

public sealed class PrintAdviceTests
{
    [Theory]
    [InlineData(20, 20, 60, BedGrip.None, 3)]
    [InlineData(20, 20, 140, BedGrip.Brim, 7)]
    [InlineData(10, 10, 20, BedGrip.Brim, 2)]
    [InlineData(180, 60, 10, BedGrip.Discs, 0.0962)]
    public void Of_box_is_held_by_what_its_foot_needs(double x, double y, double z, BedGrip grip, double slenderness)
    {
        // Height over √(foot): plain arithmetic. A foot of 1 cm² is small however low the part is.
        PrintAdvice advice = PrintAdvice.Of(TestParts.Slice(TestParts.Box(x * 1e-3, y * 1e-3, z * 1e-3)));
        Assert.Equal(grip, advice.Grip);
        Assert.Equal(slenderness, advice.Slenderness, 1e-3);
        Assert.Equal(grip == BedGrip.None, advice.GripWidth == 0);
        Assert.Contains(advice.Words, word => word.Contains("40 °C", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(20, 140, "A brim of 8 mm all round: it is 7.0 times as high as its foot of 4.0 cm² is wide", "Let the bed cool")]
    [InlineData(180, 10, "Discs of 15 mm, one layer thick, under the ends: a foot of 180 mm lifts there first", "Leave it on the bed")]
    public void Of_box_says_what_to_do_with_its_numbers(double x, double z, string grip, string cooling)
    {
        IReadOnlyList<string> words = PrintAdvice.Of(TestParts.Slice(TestParts.Box(x * 1e-3, 20e-3, z * 1e-3))).Words;
        Assert.Equal(3, words.Count);
        Assert.StartsWith(grip, words[0], StringComparison.Ordinal);
        Assert.StartsWith(cooling, words[1], StringComparison.Ordinal);
        Assert.StartsWith("Dry the filament", words[2], StringComparison.Ordinal);
    }

    [Fact]
    public void FilamentUse_is_the_volume_in_another_shape()
    {
        // 100 cm³ of 1.27 g/cm³ in a filament of 1.75 mm: 127 g, 100e3 mm³ / 2.40528 mm² = 41.575 m. Plain arithmetic.
        FilamentUse use = FilamentUse.Of(100e-6, 1270, 1, 25);
        Assert.Equal(0.127, use.Mass, 1e-12);
        Assert.Equal(41.575, use.Length, 1e-3);
        Assert.Equal(0.127, use.SpoolShare, 1e-12);
        Assert.Equal(3.175, use.Cost, 1e-12);
        Assert.Equal(-0.027, use.Rest(0.1), 1e-12);
        Assert.Equal(0.254, FilamentUse.Of(100e-6, 1270, 0.5, 25).SpoolShare, 1e-12);
    }

    [Fact]
    public void FilamentUse_refuses_what_means_nothing()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FilamentUse.Of(-1e-6, 1270, 1, 25));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilamentUse.Of(1e-6, 0, 1, 25));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilamentUse.Of(1e-6, 1270, 0, 25));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilamentUse.Of(1e-6, 1270, 1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilamentUse.Of(1e-6, 1270, 1, 25, diameter: 0));
    }
}
