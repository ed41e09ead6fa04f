using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

public sealed class FourDigitSectionTests
{
    // Abbott, von Doenhoff and Stivers, 1945, NACA TR-824, appendix I, thickness forms 0006, 0009 and 0012; from memory.
    // Tolerance: one in the last printed digit.
    private static double[] Stations { get; } = [1.25, 2.5, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 95, 100];

    private static Dictionary<int, double[]> Printed { get; } = new()
    {
        [6] = [0.947, 1.307, 1.777, 2.100, 2.341, 2.673, 2.869, 2.971, 3.001, 2.902, 2.647, 2.282, 1.832, 1.312, 0.724, 0.403, 0.063],
        [9] = [1.420, 1.961, 2.666, 3.150, 3.512, 4.009, 4.303, 4.456, 4.501, 4.352, 3.971, 3.423, 2.748, 1.967, 1.086, 0.605, 0.095],
        [12] = [1.894, 2.615, 3.555, 4.200, 4.683, 5.345, 5.737, 5.941, 6.002, 5.803, 5.294, 4.563, 3.664, 2.623, 1.448, 0.807, 0.126],
    };

    [Theory]
    [InlineData(6)]
    [InlineData(9)]
    [InlineData(12)]
    public void HalfThickness_of_the_symmetric_sections_is_the_printed_one(int thickness)
    {
        FourDigitSection section = new(0, 0, thickness);
        for (int i = 0; i < Stations.Length; i++)
            Assert.Equal(Printed[thickness][i], 100 * section.HalfThickness(Stations[i] / 100), 0.001);
    }

    [Theory]
    [InlineData(2, 4)]
    [InlineData(4, 4)]
    [InlineData(9, 1)]
    public void Camber_peaks_level_at_its_place_and_ends_on_the_chord(int camber, int place)
    {
        FourDigitSection section = new(camber, place, 12);
        double p = place / 10.0;
        Assert.Equal(camber / 100.0, section.Camber(p), 15);
        Assert.Equal(0, section.CamberSlope(p), 15);
        Assert.Equal(0, section.Camber(0), 15);
        Assert.Equal(0, section.Camber(1), 15);

        // NACA TR-460: slopes at the ends are 2m/p and -2m/(1-p).
        Assert.Equal(2 * camber / 100.0 / p, section.CamberSlope(0), 14);
        Assert.Equal(-2 * camber / 100.0 / (1 - p), section.CamberSlope(1), 14);
    }

    [Theory]
    [InlineData(-1, 4, 12)]
    [InlineData(10, 4, 12)]
    [InlineData(2, 0, 12)]
    [InlineData(0, 4, 12)]
    [InlineData(2, 4, 0)]
    [InlineData(2, 4, 41)]
    public void Constructor_refuses_digits_that_make_no_section(int camber, int place, int thickness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new FourDigitSection(camber, place, thickness));
}
