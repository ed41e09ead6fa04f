using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;
using Finwright.Geometry.Sections;
using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

/// <summary>Fins of a measured section to stall and past it.</summary>
public class FinStallTests
{
    // A measured section lets go within one degree; whatever the outline, the answer must be finite and brought together at every leeway, and say when it is stalled.
    [Theory]
    [InlineData("upright")]
    [InlineData("raked")]
    [InlineData("steep")]
    [InlineData("delta")]
    public void Solve_measured_section_is_brought_together_at_every_leeway(string family)
    {
        LiftingSurface fin = Fin(family);
        LiftingResult before = fin.Solve(Water.At(8, 0));
        for (double leeway = 0.75; leeway <= 30; leeway += 0.75)
        {
            LiftingResult result = fin.Solve(Water.At(8, leeway));
            Assert.NotEqual(LiftingStatus.NotConverged, result.Status);
            Assert.True(double.IsFinite(result.SideForce + result.Drag.Total + result.YawMoment + result.RollMoment));
            Assert.True(result.CL < 1.41);
            Assert.Equal(result.StallShare > 1, result.Status == LiftingStatus.Stalled);
            if (result.Status == LiftingStatus.Attached)
                Assert.True(result.SideForce > before.SideForce);
            before = result;
        }
    }

    // Sweep lowers what a section can hold square to its quarter chord, so the more a fin is raked the less side force it carries before stall starts.
    [Fact]
    public void StallOf_more_rake_stalls_at_less_force_and_nearer_to_the_tip()
    {
        StallLimits upright = Fin("upright").StallOf(Water.At(8, 0)), raked = Fin("raked").StallOf(Water.At(8, 0)), steep = Fin("steep").StallOf(Water.At(8, 0));
        Assert.True(upright.Onset!.CL > raked.Onset!.CL && raked.Onset.CL > steep.Onset!.CL);
        Assert.True(raked.OnsetDepth > upright.OnsetDepth);
    }

    [Fact]
    public void Solve_stalled_raked_fin_says_that_it_holds_more_than_computed()
    {
        LiftingResult steep = Fin("steep").Solve(Water.At(8, 16)), upright = Fin("upright").Solve(Water.At(8, 24)), attached = Fin("steep").Solve(Water.At(8, 5));
        Assert.True(steep.Validity.HasFlag(LiftingValidity.StalledRake));
        Assert.True(upright.Validity.HasFlag(LiftingValidity.StalledStrips) && !upright.Validity.HasFlag(LiftingValidity.StalledRake));
        Assert.False(attached.Validity.HasFlag(LiftingValidity.StalledRake));
    }

    // Stall must not depend on how finely the fin is cut. Tolerance 2 % of the side force at onset.
    [Fact]
    public void StallOf_onset_does_not_depend_on_the_number_of_strips()
    {
        double usual = Fin("raked").StallOf(Water.At(8, 0)).Onset!.SideForce, fine = Fin("raked", new() { Strips = 32, Rows = 8 }).StallOf(Water.At(8, 0)).Onset!.SideForce;
        Assert.Equal(fine, usual, 0.02 * fine);
    }

    private static LiftingSurface Fin(string family, LiftingOptions? options = null)
    {
        OutlineFamilies outline = family switch
        {
            "upright" => OutlineFamilies.Upright,
            "raked" => OutlineFamilies.Raked,
            "steep" => OutlineFamilies.SteepRake,
            _ => OutlineFamilies.WideDelta,
        };
        Blade blade = new(outline.WithRootChord(0.35, 0.12).Outline([])!, [new(0, new FourDigitSection(0, 0, 12), 0)], 0.001);
        return LiftingSurface.Create(blade.ToLiftingFin(_ => TablePolar.Naca0012), RootCondition.Hull(0.25, 0.8, 0.1), options);
    }
}
