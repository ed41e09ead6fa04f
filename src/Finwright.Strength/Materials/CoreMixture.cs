using Finwright.Numerics;

namespace Finwright.Strength.Materials;

/// <summary>Stiffness of the core: infill lines of plastic with resin, or nothing, between them.</summary>
/// <remarks>
/// <para>Both phases are taken as even in all directions and joined without gaps. Bulk and shear modulus of any such mixture that is even in all
/// directions lie between the bounds of Hashin and Shtrikman, 1963, J. Mech. Phys. Solids 11, 127 (from memory), here in the form of Walpole, 1966,
/// which does not ask which phase is stiffer in both (from memory). Their mean is used; plastic and resin are so alike that the bounds lie within
/// about 2 % of each other.</para>
/// <para>No published bending test of printed gyroid with resin was found: take the range as a bound, and let a bench test decide. Lines that lie
/// badly bonded, or air left in the resin, are outside these bounds.</para>
/// </remarks>
public static class CoreMixture
{
    // DeValk and Lakes, 2021, phys. stat. sol. (b), first page: modulus of sheet gyroids lies near the upper bound, Poisson's ratio 0.34 ± 0.06. The factor and its range are our judgement.
    private const double EmptyOfBound = 0.85, EmptyOfBoundLow = 0.7, EmptyPoisson = 0.34;

    // Shares of plastic that slicers offer as gyroid and that stay open to resin; beyond them the lines no longer form the pattern.
    private const double SparsestPattern = 0.05, DensestPattern = 0.5;

    /// <summary>Plastic lines in resin.</summary>
    /// <param name="plastic">The printed plastic; its stiffness averaged over the three directions.</param>
    /// <param name="resin">The cured resin.</param>
    /// <param name="share">Volume of plastic over volume of core, within 0 to 1, with its range.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not within 0 to 1.</exception>
    public static CoreStiffness Filled(PrintedPlastic plastic, CastResin resin, Ranged share)
    {
        ArgumentNullException.ThrowIfNull(plastic);
        ArgumentNullException.ThrowIfNull(resin);
        Check(share);
        Phase line = Lines(plastic, r => r.Value), cast = Cast(resin, r => r.Value);
        (Phase Lower, Phase Upper) bounds = Bounds(line, cast, share.Value);
        Phase mean = new((bounds.Lower.Bulk + bounds.Upper.Bulk) / 2, (bounds.Lower.Shear + bounds.Upper.Shear) / 2);

        // Both bounds rise with both phases; with the share they rise or fall, by which phase is stiffer.
        Phase softLine = Lines(plastic, r => r.Low), softCast = Cast(resin, r => r.Low), stiffLine = Lines(plastic, r => r.High), stiffCast = Cast(resin, r => r.High);
        Phase a = Bounds(softLine, softCast, share.Low).Lower, b = Bounds(softLine, softCast, share.High).Lower;
        Phase c = Bounds(stiffLine, stiffCast, share.Low).Upper, d = Bounds(stiffLine, stiffCast, share.High).Upper;
        Ranged modulus = new(mean.Young, Math.Min(mean.Young, Math.Min(a.Young, b.Young)), Math.Max(mean.Young, Math.Max(c.Young, d.Young)));
        Ranged shear = new(mean.Shear, Math.Min(mean.Shear, Math.Min(a.Shear, b.Shear)), Math.Max(mean.Shear, Math.Max(c.Shear, d.Shear)));
        double density = Mix(plastic.Density.Value, resin.Density.Value, share.Value);
        return new()
        {
            Modulus = modulus,
            ShearModulus = shear,
            Poisson = mean.Poisson,
            Density = new(
                density,
                Math.Min(Mix(plastic.Density.Low, resin.Density.Low, share.Low), Mix(plastic.Density.Low, resin.Density.Low, share.High)),
                Math.Max(Mix(plastic.Density.High, resin.Density.High, share.Low), Mix(plastic.Density.High, resin.Density.High, share.High))),
            LowerBound = bounds.Lower.Young,
            UpperBound = bounds.Upper.Young,
            IsInRange = share.Value is 0 or 1 || share.Value is >= SparsestPattern and <= DensestPattern,
        };
    }

