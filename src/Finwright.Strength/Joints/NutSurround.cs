using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Joints;

/// <summary>What a nut's pocket is made of: tensile strength along and across the layers, Pa.</summary>
/// <param name="Along">Along the layers.</param>
/// <param name="Across">Across the layers.</param>
public sealed record NutSurround(Ranged Along, Ranged Across)
{
    /// <summary>Print without resin around the pocket, solid there.</summary>
    /// <param name="plastic">The print.</param>
    public static NutSurround Bare(PrintedPlastic plastic)
    {
        ArgumentNullException.ThrowIfNull(plastic);
        return new(plastic.StrengthAlong, plastic.StrengthAcross);
    }

    /// <summary>Print with resin around the pocket.</summary>
    /// <param name="plastic">The print.</param>
    /// <param name="resin">The cured resin.</param>
    /// <param name="share">Volume of plastic over volume, 0 to 1.</param>
    /// <remarks>Both are strained alike, and what cracks first counts (judgement): the smaller of the two strains at break, times the mean modulus. Air left under the nut is not counted.</remarks>
    public static NutSurround Filled(PrintedPlastic plastic, CastResin resin, double share)
    {
        ArgumentNullException.ThrowIfNull(plastic);
        ArgumentNullException.ThrowIfNull(resin);
        Require.Between(share, 0, 1);
        if (share is 1)
            return Bare(plastic);
        return new(Mixed(plastic.StrengthAlong, plastic.ModulusAlong), Mixed(plastic.StrengthAcross, plastic.ModulusAcross));

        Ranged Mixed(Ranged strength, Ranged modulus)
        {
            double mean = share * modulus.Value + (1 - share) * resin.Modulus.Value;
            double Stress(double lines, double cast) => mean * (share is 0 ? cast / resin.Modulus.Value : Math.Min(lines / modulus.Value, cast / resin.Modulus.Value));
            return new(Stress(strength.Value, resin.Strength.Value), Stress(strength.Low, resin.Strength.Low), Stress(strength.High, resin.Strength.High));
        }
    }
}
