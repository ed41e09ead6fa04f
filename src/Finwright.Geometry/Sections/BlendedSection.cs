namespace Finwright.Geometry.Sections;

/// <summary>A section between two others: half thickness, camber and slope are mixed linearly, place by place.</summary>
/// <remarks>
/// Where one lays its thickness square to the camber line and the other along y, <see cref="SquareShare"/> is mixed as well,
/// so that each end is met exactly. A section without camber does not care and takes the other's manner. Camber slopes are
/// mixed before the thickness is laid, so for two cambered sections this differs from mixing surface points in the second
/// order of the slopes' difference.
/// </remarks>
public sealed class BlendedSection : Section
{
    private readonly Section _first, _second;
    private readonly double _weight;

    /// <summary>Mixes two sections.</summary>
    /// <param name="first">The section at weight 0.</param>
    /// <param name="second">The section at weight 1.</param>
    /// <param name="weight">Share of the second, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is outside 0 to 1.</exception>
    public BlendedSection(Section first, Section second, double weight)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (!(weight >= 0 && weight <= 1))
            throw new ArgumentOutOfRangeException(nameof(weight), weight, "The weight must lie between 0 and 1.");
        (_first, _second, _weight) = (first, second, weight);
        SquareShare = first.MaximumCamber is 0 ? second.SquareShare : second.MaximumCamber is 0 ? first.SquareShare : Mix(first.SquareShare, second.SquareShare);
        Joins = [.. first.Joins.Concat(second.Joins).Distinct().Order()];
        ThicknessRatio = 2 * ChordPeak.Of(HalfThickness).Value;
        (_, double high) = ChordPeak.Of(Camber);
        (_, double low) = ChordPeak.Of(x => -Camber(x));
        MaximumCamber = high >= low ? high : -low;
    }

    /// <inheritdoc/>
    /// <remarks>Both names and the weight, unless the weight is at an end.</remarks>
    public override string Name => _weight switch
    {
        0 => _first.Name,
        1 => _second.Name,
        _ when string.Equals(_first.Name, _second.Name, StringComparison.Ordinal) => _first.Name,
        _ => $"{_first.Name} to {_second.Name} at {100 * _weight:0.#} %",
    };

    /// <inheritdoc/>
    /// <remarks>Measured on the mixed ordinates; less than the mean when both are thickest at different places.</remarks>
    public override double ThicknessRatio { get; }

    /// <inheritdoc/>
    public override double MaximumCamber { get; }

    /// <inheritdoc/>
    public override bool ThicknessIsSquareToCamber => SquareShare >= 0.5;

    /// <inheritdoc/>
    public override double SquareShare { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> Joins { get; }

    /// <inheritdoc/>
    public override double HalfThickness(double x) => Mix(_first.HalfThickness(x), _second.HalfThickness(x));

    /// <inheritdoc/>
    public override double Camber(double x) => Mix(_first.Camber(x), _second.Camber(x));

    /// <inheritdoc/>
    public override double CamberSlope(double x) => Mix(_first.CamberSlope(x), _second.CamberSlope(x));

    private double Mix(double a, double b) => (1 - _weight) * a + _weight * b;
}
