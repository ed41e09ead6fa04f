using CsCheck;
using Finwright.Strength.Sections;

namespace Finwright.Strength.Tests.Sections;

public sealed class SectionSolverTests
{
    private static readonly int[] Refinements = [6, 12, 24];
    private static readonly double Modulus = SectionCases.Plain.ModulusY, Shear = SectionCases.Plain.ShearXY;

    [Fact]
    public void Of_ellipse_converges_with_the_fourth_order_to_the_closed_form()
    {
        // Saint-Venant: J = π a³ b³/(a² + b²) with half axes 15 and 5 mm. Quadratic elements on a boundary they follow: energy error ∝ h⁴.
        double exact = Math.PI * Math.Pow(15e-3 * 5e-3, 3) / (15e-3 * 15e-3 + 5e-3 * 5e-3);
        double[] errors = [.. Refinements.Select(n => Math.Abs(SectionSolver.Of(SectionCases.Ellipse(30e-3, 10e-3), new(n)).TorsionRigidity / Shear / exact - 1))];
        Assert.InRange(Math.Log2(errors[0] / errors[1]), 3.5, 4.6);
        Assert.InRange(Math.Log2(errors[1] / errors[2]), 3.5, 4.6);
        Assert.True(errors[2] < 1e-6);
    }

    [Fact]
    public void Of_rectangle_gets_the_series_from_above_as_the_mesh_is_refined()
    {
        // Warping from a mesh stores more energy than the true one: GJ falls towards the exact value. Corners of the warping limit nothing: it is smooth there.
        double exact = SectionCases.RectangleTorsion(30e-3, 10e-3);
        double coarse = SectionSolver.Of(SectionCases.Rectangle(30e-3, 10e-3), new(8, 1, 2)).TorsionRigidity / Shear;
        double fine = SectionSolver.Of(SectionCases.Rectangle(30e-3, 10e-3), new(16, 2, 4)).TorsionRigidity / Shear;
        Assert.True(coarse > fine && fine > exact, $"{coarse} {fine} {exact}");
        Assert.InRange(Math.Log2((coarse - exact) / (fine - exact)), 3.2, 4.8);
    }

    [Fact]
    public void Of_quarter_turned_rectangle_swaps_the_bendings_and_keeps_the_torsion()
    {
        SectionStiffness lying = SectionSolver.Of(SectionCases.Rectangle(30e-3, 10e-3)), standing = SectionSolver.Of(SectionCases.Rectangle(10e-3, 30e-3), new(8, 4, 8));
        Assert.Equal(1, standing.EdgeRigidity / lying.FlapRigidity, 12);
        Assert.Equal(1, standing.FlapRigidity / lying.EdgeRigidity, 12);
        // Two meshes of the same thing, each within 3e-4 of the series.
        Assert.InRange(standing.TorsionRigidity / lying.TorsionRigidity, 1 - 5e-4, 1 + 5e-4);
        Assert.Equal(0.015, lying.ShearCentre, 9);
        Assert.Equal(0.0, lying.ShearCentreZ, 9);
    }

    [Fact]
    public void Of_sections_of_any_size_scale_as_their_powers()
    {
        Gen.Select(Gen.Double[0.05, 0.4], Gen.Double[0.04, 0.2], Gen.Double[0.5, 3]).Hold((chord, ratio, scale) =>
        {
            CompositeSection plain = SectionCases.FourDigit(chord, ratio) with { WallDepth = _ => 0.03 * chord * ratio, Wall = SectionCases.Skin };
            CompositeSection scaled = SectionCases.FourDigit(chord * scale, ratio) with { WallDepth = _ => 0.03 * chord * scale * ratio, Wall = SectionCases.Skin };
            SectionStiffness a = SectionSolver.Of(plain), b = SectionSolver.Of(scaled);
            Assert.Equal(1, b.AxialStiffness / a.AxialStiffness / Math.Pow(scale, 2), 9);
            Assert.Equal(1, b.FlapRigidity / a.FlapRigidity / Math.Pow(scale, 4), 9);
            Assert.Equal(1, b.TorsionRigidity / a.TorsionRigidity / Math.Pow(scale, 4), 6);
            Assert.Equal(1, b.ShearCentre / a.ShearCentre / scale, 6);
            Assert.Equal(1, b.WallTorsionStress!.PerTorque / a.WallTorsionStress!.PerTorque * Math.Pow(scale, 3), 5);
        });
    }

