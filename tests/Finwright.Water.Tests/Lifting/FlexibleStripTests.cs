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

    // Thin-section theory (Glauert 1926) of a section whose edge is bent to 1 - (1 - s)⁴, with the sheet's own balance edge slope = M L/(4 D), in the middle of a slender wing. Tolerance 6 %: eight
    // vortices along the chord, three of them on the sheet.
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.3)]
    public void Strip_in_the_middle_of_a_slender_wing_bends_as_thin_section_theory(double share)
    {
        const double Chord = 0.1, Rigidity = 0.4;
        LiftingFin wing = LiftingFin.Trapezoid(3, Chord, Chord, 0) with { Strip = new(share * Chord, Rigidity, 0, 3) };
        LiftingResult result = LiftingSurface.Create(wing, RootCondition.FullMirror, new() { Rows = 8 }).Solve(Water.At(8, 3));
        StripResult strip = result.Strips[0];
        double hinge = 1 - share, scale = Water.Density * 64 * Chord * Chord, gain = share * Chord / (4 * Rigidity);
        double equivalent = strip.Cl / (2 * Math.PI);
        (double flat, double bent, double lift) = HingeMoments(hinge);
        // Angle of the stream follows from the lift: Cl = 2π (α + effectiveness w), w the edge slope toward more lift; then w = -gain (flat α + bent w).
        double w = -gain * scale * flat * equivalent / (1 + gain * scale * (bent - flat * lift));
        Assert.Equal(BentSheet.Effectiveness(hinge), lift, 1e-3);
        Assert.Equal(-w, strip.EdgeTurn, -0.06 * w);
    }

    // Hinge moment over ρ V² c² of unit angle and of unit edge slope, and the angle that the edge slope is worth.
    private static (double Flat, double Bent, double Lift) HingeMoments(double hinge)
    {
        const int Steps = 4000, Terms = 80;
        double from = Math.Acos(1 - 2 * hinge), step = Math.PI / Steps;
        double Slope(double angle)
        {
            double rest = 1 - Math.Max((1 - Math.Cos(angle)) / 2 - hinge, 0) / (1 - hinge);
            return 1 - rest * rest * rest * rest;
        }

        double[] a = new double[Terms + 1];
        for (int i = 0; i < Steps; i++)
        {
            double angle = (i + 0.5) * step;
            for (int n = 0; n <= Terms; n++)
                a[n] += Slope(angle) * Math.Cos(n * angle) * step * (n == 0 ? 1 : -2) / Math.PI;
        }

        double flat = 0, bent = 0, fine = (Math.PI - from) / Steps;
        for (int i = 0; i < Steps; i++)
        {
            double angle = from + (i + 0.5) * fine, arm = (Math.Cos(from) - Math.Cos(angle)) / 2 * Math.Sin(angle) / 2 * fine;
            double nose = 2 / Math.Tan(angle / 2), load = a[0] * nose;
            for (int n = 1; n <= Terms; n++)
                load += 2 * a[n] * Math.Sin(n * angle);
            flat += nose * arm;
            bent += load * arm;
        }

        return (flat, bent, a[0] + a[1] / 2);
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