    /// <summary>Plastic lines with nothing between them: before the pour, or where no resin went.</summary>
    /// <param name="plastic">The printed plastic; its stiffness averaged over the three directions.</param>
    /// <param name="share">Volume of plastic over volume of core, above 0 and up to 1, with its range.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not within its range.</exception>
    /// <remarks>0.85 (judgement, 0.7 to 1) times the upper bound: DeValk and Lakes, 2021, phys. stat. sol. (b), first page, found sheet gyroids near it. A fixed power of the share does not hold over shares.</remarks>
    public static CoreStiffness Empty(PrintedPlastic plastic, Ranged share)
    {
        ArgumentNullException.ThrowIfNull(plastic);
        Check(share);
        Require.Positive(share.Low);
        double Bound(Func<Ranged, double> pick, double f) => Bounds(Lines(plastic, pick), default, f).Upper.Young;
        double upper = Bound(r => r.Value, share.Value);
        bool isSolid = share.Value is 1;
        Ranged modulus = new((isSolid ? 1 : EmptyOfBound) * upper, EmptyOfBoundLow * Bound(r => r.Low, share.Low), Bound(r => r.High, share.High));
        double poisson = isSolid ? plastic.Poisson.Value : EmptyPoisson;
        return new()
        {
            Modulus = modulus,
            ShearModulus = modulus.Times(1 / (2 * (1 + poisson))),
            Poisson = poisson,
            Density = new(share.Value * plastic.Density.Value, share.Low * plastic.Density.Low, share.High * plastic.Density.High),
            LowerBound = 0,
            UpperBound = upper,
            IsInRange = isSolid || share.Value is >= SparsestPattern and <= DensestPattern,
        };
    }

    /// <summary>Lower and upper bound of bulk and shear modulus of a mixture of two phases.</summary>
    internal static (Phase Lower, Phase Upper) Bounds(Phase one, Phase two, double shareOfOne)
    {
        Phase least = new(Math.Min(one.Bulk, two.Bulk), Math.Min(one.Shear, two.Shear));
        Phase greatest = new(Math.Max(one.Bulk, two.Bulk), Math.Max(one.Shear, two.Shear));
        return (Around(least), Around(greatest));

        Phase Around(Phase host)
        {
            double bulk = 4.0 / 3 * host.Shear;
            double shear = host.Shear is 0 ? 0 : host.Shear * (9 * host.Bulk + 8 * host.Shear) / (6 * (host.Bulk + 2 * host.Shear));
            return new(Harmonic(one.Bulk, two.Bulk, bulk), Harmonic(one.Shear, two.Shear, shear));
        }

        double Harmonic(double a, double b, double shift)
        {
            // Without a host a void leaves nothing; a share of nothing takes no part even then.
            if (shareOfOne is 0)
                return b;
            if (shareOfOne is 1)
                return a;
            return a + shift is 0 || b + shift is 0 ? 0 : 1 / (shareOfOne / (a + shift) + (1 - shareOfOne) / (b + shift)) - shift;
        }
    }

    private static void Check(Ranged share)
    {
        Require.Between(share.Low, 0, 1);
        Require.Between(share.Value, share.Low, 1);
        Require.Between(share.High, share.Value, 1);
    }

    private static double Mix(double one, double two, double shareOfOne) => shareOfOne * one + (1 - shareOfOne) * two;

    private static Phase Lines(PrintedPlastic plastic, Func<Ranged, double> pick) =>
        Phase.Of((2 * pick(plastic.ModulusAlong) + pick(plastic.ModulusAcross)) / 3, plastic.Poisson.Value);

    private static Phase Cast(CastResin resin, Func<Ranged, double> pick) => Phase.Of(pick(resin.Modulus), resin.Poisson.Value);

    /// <summary>Bulk and shear modulus, Pa.</summary>
    internal readonly record struct Phase(double Bulk, double Shear)
    {
        public double Young => Shear is 0 ? 0 : 9 * Bulk * Shear / (3 * Bulk + Shear);

        public double Poisson => (3 * Bulk - 2 * Shear) / (2 * (3 * Bulk + Shear));

        public static Phase Of(double young, double poisson) => new(young / (3 * (1 - 2 * poisson)), young / (2 * (1 + poisson)));
    }
}
