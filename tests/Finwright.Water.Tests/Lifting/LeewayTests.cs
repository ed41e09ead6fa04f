using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

public class LeewayTests
{
    private static readonly AnalyticPolar Section = new(6, Water.Radians(14), cd: 0.007);

    private static readonly LiftingSurface Fin = LiftingSurface.Create(
        LiftingFin.Trapezoid(0.4, 0.12, 0.06, Water.Radians(10)) with { Polar = _ => Section }, RootCondition.Hull(0.25, 0.8, 0.1));

    private static double TipMiddle => (Fin.Fin.LeadingEdge(0.4) + Fin.Fin.TrailingEdge(0.4)) / 2;

    [Theory]
    [InlineData(6, 300)]
    [InlineData(10, 700)]
    [InlineData(20, 100)]
    [InlineData(8, -250)]
    [InlineData(8, 0)]
    public void LeewayFor_carries_what_was_asked(double speed, double force)
    {
        LeewayResult found = Fin.LeewayFor(Water.At(speed, 0), force);
        Assert.Equal(LeewayStatus.Found, found.Status);
        Assert.Equal(force, found.Result.SideForce, 1e-3);
        Assert.Equal(found.Result.SideForce, Fin.Solve(found.Result.Flow).SideForce);
        Assert.True(found.ReserveToOnset > 0 && found.ReserveToMaximum >= found.ReserveToOnset);
        Assert.Equal(Math.Sign(force), Math.Sign(found.Result.Flow.Leeway));
    }

    [Fact]
    public void LeewayFor_too_much_is_refused_with_the_greatest_force()
    {
        LeewayResult found = Fin.LeewayFor(Water.At(3, 0), 700);
        Assert.Equal(LeewayStatus.BeyondMaximum, found.Status);
        Assert.True(found.Result.SideForce < 700);
        Assert.Equal(0, found.ReserveToMaximum!.Value, 1e-9);
    }

    [Fact]
    public void StallOf_finds_the_leeway_where_the_first_strip_peaks()
    {
        StallLimits limits = Fin.StallOf(Water.At(8, 0));
        LiftingResult onset = limits.Onset!;
        Assert.Equal(1, onset.StallShare, 0.01);
        Assert.Equal(LiftingStatus.Attached, onset.Status);
        Assert.Equal(LiftingStatus.Stalled, Fin.Solve(onset.Flow with { Leeway = onset.Flow.Leeway + Water.Radians(0.05) }).Status);
        Assert.True(limits.IsOnsetCertain);
        Assert.True(limits.Maximum!.SideForce >= onset.SideForce);
        // The fin has less slope than its section, so it stalls at more leeway than the section's own 14 degrees.
        Assert.InRange(onset.Flow.Leeway, Water.Radians(14), Water.Radians(20));
    }

    // Far from the ends of a long fin the strip of greatest lift is the section itself: stall at the section's own peak. Tolerance 3 %: induced angle at A 40.
    [Fact]
    public void StallOf_long_fin_stalls_as_its_section()
    {
        LiftingSurface wing = LiftingSurface.Create(LatticeCase.Elliptic(2, 8 / (Math.PI * 40) * 2) with { Polar = _ => Section }, RootCondition.FullMirror, new() { Tip = TipForm.None });
        StallLimits limits = wing.StallOf(Water.At(8, 0));
        Assert.Equal(Water.Radians(14) + Section.Peak / (Math.PI * 40), limits.Onset!.Flow.Leeway, 0.03 * Water.Radians(14));
        Assert.Equal(Section.Peak, limits.Onset.CL, 0.05 * Section.Peak);
    }

