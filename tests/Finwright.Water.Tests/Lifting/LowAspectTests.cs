using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

/// <summary>Short fins: cross-flow at the tip, leading-edge vortices.</summary>
public class LowAspectTests
{
    // Whicker and Fehlner (1958), DTMB 933, eq. [1]: lift slope of control surfaces of taper 0.45 on a ground board; columns aspect ratio (span²/area twice), sweep of the quarter chord, slope per radian.
    // Section slope 0.9 · 2π as in the equation. Tolerance 5 %.
    [Theory]
    [InlineData(1, -8, 1.406)]
    [InlineData(1, 11, 1.410)]
    [InlineData(2, -8, 2.443)]
    [InlineData(2, 11, 2.443)]
    [InlineData(3, -8, 3.130)]
    [InlineData(3, 11, 3.123)]
    public void Solve_control_surface_has_the_measured_lift_slope(double aspect, double sweep, double slope) =>
        Assert.Equal(slope, Surface(aspect, sweep, TipForm.Square).Solve(Water.At(8, 0.1)).CL / Water.Radians(0.1), 0.05 * slope);

    // Numerical reference: vortex lattice of the same planforms, without section. Tolerance 0.3 %.
    [Theory]
    [InlineData(1, -8, 1.457)]
    [InlineData(1, 0, 1.460)]
    [InlineData(1, 11, 1.462)]
    [InlineData(2, -8, 2.490)]
    [InlineData(2, 0, 2.504)]
    [InlineData(2, 11, 2.511)]
    [InlineData(3, -8, 3.186)]
    [InlineData(3, 0, 3.212)]
    [InlineData(3, 11, 3.218)]
    public void Lattice_control_surface_matches_the_numerical_reference(double aspect, double sweep, double slope) =>
        Assert.Equal(slope, new LatticeCase(Fin(aspect, sweep), RootCondition.FullMirror, 20, 6).Slope, 0.003 * slope);

    // Polhamus (1966), NASA TN D-3767, sharp delta wings: CL = Kp sin α cos² α + Kv cos α sin² α, CD = CL tan α. Kp, Kv and CL from a converged vortex lattice (numerical reference). Tolerance 5 %;
    // Kp 1 %, Kv 4 %: the suction is summed along the edge here, and there taken from the wake.
    [Theory]
    [InlineData(0.5, 0.7075, 3.13)]
    [InlineData(1.5, 1.783, 3.14)]
    [InlineData(2, 2.199, 3.18)]
    public void Solve_sharp_delta_follows_the_suction_analogy(double aspect, double potential, double vortex)
    {
        LiftingSurface delta = SharpDelta(aspect);
        foreach (double degrees in new[] { 5.0, 10, 15, 20 })
        {
            double angle = Water.Radians(degrees), sin = Math.Sin(angle);
            LiftingResult result = delta.Solve(Water.At(8, degrees));
            Assert.Equal(SuctionAnalogy(potential, vortex, angle), result.CL, 0.03 * result.CL);
            Assert.Equal(result.CL * Math.Tan(angle), result.CD, 0.015 * result.CD);
            Assert.Equal(vortex, result.VortexForce / (result.Flow.DynamicPressure * result.Area) / (sin * sin), 0.04 * vortex);
            Assert.Equal(1, result.LostSuction);
        }
    }

    // Below about 45 degrees of sweep no vortex runs along the edge (a 2023 re-analysis of rectangular plates, Aerospace 10(7) 597, doubts it for unswept edges).
    [Fact]
    public void Solve_unswept_edge_gets_no_vortex_force()
    {
        LiftingSurface plate = LiftingSurface.Create(LiftingFin.Trapezoid(0.3, 0.2, 0.2, 0), RootCondition.FullMirror, new() { LeadingEdge = LeadingEdgeForm.Sharp });
        LiftingResult result = plate.Solve(Water.At(8, 10));
        Assert.Equal(0, result.VortexForce);
        Assert.False(result.Validity.HasFlag(LiftingValidity.LeadingEdgeVortex));
        Assert.Equal(1, result.LostSuction);
    }

