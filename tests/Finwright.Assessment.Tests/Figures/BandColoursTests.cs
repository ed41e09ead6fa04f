using Finwright.Assessment.Figures;
using OxyPlot;

namespace Finwright.Assessment.Tests.Figures;

public sealed class BandColoursTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(9)]
    public void Of_band_after_band_grows_darker_in_even_steps(int bands)
    {
        double[] lightness = [.. Enumerable.Range(0, bands).Select(band => Lightness(BandColours.Of(band, bands)))];
        double step = (94.0 - 20) / (bands - 1);
        for (int i = 1; i < bands; i++)
            // Colours have 256 steps and those between the nine are mixed as screens mix: within a lightness step of 1.
            Assert.Equal(step, lightness[i - 1] - lightness[i], 1.0);
    }

    [Theory]
    // Viénot, Brettel and Mollon (1999), Color Res. Appl. 24, 243: what is left of red, green and blue for one who lacks the first or second kind of cone (from memory).
    [InlineData(0.11238, 0.88762, 0.00401)]
    [InlineData(0.29275, 0.70725, -0.02234)]
    public void Of_band_after_band_can_be_told_apart_without_telling_red_from_green(double fromRed, double fromGreen, double blueFromRed)
    {
        double[] lightness = [.. Enumerable.Range(0, 9).Select(band =>
        {
            OxyColor colour = BandColours.Of(band, 9);
            double red = Linear(colour.R), green = Linear(colour.G), blue = Linear(colour.B);
            double seen = fromRed * red + fromGreen * green;
            return Star(seen, seen, Math.Clamp(blue + blueFromRed * (red - green), 0, 1));
        })];
        for (int i = 1; i < lightness.Length; i++)
            // Two and more steps of L* are seen when colours touch; 8 leave none in doubt.
            Assert.True(lightness[i - 1] - lightness[i] > 8, $"{i}: {lightness[i - 1]} to {lightness[i]}");
    }

    [Fact]
    public void Of_a_single_band_is_the_palest() => Assert.Equal(BandColours.Of(0, 2), BandColours.Of(0, 1));

    private static double Lightness(OxyColor colour) => Star(Linear(colour.R), Linear(colour.G), Linear(colour.B));

    // IEC 61966-2-1: sRGB to linear light and to luminance; CIE 1976 lightness.
    private static double Star(double red, double green, double blue) => 116 * Math.Cbrt(0.2126 * red + 0.7152 * green + 0.0722 * blue) - 16;

    private static double Linear(byte channel)
    {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }
}
