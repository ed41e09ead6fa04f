using Finwright.Strength.FromDesign;
using Finwright.Strength.Margins;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;
using Finwright.Strength.Tests.FromDesign;
using Finwright.Strength.Tests.Plates;

namespace Finwright.Strength.Tests.Margins;

public sealed class LayerMarginsTests
{
    private const double Force = 20, Length = 0.2, Width = 0.03, Height = 0.01, Modulus = 2900e6;

    // The grid begins half the root's thickness away from the clamp.
    private const double Begins = Height / 2;

    private static readonly FinMaterials Materials = MaterialsFromDesign.Of(BuiltFin.Plain, [])!;

    [Fact]
    public void Of_a_bent_strip_finds_the_stress_of_the_beam_beside_its_root()
    {
        PlateFin strip = PlateCases.Strip;
        PlateSolution bent = PlateModel.Create(strip).Solve(PlateCases.Line(strip, Length, Force));
        IReadOnlyList<StressPeak> peaks = LayerMargins.Of(bent, strip, Materials, PrintDirection.Standing);
        // M c/I with M = F (L - y). Tolerance 1 %: the plate's ends.
        double stress = Force * (Length - Begins) * 6 / (Width * Height * Height);
        StressPeak across = peaks.Single(peak => peak.Part is StressedPart.WallAcrossLayers), along = peaks.Single(peak => peak.Part is StressedPart.WallAlongLayers);
        Assert.Equal(stress, across.Stress, 0.01 * stress);
        Assert.Equal(stress, along.Stress, 0.01 * stress);
        Assert.Equal(Begins, across.Y, 1e-9);
        Assert.Equal(Materials.Printed.StrengthAcross.Value / across.Stress, across.Reserve, 1e-12);
        Assert.Equal(Materials.Printed.StrengthAcross.Low / across.Stress, across.LeastReserve, 1e-12);
        // All wall: nothing is asked of a core.
        StressPeak core = peaks.Single(peak => peak.Part is StressedPart.Core);
        Assert.Equal((double.MaxValue, double.MaxValue), (core.Reserve, core.LeastReserve));
        Assert.DoesNotContain(LayerMargins.Of(bent, strip, Materials, PrintDirection.Lying), peak => peak.Part is StressedPart.WallAcrossLayers);
    }

    [Fact]
    public void Of_a_strip_of_two_materials_gives_each_its_share()
    {
        // Skins of 1.2 mm with half the stiffness of the core: E κ z, κ = M/EI.
        const double Skin = 1.2e-3;
        PlateFin strip = PlateCases.Strip with { Wall = PlateCases.Uncontracting(Modulus / 2, Modulus / 5.4), WallDepth = (_, _) => Skin };
        PlateSolution bent = PlateModel.Create(strip).Solve(PlateCases.Line(strip, Length, Force));
        IReadOnlyList<StressPeak> peaks = LayerMargins.Of(bent, strip, Materials, PrintDirection.Standing);
        double inside = Height - 2 * Skin, rigidity = Modulus * Width / 12 * (Math.Pow(inside, 3) + 0.5 * (Math.Pow(Height, 3) - Math.Pow(inside, 3)));
        double curvature = Force * (Length - Begins) / rigidity;
        double wall = Modulus / 2 * curvature * Height / 2, core = Modulus * curvature * inside / 2;
        // 1 %: the plate's ends.
        Assert.Equal(wall, peaks.Single(peak => peak.Part is StressedPart.WallAcrossLayers).Stress, 0.01 * wall);
        Assert.Equal(core, peaks.Single(peak => peak.Part is StressedPart.Core).Stress, 0.01 * core);
    }

