using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

public sealed class BentFinTests
{
    private const double Span = 0.3;
    private static readonly LiftingFin Flat = LiftingFin.Trapezoid(Span, 0.1, 0.06, 0.2);
    private static readonly FlowState Flow = new(8, 1025, 1.2e-6, 0.04);

    [Fact]
    public void Bent_turned_as_a_whole_acts_like_leeway()
    {
        // Turning the fin by an angle about any line across the stream is leeway of that angle, to first order.
        LiftingSurface straight = LiftingSurface.Create(Flat, RootCondition.FullMirror), turned = straight.Bent((x, _) => -0.02 * x);
        double expected = straight.Solve(Flow with { Leeway = 0.06 }).SideForce, found = turned.Solve(Flow).SideForce;
        Assert.Equal(expected, found, 2e-3 * expected);
    }

    [Fact]
    public void Bent_twice_gives_the_last_deflection_alone()
    {
        LiftingSurface straight = LiftingSurface.Create(Flat, RootCondition.FullMirror);
        double once = straight.Bent((x, y) => 0.1 * x * y).Solve(Flow).SideForce;
        double twice = straight.Bent((x, _) => 0.3 * x).Bent((x, y) => 0.1 * x * y).Solve(Flow).SideForce;
        Assert.Equal(once, twice, 1e-12 * once);
    }

    [Fact]
    public void Bent_agrees_with_a_fin_made_in_that_shape()
    {
        static double Wash(double x, double y) => 0.05 * x * y / Span + 0.2 * y * y;
        LiftingSurface bent = LiftingSurface.Create(Flat, RootCondition.FullMirror).Bent(Wash);
        LiftingSurface made = LiftingSurface.Create(Flat with { MeanSurface = Wash }, RootCondition.FullMirror);
        LiftingResult first = bent.Solve(Flow), second = made.Solve(Flow);
        // The made one also has its vortices moved and its load tilted: second order in a slope of 0.12.
        Assert.Equal(second.SideForce, first.SideForce, 0.02 * second.SideForce);
        Assert.Equal(second.CentreOfEffort!.Value.Y, first.CentreOfEffort!.Value.Y, 0.01 * Span);
    }

    [Fact]
    public void ResponseToTwist_of_all_strips_together_is_the_lift_slope()
    {
        LiftingSurface surface = LiftingSurface.Create(Flat, RootCondition.FullMirror);
        TwistResponse response = surface.ResponseToTwist();
        int strips = response.Depths.Count;
        double slope = 0;
        for (int i = 0; i < strips; i++)
            for (int j = 0; j < strips; j++)
                slope += response.Load[i * strips + j] * response.Widths[i];
        const double small = 1e-4;
        double expected = surface.Solve(Flow with { Leeway = small }).SideForce / (small * Flow.DynamicPressure);
        Assert.Equal(expected, slope, 1e-4 * expected);
    }
}
