using Finwright.Geometry.Features;

namespace Finwright.Geometry.Tests.Features;

public sealed class MetricThreadTests
{
    // BS EN ISO 4032:2001, table 1: across flats max and min, height max and min; ISO 273: fine, medium, coarse; mm.
    [Theory]
    [InlineData("M4", 0.7, 7.00, 6.78, 3.2, 2.9, 4.3, 4.5, 4.8)]
    [InlineData("M5", 0.8, 8.00, 7.78, 4.7, 4.4, 5.3, 5.5, 5.8)]
    [InlineData("M6", 1.0, 10.00, 9.78, 5.2, 4.9, 6.4, 6.6, 7.0)]
    public void Thread_has_the_standards_sizes(
        string name, double pitch, double flats, double flatsMin, double height, double heightMin, double fine, double medium, double coarse)
    {
        MetricThread thread = MetricThread.All.Single(t => t.Name == name);
        double[] expected = [pitch, flats, flatsMin, height, heightMin, fine, medium, coarse];
        double[] actual =
        [
            thread.Pitch, thread.HexNut.AcrossFlats, thread.HexNut.AcrossFlatsMinimum, thread.HexNut.Height, thread.HexNut.HeightMinimum,
            thread.FineClearance, thread.MediumClearance, thread.CoarseClearance,
        ];
        for (int i = 0; i < expected.Length; i++)
            Assert.Equal(expected[i] * 1e-3, actual[i], 9);
    }

    [Fact]
    public void Sizes_grow_with_the_thread()
    {
        for (int i = 1; i < MetricThread.All.Count; i++)
        {
            (MetricThread thin, MetricThread thick) = (MetricThread.All[i - 1], MetricThread.All[i]);
            Assert.True(thin.Diameter < thick.Diameter && thin.Pitch < thick.Pitch);
            Assert.True(thin.HexNut.AcrossFlats < thick.HexNut.AcrossFlats && thin.SocketDiameter < thick.SocketDiameter);
            Assert.True(thin.ThinSquareNut.Height < thick.ThinSquareNut.Height && thin.SquareNut.Height > thin.ThinSquareNut.Height);
        }
    }

    [Fact]
    public void Socket_clears_the_corners_of_the_nut_it_turns()
    {
        foreach (MetricThread thread in MetricThread.All)
            Assert.True(thread.SocketDiameter > thread.HexNut.AcrossFlats * 2 / Math.Sqrt(3));
    }
}
