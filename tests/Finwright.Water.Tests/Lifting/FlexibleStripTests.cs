using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

public class FlexibleStripTests
{
    private static readonly LiftingFin Fin = LiftingFin.Trapezoid(0.4, 0.1, 0.1, 0);

    [Fact]
    public void Strip_that_is_stiff_changes_nothing_and_a_softer_one_gives_way_more()
    {
        double rigid = Force(Fin), stiff = Force(With(1e6)), soft = Force(With(0.3)), softer = Force(With(0.1));
        Assert.Equal(rigid, stiff, 1e-4 * rigid);
        Assert.True(rigid > soft && soft > softer && softer > 0, $"{rigid} {soft} {softer} N");
    }

    // The edge turns away from the load, more at higher speed; edge slope is M L/(4 D).
    [Fact]
    public void Strip_turns_away_from_the_load_and_more_with_speed()
    {
        LiftingSurface fin = LiftingSurface.Create(With(0.3), RootCondition.FullMirror);
        LiftingResult slow = fin.Solve(Water.At(5, 5)), fast = fin.Solve(Water.At(10, 5)), other = fin.Solve(Water.At(10, -5));
        Assert.All(slow.Strips, s => Assert.True(s.EdgeTurn > 0));
        Assert.True(fast.Strips[8].EdgeTurn > 2 * slow.Strips[8].EdgeTurn);
        Assert.Equal(fast.SideForce, -other.SideForce);
        Assert.True(fast.CL < slow.CL);
    }

    [Fact]
    public void Strip_bends_only_where_it_is()
    {
        LiftingFin partly = Fin with { Strip = new(0.02, 0.3, 0.1, 0.3) };
        LiftingResult result = LiftingSurface.Create(partly, RootCondition.FullMirror).Solve(Water.At(10, 5));
        Assert.All(result.Strips, s => Assert.Equal(s.Depth is >= 0.1 and <= 0.3, s.EdgeTurn > 0));
    }

    // Thin-section theory of a plain flap (Glauert 1927): effectiveness 1 - (θ - sin θ)/π with cos θ = 1 - 2 x at the hinge. A sheet whose slope grows from nothing to the same edge slope does less.
    [Fact]
    public void Effectiveness_of_a_bent_sheet_is_below_a_plain_flap_of_the_same_length()
    {
        const double Share = 0.2;
        double angle = Math.Acos(1 - 2 * (1 - Share));
        double flap = 1 - (angle - Math.Sin(angle)) / Math.PI;
        Assert.InRange(BentSheet.Effectiveness(1 - Share), 0.4 * flap, flap);
    }

    // Flat plate in two dimensions: hinge moment from the vortices against the closed integral of γ = 2 V α cot(θ/2). Tolerance 0.1 %.
    [Theory]
    [InlineData(0.7)]
    [InlineData(0.85)]
    public void Hinge_moment_of_a_flat_plate_matches_the_closed_load(double hinge)
    {
        ChordRule rule = new(6);
        double[] weights = rule.HingeWeights(hinge);
        double found = 0, exact = 0;
        for (int k = 0; k < 6; k++)
        {
            double theta = (2 * k + 1) * Math.PI / 12;
            found += weights[k] * Math.PI / 12 * 2 * (1 + Math.Cos(theta));
        }

        const int Steps = 20000;
        for (int i = 0; i < Steps; i++)
        {
            double x = hinge + (1 - hinge) * (i + 0.5) / Steps, theta = Math.Acos(1 - 2 * x);
            exact += 2 / Math.Tan(theta / 2) * (x - hinge) * (1 - hinge) / Steps;
        }

        Assert.Equal(exact, found, 0.001 * exact);
    }

    private static LiftingFin With(double rigidity) => Fin with { Strip = new(0.02, rigidity, 0, 0.4) };

    private static double Force(LiftingFin fin) => LiftingSurface.Create(fin, RootCondition.FullMirror).Solve(Water.At(10, 5)).SideForce;
}
