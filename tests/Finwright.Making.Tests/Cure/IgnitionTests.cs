using Finwright.Making.Cure;

namespace Finwright.Making.Tests.Cure;

public sealed class IgnitionTests
{
    [Fact]
    public void Share_of_ignition_follows_heat_over_loss()
    {
        SlabCase slab = CureCases.Slab(CureCases.Infusion, 0.002, 8) with { WallThickness = 0 };
        double one = Ignition.OfSlab(slab);
        Assert.Equal(2 * one, Ignition.OfSlab(slab with { RateFactor = 2 }), 1e-9);
        // Worked by hand: e q L/2 (E/(R T²)) (1/h + L/2/(3k)); with k1 left out, E = 44289 and the greatest of α^m (1-α)^n at m/(m+n).
        SlabCase simple = slab with { Resin = CureCases.Infusion with { Kinetics = CureCases.Infusion.Kinetics with { Rate1 = 0 } } };
        const double R = 8.314462618, T = 295.15, M = 0.39845, N = 1.5361;
        double a = M / (M + N), q = 460e3 * 1150 * 3574.1 * Math.Exp(-44289 / (R * T)) * Math.Pow(a, M) * Math.Pow(1 - a, N);
        Assert.Equal(Math.E * q * 0.001 * 44289 / (R * T * T) * (1 / 8.0 + 0.001 / 0.6), Ignition.OfSlab(simple), 1e-4);
    }

    [Fact]
    public void Share_of_a_slab_counts_its_walls_its_infill_and_its_cooling()
    {
        SlabCase slab = CureCases.Slab(CureCases.Infusion, 0.01, 8) with { WallThickness = 0.0012, InfillShare = 0.2, CoolingFactor = 1.5 };
        double conductivity = PlasticHeat.Mixed(0.29, 0.20, 0.2), bare = Ignition.Share(CureRate.Of(CureCases.Infusion), 1, slab.Surroundings);
        // Per area: a half of the slab of which four fifths are resin; film, wall and the slab's own mean resistance one after the other.
        Assert.Equal(bare * 460e3 * 1150 * 0.8 * 0.005 * (1 / 12.0 + 0.0012 / 0.29 + 0.005 / (3 * conductivity)), Ignition.OfSlab(slab), 1e-9);
        // In air the film is that of a surface 15 K above it.
        SurfaceCooling air = SurfaceCooling.StillAir(0.2);
        double film = air.At(slab.Surroundings + 15, slab.Surroundings);
        Assert.Equal(Ignition.OfSlab(slab with { Cooling = SurfaceCooling.Fixed(film) }), Ignition.OfSlab(slab with { Cooling = air }), 1e-9);
    }

    [Fact]
    public void Share_tells_whether_a_body_that_uses_up_nothing_finds_a_temperature_to_stay_at()
    {
        // Semenov's balance itself: at the greatest rate, heat made and heat shed meet at some temperature above the surroundings, or at none. 1/e holds for E much above R T; here E/(R T) is 18 to 22,
        // which shifts the edge by some 5 % (R T/E, from memory).
        const double Surroundings = 295.15;
        CureRate rate = CureRate.Of(CureCases.Infusion);
        double share = Ignition.Share(rate, 1, Surroundings), conversion = rate.Greatest(Surroundings).Conversion;
        Assert.True(Stays(0.97 / share));
        Assert.False(Stays(1.15 / share));
        Assert.Equal(0, Ignition.Share(rate, 0, Surroundings));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ignition.Share(rate, -1, Surroundings));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ignition.Share(rate, 1, 0));

        bool Stays(double heatOverLoss) => Enumerable.Range(1, 1000).Any(i => heatOverLoss * rate.At(Surroundings + 0.05 * i, conversion) < 0.05 * i);
    }
}