    [Fact]
    public void Of_section_moved_anywhere_moves_its_centres_along_and_keeps_its_stiffness()
    {
        Gen.Select(Gen.Double[-0.2, 0.2], Gen.Double[-0.05, 0.05]).Hold((dx, dz) =>
        {
            CompositeSection at = SectionCases.Layered, moved = at with
            {
                LeadingX = dx,
                TrailingX = dx + 0.11,
                Surface = x => (at.Surface(Math.Clamp(x - dx, 0, 0.11)).Low + dz, at.Surface(Math.Clamp(x - dx, 0, 0.11)).High + dz),
            };
            SectionStiffness a = SectionSolver.Of(at), b = SectionSolver.Of(moved);
            Assert.Equal(1, b.FlapRigidity / a.FlapRigidity, 8);
            Assert.Equal(1, b.TorsionRigidity / a.TorsionRigidity, 6);
            Assert.Equal(a.Centroid + dx, b.Centroid, 9);
            Assert.Equal(dz, b.NeutralZ, 9);
            Assert.Equal(a.ShearCentre + dx, b.ShearCentre, 7);
            Assert.Equal(dz, b.ShearCentreZ, 7);
        }, 20);
    }

    [Fact]
    public void Of_parallelogram_has_its_shear_centre_in_the_middle_and_a_coupling_of_its_bendings()
    {
        // Point symmetry puts every centre in the middle. A rectangle sheared by s: ∫x z dA = s ∫x² dA.
        const double Lean = 0.2;
        CompositeSection section = SectionCases.Rectangle(30e-3, 10e-3) with { Surface = x => (Lean * (x - 15e-3) - 5e-3, Lean * (x - 15e-3) + 5e-3) };
        SectionStiffness stiffness = SectionSolver.Of(section);
        Assert.Equal(1, stiffness.ProductRigidity / (Lean * stiffness.EdgeRigidity), 9);
        Assert.Equal(15e-3, stiffness.ShearCentre, 9);
        Assert.Equal(0, stiffness.ShearCentreZ, 9);
        // No bending moment about z may come from the stress: ∫σ (x − xc) dA = 0, by a sum over the section.
        double moment = 0, own = 0;
        for (int i = 0; i < 300; i++)
        {
            for (int k = 0; k < 100; k++)
            {
                double x = 30e-3 * (i + 0.5) / 300, z = section.Surface(x).Low + 10e-3 * (k + 0.5) / 100, stress = stiffness.BendingStress(1, x, z, Modulus);
                moment += stress * (x - 15e-3) * 1e-8;
                own -= stress * z * 1e-8;
            }
        }

        Assert.Equal(0, moment, 3);
        Assert.Equal(1, own, 3);
    }

    [Fact]
    public void Of_half_round_strip_has_its_shear_centre_outside_the_metal()
    {
        // Thin circular arc of a half turn, radius r: shear centre 4 r/π from the centre (Timoshenko, Strength of Materials, shear centre; from memory), here r = 50 mm, wall 1 mm,
        // arc over x. The strip is a graph z(x) only away from its ends, so 60° to each side are taken: e = 2 r (sin a − a cos a)/(a − sin a cos a).
        const double Radius = 50e-3, Half = Math.PI / 3, Wall = 0.5e-3;
        double edge = Radius * Math.Sin(Half);
        CompositeSection section = new()
        {
            LeadingX = -edge,
            TrailingX = edge,
            Surface = x => (Math.Sqrt(Radius * Radius - x * x) - Wall / 2 / Math.Sqrt(1 - x * x / Radius / Radius), Math.Sqrt(Radius * Radius - x * x) + Wall / 2 / Math.Sqrt(1 - x * x / Radius / Radius)),
            WallDepth = _ => 0,
            Wall = SectionCases.Plain,
            Core = SectionCases.Plain,
        };
        SectionStiffness stiffness = SectionSolver.Of(section, new(48));
        double expected = 2 * Radius * (Math.Sin(Half) - Half * Math.Cos(Half)) / (Half - Math.Sin(Half) * Math.Cos(Half));
        // 0.1 %: thin-wall theory at a wall of 1 % of the radius.
        Assert.InRange(stiffness.ShearCentreZ / expected, 0.999, 1.001);
        Assert.Equal(0, stiffness.ShearCentre, 7);
        // Open thin strip: J = length · wall³/3, less the ends' 0.63 of a wall.
        Assert.InRange(stiffness.TorsionRigidity / Shear / (2 * Half * Radius * Math.Pow(Wall, 3) / 3), 0.98, 1.0);
    }

    [Fact]
    public void Of_layered_rectangle_with_thin_layers_gets_sandwich_torsion()
    {
        // Thin laminate: GJ → 4 b ∫G z² dz for b ≫ h, less the ends (0.63 of a thickness in one material). b/h = 40 leaves 2 %.
        CompositeSection section = SectionCases.Rectangle(0.4, 10e-3) with { WallDepth = _ => 0.0012, Wall = SectionCases.Skin, Core = SectionCases.Core };
        double wall = SectionCases.Skin.ShearXY, core = SectionCases.Core.ShearXY;
        double laminate = 4 * 0.4 * 2 / 3 * (core * Math.Pow(3.8e-3, 3) + wall * (Math.Pow(5e-3, 3) - Math.Pow(3.8e-3, 3)));
        Assert.InRange(SectionSolver.Of(section).TorsionRigidity / laminate, 0.98, 0.99);
    }

