using Finwright.Water.Finishes;

namespace Finwright.Water.Tests.Finishes;

public sealed class RoughnessHeightsTests
{
    private static readonly WaterProperties Sea = WaterProperties.Sea(15);

    // Numerical reference: laminar layer of a flat plate integrated apart, sea water at 15 °C, chord 100 mm. Heights in µm; tolerance: last digit.
    [Theory]
    [InlineData(5, 0.05, new double[] { 25, 55, 72, 147 })]
    [InlineData(8, 0.05, new double[] { 17, 39, 50, 97 })]
    [InlineData(12, 0.05, new double[] { 13, 28, 37, 69 })]
    [InlineData(15, 0.05, new double[] { 11, 24, 31, 58 })]
    [InlineData(5, 0.20, new double[] { 35, 77, 100, 183 })]
    [InlineData(8, 0.20, new double[] { 25, 54, 70, 126 })]
    [InlineData(10, 0.20, new double[] { 21, 46, 59, 106 })]
    [InlineData(12, 0.20, new double[] { 18, 40, 52, 92 })]
    [InlineData(15, 0.20, new double[] { 15, 34, 44, 77 })]
    public void Tripping_height_of_a_plate_agrees_with_the_reference(double speed, double place, double[] micrometres)
    {
        double[] critical = [25, 120, 200, 600];
        for (int i = 0; i < critical.Length; i++)
            Assert.Equal(micrometres[i], RoughnessHeights.Tripping(Sea, speed, 0.1 * place, critical[i]) * 1e6, 0.55);
    }

    // Numerical reference: k = 100 ν/V (Schlichting, from memory). Tolerance: last digit.
    [Theory]
    [InlineData(5, 24)]
    [InlineData(8, 15)]
    [InlineData(10, 12)]
    [InlineData(12, 10)]
    [InlineData(15, 8)]
    public void Admissible_height_falls_with_speed(double speed, double micrometres) =>
        Assert.Equal(micrometres, RoughnessHeights.Admissible(Sea, speed) * 1e6, 0.51);

    [Fact]
    public void Tripping_far_outside_the_layer_needs_the_stream_alone() =>
        // Where the element stands far above the layer u_k is the stream's own speed: k = Re ν/V.
        Assert.Equal(1e5 * Sea.KinematicViscosity / 10, RoughnessHeights.Tripping(Sea, 10, 1e-4, 1e5), 1e-9);

    [Fact]
    public void Profile_gives_the_known_thicknesses()
    {
        // Blasius: displacement thickness 1.21678, momentum thickness 0.46960 in y √(U/2νx). Howarth (1938); trapezoid rule on the table's step.
        double displacement = 0, momentum = 0;
        const double step = 0.01;
        for (double eta = step / 2; eta < 7; eta += step)
        {
            double u = BlasiusProfile.Speed(eta);
            displacement += (1 - u) * step;
            momentum += u * (1 - u) * step;
        }

        Assert.Equal(1.21678, displacement, 2e-5);
        Assert.Equal(0.46960, momentum, 2e-5);
        Assert.Equal(1, BlasiusProfile.Speed(100));
    }

    [Fact]
    public void Tripping_at_rest_refuses() => Assert.Throws<ArgumentOutOfRangeException>(() => RoughnessHeights.Tripping(Sea, 0, 0.01, 200));
}
