using Finwright.Design;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Margins;
using Finwright.Strength.Plates;
using Finwright.Strength.Tests.FromDesign;

namespace Finwright.Strength.Tests.Margins;

public sealed class StructureMarginsTests
{
    [Theory]
    // Peterson, 1974, Stress Concentration Factors, shouldered bar in bending, from memory. Tolerance: last digit.
    [InlineData(0.10, 1.75)]
    [InlineData(0.25, 1.35)]
    public void CornerFactor_is_petersons(double fillet, double factor) => Assert.Equal(factor, StructureMargins.CornerFactor(fillet * 0.02, 0.02), 0.005);

    [Fact]
    public void CornerFactor_falls_with_the_fillet_and_stays_between_one_and_three()
    {
        double before = StructureMargins.CornerFactor(0, 0.015);
        Assert.InRange(before, 2.5, 3);
        foreach (double fillet in (double[])[0.5e-3, 1e-3, 3e-3, 8e-3, 15e-3])
        {
            double now = StructureMargins.CornerFactor(fillet, 0.015);
            Assert.InRange(now, 1, before - 1e-3);
            before = now;
        }

        Assert.Equal(1, StructureMargins.CornerFactor(1, 0.015));
        Assert.Equal(3, StructureMargins.CornerFactor(0, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => StructureMargins.CornerFactor(-1e-3, 0.01));
    }

    [Fact]
    public void Of_a_fin_in_one_print_counts_the_corner_at_its_root()
    {
        FinDesign one = BuiltFin.Plain with { Base = BuiltFin.Plain.Base with { Printed = BasePrinting.AsOne }, Shape = BuiltFin.Plain.Shape with { Flange = new() { FilletMm = 4 } } };
        FinStructure fin = BuiltFin.Of(one);
        PlateSolution bent = fin.Plate.Solve([new(0.03, 0.12, 200)]);
        StressPeak corner = Assert.Single(StructureMargins.Of(fin, bent), peak => peak.Part is StressedPart.RootCorner);
        SectionAtDepth root = fin.Sections[0];
        // E κ c of the root's section as a beam, 200 N at 120 mm.
        double smooth = fin.Materials.Printed.ModulusAcross.Value * 24 * root.Thickness / 2 / root.Stiffness.FlapRigidity;
        Assert.Equal(StructureMargins.CornerFactor(4e-3, root.Thickness) * smooth, corner.Stress, 1e-6 * smooth);
        Assert.Equal(fin.Materials.Printed.StrengthAcross, corner.Strength);

        // Laid on its side the layers run along the span.
        FinStructure lying = BuiltFin.Of(one with { Parts = one.Parts with { BladeAttitude = PrintAttitude.Lying } });
        StressPeak along = Assert.Single(StructureMargins.Of(lying, lying.Plate.Solve([new(0.03, 0.12, 200)])), peak => peak.Part is StressedPart.RootCorner);
        smooth = lying.Materials.Printed.ModulusAlong.Value * 24 * root.Thickness / 2 / lying.Sections[0].Stiffness.FlapRigidity;
        Assert.Equal(StructureMargins.CornerFactor(4e-3, root.Thickness) * smooth, along.Stress, 1e-6 * smooth);
        Assert.Equal(lying.Materials.Printed.StrengthAlong, along.Strength);

        FinStructure apart = BuiltFin.Of(BuiltFin.Plain);
        Assert.DoesNotContain(StructureMargins.Of(apart, apart.Plate.Solve([new(0.03, 0.12, 200)])), peak => peak.Part is StressedPart.RootCorner);
    }
}