    [Fact]
    public void Of_rod_of_the_same_material_changes_nothing()
    {
        CompositeSection plain = SectionCases.FourDigit(0.11, 0.12);
        SectionStiffness without = SectionSolver.Of(plain), with = SectionSolver.Of(plain with { Rods = [new(0.03, 0.001, 0.004, Modulus, Shear, 1200)] });
        Assert.Equal(without, with with { WallTorsionStress = without.WallTorsionStress, CoreTorsionStress = without.CoreTorsionStress });
    }

    [Fact]
    public void Of_stiff_rod_at_the_centre_of_a_round_bar_adds_its_polar_moment()
    {
        // Concentric circles do not warp: GJ = G π R⁴/2 + (G_r − G) π r⁴/2.
        CompositeSection bar = SectionCases.Ellipse(20e-3, 20e-3);
        double rod = SectionSolver.Of(bar with { Rods = [new(0.01, 0, 0.006, 125e9, 4.2e9, 1500)] }).TorsionRigidity - SectionSolver.Of(bar).TorsionRigidity;
        Assert.Equal(1, rod / ((4.2e9 - Shear) * Math.PI * Math.Pow(3e-3, 4) / 2), 6);
    }

    [Fact]
    public void Of_rod_off_the_centre_adds_what_the_same_rod_adds_when_it_is_meshed()
    {
        // Second method: the rod as a round core in an otherwise solid wall, the material decided point by point on a fine mesh (hence 3 %).
        const double Rod = 4.2e9, Radius = 1.5e-3, At = 14e-3;
        CompositeSection plain = SectionCases.Ellipse(20e-3, 16e-3);
        CompositeSection meshed = plain with
        {
            WallDepth = x => Math.Abs(x - At) < Radius ? plain.Surface(x).High - Math.Sqrt(Radius * Radius - (x - At) * (x - At)) : 0.02,
            Core = SectionCases.Plain with { ShearXY = Rod, ShearYZ = Rod },
        };
        double before = SectionSolver.Of(plain).TorsionRigidity;
        double dilute = SectionSolver.Of(plain with { Rods = [new(At, 0, 2 * Radius, Modulus, Rod, 1200)] }).TorsionRigidity - before;
        double full = SectionSolver.Of(meshed, new(120, 4, 16)).TorsionRigidity - before;
        Assert.InRange(dilute / full, 0.97, 1.03);
    }

    [Fact]
    public void Of_hollow_loses_its_area_and_its_bending()
    {
        CompositeSection plain = SectionCases.Rectangle(40e-3, 10e-3);
        // Edges on the layers' borders (2.5 mm), so that the sums are exact.
        SectionStiffness without = SectionSolver.Of(plain), with = SectionSolver.Of(plain with { Voids = [new(0.012, 0.021, -0.0025, 0.0025)] });
        Assert.Equal(9e-3 * 5e-3, without.Area - with.Area, 9);
        // The hollow keeps 1e-7 of the stiffness.
        Assert.Equal(1, (without.FlapRigidity - with.FlapRigidity) / (9e-3 * Math.Pow(5e-3, 3) / 12 * Modulus), 6);
        // A hollow in the middle of the thickness costs torsion about what it costs bending, in shares of the whole.
        Assert.InRange(1 - with.TorsionRigidity / without.TorsionRigidity, 0.01, 0.06);
        Assert.True(with.ShearCentre > without.ShearCentre);
    }

    [Fact]
    public void Of_wall_thicker_than_the_section_is_all_wall()
    {
        CompositeSection plain = SectionCases.FourDigit(0.11, 0.12);
        SectionStiffness wall = SectionSolver.Of(plain with { WallDepth = _ => 0.02 }), core = SectionSolver.Of(plain);
        Assert.Null(wall.CoreTorsionStress);
        Assert.Null(core.WallTorsionStress);
        Assert.Equal(1, wall.FlapRigidity / core.FlapRigidity, 9);
        Assert.InRange(wall.TorsionRigidity / core.TorsionRigidity, 1 - 1e-5, 1 + 1e-5);
    }

    [Fact]
    public void Of_impossible_sections_says_what_is_wrong()
    {
        CompositeSection plain = SectionCases.Rectangle(30e-3, 10e-3);
        Assert.Throws<ArgumentException>(() => SectionSolver.Of(plain with { Surface = _ => (0.001, -0.001) }));
        Assert.Throws<ArgumentException>(() => SectionSolver.Of(plain with { Surface = _ => (0, 0) }));
        Assert.Throws<ArgumentException>(() => SectionSolver.Of(plain with { Surface = _ => (0, double.NaN) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionSolver.Of(plain with { TrailingX = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionSolver.Of(plain with { Core = SectionCases.Core with { ShearXY = 0 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionSolver.Of(plain with { Rods = [new(0.01, 0, -0.004, 1e9, 1e9, 1)] }));
    }
}
