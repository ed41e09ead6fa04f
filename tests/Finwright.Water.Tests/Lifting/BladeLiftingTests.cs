using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;
using Finwright.Geometry.Sections;
using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

public class BladeLiftingTests
{
    private static readonly RootCondition Hull = RootCondition.Hull(0.25, 0.8, 0.1);

    [Fact]
    public void ToLiftingFin_symmetric_blade_has_its_area_and_exactly_opposite_answers()
    {
        Blade blade = new(Outline(), [new(0, new FourDigitSection(0, 0, 10), 0)], 0.001);
        LiftingSurface fin = LiftingSurface.Create(blade.ToLiftingFin(), Hull);
        Assert.Equal(Planform.Of(blade.SplineOutline).Area, fin.Area, 1e-4 * fin.Area);
        Assert.Equal(fin.Solve(Water.At(8, 4)).SideForce, -fin.Solve(Water.At(8, -4)).SideForce);
        Assert.Equal(0, fin.Solve(Water.At(8, 0)).SideForce);
    }

    // The blade's twist of 2 degrees over the whole span acts as 2 degrees of leeway. Tolerance: squares of the angle.
    [Fact]
    public void ToLiftingFin_twisted_blade_acts_as_turned()
    {
        double twist = Water.Radians(2);
        Blade plain = new(Outline(), [new(0, new FourDigitSection(0, 0, 10), 0)], 0.001), twisted = new(Outline(), [new(0, new FourDigitSection(0, 0, 10), twist)], 0.001);
        double turned = LiftingSurface.Create(plain.ToLiftingFin(), Hull).Solve(Water.At(8, 2)).SideForce;
        Assert.Equal(turned, LiftingSurface.Create(twisted.ToLiftingFin(), Hull).Solve(Water.At(8, 0)).SideForce, 0.01 * turned);
    }

    // Thin-section theory of the mean line NACA 2400: zero lift at -2.077 degrees (Abbott and von Doenhoff, 1959, Theory of Wing Sections, from memory; the closed integral gives the same).
    // A slender fin of constant camber lifts at no leeway as a flat one at that angle; a stubby one a few per cent more, since its load sits further aft. Tolerance 2 %: what is left of that at
    // span over chord 40, and six rows across the kink of the mean line.
    [Fact]
    public void ToLiftingFin_cambered_blade_lifts_at_no_leeway_as_its_mean_line()
    {
        SplineOutline slender = OutlineFamilies.Upright.WithRootChord(1, 0.025).Outline([])!;
        Blade flat = new(slender, [new(0, new FourDigitSection(0, 0, 10), 0)], 1e-4), cambered = new(slender, [new(0, new FourDigitSection(2, 4, 10), 0)], 1e-4);
        double expected = LiftingSurface.Create(flat.ToLiftingFin(), RootCondition.FullMirror).Solve(Water.At(8, 2.077)).SideForce;
        double found = LiftingSurface.Create(cambered.ToLiftingFin(), RootCondition.FullMirror).Solve(Water.At(8, 0)).SideForce;
        Assert.Equal(expected, Math.Abs(found), 0.02 * expected);
    }

    private static SplineOutline Outline() => OutlineFamilies.Raked.WithRootChord(0.32, 0.11).Outline([])!;
}
