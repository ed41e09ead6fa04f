using Finwright.Numerics;

namespace Finwright.Strength.Joints;

/// <summary>A base whose front and rear faces lean alike and which bolts draw into its box like a wedge.</summary>
/// <param name="Angle">Lean of each end face from square to the hull, radians, above 0 and up to 45°.</param>
/// <param name="Friction">Friction between base and box: 0 greased or creeping over a season, 0.2 to 0.3 plastic on plastic (from memory).</param>
/// <remarks>Both faces carry alike, and nothing else does: neither the base's top edge nor its flange touches. Once they touch, more pull goes there. Estimates.</remarks>
public sealed record TaperedEnds(double Angle, double Friction)
{
    /// <summary>Force square to each end face, N: T/(2 (sin a + μ cos a)); without friction and at 10°, 2.88 times the pull.</summary>
    /// <param name="pull">Pull of all bolts together, N.</param>
    public double FaceForce(double pull)
    {
        Check();
        return Require.NotNegative(pull) / (2 * (Math.Sin(Angle) + Friction * Math.Cos(Angle)));
    }

    /// <summary>Force that drives the ends of the box apart and squeezes the base along its length, N.</summary>
    /// <param name="pull">Pull of all bolts together, N.</param>
    public double SpreadingForce(double pull) => FaceForce(pull) * (Math.Cos(Angle) - Friction * Math.Sin(Angle));

    /// <summary>Whether the base stays stuck when the bolts come out, so that it needs a knock: friction at least the slope of the faces.</summary>
    public bool SticksByItself => Friction >= Math.Tan(Angle);

    /// <summary>How far the base stands proud for each unit it is too long: 1/(2 tan a), 2.84 at 10°.</summary>
    public double HeightPerLength
    {
        get
        {
            Check();
            return 1 / (2 * Math.Tan(Angle));
        }
    }

    /// <summary>How the squeezed base is stressed and how much wider it grows.</summary>
    /// <param name="pull">Pull of all bolts together, N.</param>
    /// <param name="width">Of the base across the fin, m.</param>
    /// <param name="depth">Over which the end faces bear, m.</param>
    /// <param name="modulus">Young's modulus of the base along its length, Pa.</param>
    /// <param name="poisson">Poisson's ratio of the base.</param>
    /// <returns>Squeeze along the base, Pa, and growth in width, m: the growth splits the box, or the base beside its nuts.</returns>
    public (double Stress, double WidthGrowth) Squeeze(double pull, double width, double depth, double modulus, double poisson)
    {
        double stress = SpreadingForce(pull) / (Require.Positive(width) * Require.Positive(depth));
        return (stress, Require.Between(poisson, 0, 0.5) * stress / Require.Positive(modulus) * width);
    }

    /// <summary>Pull at which the box ends are driven apart by a given force, N.</summary>
    /// <param name="spreading">Force along the base, N.</param>
    public double PullThatSpreads(double spreading) => Require.NotNegative(spreading) / SpreadingForce(1);

    private void Check()
    {
        Require.Positive(Angle, nameof(Angle));
        Require.Between(Angle, 0, Math.PI / 4, nameof(Angle));
        Require.Between(Friction, 0, 1, nameof(Friction));
    }
}
