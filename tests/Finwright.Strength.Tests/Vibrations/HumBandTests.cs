using Finwright.Strength.Vibrations;

namespace Finwright.Strength.Tests.Vibrations;

public sealed class HumBandTests
{
    [Fact]
    public void Of_speeds_and_edges_reaches_from_the_slowest_at_the_thickest_to_the_fastest_at_the_thinnest()
    {
        // f = St V/h: 0.18 · 5/2 mm = 450 Hz, 0.26 · 15/1 mm = 3900 Hz.
        HumBand band = HumBand.Of(5, 15, 0.001, 0.002);
        Assert.Equal(450, band.Low, 9);
        Assert.Equal(3900, band.High, 9);
        Assert.Equal([1, 2], band.Within([24, 451, 3899, 3901]));
        Assert.Empty(band.Within([]));
    }

    [Fact]
    public void Speeds_of_a_frequency_are_the_ends_at_which_its_band_meets_it()
    {
        (double slowest, double fastest) = HumBand.Speeds(168, 0.002);
        Assert.Equal(168, HumBand.Of(slowest, slowest, 0.002, 0.002).High, 9);
        Assert.Equal(168, HumBand.Of(fastest, fastest, 0.002, 0.002).Low, 9);
    }

    [Fact]
    public void Of_impossible_ranges_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HumBand.Of(0, 5, 0.001, 0.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => HumBand.Of(5, 4, 0.001, 0.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => HumBand.Of(5, 6, 0, 0.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => HumBand.Of(5, 6, 0.002, 0.001));
    }
}
