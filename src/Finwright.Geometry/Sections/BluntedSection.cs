namespace Finwright.Geometry.Sections;

/// <summary>A section with its trailing edge brought to a given thickness by a smooth change behind the greatest thickness.</summary>
/// <remarks>
/// With g the share of the way that the half thickness h has come down from its peak to the trailing edge, the new half
/// thickness is h + Δ g^p, Δ being the wanted change at the edge. With p = 3/2 the change begins with zero slope and
/// curvature, so nose and greatest thickness keep their shape to the second derivative. For edges beyond two thirds of the
/// greatest thickness p falls toward 1, which keeps the thickness falling all the way at the price of a small curvature step.
/// Our own construction; no source.
/// </remarks>
public sealed class BluntedSection : Section
{
    // Behind the peak g grows with the square of the distance: a power of 3/2 leaves a cubic start.
    private const double SmoothPower = 1.5;

    private readonly Section _section;
    private readonly double _peak, _drop, _change, _power;

    /// <summary>Gives a section a trailing edge of a given thickness.</summary>
    /// <param name="section">The section to change; its greatest thickness must lie ahead of its trailing edge.</param>
    /// <param name="trailingEdge">Wanted thickness at x = 1, chords, from 0 to <see cref="Thickest"/> of the section; thinner than the section's own is allowed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The edge would be thicker than the section, or is negative or not a number.</exception>
    /// <exception cref="ArgumentException">The section is thickest at its trailing edge.</exception>
    public BluntedSection(Section section, double trailingEdge)
    {
        ArgumentNullException.ThrowIfNull(section);
        (PlaceOfChange, _peak) = ChordPeak.Of(section.HalfThickness);
        if (!(trailingEdge >= 0 && trailingEdge <= 2 * _peak))
            throw new ArgumentOutOfRangeException(nameof(trailingEdge), trailingEdge, $"The trailing edge must be between 0 and the section's greatest thickness, {2 * _peak} chords.");
        double own = section.HalfThickness(1);
        _drop = _peak - own;
        if (!(_drop > 0))
            throw new ArgumentException("The section is thickest at its trailing edge; there is nothing to blend behind it.", nameof(section));
        _section = section;
        _change = trailingEdge / 2 - own;
        _power = _change * SmoothPower > _drop ? _drop / _change : SmoothPower;
        Joins = [.. section.Joins.Append(PlaceOfChange).Distinct().Order()];
    }

    /// <summary>Where the change begins: the place of the greatest thickness, chords from the nose.</summary>
    public double PlaceOfChange { get; }

    /// <inheritdoc/>
    public override string Name => _section.Name;

    /// <inheritdoc/>
    public override double ThicknessRatio => _section.ThicknessRatio;

    /// <inheritdoc/>
    public override double MaximumCamber => _section.MaximumCamber;

    /// <inheritdoc/>
    public override bool ThicknessIsSquareToCamber => _section.ThicknessIsSquareToCamber;

    /// <inheritdoc/>
    public override double SquareShare => _section.SquareShare;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Joins { get; }

    /// <summary>The thickest trailing edge that <paramref name="section"/> can be given: its own greatest thickness, chords.</summary>
    public static double Thickest(Section section)
    {
        ArgumentNullException.ThrowIfNull(section);
        return 2 * ChordPeak.Of(section.HalfThickness).Value;
    }

    /// <inheritdoc/>
    public override double HalfThickness(double x)
    {
        double own = _section.HalfThickness(x);
        if (x <= PlaceOfChange)
            return own;
        double fallen = Math.Max((_peak - own) / _drop, 0);
        return own + _change * Math.Pow(fallen, _power);
    }

    /// <inheritdoc/>
    public override double Camber(double x) => _section.Camber(x);

    /// <inheritdoc/>
    public override double CamberSlope(double x) => _section.CamberSlope(x);
}
