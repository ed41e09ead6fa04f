using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Strength.Materials;

namespace Finwright.Strength.FromDesign;

/// <summary>How deep the printed wall reaches below the skin, measured across the fin, as the printer lays it.</summary>
/// <remarks>
/// Standing, every layer is a section of the blade and its lines run along the section's outline: the wall has its full width square to that outline. Lying, every layer is level with the chord plane and the
/// lines follow its edge: near nose and trailing edge the wall is as wide as its lines, and over the flat of the blade only the solid layers close it. At both edges all is wall for the width of the lines.
/// </remarks>
internal sealed class WallLayout
{
    // Half the step over which the slope of the skin is taken, share of the chord.
    private const double SlopeStep = 2e-3;

    private readonly BladeShape _blade;
    private readonly bool _standing;
    private readonly double _lines, _solid;

    /// <summary>Takes the wall from the print settings.</summary>
    public WallLayout(Print print, BladeShape blade, PrintDirection direction)
    {
        (_blade, _standing) = (blade, direction is PrintDirection.Standing);
        _lines = print.Walls * print.LineWidthMm * 1e-3;
        _solid = print.SolidLayers * print.LayerMm * 1e-3;
    }

    /// <summary>Depth of the wall of one side along z, metres; as great as a number can be where all is wall.</summary>
    public double Depth(double x, double y)
    {
        double leading = _blade.Outline.LeadingEdge(y), trailing = _blade.Outline.TrailingEdge(y), chord = trailing - leading;
        if (x - leading < _lines || trailing - x < _lines)
            return double.MaxValue;
        double along = Slope(x, y, SlopeStep * chord, 0);
        if (_standing)
            return _lines * Math.Sqrt(1 + along * along);
        double down = Slope(x, y, 0, SlopeStep * chord);
        return Math.Max(_solid, _lines * Math.Sqrt(along * along + down * down));
    }

    private double Slope(double x, double y, double dx, double dy)
    {
        double low = Math.Max(y - dy, 0), high = Math.Min(y + dy, _blade.Span);
        double before = _blade.HalfThickness(x - dx, low), after = _blade.HalfThickness(x + dx, high);
        // Beyond the outline there is no skin to lean.
        return before > 0 && after > 0 ? (after - before) / (2 * dx + (high - low)) : 0;
    }
}
