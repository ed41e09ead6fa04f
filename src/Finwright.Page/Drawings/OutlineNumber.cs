using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using DesignOutline = Finwright.Design.Outline;

namespace Finwright.Page.Drawings;

/// <summary>One number of a family's outline, and the point of the outline that it moves fore and aft.</summary>
internal sealed class OutlineNumber
{
    // Enough for the secant rule on lines that are nearly straight; the accuracy lies below a hundredth of any unit.
    private const int Rounds = 30;
    private const double Settled = 1e-5;

    private readonly DesignOutline _outline;
    private readonly Func<DesignOutline, double, DesignOutline> _with;
    private readonly Func<OutlinePoints, double> _where;
    private readonly double _least, _most, _step;

    private OutlineNumber(DesignOutline outline, double value, (double Least, double Most, double Step) range, Func<DesignOutline, double, DesignOutline> with, Func<OutlinePoints, double> where)
    {
        (_outline, Value, _with, _where) = (outline, value, with, where);
        (_least, _most, _step) = range;
    }

    /// <summary>The number, in the design file's unit; that of the family when the design leaves it out.</summary>
    public double Value { get; }

    /// <summary>The number that a handle moves.</summary>
    public static OutlineNumber Of(HandleKind kind, DesignOutline outline)
    {
        OutlineFamilies family = OutlineFromDesign.Family(outline.Family);
        return kind switch
        {
            HandleKind.Rake => new(
                outline, outline.RakeDegrees ?? double.RadiansToDegrees(family.Rake), (-30, 70, 0.5),
                (own, value) => own with { RakeDegrees = value }, points => points.LeadingEdge[^1].X),
            HandleKind.TipChord => new(
                outline, outline.TipChordPercent ?? 100 * family.TipRatio, (5, 120, 1),
                (own, value) => own with { TipChordPercent = value }, points => points.LeadingEdge[^2].X),
            HandleKind.RootChord when outline.RootChordMm is null => new(
                outline, outline.AreaCm2 ?? 0, (15, 1500, 1),
                (own, value) => own with { AreaCm2 = value }, points => points.TrailingEdge[0].X),
            HandleKind.RootChord => new(
                outline, outline.RootChordMm ?? 0, (20, 400, 1),
                (own, value) => own with { RootChordMm = value }, points => points.TrailingEdge[0].X),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This handle moves no number of a family."),
        };
    }

    /// <summary>The outline with its point as near to a place as the number's range allows.</summary>
    /// <param name="x">Place, mm aft of the root's quarter chord.</param>
    /// <param name="decimals">Decimals of the number.</param>
    public DesignOutline MovedTo(double x, int decimals)
    {
        double before = Value, missBefore = Miss(before, x), value = Value + _step <= _most ? Value + _step : Value - _step;
        for (int i = 0; i < Rounds; i++)
        {
            double miss = Miss(value, x);
            // No outline there, or nothing moves any more: the last good one stands.
            if (!double.IsFinite(miss) || miss == missBefore)
            {
                value = before;
                break;
            }

            double next = Math.Clamp(value - miss * (value - before) / (miss - missBefore), _least, _most);
            (before, missBefore) = (value, miss);
            if (Math.Abs(next - value) < Settled)
            {
                value = next;
                break;
            }

            value = next;
        }

        return _with(_outline, Math.Round(value, decimals));
    }

    private double Miss(double value, double x) => OutlineFromDesign.Points(_with(_outline, value), []) is { } points ? 1e3 * _where(points) - x : double.NaN;
}
