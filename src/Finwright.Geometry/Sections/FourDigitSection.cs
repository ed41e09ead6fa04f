namespace Finwright.Geometry.Sections;

/// <summary>A NACA four-digit section, symmetric (0010) or cambered (2412).</summary>
/// <remarks>
/// Jacobs, Ward and Pinkerton, 1933, "The characteristics of 78 related airfoil sections from tests in the
/// variable-density wind tunnel", NACA TR-460. The last coefficient is the report's -0.1015, which leaves the
/// trailing edge open by 0.0021 of the thickness each side. Thickness is laid square to the mean line.
/// </remarks>
public sealed class FourDigitSection : Section
{
    private readonly FourDigitMeanLine? _meanLine;

    /// <summary>A section by the numbers in its name.</summary>
    /// <param name="camberPercent">First digit: greatest camber, % of chord, 0 to 9.</param>
    /// <param name="camberTenths">Second digit: place of the greatest camber, tenths of the chord, 1 to 9; 0 without camber.</param>
    /// <param name="thicknessPercent">Last two digits: greatest thickness, % of chord, 1 to 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or camber and its place do not go together.</exception>
    public FourDigitSection(int camberPercent, int camberTenths, int thicknessPercent)
    {
        FourDigitName.Check(camberPercent, camberTenths, thicknessPercent);
        Name = FourDigitName.Of(camberPercent, camberTenths, thicknessPercent);
        ThicknessRatio = thicknessPercent / 100.0;
        if (camberPercent > 0)
            _meanLine = new(camberPercent / 100.0, camberTenths / 10.0);
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    /// <remarks>The polynomial peaks at x = 0.29983 with 1.00029 times this value.</remarks>
    public override double ThicknessRatio { get; }

    /// <inheritdoc/>
    public override double MaximumCamber => _meanLine?.Maximum ?? 0;

    /// <inheritdoc/>
    public override bool ThicknessIsSquareToCamber => _meanLine is not null;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Joins => _meanLine is { } line ? [line.Place] : [];

    /// <inheritdoc/>
    public override double HalfThickness(double x)
    {
        x = Math.Clamp(x, 0, 1);
        return 5 * ThicknessRatio * (0.2969 * Math.Sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - 0.1015 * x))));
    }

    /// <inheritdoc/>
    public override double Camber(double x) => _meanLine?.Camber(x) ?? 0;

    /// <inheritdoc/>
    public override double CamberSlope(double x) => _meanLine?.Slope(x) ?? 0;
}
