namespace Finwright.Geometry.Sections;

/// <summary>
/// Half thickness of the modified four-digit sections, per unit of thickness ratio: nose radius and place of the greatest
/// thickness can be chosen.
/// </summary>
/// <remarks>
/// Stack and von Doenhoff, 1934, "Tests of 16 related airfoils at high speeds", NACA TR-492; the equations also in Ladson
/// and Brooks, 1975, NASA TM X-3284. Ahead of the greatest thickness a0 √x + a1 x + a2 x² + a3 x³, behind it
/// d0 + d1 (1-x) + d2 (1-x)² + d3 (1-x)³. a0 sets the nose radius, d0 the trailing edge (0.01 of the thickness each side),
/// d1 is the report's table of trailing-edge angles; the rest follow from value 1/2, slope 0 and equal curvature where both meet.
/// </remarks>
internal readonly struct ModifiedFourDigitForm
{
    // The report writes the equations for 20 % thickness; here they are divided by that thickness.
    private const double ReportThickness = 0.20;
    private const double NormalNose = 0.2969 / ReportThickness;
    private const double TrailingEdge = 0.002 / ReportThickness;

    // TR-492, table of d1 against the place of the greatest thickness: 0.2, 0.3, 0.4, 0.5, 0.6 of the chord.
    private static double[] TrailingSlopes { get; } = [0.200, 0.234, 0.315, 0.465, 0.700];

    private readonly double _place, _a0, _a1, _a2, _a3, _d1, _d2, _d3;

    /// <summary>A form by the two digits behind the dash.</summary>
    /// <param name="noseIndex">Nose index, 0 (sharp) to 9; 6 is the radius of the plain four-digit sections, 9 three times that radius.</param>
    /// <param name="thickestTenths">Place of the greatest thickness, tenths of the chord, 2 to 6.</param>
    public ModifiedFourDigitForm(int noseIndex, int thickestTenths)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(noseIndex);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(noseIndex, 9);
        ArgumentOutOfRangeException.ThrowIfLessThan(thickestTenths, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(thickestTenths, 6);

        // The radius goes with a0²: index/6 scales a0, and index 9 stands for three times the normal radius.
        _a0 = NormalNose * (noseIndex == 9 ? Math.Sqrt(3) : noseIndex / 6.0);
        double m = _place = thickestTenths / 10.0;
        double r = 1 - m, rise = 0.5 - TrailingEdge;
        _d1 = TrailingSlopes[thickestTenths - 2] / ReportThickness;
        _d2 = (3 * rise - 2 * r * _d1) / (r * r);
        _d3 = (r * _d1 - 2 * rise) / (r * r * r);
        double curvature = 2 * _d2 + 6 * _d3 * r;
        double root = Math.Sqrt(m);
        _a1 = 1.5 / m - 15.0 / 8 * _a0 / root + curvature * m / 2;
        _a2 = -1.5 / (m * m) + 5.0 / 4 * _a0 / (m * root) - curvature;
        _a3 = 0.5 / (m * m * m) - 3.0 / 8 * _a0 / (m * m * root) + curvature / (2 * m);
    }

    /// <summary>Half thickness over thickness ratio at x.</summary>
    public double At(double x)
    {
        x = Math.Clamp(x, 0, 1);
        double e = 1 - x;
        return x < _place
            ? _a0 * Math.Sqrt(x) + x * (_a1 + x * (_a2 + x * _a3))
            : TrailingEdge + e * (_d1 + e * (_d2 + e * _d3));
    }
}
