namespace Finwright.Geometry.Sections;

/// <summary>A section drawn thicker or thinner, and with more or less camber, than its name says.</summary>
/// <remarks>
/// Ordinates are multiplied. A section without camber that is asked for some is given the four-digit mean line with its
/// greatest camber at <see cref="AddedCamberPlace"/> of the chord (NACA TR-460), the thickness laid square to it.
/// </remarks>
public sealed class ScaledSection : Section
{
    /// <summary>Where a mean line given to a symmetric section is highest, chords from the nose: the place of the well measured 2412 and 4412.</summary>
    public const double AddedCamberPlace = 0.4;

    /// <summary>Camber below which a section counts as symmetric, chords: stretching it would only enlarge errors of the points it came from.</summary>
    public const double LeastCamberToScale = 0.0005;

    private readonly Section _section;
    private readonly double _thicknessFactor, _camberFactor;
    private readonly FourDigitMeanLine? _added;

    /// <summary>Scales a section.</summary>
    /// <param name="section">The section to scale.</param>
    /// <param name="thicknessRatio">Wanted greatest thickness over chord, above 0; null for the section's own.</param>
    /// <param name="maximumCamber">Wanted greatest camber over chord, signed; null for the section's own.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not above 0, or a number is not finite.</exception>
    public ScaledSection(Section section, double? thicknessRatio, double? maximumCamber)
    {
        ArgumentNullException.ThrowIfNull(section);
        if (thicknessRatio is double t && !(t > 0 && double.IsFinite(t)))
            throw new ArgumentOutOfRangeException(nameof(thicknessRatio), t, "The thickness ratio must be above 0.");
        if (maximumCamber is double m && !double.IsFinite(m))
            throw new ArgumentOutOfRangeException(nameof(maximumCamber), m, "The camber must be finite.");
        _section = section;
        ThicknessRatio = thicknessRatio ?? section.ThicknessRatio;
        MaximumCamber = maximumCamber ?? section.MaximumCamber;
        _thicknessFactor = thicknessRatio is null ? 1 : ThicknessRatio / section.ThicknessRatio;
        if (maximumCamber is null)
            _camberFactor = 1;
        else if (Math.Abs(section.MaximumCamber) >= LeastCamberToScale)
            _camberFactor = MaximumCamber / section.MaximumCamber;
        else if (MaximumCamber is < 0 or > 0)
            _added = new(MaximumCamber, AddedCamberPlace);
        Joins = _added is null ? section.Joins : [.. section.Joins.Append(AddedCamberPlace).Distinct().Order()];
    }

    /// <inheritdoc/>
    public override string Name => _section.Name;

    /// <inheritdoc/>
    public override double ThicknessRatio { get; }

    /// <inheritdoc/>
    public override double MaximumCamber { get; }

    /// <inheritdoc/>
    public override bool ThicknessIsSquareToCamber => _added is not null || _section.ThicknessIsSquareToCamber;

    /// <inheritdoc/>
    public override double SquareShare => _added is not null ? 1 : _section.SquareShare;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Joins { get; }

    /// <inheritdoc/>
    public override double HalfThickness(double x) => _thicknessFactor * _section.HalfThickness(x);

    /// <inheritdoc/>
    public override double Camber(double x) => _added?.Camber(x) ?? _camberFactor * _section.Camber(x);

    /// <inheritdoc/>
    public override double CamberSlope(double x) => _added?.Slope(x) ?? _camberFactor * _section.CamberSlope(x);
}
