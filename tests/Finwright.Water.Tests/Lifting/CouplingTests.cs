using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

/// <summary>Lattice and sections together.</summary>
public class CouplingTests
{
    private static readonly double Stall = Water.Radians(14);

    // A section that lifts as the thin-section theory says is what the lattice holds already. Tolerance: the coupling's own.
    [Theory]
    [InlineData(0)]
    [InlineData(35)]
    public void Solve_thin_section_changes_nothing(double sweep)
    {
        LiftingFin plain = Fin(sweep);
        AnalyticPolar thin = new(2 * Math.PI);
        LiftingResult without = Create(plain).Solve(Water.At(8, 6)), with = Create(plain with { Polar = _ => thin }).Solve(Water.At(8, 6));
        Assert.Equal(without.SideForce, with.SideForce, 1e-5 * without.SideForce);
        Assert.Equal(without.Drag.Induced, with.Drag.Induced, 1e-5 * without.Drag.Induced);
        Assert.True(without.Validity.HasFlag(LiftingValidity.NoSections));
        Assert.False(with.Validity.HasFlag(LiftingValidity.NoSections));
    }

    // Lifting line of an elliptic wing with section slope a0: a0/(1 + a0/(π A)). Tolerance 1 % at A 40.
    [Fact]
    public void Solve_slender_elliptic_wing_with_a_weaker_section_gives_the_closed_form()
    {
        const double Slope = 5.4, Aspect = 40;
        AnalyticPolar section = new(Slope);
        LiftingFin wing = LatticeCase.Elliptic(1, 8 / (Math.PI * Aspect)) with { Polar = _ => section };
        LiftingResult result = Create(wing).Solve(Water.At(8, 1));
        Assert.Equal(Slope / (1 + Slope / (Math.PI * Aspect)), result.CL / Water.Radians(1), 0.05);
    }

    // A long fin of one section turned straight into the stream works as the section itself: the middle strip's lift and angle lie on the polar.
    [Theory]
    [InlineData(4)]
    [InlineData(12)]
    [InlineData(19)]
    public void Solve_every_strip_lies_on_its_own_polar(double leeway)
    {
        AnalyticPolar section = new(6, Stall, cd: 0.007);
        LiftingResult result = Create(Fin(0) with { Polar = _ => section }).Solve(Water.At(8, leeway));
        Assert.NotEqual(LiftingStatus.NotConverged, result.Status);
        foreach (StripResult strip in result.Strips)
        {
            Assert.Equal(section.At(strip.SectionAngle, strip.ReynoldsNumber).Cl, strip.Cl, 1e-5);
            Assert.Equal(strip.SectionAngle > Stall, strip.IsStalled);
        }
    }

    // Simple sweep theory (Busemann 1935): square to the quarter chord the strip sees lift over cos²Λ and speed times chord times cos²Λ.
    [Fact]
    public void Solve_swept_strip_sees_the_stream_square_to_its_quarter_chord()
    {
        AnalyticPolar section = new(6, Stall);
        LiftingResult result = Create(Fin(30) with { Polar = _ => section }).Solve(Water.At(8, 5));
        StripResult strip = result.Strips[8];
        double cos = Math.Cos(Water.Radians(30));
        Assert.Equal(section.At(strip.SectionAngle, 0).Cl, strip.Cl / (cos * cos), 1e-5);
        Assert.Equal(8 * strip.Chord * cos * cos / Water.Viscosity, strip.ReynoldsNumber, 1e-6 * strip.ReynoldsNumber);
        Assert.Equal(section.Peak * cos * cos, strip.ClPeak!.Value, 1e-12);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(14)]
    [InlineData(18)]
    [InlineData(24)]
    public void Solve_symmetric_fin_gives_exactly_opposite_answers_at_opposite_leeway(double leeway)
    {
        AnalyticPolar section = new(6, Stall, cd: 0.007);
        LiftingSurface fin = LiftingSurface.Create(Fin(25) with { Polar = _ => section }, RootCondition.Hull(0.2, 0.5, 0.05));
        LiftingResult right = fin.Solve(Water.At(8, leeway)), left = fin.Solve(Water.At(8, -leeway)), none = fin.Solve(Water.At(8, 0));
        Assert.Equal(right.SideForce, -left.SideForce);
        Assert.Equal(right.Drag, left.Drag);
        Assert.Equal(right.YawMoment, -left.YawMoment);
        Assert.Equal(right.RollMoment, -left.RollMoment);
        Assert.Equal(right.CentreOfEffort, left.CentreOfEffort);
        Assert.Equal(0, none.SideForce);
        Assert.Null(none.CentreOfEffort);
    }

