using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Blades;

/// <summary>A station's section split into shape and size, so that sizes and shapes can be blended apart.</summary>
internal sealed class StationForm
{
    private readonly Section _section, _camberSource;
    private readonly double _thicknessFactor, _camberFactor, _peakPlace, _peak, _drop;

    /// <summary>Splits a section.</summary>
    /// <param name="camberSource">Section whose camber line is used: the section itself, or a neighbour when it has no camber.</param>
    /// <param name="section">The section.</param>
    /// <param name="camberFactor">What brings that camber line to a greatest camber of 1; 0 without camber.</param>
    public StationForm(Section camberSource, Section section, double camberFactor)
    {
        (_section, _camberSource) = (section, camberSource);
        (_peakPlace, _peak) = ChordPeak.Of(section.HalfThickness);
        _thicknessFactor = 1 / section.ThicknessRatio;
        _camberFactor = camberFactor;
        EdgeShare = section.HalfThickness(1) * _thicknessFactor;
        _drop = Math.Max(_peak - section.HalfThickness(1), double.Epsilon);
    }

    /// <summary>Share of the thickness that is laid square to the camber line.</summary>
    public double SquareShare => _camberFactor is 0 ? 0 : _camberSource.SquareShare;

    /// <summary>Greatest half thickness for a thickness ratio of 1, chords: one half, but for the rounding of published coefficients.</summary>
    public double Peak => _peak * _thicknessFactor;

    /// <summary>Half thickness at the trailing edge for a thickness ratio of 1, chords.</summary>
    public double EdgeShare { get; }

    /// <summary>Places inside the chord where the curvature or its slope may jump, the start of the blunting among them.</summary>
    public IEnumerable<double> Joins => [.. _section.Joins, .. _camberFactor is 0 ? [] : _camberSource.Joins, _peakPlace];

    /// <summary>Ordinates at a station of the chord for a thickness ratio and camber of 1, chords.</summary>
    public FormOrdinates At(double x)
    {
        double own = _section.HalfThickness(x);
        double fallen = x <= _peakPlace ? 0 : Math.Clamp((_peak - own) / _drop, 0, 1);
        // Blunting as in BluntedSection: a change that starts without slope and curvature behind the thickest place.
        double blunting = fallen * Math.Sqrt(fallen);
        return _camberFactor is 0
            ? new(own * _thicknessFactor, blunting, 0, 0)
            : new(own * _thicknessFactor, blunting, _camberSource.Camber(x) * _camberFactor, _camberSource.CamberSlope(x) * _camberFactor);
    }
}

/// <summary>Ordinates of a form, or of a blend of two.</summary>
/// <param name="Half">Half thickness for a thickness ratio of 1, chords.</param>
/// <param name="Blunting">Share of the change of the trailing edge's thickness that is felt here, 0 to 1.</param>
/// <param name="Camber">Camber for a greatest camber of 1, chords.</param>
/// <param name="Slope">Slope of that camber line.</param>
internal readonly record struct FormOrdinates(double Half, double Blunting, double Camber, double Slope)
{
    /// <summary>Mixes two sets of ordinates.</summary>
    /// <param name="a">At weight 0.</param>
    /// <param name="b">At weight 1.</param>
    /// <param name="w">Weight of <paramref name="b"/>.</param>
    public static FormOrdinates Mix(in FormOrdinates a, in FormOrdinates b, double w) => new(
        a.Half + w * (b.Half - a.Half),
        a.Blunting + w * (b.Blunting - a.Blunting),
        a.Camber + w * (b.Camber - a.Camber),
        a.Slope + w * (b.Slope - a.Slope));
}
