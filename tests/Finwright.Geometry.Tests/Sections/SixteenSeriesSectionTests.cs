using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

public sealed class SixteenSeriesSectionTests
{
    [Fact]
    public void HalfThickness_of_16_009_is_the_printed_one()
    {
        // Abbott, von Doenhoff and Stivers, 1945, NACA TR-824, appendix I, thickness form 16-009; from memory.
        // Tolerance: one in the last printed digit.
        double[] stations = [1.25, 2.5, 5, 7.5, 10, 15, 20, 30, 40, 50, 60, 70, 80, 90, 95, 100];
        double[] printed = [0.969, 1.354, 1.882, 2.274, 2.593, 3.101, 3.498, 4.063, 4.391, 4.500, 4.376, 3.952, 3.149, 1.888, 1.061, 0.090];
        SixteenSeriesSection section = new(0, 9);
        for (int i = 0; i < stations.Length; i++)
            Assert.Equal(printed[i], 100 * section.HalfThickness(stations[i] / 100), 0.001);

        // Same table: nose radius 0.396 % of chord.
        Assert.Equal(0.396, 100 * SectionGeometry.Properties(section).LeadingEdgeRadius, 0.001);
    }

    [Fact]
    public void Camber_of_the_uniform_load_line_is_the_printed_one()
    {
        // NACA TR-824, appendix I, mean line a = 1.0 at design lift 1.0: ordinates in % of chord; from memory.
        // Tolerance: one in the last printed digit.
        SixteenSeriesSection section = new(9, 10);
        double[] stations = [5, 10, 20, 30, 40, 50], printed = [1.580, 2.587, 3.982, 4.861, 5.356, 5.516];
        for (int i = 0; i < stations.Length; i++)
        {
            Assert.Equal(printed[i], 100 / 0.9 * section.Camber(stations[i] / 100), 0.001);
            Assert.Equal(section.Camber(stations[i] / 100), section.Camber(1 - stations[i] / 100), 1e-16);
        }
    }

    [Fact]
    public void CamberSlope_at_the_nose_is_the_slope_at_half_a_percent_and_near_the_true_one_inside()
    {
        // NACA TR-824: the nose radius is laid along the slope of the mean line at 0.5 % chord.
        SixteenSeriesSection section = new(2, 9);
        double True(double x) => 0.2 / (4 * Math.PI) * Math.Log((1 - x) / x);
        Assert.Equal(True(0.005), section.CamberSlope(0), 1e-15);
        Assert.Equal(-True(0.005), section.CamberSlope(1), 1e-15);
        Assert.Equal(True(0.05), section.CamberSlope(0.05), 0.0016);
        Assert.Equal(0, section.CamberSlope(0.5), 1e-16);
    }
}