    // A cambered, twisted fin seen in the mirror z → -z carries the opposite force. Tolerance: rounding.
    [Fact]
    public void Solve_mirrored_fin_gives_opposite_answers()
    {
        LiftingFin bent = Fin(20) with { MeanSurface = (x, y) => 0.02 * x - 0.8 * x * x + 0.01 * y * x };
        LiftingFin other = bent with { MeanSurface = (x, y) => -bent.MeanSurface!(x, y) };
        RootCondition hull = RootCondition.Hull(0.2, 0.5, 0.05);
        LiftingResult one = LiftingSurface.Create(bent, hull).Solve(Water.At(8, 4)), two = LiftingSurface.Create(other, hull).Solve(Water.At(8, -4));
        Assert.Equal(one.SideForce, -two.SideForce, 1e-9 * Math.Abs(one.SideForce));
        Assert.Equal(one.YawMoment, -two.YawMoment, 1e-9 * Math.Abs(one.YawMoment));
        Assert.Equal(one.Drag.Induced, two.Drag.Induced, 1e-9 * one.Drag.Induced);
    }

    // Thin-section theory: a parabolic mean line of camber f lifts as an angle of 2 f, and has Cm = -π f about the quarter chord. Tolerance 0.5 %: A 40, ends of the wing.
    [Fact]
    public void Solve_cambered_slender_wing_lifts_at_no_leeway_as_thin_section_theory()
    {
        const double Camber = 0.03;
        LiftingFin wing = LiftingFin.Trapezoid(1, 0.01, 0.01, 0) with { MeanSurface = (x, y) => Camber * 0.01 * 4 * (x / 0.01 + 0.25) * (0.75 - x / 0.01) };
        LiftingResult cambered = Create(wing).Solve(Water.At(8, 0)), flat = Create(wing with { MeanSurface = null }).Solve(Water.At(8, 1));
        Assert.Equal(flat.CL / Water.Radians(1) * 2 * Camber, cambered.CL, 0.005 * cambered.CL);
        double nose = cambered.YawMoment / (cambered.Flow.DynamicPressure * cambered.Area * 0.01);
        Assert.Equal(-Math.PI * Camber, nose, 0.01 * Math.PI * Camber);
    }

    // A polar that gives the same as thin-section theory for the cambered section, moment included, must change nothing.
    [Fact]
    public void Solve_cambered_thin_section_changes_nothing()
    {
        const double Camber = 0.02, Chord = 0.1;
        LiftingFin fin = LiftingFin.Trapezoid(0.4, Chord, Chord, 0) with { MeanSurface = (x, y) => Camber * 4 * (x / Chord + 0.25) * (0.75 - x / Chord) * Chord };
        AnalyticPolar thin = new(2 * Math.PI, zeroLift: -2 * Camber, cm: -Math.PI * Camber);
        LiftingResult without = Create(fin).Solve(Water.At(8, 3)), with = Create(fin with { Polar = _ => thin }).Solve(Water.At(8, 3));
        Assert.Equal(without.SideForce, with.SideForce, 1e-4 * without.SideForce);
        Assert.Equal(without.YawMoment, with.YawMoment, 1e-4 * Math.Abs(without.RollMoment));
    }

    // A section moment turns the fin by q c² Cm per span and leaves its force alone.
    [Fact]
    public void Solve_section_moment_moves_the_centre_of_effort()
    {
        LiftingFin fin = LiftingFin.Trapezoid(0.4, 0.1, 0.1, 0);
        AnalyticPolar without = new(6), with = new(6, cm: -0.04);
        LiftingResult plain = Create(fin with { Polar = _ => without }).Solve(Water.At(8, 4)), turned = Create(fin with { Polar = _ => with }).Solve(Water.At(8, 4));
        double q = plain.Flow.DynamicPressure;
        Assert.Equal(plain.SideForce, turned.SideForce, 1e-9);
        Assert.Equal(-0.04 * q * 0.1 * 0.1 * 0.4, turned.YawMoment - plain.YawMoment, 1e-6);
        Assert.True(turned.CentreOfEffort!.Value.X > plain.CentreOfEffort!.Value.X);
    }

    // Nose to starboard by the twist is the same as leeway by that angle. Tolerance: squares of the angle.
    [Fact]
    public void Solve_constant_twist_acts_as_leeway()
    {
        double angle = Water.Radians(2);
        LiftingSurface turned = Create(Fin(0) with { MeanSurface = (x, y) => -x * Math.Tan(angle) }), plain = Create(Fin(0));
        Assert.Equal(plain.Solve(Water.At(8, 2)).SideForce, turned.Solve(Water.At(8, 0)).SideForce, 0.005 * plain.Solve(Water.At(8, 2)).SideForce);
    }