    // The load at a pointed tip falls off more slowly than its chord, so its last strips are past their peak almost at once; the fin is not.
    [Fact]
    public void StallOf_pointed_fin_is_not_decided_by_the_point()
    {
        LiftingSurface fin = LiftingSurface.Create(LiftingFin.Trapezoid(0.35, 0.2, 0, Water.Radians(35)) with { Polar = _ => Section }, RootCondition.Hull(0.25, 0.8, 0.1));
        LiftingResult onset = fin.StallOf(Water.At(8, 0)).Onset!;
        Assert.True(onset.Flow.Leeway > Water.Radians(6), $"{onset.Flow.Leeway / Math.PI * 180} degrees");
        Assert.Contains(onset.Strips, s => s.IsStalled);
        Assert.True(onset.StalledShare < 0.031);
        Assert.Equal(LiftingStatus.Attached, onset.Status);
    }

    [Fact]
    public void StallOf_symmetric_fin_is_the_same_to_both_sides()
    {
        StallLimits right = Fin.StallOf(Water.At(8, 0)), left = Fin.StallOf(Water.At(8, 0), positive: false);
        Assert.Equal(right.Onset!.SideForce, -left.Onset!.SideForce);
        Assert.Equal(right.Maximum!.SideForce, -left.Maximum!.SideForce);
        Assert.Equal(right.OnsetDepth, left.OnsetDepth);
    }

    [Fact]
    public void LeewayFor_without_sections_knows_no_stall()
    {
        LiftingSurface plain = LiftingSurface.Create(LiftingFin.Trapezoid(0.4, 0.12, 0.06, 0), RootCondition.BareSurface);
        LeewayResult found = plain.LeewayFor(Water.At(8, 0), 200);
        Assert.Equal(LeewayStatus.Found, found.Status);
        Assert.Null(found.ReserveToOnset);
        Assert.Equal(LeewayStatus.BeyondRange, plain.LeewayFor(Water.At(3, 0), 700).Status);
    }

    [Fact]
    public void LeewayFor_cambered_fin_goes_to_negative_leeway_for_little_force()
    {
        LiftingFin bent = LiftingFin.Trapezoid(0.4, 0.12, 0.06, 0) with { MeanSurface = (x, y) => -0.5 * x * x };
        LiftingSurface fin = LiftingSurface.Create(bent, RootCondition.FullMirror);
        Assert.True(fin.Solve(Water.At(8, 0)).SideForce > 0);
        LeewayResult found = fin.LeewayFor(Water.At(8, 0), 0);
        Assert.True(found.Result.Flow.Leeway < 0);
        Assert.Equal(0, found.Result.SideForce, 1e-2);
    }

    // Roll moment is force times its depth, yaw moment force times its distance aft; both rise to the force of the strips.
    [Fact]
    public void Solve_centre_of_effort_lies_on_the_fin_and_is_moment_over_force()
    {
        LiftingResult result = Fin.Solve(Water.At(8, 5));
        Assert.InRange(result.CentreOfEffort!.Value.Y, 0.15, 0.2);
        Assert.Equal(result.RollMoment, result.ForceZ * result.CentreOfEffort.Value.Y, 0.01 * result.RollMoment);
        Assert.True(result.YawMoment < 0);
        // The strips' own loads and moments make up the whole but for section drag and the force at the tip.
        double yaw = result.Strips.Sum(s => s.Width * (s.Moment - s.Load * s.QuarterChord));
        Assert.Equal(result.YawMoment + result.TipForce * TipMiddle, yaw, 0.02 * Math.Abs(result.YawMoment));
        Assert.Equal(result.Strips.Sum(s => s.Load * s.Width), result.Strips.Sum(s => s.EllipticLoad * s.Width), 0.01 * result.SideForce);
    }

    [Fact]
    public void Sweep_covers_the_range_in_order()
    {
        IReadOnlyList<LiftingResult> sweep = Fin.Sweep(Water.At(8, 0), 0, Water.Radians(15), 16);
        Assert.Equal(16, sweep.Count);
        Assert.Equal(Water.Radians(15), sweep[15].Flow.Leeway, 1e-12);
        for (int i = 1; i < 16; i++)
            Assert.True(sweep[i].SideForce > sweep[i - 1].SideForce);
    }
}
