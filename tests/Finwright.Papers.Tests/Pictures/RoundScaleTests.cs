using Finwright.Papers.Pictures;

namespace Finwright.Papers.Tests.Pictures;

public sealed class RoundScaleTests
{
    [Theory]
    [InlineData(0.37, "1:3")]
    [InlineData(0.4, "1:2.5")]
    [InlineData(0.999, "1:1.5")]
    [InlineData(1, "1:1")]
    [InlineData(7.9, "6:1")]
    [InlineData(0.0101, "1:100")]
    public void The_largest_round_scale_that_fits_is_taken(double most, string ratio)
    {
        RoundScale scale = RoundScale.Largest(most);
        Assert.True(scale.Factor <= most);
        Assert.Equal(ratio, PictureFins.Speaking(PaperLanguage.English).Ratio(scale.Factor));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void No_room_is_refused(double most) => Assert.Throws<ArgumentOutOfRangeException>(() => RoundScale.Largest(most));
}
