using Finwright.Making.Cure;
using Finwright.Making.Files;

namespace Finwright.Making.Tests.Cure;

public sealed class CureBandTests
{
    private const double Ice = CureCases.IcePoint;

    [Fact]
    public void Band_of_a_slab_at_the_edge_is_wide_and_says_so()
    {
        SlabBand edge = CureBand.Of(CureCases.Slab(CureCases.Infusion, 0.012, 8), TestContext.Current.CancellationToken);
        Assert.True(edge.IsNearCritical);
        Assert.True(edge.Slow.Centre.Temperature < Ice + 35 && edge.Nominal.Centre.Temperature > Ice + 150 && edge.Fast.Centre.Temperature > Ice + 200);
        // 1 % of cooling moves this peak by 2.34 K (numerical reference, scipy): 234 K for the whole logarithm; over ±5 % the curve bends, hence 25 %.
        Assert.Equal(234, edge.Sensitivity, 0.25 * 234);
    }

    [Fact]
    public void Band_of_a_slow_slab_is_not_near_critical()
    {
        SlabBand mild = CureBand.Of(CureCases.Slab(CureCases.Scaled(0.3), 0.010, 8), TestContext.Current.CancellationToken);
        Assert.False(mild.IsNearCritical);
        Assert.InRange(mild.IgnitionShare, 0.1, 0.8);
        Assert.True(mild.Slow.Centre.Temperature < mild.Nominal.Centre.Temperature && mild.Nominal.Centre.Temperature < mild.Fast.Centre.Temperature);
    }

    [Fact]
    public void Thickest_pour_stays_below_its_limit_and_a_little_more_does_not()
    {
        SlabCase slab = CureCases.Slab(CureCases.Scaled(0.5), 0.01, 9) with { InfillShare = 0.15 };
        foreach (PourCaution caution in Enum.GetValues<PourCaution>())
        {
            ThickestPour found = ThickestPour.Find(slab, Ice + 60, caution, TestContext.Current.CancellationToken);
            Assert.Equal(ThicknessStatus.Found, found.Status);
            Assert.True(found.IsMonotone);
            SlabCase end = caution == PourCaution.High ? slab with { RateFactor = 2, CoolingFactor = 0.7 } : slab;
            double Peak(double thickness) => CureSlab.Solve(end with { Thickness = thickness }, TestContext.Current.CancellationToken).Centre.Temperature;
            // A quarter of a millimetre to each side: near the edge a peak moves by kelvins over a tenth.
            Assert.True(Peak(found.Thickness - 2.5e-4) < Ice + 60);
            Assert.True(Peak(found.Thickness + 2.5e-4) > Ice + 60);
        }

        Assert.True(ThickestPour.Find(slab, Ice + 60, PourCaution.Nominal, TestContext.Current.CancellationToken).Thickness > ThickestPour.Find(slab, Ice + 60, PourCaution.High, TestContext.Current.CancellationToken).Thickness);
    }

    [Fact]
    public void Thickest_pour_says_when_there_is_none()
    {
        SlabCase slab = CureCases.Slab(CureCases.Scaled(0.5), 0.01, 9);
        Assert.Equal(ThicknessStatus.NoneIsThinEnough, ThickestPour.Find(slab, slab.Surroundings, PourCaution.High, TestContext.Current.CancellationToken).Status);
        Assert.Equal(ThicknessStatus.AllStayBelow, ThickestPour.Find(slab, 1000, PourCaution.High, TestContext.Current.CancellationToken).Status);
    }

    [Fact]
    public void Slow_casting_resin_of_16_millimetres_in_still_air_lands_near_50_degrees()
    {
        // Common practice, no source: a thick part near 16 mm lands near 50 °C, thicker ones pass softening, thin ones stay lukewarm. The library's rates were
        // chosen for it: within 6 K by a coefficient of 9 W/(m² K) (numbers of the trade) and by free convection with radiation, which differ by 9 K here.
        double Peak(double thickness, SurfaceCooling cooling) => CureSlab.Solve(CureCases.Slab(ResinLibrary.Get("casting-slow"), thickness, 9) with
        {
            InfillShare = 0.15,
            StartTemperature = Ice + 20,
            Surroundings = Ice + 20,
            Cooling = cooling,
            Duration = 48 * 3600,
        }, TestContext.Current.CancellationToken).Centre.Temperature - Ice;
        foreach (SurfaceCooling cooling in (SurfaceCooling[])[SurfaceCooling.Fixed(9), SurfaceCooling.StillAir(0.2)])
        {
            Assert.InRange(Peak(0.016, cooling), 44, 56);
            Assert.True(Peak(0.020, cooling) > 65);
            Assert.True(Peak(0.012, cooling) < 40);
        }
    }
}
