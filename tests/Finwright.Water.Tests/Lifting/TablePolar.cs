using Finwright.Water.Polars;
using MathNet.Numerics.Interpolation;

namespace Finwright.Water.Tests.Lifting;

/// <summary>A symmetric section from a table, by monotone cubics.</summary>
internal sealed class TablePolar : ISectionPolar
{
    private readonly CubicSpline _cl;
    private readonly CubicSpline _cd;
    private readonly SectionStall _stall;

    private TablePolar((double Degrees, double Cl, double Cd)[] rows, int peak)
    {
        double[] angles = [.. rows.Select(r => Water.Radians(r.Degrees))];
        _cl = CubicSpline.InterpolatePchipSorted(angles, [.. rows.Select(r => r.Cl)]);
        _cd = CubicSpline.InterpolatePchipSorted(angles, [.. rows.Select(r => r.Cd)]);
        _stall = new(angles[peak], rows[peak].Cl, true);
    }

    // Ladson (1988), NASA TM-4074, table I: NACA 0012, Reynolds number 2.00 million, free transition; stalled lift 0.753 at 16.25 degrees. Deep stall: shape of the set of Sheldahl and Klimas
    // (1981), SAND80-2114. Drag in between: by eye.
    public static TablePolar Naca0012 { get; } = new(
        [
            (0, 0, 0.0062), (1.85, 0.194, 0.0062), (4.25, 0.445, 0.0067), (6.05, 0.625, 0.0087), (8.15, 0.855, 0.0127), (10.15, 1.045, 0.0135), (12.10, 1.218, 0.0164),
            (14.25, 1.362, 0.0228), (15.25, 1.408, 0.0291), (16.25, 0.753, 0.15), (20, 0.72, 0.25), (30, 0.855, 0.570), (45, 1.050, 1.075), (60, 0.875, 1.470), (90, 0.09, 1.80),
        ],
        8);

    public SectionForces At(double angleOfAttack, double reynoldsNumber)
    {
        double size = Math.Abs(angleOfAttack);
        PolarOrigin origin = size > _stall.AngleOfAttack ? PolarOrigin.Stalled : PolarOrigin.Solved;
        return new(Math.CopySign(_cl.Interpolate(size), angleOfAttack), _cd.Interpolate(size), 0, -1, 1, origin);
    }

    public SectionStall StallAt(double reynoldsNumber, bool positive) => positive ? _stall : _stall with { AngleOfAttack = -_stall.AngleOfAttack, Cl = -_stall.Cl };
}
