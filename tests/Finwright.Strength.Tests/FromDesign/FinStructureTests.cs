using Finwright.Design;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Tests.FromDesign;

public sealed class FinStructureTests
{
    public static TheoryData<string> Demos => [.. BuiltFin.Demos];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Of_every_demo_holds_and_balances(string demo)
    {
        FinStructure fin = BuiltFin.Of(BuiltFin.Demo(demo));
        double depth = 0.4 * fin.Plate.Fin.Span, force = 150;
        foreach (PlateModel plate in (PlateModel[])[fin.Plate, fin.PlateUnder(force * depth)])
        {
            Assert.Equal(PlateStatus.Solved, plate.Status);
            PlateSolution bent = plate.Solve([new(plate.Fin.LeadingEdge(depth) + 0.03, depth, force)]);
            Assert.Equal(PlateStatus.Solved, bent.Status);
            Assert.Equal(-force, bent.ReactionForce, 1e-6);
            Assert.Equal(-force * depth, bent.ReactionMomentX, 1e-6);
            Assert.Equal(2 * bent.StrainEnergy, bent.ExternalWork, 1e-8 * bent.ExternalWork);
            Assert.InRange(bent.DeflectionShare, 1e-3, 0.2);
        }

        for (int i = 0; i < fin.Root.Ties.Count; i++)
            Assert.InRange(fin.TieStrength(i), fin.TieStrengthRange(i).Low, fin.TieStrengthRange(i).High);
        Assert.Equal(fin.Sections.Select(own => own.Depth).Order(), fin.Sections.Select(own => own.Depth));
        Assert.All(fin.Sections, own => Assert.True(own.Stiffness.FlapRigidity > 0 && own.Stiffness.TorsionRigidity > 0));
    }

    [Fact]
    public void Of_what_the_bench_showed_scales_plate_and_sections_alike()
    {
        FinStructure usual = BuiltFin.Of(BuiltFin.Plain), half = BuiltFin.Of(BuiltFin.Plain with { Materials = new() { WallFactor = 0.5, CoreFactor = 0.5 } });
        PlateLoad[] load = [new(0.05, 0.2, 100)];
        // Both parts of half the stiffness: everything bends twice as far.
        Assert.Equal(2 * usual.Plate.Solve(load).MaximumDeflection, half.Plate.Solve(load).MaximumDeflection, 1e-9);
        for (int i = 0; i < usual.Sections.Count; i++)
            Assert.Equal(0.5 * usual.Sections[i].Stiffness.FlapRigidity, half.Sections[i].Stiffness.FlapRigidity, 1e-9 * usual.Sections[i].Stiffness.FlapRigidity);
    }

    [Fact]
    public void Of_a_lying_blade_is_stiffer_along_its_span()
    {
        FinDesign lying = BuiltFin.Plain with { Parts = new() { BladeAttitude = PrintAttitude.Lying } };
        FinStructure standing = BuiltFin.Of(BuiltFin.Plain), flat = BuiltFin.Of(lying);
        Assert.Equal(PrintDirection.Lying, flat.Direction);
        Assert.True(flat.Plate.Fin.Wall.ModulusY > standing.Plate.Fin.Wall.ModulusY);
    }

    [Fact]
    public void Of_a_rod_is_as_thick_as_the_rod_and_not_as_its_bore()
    {
        FinDesign design = BuiltFin.Demo("eelgrass-rake");
        PlateFin fin = BuiltFin.Of(design).Plate.Fin;
        Assert.Equal(design.Hardware.CarbonRods.Select(rod => rod.DiameterMm), fin.Rods.Select(rod => Math.Round(1e3 * rod.Diameter, 6)));
        Assert.All(fin.Rods, rod => Assert.True(rod.FromY < 0 && rod.ToY > 0.05));
    }
}