    // A round edge holds its suction until its section's peak of lift; beyond that the part it cannot hold goes into the vortex, and lift goes on rising.
    [Fact]
    public void Solve_round_delta_grows_a_vortex_only_past_the_peak_of_its_section()
    {
        AnalyticPolar section = new(6, Water.Radians(12), cd: 0.007);
        LiftingSurface delta = LiftingSurface.Create(Delta(2) with { Polar = _ => section }, RootCondition.FullMirror, new() { Tip = TipForm.None });
        LiftingResult low = delta.Solve(Water.At(8, 2)), high = delta.Solve(Water.At(8, 20));
        // The very point of the tip is past its peak at any leeway; it carries nothing.
        Assert.InRange(low.VortexForce, 0, 0.001 * low.ForceZ);
        Assert.True(high.VortexForce > 0 && high.LostSuction is > 0.05 and < 0.9, $"{high.VortexForce} N, {high.LostSuction}");
        Assert.True(high.Validity.HasFlag(LiftingValidity.LeadingEdgeVortex));
        Assert.True(high.CL > 8 * low.CL, $"{low.CL} {high.CL}");
        LiftingSurface upright = LiftingSurface.Create(LiftingFin.Trapezoid(0.4, 0.1, 0.1, 0) with { Polar = _ => section }, RootCondition.FullMirror);
        Assert.Equal(0, upright.Solve(Water.At(8, 20)).VortexForce);
    }

    // Slender-body theory of a plate of width 2s across the stream: suction on the two edges together π ρ s c V² sin² α, so K_v,se → π as the aspect ratio goes to 0. Tolerance 3 % at 0.05.
    [Fact]
    public void Tip_suction_of_a_very_short_plate_tends_to_pi()
    {
        LiftingSurface plate = LiftingSurface.Create(LiftingFin.Trapezoid(0.025, 1, 1, 0), RootCondition.FullMirror, new() { Tip = TipForm.SideEdgeSuction, Strips = 24, Rows = 16 });
        LiftingResult result = plate.Solve(Water.At(8, 2));
        double sin = Math.Sin(Water.Radians(2));
        Assert.Equal(Math.PI, result.TipForce / (result.Flow.DynamicPressure * result.Area * sin * sin), 0.03 * Math.PI);
    }

    [Fact]
    public void Tip_force_grows_from_none_over_faired_and_square_to_full_suction()
    {
        double[] forces = [.. new[] { TipForm.None, TipForm.Faired, TipForm.Square, TipForm.SideEdgeSuction }
            .Select(t => LiftingSurface.Create(LiftingFin.Trapezoid(0.2, 0.2, 0.2, 0), RootCondition.FullMirror, new() { Tip = t }).Solve(Water.At(8, 8)).TipForce)];
        Assert.Equal(0, forces[0]);
        for (int i = 1; i < 4; i++)
            Assert.True(forces[i] > forces[i - 1], $"{forces[i - 1]} N, {forces[i]} N");
    }

    private static LiftingFin Fin(double aspect, double sweep)
    {
        double root = 2 / (aspect * 0.725);
        return LiftingFin.Trapezoid(1, root, 0.45 * root, Water.Radians(sweep));
    }

    private static LiftingFin Delta(double aspect) => LiftingFin.Trapezoid(aspect / 4, 1, 0, Math.Atan(3 / aspect));

    internal static double SuctionAnalogy(double potential, double vortex, double angle)
    {
        double sin = Math.Sin(angle), cos = Math.Cos(angle);
        return potential * sin * cos * cos + vortex * cos * sin * sin;
    }

    internal static LiftingSurface SharpDelta(double aspect) =>
        LiftingSurface.Create(Delta(aspect), RootCondition.FullMirror, new() { LeadingEdge = LeadingEdgeForm.Sharp, Tip = TipForm.None });

    internal static LiftingSurface Surface(double aspect, double sweep, TipForm tip)
    {
        AnalyticPolar section = new(0.9 * 2 * Math.PI);
        return LiftingSurface.Create(Fin(aspect, sweep) with { Polar = _ => section }, RootCondition.FullMirror, new() { Tip = tip });
    }
}
