using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Blades;

/// <summary>The section of a blade at one depth, for a chord of 1.</summary>
internal sealed class SectionOfBlade : Section
{
    private readonly Blade _blade;
    private readonly BladeFrame _frame;

    /// <summary>Cuts a blade.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="depth">Depth, metres, where the chord is not 0.</param>
    public SectionOfBlade(Blade blade, double depth)
    {
        (_blade, _frame) = (blade, blade.FrameAt(depth));
        Name = $"section at {1e3 * depth:0.#} mm";
        ThicknessRatio = 2 * ChordPeak.Of(HalfThickness).Value;
        MaximumCamber = _frame.Camber / _frame.Chord;
        StationForm own = blade.Forms[_frame.Form];
        IEnumerable<double> joins = _frame.Weight > 0 ? own.Joins.Concat(blade.Forms[_frame.Form + 1].Joins) : own.Joins;
        Joins = [.. joins.Distinct().Order()];
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    /// <remarks>Measured; a rounded tip makes it thinner than the design asks.</remarks>
    public override double ThicknessRatio { get; }

    /// <inheritdoc/>
    public override double MaximumCamber { get; }

    /// <inheritdoc/>
    public override bool ThicknessIsSquareToCamber => SquareShare >= 0.5;

    /// <inheritdoc/>
    public override double SquareShare => _frame.SquareShare;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Joins { get; }

    /// <inheritdoc/>
    public override double HalfThickness(double x)
    {
        FormOrdinates ordinates = _blade.OrdinatesAt(_frame, x);
        return (_frame.Thickness * ordinates.Half + _frame.Blunting * ordinates.Blunting) / _frame.Chord;
    }

    /// <inheritdoc/>
    public override double Camber(double x) => _frame.Camber / _frame.Chord * _blade.OrdinatesAt(_frame, x).Camber;

    /// <inheritdoc/>
    public override double CamberSlope(double x) => _frame.Camber / _frame.Chord * _blade.OrdinatesAt(_frame, x).Slope;
}
