namespace Finwright.Geometry.Sections;

/// <summary>A NACA 16-series section, symmetric (16-009) or with the uniform-load mean line (16-209).</summary>
/// <remarks>
/// Thickness: the modified four-digit form with nose index 4 and the greatest thickness at half chord (Ladson and Brooks,
/// 1975, NASA TM X-3284). Mean line a = 1.0: Abbott, von Doenhoff and Stivers, 1945, "Summary of airfoil data", NACA TR-824.
/// That line is vertical at both ends. The report takes the slope at 0.5 % chord for the nose; so that the surface stays
/// smooth, <see cref="CamberSlope"/> reaches that slope gradually, with ε = 1/198 added to x and 1 - x. At 5 % chord this moves
/// a surface point of a 16-209 by less than 0.00003 chords.
/// </remarks>
public sealed class SixteenSeriesSection : Section
{
    // (1 + ε) / ε = 0.995 / 0.005: at the ends the softened slope is the exact slope at 0.5 % chord.
    private const double Softening = 1.0 / 198;

    private static ModifiedFourDigitForm Form { get; } = new(noseIndex: 4, thickestTenths: 5);

    private readonly double _load;

    /// <summary>A section by the numbers in its name.</summary>
    /// <param name="designLiftTenths">First digit behind the dash: design lift coefficient in tenths, 0 to 9.</param>
    /// <param name="thicknessPercent">Last two digits: greatest thickness, % of chord, 1 to 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public SixteenSeriesSection(int designLiftTenths, int thicknessPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(designLiftTenths);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(designLiftTenths, 9);
        ArgumentOutOfRangeException.ThrowIfLessThan(thicknessPercent, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(thicknessPercent, FourDigitName.ThickestPercent);
        Name = $"naca-16-{designLiftTenths}{thicknessPercent:00}";
        ThicknessRatio = thicknessPercent / 100.0;
        _load = designLiftTenths / 10.0 / (4 * Math.PI);
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override double ThicknessRatio { get; }

    /// <inheritdoc/>
    public override double MaximumCamber => _load * Math.Log(2);

    /// <inheritdoc/>
    public override bool ThicknessIsSquareToCamber => _load > 0;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Joins => [0.5];

    /// <inheritdoc/>
    public override double HalfThickness(double x) => ThicknessRatio * Form.At(x);

    /// <inheritdoc/>
    public override double Camber(double x)
    {
        x = Math.Clamp(x, 0, 1);
        return -_load * (XLogX(x) + XLogX(1 - x));
    }

    /// <inheritdoc/>
    /// <remarks>Softened at both ends, see the remarks of the class.</remarks>
    public override double CamberSlope(double x)
    {
        x = Math.Clamp(x, 0, 1);
        return _load * Math.Log((1 - x + Softening) / (x + Softening));
    }

    private static double XLogX(double x) => x > 0 ? x * Math.Log(x) : 0;
}