    // Twice the size at half the speed keeps Reynolds numbers: same coefficients, moments eight times per pressure. Twice the speed without sections: four times the force.
    [Fact]
    public void Solve_scales_with_size_and_speed()
    {
        AnalyticPolar section = new(6, Stall, cd: 0.007);
        LiftingResult small = LiftingSurface.Create(Sized(1) with { Polar = _ => section }, RootCondition.Hull(0.2, 0.5, 0.05)).Solve(Water.At(8, 5));
        LiftingResult large = LiftingSurface.Create(Sized(2) with { Polar = _ => section }, RootCondition.Hull(0.4, 1, 0.1)).Solve(Water.At(4, 5));
        Assert.Equal(small.CL, large.CL, 1e-9);
        Assert.Equal(small.CD, large.CD, 1e-9);
        Assert.Equal(8 * small.YawMoment / small.Flow.DynamicPressure, large.YawMoment / large.Flow.DynamicPressure, 1e-9 * Math.Abs(large.YawMoment));
        LiftingSurface bare = Create(Fin(20));
        Assert.Equal(4 * bare.Solve(Water.At(5, 5)).SideForce, bare.Solve(Water.At(10, 5)).SideForce, 1e-9 * bare.Solve(Water.At(10, 5)).SideForce);

        static LiftingFin Sized(double scale) => LiftingFin.Trapezoid(0.4 * scale, 0.12 * scale, 0.06 * scale, Water.Radians(20));
    }

    // The section's friction is drag coefficient times area where it is the same everywhere.
    [Fact]
    public void Solve_section_drag_is_coefficient_times_area_and_the_split_adds_up()
    {
        AnalyticPolar section = new(6, cd: 0.008);
        LiftingResult result = Create(Fin(0) with { Polar = _ => section, ThicknessRatio = _ => 0.12 }).Solve(Water.At(8, 5));
        double q = result.Flow.DynamicPressure;
        Assert.Equal(0.008 * q * result.Area, result.Drag.Section, 0.001 * result.Drag.Section);
        // Hoerner (1965), from memory: q c² (0.8 (t/c)³ - 0.0003).
        Assert.Equal(q * 0.12 * 0.12 * (0.8 * 0.12 * 0.12 * 0.12 - 0.0003), result.Drag.Junction, 1e-9);
        Assert.Equal(result.Drag.Total, result.Drag.Induced + result.Drag.Section + result.Drag.Junction + result.Drag.Separation + result.Drag.Spray, 1e-12);
        Assert.Equal(result.ForceZ * result.ForceZ + result.ForceX * result.ForceX, result.SideForce * result.SideForce + result.Drag.Total * result.Drag.Total, 1e-6 * result.ForceZ * result.ForceZ);
    }

    // Past stall: said, and both answers given where two were found.
    [Fact]
    public void Solve_past_stall_says_so_and_never_hides_a_second_answer()
    {
        AnalyticPolar section = new(6, Stall, cd: 0.007);
        LiftingSurface fin = Create(Fin(0) with { Polar = _ => section });
        bool second = false;
        for (int leeway = 17; leeway <= 30; leeway++)
        {
            LiftingResult result = fin.Solve(Water.At(8, leeway));
            Assert.Equal(LiftingStatus.Stalled, result.Status);
            Assert.True(result.Validity.HasFlag(LiftingValidity.StalledStrips));
            Assert.Equal(result.Validity.HasFlag(LiftingValidity.NotUnique), result.OtherSideForce != result.SideForce);
            Assert.Equal(leeway > 20, result.Validity.HasFlag(LiftingValidity.LargeLeeway));
            second |= result.Validity.HasFlag(LiftingValidity.NotUnique);
        }

        Assert.True(second);
    }

    [Fact]
    public void Solve_slow_fin_says_that_waves_are_missing()
    {
        LiftingSurface hull = LiftingSurface.Create(Fin(0), RootCondition.Hull(0.2, 0.5, 0.05)), wall = Create(Fin(0));
        Assert.True(hull.Solve(Water.At(1.5, 3)).Validity.HasFlag(LiftingValidity.SlowForSurface));
        Assert.False(hull.Solve(Water.At(4, 3)).Validity.HasFlag(LiftingValidity.SlowForSurface));
        Assert.False(wall.Solve(Water.At(1.5, 3)).Validity.HasFlag(LiftingValidity.SlowForSurface));
        Assert.All(hull.Solve(Water.At(1.5, 3)).Validity.Describe(), text => Assert.NotEmpty(text));
    }

    private static LiftingFin Fin(double sweep) => LiftingFin.Trapezoid(0.4, 0.12, 0.06, Water.Radians(sweep));

    private static LiftingSurface Create(LiftingFin fin) => LiftingSurface.Create(fin, RootCondition.FullMirror, new() { Tip = TipForm.None });
}