    [Fact]
    public void Of_a_rod_that_runs_into_the_base_is_that_of_a_composite_beam()
    {
        const double Diameter = 4e-3, Stiff = 125e9;
        PlateFin strip = PlateCases.Strip with { Rods = [new(Width / 2, -0.05, Width / 2, 0.25, 0, Diameter, Stiff, 4.2e9, 1500)] };
        PlateSolution bent = PlateModel.Create(strip).Solve(PlateCases.Line(strip, Length, Force));
        IReadOnlyList<StressPeak> peaks = LayerMargins.Of(bent, strip, Materials, PrintDirection.Standing);
        double rigidity = Modulus * Width * Math.Pow(Height, 3) / 12 + (Stiff - Modulus) * Math.PI * Math.Pow(Diameter, 4) / 64;
        StressPeak rod = peaks.Single(peak => peak.Part is StressedPart.Rod);
        Assert.InRange(rod.Y, 0, 0.02);
        double stress = Stiff * Force * (Length - rod.Y) / rigidity * Diameter / 2;
        // 3 %: the strip bends a little less along the rod than beside it, and more at its clamped end.
        Assert.Equal(stress, rod.Stress, 0.03 * stress);
        // The rod's share of the shear force, over π r²; nothing is asked of an end that goes on into the base.
        double shear = Force * Stiff * Math.PI * Math.Pow(Diameter, 4) / 64 / rigidity / (Math.PI * Diameter * Diameter / 4);
        StressPeak bond = peaks.Single(peak => peak.Part is StressedPart.RodBond);
        Assert.InRange(bond.Stress, shear, 1.5 * shear);
        Assert.Equal(Materials.Rod.BondStrength, bond.Strength);
    }

    [Theory]
    [InlineData(0.02, 0.18)]
    [InlineData(0.18, 0.02)]
    public void Of_a_rod_that_begins_in_the_blade_is_judged_two_diameters_inside_its_ends(double from, double to)
    {
        const double Diameter = 4e-3;
        PlateFin strip = PlateCases.Strip with { Rods = [new(Width / 2, from, Width / 2, to, 0, Diameter, 125e9, 4.2e9, 1500)] };
        IReadOnlyList<StressPeak> peaks = LayerMargins.Of(PlateModel.Create(strip).Solve(PlateCases.Line(strip, Length, Force)), strip, Materials, PrintDirection.Standing);
        // The moment falls from the clamp on: the worst place is the first that is judged, whichever end the rod is told from.
        StressPeak rod = peaks.Single(peak => peak.Part is StressedPart.Rod);
        Assert.Equal("carbon rod", rod.Name);
        Assert.InRange(rod.Y, 0.02 + 2 * Diameter - 1e-9, 0.02 + 4 * Diameter);
    }

    [Fact]
    public void Of_two_rods_tells_them_apart_by_number()
    {
        PlateRod Rod(double x) => new(x, -0.05, x, 0.25, 0, 3e-3, 125e9, 4.2e9, 1500);
        PlateFin strip = PlateCases.Strip with { Rods = [Rod(Width / 3), Rod(2 * Width / 3)] };
        IReadOnlyList<StressPeak> peaks = LayerMargins.Of(PlateModel.Create(strip).Solve(PlateCases.Line(strip, Length, Force)), strip, Materials, PrintDirection.Standing);
        Assert.Equal(["carbon rod 1", "carbon rod 2"], peaks.Where(peak => peak.Part is StressedPart.Rod).Select(peak => peak.Name));
        Assert.Equal(["bond of the carbon rod 1", "bond of the carbon rod 2"], peaks.Where(peak => peak.Part is StressedPart.RodBond).Select(peak => peak.Name));
    }

    [Fact]
    public void Of_a_rod_that_ends_at_the_root_asks_its_bond_for_the_moment_there()
    {
        PlateFin through = PlateCases.Strip with { Rods = [new(Width / 2, -0.05, Width / 2, 0.25, 0, 4e-3, 125e9, 4.2e9, 1500)] };
        double Bond(PlateFin fin) => LayerMargins.Of(PlateModel.Create(fin).Solve(PlateCases.Line(fin, Length, Force)), fin, Materials, PrintDirection.Standing)
            .Single(peak => peak.Part is StressedPart.RodBond).Stress;
        Assert.True(Bond(through with { Rods = [through.Rods[0] with { FromY = 0 }] }) > 2 * Bond(through));
    }

    [Fact]
    public void WallUse_is_the_worse_of_along_and_across()
    {
        PlateFin strip = PlateCases.Strip;
        PlateSolution bent = PlateModel.Create(strip).Solve(PlateCases.Line(strip, Length, Force));
        double stress = Force * 0.1 * 6 / (Width * Height * Height);
        // 0.5 %: smoothed stress.
        Assert.Equal(stress / Materials.Printed.StrengthAcross.Value, LayerMargins.WallUse(bent, Materials, PrintDirection.Standing, 0.015, 0.1), 5e-3 * stress / Materials.Printed.StrengthAcross.Value);
        Assert.Equal(stress / Materials.Printed.StrengthAlong.Value, LayerMargins.WallUse(bent, Materials, PrintDirection.Lying, 0.015, 0.1), 5e-3 * stress / Materials.Printed.StrengthAlong.Value);
    }
}
