namespace Finwright.Geometry.Sections;

/// <summary>
/// A NACA four-digit section with its nose radius and place of greatest thickness chosen by two more digits, for example
/// 0010-35 or 2410-35.
/// </summary>
/// <remarks>
/// Stack and von Doenhoff, 1934, NACA TR-492, over the mean lines of NACA TR-460 (Jacobs, Ward and Pinkerton, 1933).
/// Nose index 0 gives a sharp nose.
/// </remarks>
public sealed class ModifiedFourDigitSection : Section
{
    private readonly FourDigitMeanLine? _meanLine;
    private readonly ModifiedFourDigitForm _form;

    /// <summary>A section by the numbers in its name.</summary>
    /// <param name="camberPercent">First digit: greatest camber, % of chord, 0 to 9.</param>
    /// <param name="camberTenths">Second digit: place of the greatest camber, tenths of the chord, 1 to 9; 0 without camber.</param>
    /// <param name="thicknessPercent">Next two digits: greatest thickness, % of chord, 1 to 40.</param>
    /// <param name="noseIndex">First digit behind the dash: nose radius index, 0 to 9; 6 is the plain four-digit nose.</param>
    /// <param name="thickestTenths">Second digit behind the dash: place of the greatest thickness, tenths of the chord, 2 to 6.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or camber and its place do not go together.</exception>
    public ModifiedFourDigitSection(int camberPercent, int camberTenths, int thicknessPercent, int noseIndex, int thickestTenths)
    {
        FourDigitName.Check(camberPercent, camberTenths, thicknessPercent);
        _form = new(noseIndex, thickestTenths);
        Name = $"{FourDigitName.Of(camberPercent, camberTenths, thicknessPercent)}-{noseIndex}{thickestTenths}";
        ThicknessRatio = thicknessPercent / 100.0;
        if (camberPercent > 0)
            _meanLine = new(camberPercent / 100.0, camberTenths / 10.0);
        Joins = camberPercent == 0 || camberTenths == thickestTenths
            ? [thickestTenths / 10.0]
            : [Math.Min(camberTenths, thickestTenths) / 10.0, Math.Max(camberTenths, thickestTenths) / 10.0];
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override double ThicknessRatio { get; }

    /// <inheritdoc/>
    public override double MaximumCamber => _meanLine?.Maximum ?? 0;

    /// <inheritdoc/>
    public override bool ThicknessIsSquareToCamber => _meanLine is not null;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Joins { get; }

    /// <inheritdoc/>
    public override double HalfThickness(double x) => ThicknessRatio * _form.At(x);

    /// <inheritdoc/>
    public override double Camber(double x) => _meanLine?.Camber(x) ?? 0;

    /// <inheritdoc/>
    public override double CamberSlope(double x) => _meanLine?.Slope(x) ?? 0;
}
