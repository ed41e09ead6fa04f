using Finwright.Numerics;

namespace Finwright.Water.Ventilation;

/// <summary>How long a cavity of air is at one depth, and what lift the section keeps under it.</summary>
/// <remarks>
/// The linear model of Harwood, Young and Ceccio (2016), J. Fluid Mech. 800, 5-56: thin flat section, the cavity at atmospheric pressure.
/// Partial cavities after Acosta, long ones after Tulin, a fit between. The fit knows no angle of attack and so misses both theories where
/// they end, by more than half at the largest angles; here it is scaled to meet them, our own departure from the paper.
/// </remarks>
public static class VentilatedCavity
{
    private const double PartialLength = 0.5, LongLength = 1.25; // chords; between them neither theory holds

    /// <summary>Greatest angle of attack of the linear theory, radians: beyond about 17 degrees its long and its partial cavities would overlap.</summary>
    public const double GreatestAngle = 0.3;

    private const int Halvings = 60; // beyond the digits of a double

    /// <summary>Cavitation number of a cavity at atmospheric pressure, σ_c = 2 g z / V².</summary>
    /// <param name="depth">Depth z below the surface, m.</param>
    /// <param name="speed">m/s.</param>
    public static double Number(double depth, double speed) =>
        2 * PhysicalConstants.Gravity * Require.NotNegative(depth) / (Require.Positive(speed) * speed);

    /// <summary>Length of the cavity in chords.</summary>
    /// <param name="number">Cavitation number σ_c, above zero.</param>
    /// <param name="angleOfAttack">Effective angle of attack without sign, radians, above 0, at most <see cref="GreatestAngle"/>.</param>
    public static double Length(double number, double angleOfAttack)
    {
        double angle = Require.Between(angleOfAttack, double.Epsilon, GreatestAngle);
        double psi = Require.Positive(number) / (2 * angle);
        if (psi >= Acosta(PartialLength))
            return PartialCavity(psi);
        double reach = 1 / psi + angle, longReach = Math.Sqrt(LongLength - 1);
        if (reach >= longReach)
            return 1 + reach * reach; // Tulin

        double longEnd = 1 / (longReach - angle), partialEnd = Acosta(PartialLength);
        double share = (psi - longEnd) / (partialEnd - longEnd);
        return Fit(psi) * ((1 - share) * LongLength / Fit(longEnd) + share * PartialLength / Fit(partialEnd));
    }

    /// <summary>Lift slope of the section, 1/rad: 2π without a cavity, π/2 under an endless one.</summary>
    /// <param name="length">Length of the cavity in chords, 0 or more.</param>
    /// <remarks>A short cavity adds a little lift, like camber.</remarks>
    public static double LiftSlope(double length)
    {
        double l = Require.NotNegative(length);
        if (l > 1)
        {
            // The same ratio with both sides divided by l³, which cannot overflow.
            double r = 1 / l;
            return (Math.PI / 2 + r * (-2 + r * (4.5 + r))) / (1 + r * (-1 + r * (0.75 + r / (2 * Math.PI))));
        }

        return (1 + l * (4.5 + l * (-2 + l * Math.PI / 2))) / (1 / (2 * Math.PI) + l * (0.75 + l * (-1 + l)));
    }

    /// <summary>Share of the wetted lift that is kept at the same angle when the air has come in, as lifting-line theory joins section and span.</summary>
    /// <param name="length">Length of the cavity in chords.</param>
    /// <param name="aspectRatio">Aspect ratio that counts for induced flow, above zero: span over mean chord under an open surface, twice that under a full mirror.</param>
    public static double LiftKept(double length, double aspectRatio)
    {
        double a = Math.PI * Require.Positive(aspectRatio), cavity = LiftSlope(length), wetted = 2 * Math.PI;
        return cavity / (1 + cavity / a) / (wetted / (1 + wetted / a));
    }

    private static double Fit(double psi) => (2.67 * psi + 96.62) / (psi * (psi * (psi - 7.1) + 49.42) + 0.961);

    /// <summary>Ψ = σ_c / 2α of a partial cavity (Acosta).</summary>
    private static double Acosta(double length) => (2 - length + 2 * Math.Sqrt(1 - length)) / Math.Sqrt(length * (1 - length));

    private static double PartialCavity(double psi)
    {
        double low = 0, high = PartialLength;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            if (Acosta(middle) > psi)
                low = middle;
            else
                high = middle;
        }

        return 0.5 * (low + high);
    }
}
