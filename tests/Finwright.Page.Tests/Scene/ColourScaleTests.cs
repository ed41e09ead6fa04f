using System.Globalization;
using Finwright.Page.Scene;

namespace Finwright.Page.Tests.Scene;

public sealed class ColourScaleTests
{
    [Fact]
    public void Bands_are_round_and_hold_all_values()
    {
        ColourScale scale = ColourScale.Rising(20.3, 34.9);
        Assert.Equal(20, scale.First);
        Assert.Equal(2, scale.Step);
        Assert.True(scale.Last >= 34.9);
        Assert.InRange(scale.Colours.Count, 4, 9);
        Assert.Equal(0, scale.BandOf(20.3));
        Assert.Equal(7, scale.BandOf(34.9));
        Assert.Equal(0, scale.BandOf(-100));
        Assert.Equal(scale.Colours.Count - 1, scale.BandOf(100));
    }

    [Theory]
    [InlineData(0, 1e-7)]
    [InlineData(0, 7)]
    [InlineData(-273, 1e6)]
    [InlineData(5, 5)]
    [InlineData(0, 0)]
    public void Any_range_has_a_scale(double least, double greatest)
    {
        ColourScale scale = ColourScale.Rising(least, greatest);
        Assert.True(scale.Step > 0);
        Assert.True(scale.First <= least + 1e-9);
        Assert.True(scale.Last >= greatest - 1e-9);
        Assert.InRange(scale.Colours.Count, 1, 10);
        Assert.InRange(ColourScale.AroundZero(least, greatest).Colours.Count, 1, 10);
    }

    [Fact]
    public void Rising_values_fall_evenly_in_lightness()
    {
        double[] lightness = [.. ColourScale.Rising(0, 8).Colours.Select(Lightness)];
        double step = (lightness[0] - lightness[^1]) / (lightness.Length - 1);
        for (int i = 1; i < lightness.Length; i++)
            Assert.InRange(lightness[i - 1] - lightness[i], 0.7 * step, 1.3 * step);
    }

    [Fact]
    public void Around_zero_both_sides_darken_and_zero_is_a_border()
    {
        ColourScale scale = ColourScale.AroundZero(-78, 41);
        Assert.Contains(0.0, scale.Borders);
        int below = scale.Borders.ToList().IndexOf(0);
        double[] lightness = [.. scale.Colours.Select(Lightness)];
        for (int i = 1; i < below; i++)
            Assert.True(lightness[i] > lightness[i - 1] + 3);
        for (int i = below + 1; i < lightness.Length; i++)
            Assert.True(lightness[i] < lightness[i - 1] - 3);
        // Blue against brown: those who tell red from green badly tell these by blue.
        Assert.True(Blue(scale.Colours[0]) > Red(scale.Colours[0]) + 40);
        Assert.True(Red(scale.Colours[^1]) > Blue(scale.Colours[^1]) + 40);
    }

    private static int Red(string colour) => int.Parse(colour[1..3], NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    private static int Blue(string colour) => int.Parse(colour[5..7], NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    // CIE 15 (2004): L* from the luminance of sRGB (IEC 61966-2-1).
    private static double Lightness(string colour)
    {
        double Linear(int from)
        {
            double value = int.Parse(colour[from..(from + 2)], NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        double y = 0.2126 * Linear(1) + 0.7152 * Linear(3) + 0.0722 * Linear(5);
        return 116 * Math.Cbrt(y) - 16;
    }
}
