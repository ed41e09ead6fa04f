using Finwright.Assessment.Loaded;
using Finwright.Strength.Plates;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Tests.Loaded;

public sealed class ShapeUnderLoadTests
{
    [Fact]
    public void Carrying_a_very_stiff_blade_is_the_straight_fin()
    {
        LoadedFin fin = LoadedFin.Raked;
        LeewayResult straight = fin.Afloat[LoadCaseKind.Cruise]!.UnderHull;
        BentFin bent = ShapeUnderLoad.Carrying(fin.Surface, fin.Times(1e4), straight);
        Assert.Equal(LoadedStatus.Settled, bent.Status);
        Assert.Equal(straight.Result.Flow.Leeway, bent.Flow.Flow.Leeway, 1e-3 * straight.Result.Flow.Leeway); // how closely the straight fin's own leeway was searched
        Assert.Equal(straight.Asked, bent.Flow.SideForce, 1e-5 * straight.Asked);
        IReadOnlyList<PlateLoad> rigid = StripPressure.Of(straight.Result, fin.Surface);
        for (int i = 0; i < rigid.Count; i++)
            Assert.Equal(rigid[i].Force, bent.Loads[i].Force, 1e-3 * rigid.Max(load => load.Force));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(1)]
    [InlineData(0.7)]
    public void Carrying_a_soft_raked_blade_settles_at_more_leeway(double stiffness)
    {
        LoadedFin fin = LoadedFin.Raked;
        LeewayResult straight = fin.Afloat[LoadCaseKind.Cruise]!.UnderHull;
        PlateModel plate = fin.Times(stiffness);
        BentFin bent = ShapeUnderLoad.Carrying(fin.Surface, plate, straight);
        Assert.Equal(LoadedStatus.Settled, bent.Status);
        Assert.InRange(bent.Passes, 2, 20);
        // Raked aft it washes out: more leeway for the same force, which acts nearer the root.
        Assert.Equal(straight.Asked, bent.Flow.SideForce, 1e-5 * straight.Asked);
        Assert.True(bent.Flow.Flow.Leeway > straight.Result.Flow.Leeway);
        Assert.True(bent.Flow.CentreOfEffort!.Value.Y < straight.Result.CentreOfEffort!.Value.Y);
        // Load and shape agree: the blade under the loads that the water gives back has the shape in which the water gave them. One in a thousand: the search ends at half of that in the loads.
        Assert.Equal(plate.Solve(bent.Loads).MaximumDeflection, bent.Plate.MaximumDeflection, 1e-3 * Math.Abs(bent.Plate.MaximumDeflection));
    }

    [Fact]
    public void At_the_same_leeway_a_softer_raked_blade_carries_less()
    {
        LoadedFin fin = LoadedFin.Raked;
        LiftingResult straight = fin.At(10, 3);
        double before = straight.SideForce;
        foreach (double stiffness in (double[])[20, 4, 1, 0.7])
        {
            BentFin bent = ShapeUnderLoad.At(fin.Surface, fin.Times(stiffness), straight);
            Assert.Equal(LoadedStatus.Settled, bent.Status);
            Assert.InRange(bent.Flow.SideForce, 0, before);
            before = bent.Flow.SideForce;
        }
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.4)]
    public void At_a_share_of_the_pressure_of_divergence_the_twist_grows_as_it_should(double share)
    {
        // Load and twist make each other grow to 1/(1 - q/q_D), exact when the twist of the first load has the shape of divergence. Small leeway, so that sections are linear and the blade bends little.
        LoadedFin fin = LoadedFin.Upright;
        double divergence = fin.Load().DivergencePressure!.Value;
        LiftingResult straight = fin.At(6, 0.3);
        PlateModel plate = fin.Times(straight.Flow.DynamicPressure / (share * divergence));
        PlateFin shape = plate.Fin;
        BentFin bent = ShapeUnderLoad.At(fin.Surface, plate, straight);
        Assert.Equal(LoadedStatus.Settled, bent.Status);
        double first = SectionBend.At(plate.Solve(StripPressure.Of(straight, fin.Surface)), shape, shape.Span).Twist, grown = SectionBend.At(bent.Plate, shape, shape.Span).Twist;
        Assert.True(first < 0); // the trailing edge goes less far: it washes in
        Assert.Equal(1 / (1 - share), grown / first, 0.1 / (1 - share));
    }

    [Fact]
    public void At_beyond_divergence_does_not_settle_and_says_so()
    {
        LoadedFin fin = LoadedFin.Upright;
        LiftingResult straight = fin.At(6, 0.3);
        BentFin bent = ShapeUnderLoad.At(fin.Surface, fin.Times(straight.Flow.DynamicPressure / (3 * fin.Load().DivergencePressure!.Value)), straight);
        Assert.Equal(LoadedStatus.NotSettled, bent.Status);
        Assert.Same(straight, bent.Flow);
        Assert.Equal(StripPressure.Of(straight, fin.Surface), bent.Loads);
    }

    [Fact]
    public void Carrying_more_than_the_fin_can_is_loaded_as_asked()
    {
        LoadedFin fin = LoadedFin.Upright;
        LeewayResult straight = fin.Surface.LeewayFor(fin.Afloat.Flow(5, 0), 5000);
        Assert.NotEqual(LeewayStatus.Found, straight.Status);
        BentFin bent = ShapeUnderLoad.Carrying(fin.Surface, fin.Structure.Plate, straight);
        Assert.Equal(LoadedStatus.NotCarried, bent.Status);
        double side = bent.Loads.Sum(load => load.Force);
        // Across the fin, not across the stream: a few per cent at the leeway of stall.
        Assert.InRange(side, 0.9 * 5000, 1.15 * 5000);
    }
}
