using Finwright.Water.Finishes;

namespace Finwright.Water.Tests.Finishes;

public sealed class FreeStreamTurbulenceTests
{
    // Mack (1977), AGARD CP-224, n = -8.43 - 2.4 ln Tu (from memory), worked out apart. Tolerance: last digit.
    [Theory]
    [InlineData(0.0005, 9.8, 0.051)]
    [InlineData(0.001, 8.15, 0.0051)]
    [InlineData(0.002, 6.5, 0.051)]
    [InlineData(0.005, 4.3, 0.051)]
    [InlineData(0.01, 2.6, 0.051)]
    public void CriticalAmplification_agrees_with_the_relation(double intensity, double n, double tolerance) =>
        Assert.Equal(n, FreeStreamTurbulence.CriticalAmplification(intensity), tolerance);

    [Theory]
    [InlineData(0.0001)]
    [InlineData(0.05)]
    [InlineData(double.NaN)]
    public void CriticalAmplification_outside_the_data_refuses(double intensity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FreeStreamTurbulence.CriticalAmplification(intensity));
}
