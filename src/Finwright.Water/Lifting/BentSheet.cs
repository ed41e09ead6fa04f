namespace Finwright.Water.Lifting;

/// <summary>The shape of the flexible sheet when it bends.</summary>
/// <remarks>Cantilever of length L under a load that falls linearly to nothing at the free edge: slope ∝ 1 - (1 - s)⁴, edge slope M L/(4 D) with M the moment at the held line.</remarks>
internal static class BentSheet
{
    private const int Steps = 400;

    /// <summary>Edge slope over (moment times length over rigidity).</summary>
    public const double EdgeSlope = 0.25;

    /// <summary>Slope at a control point for unit slope at the edge, scaled so that the sum over the control points lifts exactly as the true shape does in two dimensions.</summary>
    public static double Slope(ChordRule chord, int row, double hinge)
    {
        double found = 0;
        for (int k = 0; k < chord.Rows; k++)
            found += chord.LiftWeights[k] * Shape(chord.Controls[k], hinge);
        return found > 0 ? Shape(chord.Controls[row], hinge) * Effectiveness(hinge) / found : 0;
    }

    /// <summary>Angle at which the whole section would lift as much as the sheet at unit edge slope (thin-section theory).</summary>
    public static double Effectiveness(double hinge)
    {
        double from = Math.Acos(1 - 2 * hinge), step = (Math.PI - from) / Steps, sum = 0;
        for (int i = 0; i < Steps; i++)
        {
            double angle = from + (i + 0.5) * step;
            sum += Shape((1 - Math.Cos(angle)) / 2, hinge) * (1 - Math.Cos(angle)) * step / Math.PI;
        }

        return sum;
    }

    private static double Shape(double station, double hinge)
    {
        double rest = 1 - Math.Max(station - hinge, 0) / (1 - hinge);
        return 1 - rest * rest * rest * rest;
    }
}
