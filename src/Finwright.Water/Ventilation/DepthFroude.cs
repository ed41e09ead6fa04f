using Finwright.Numerics;

namespace Finwright.Water.Ventilation;

/// <summary>Whether a cavity of air, once formed, is washed out again: bounds in depth Froude number.</summary>
/// <remarks>
/// Both were measured on surface-piercing struts of aspect ratio 1 to 1.5 without a hull over the root; for deeper fins under a board they are
/// an extrapolation, and only the wide gap between them and a fin's working Froude number (3 to 7) is meaningful.
/// </remarks>
public static class DepthFroude
{
    /// <summary>Greatest aspect ratio at which the washout bound was compared with measurements.</summary>
    public const double MeasuredAspectRatio = 1.5;

    /// <summary>Least depth Froude number of stable full ventilation, whatever the lift (Breslin and Skalak, 1959).</summary>
    private const double LeastStable = 3;

    /// <summary>Depth Froude number V/√(g h).</summary>
    /// <param name="speed">m/s.</param>
    /// <param name="span">Depth h of the tip, m.</param>
    public static double Number(double speed, double span) => Require.NotNegative(speed) / Math.Sqrt(PhysicalConstants.Gravity * Require.Positive(span));

    /// <summary>Speed of a depth Froude number, m/s.</summary>
    /// <param name="froudeNumber">Depth Froude number.</param>
    /// <param name="span">Depth h of the tip, m.</param>
    public static double Speed(double froudeNumber, double span) => Require.NotNegative(froudeNumber) * Math.Sqrt(PhysicalConstants.Gravity * Require.Positive(span));

    /// <summary>Below this depth Froude number a cavity washes out by itself.</summary>
    /// <param name="aspectRatio">Span over mean chord, 0.3 to 12.</param>
    /// <param name="liftCoefficient">Lift coefficient of the fin, without sign, above zero.</param>
    /// <remarks>
    /// Harwood, Young and Ceccio (2016), Ventilated cavities on a surface-piercing hydrofoil at moderate Froude numbers: cavity formation,
    /// elimination and stability, J. Fluid Mech. 800, 5-56: the mean slope of the cavity's closure line reaches 45 degrees.
    /// </remarks>
    public static double Washout(double aspectRatio, double liftCoefficient)
    {
        double a = Require.Between(aspectRatio, 0.3, 12), lift = Require.Positive(liftCoefficient);
        double above = a * (8 + a * (18 + a * (-4 + a * Math.PI / 2)));
        double below = 2.31 * lift * (4 + Math.PI * a * (3 + a * (-2 + a)));
        return Math.PI / 4 * Math.Sqrt(above / below);
    }

    /// <summary>Above this depth Froude number a fully ventilated fin stays so.</summary>
    /// <param name="liftCoefficient">Lift coefficient of the fin, without sign, above zero.</param>
    /// <remarks>Breslin and Skalak (1959), Exploratory study of ventilated flows about yawed surface-piercing struts, NASA Memorandum 2-23-59W: CL > 5/Fn² and Fn > 3.</remarks>
    public static double FullVentilation(double liftCoefficient) => Math.Max(Math.Sqrt(5 / Require.Positive(liftCoefficient)), LeastStable);
}
