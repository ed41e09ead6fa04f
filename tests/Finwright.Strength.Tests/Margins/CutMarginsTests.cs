using Finwright.Design;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Margins;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;
using Finwright.Strength.Tests.FromDesign;
using Finwright.Strength.Tests.Plates;

namespace Finwright.Strength.Tests.Margins;

/// <summary>The bond of a cut, and the shear between layers.</summary>
public sealed class CutMarginsTests
{
    [Fact]
    public void Of_a_cut_asks_its_bond_for_the_pull_of_the_beam_there()
    {
        FinStructure fin = BuiltFin.Of(WithCuts(new Cut { AtDepthMm = 100 }, new Cut { AtDepthMm = 200 }));
        PlateSolution bent = fin.Plate.Solve([new(0.08, 0.3, 200)]);

        StressPeak[] cuts = [.. StructureMargins.Of(fin, bent).Where(peak => peak.Part is StressedPart.Cut)];

        Assert.Equal(["bond of cut 1", "bond of cut 2"], cuts.Select(cut => cut.Name));
        foreach ((StressPeak cut, double depth) in cuts.Zip((double[])[0.1, 0.2]))
        {
            Assert.Equal(depth, cut.Y, 1e-12);
            Assert.Equal(fin.Materials.FaceBond, cut.Strength);
            // E κ c with M = 200 N (0.3 m - y), on the section nearest above. Tolerance a fifth: sections stand apart, the fin tapers, and a plate also bends across.
            SectionAtDepth section = fin.Sections.MinBy(own => Math.Abs(own.Depth - depth))!;
            double beam = fin.Materials.Printed.ModulusAcross.Value * 200 * (0.3 - depth) * section.Thickness / 2 / section.Stiffness.FlapRigidity;
            Assert.InRange(cut.Stress, 0.8 * beam, 1.2 * beam);
            // On the thick part of the section, not at its edges.
            Assert.InRange((cut.X - section.LeadingEdge) / section.Chord, 0.1, 0.6);
        }

        Assert.Equal("bond of the cut", Single(fin: BuiltFin.Of(WithCuts(new Cut { AtDepthMm = 100 }))).Name);
    }

    [Fact]
    public void Of_a_sloping_cut_lies_on_its_slope()
    {
        FinStructure fin = BuiltFin.Of(WithCuts(new Cut { AtDepthMm = 100, SlopeDegrees = 20 }));

        StressPeak cut = Single(fin);

        // Through 100 mm at the quarter of the chord, 20° deeper toward the trailing edge.
        PlateFin plate = fin.Plate.Fin;
        double quarter = plate.LeadingEdge(0.1) + (plate.TrailingEdge(0.1) - plate.LeadingEdge(0.1)) / 4;
        Assert.Equal(0.1 + Math.Tan(20 * Math.PI / 180) * (cut.X - quarter), cut.Y, 1e-12);
        Assert.NotEqual(quarter, cut.X, 1e-4);
        // Whichever side the load pushes to, one side of the bond is pulled by as much.
        Assert.Equal(cut.Stress, Single(fin, -200).Stress, 0.02 * cut.Stress);
    }

    [Fact]
    public void WallUse_of_a_twisted_strip_is_its_shear_over_the_shear_strength()
    {
        const double Torque = 1, Width = 0.03, Height = 0.01;
        FinMaterials materials = MaterialsFromDesign.Of(BuiltFin.Plain, [])!;
        PlateSolution twisted = PlateModel.Create(PlateCases.Strip).Solve([new(0.03, 0.2, Torque / Width), new(0, 0.2, -Torque / Width)]);

        StressState wall = twisted.StressAt(Width / 2, 0.1).Upper;
        // Bar three times as wide as thick in torsion: T/(0.267 b h²), Timoshenko and Goodier, 1970, Theory of Elasticity, table of rectangular bars, from memory. 1 %: the plate is not that bar.
        double shear = Math.Abs(wall.TauXY), bar = Torque / (0.267 * Width * Height * Height);
        Assert.Equal(bar, shear, 0.01 * bar);
        // Between layers shear may reach 0.6 of the strength in tension (the rule at the constant); along them von Mises, √3 τ.
        double expected = Math.Max(shear / 0.6 / materials.Printed.StrengthAcross.Value, Math.Sqrt(3) * shear / materials.Printed.StrengthAlong.Value);
        Assert.Equal(expected, LayerMargins.WallUse(twisted, materials, PrintDirection.Standing, Width / 2, 0.1), 0.01 * expected);
    }

    private static FinDesign WithCuts(params Cut[] cuts) => BuiltFin.Plain with { Parts = BuiltFin.Plain.Parts with { Cuts = cuts } };

    private static StressPeak Single(FinStructure fin, double force = 200) =>
        Assert.Single(StructureMargins.Of(fin, fin.Plate.Solve([new(0.08, 0.3, force)])), peak => peak.Part is StressedPart.Cut);
}
