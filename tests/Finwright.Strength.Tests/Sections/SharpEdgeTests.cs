using Finwright.Strength.Materials;
using Finwright.Strength.Sections;

namespace Finwright.Strength.Tests.Sections;

public sealed class SharpEdgeTests
{
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.05)]
    [InlineData(0.13)]
    [InlineData(0.3)]
    public void Of_a_section_with_a_sharp_trailing_edge_is_close_to_the_open_one(double chord)
    {
        // The closed four-digit section differs from the open one by less than 0.2 % of area near the edge; bending and twisting hardly see it.
        SectionStiffness sharp = Section(chord, -0.1036), open = Section(chord, -0.1015);
        Assert.Equal(1, sharp.FlapRigidity / open.FlapRigidity, 5e-3);
        Assert.Equal(1, sharp.TorsionRigidity / open.TorsionRigidity, 5e-3);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-18)]
    [InlineData(1e-9)]
    public void Of_a_section_whose_edge_is_next_to_nothing_is_that_of_a_sharp_one(double edge)
    {
        // An edge left by rounding once made the layers cross one another.
        Assert.Equal(1, Section(0.05, -0.1036, edge).TorsionRigidity / Section(0.05, -0.1036).TorsionRigidity, 1e-4);
    }

    [Theory]
    [InlineData(0.002)]
    [InlineData(0.006)]
    [InlineData(0.02)]
    public void Of_a_section_that_ends_in_a_step_before_its_chord_does_loses_little(double early)
    {
        // A turned section ends at chord times cosine; what is missing there is a step down from the blunt edge.
        SectionStiffness whole = Section(0.12, -0.1015, 0, 0.12), cut = Section(0.12, -0.1015, 0, 0.12 * (1 - early));
        Assert.InRange(cut.TorsionRigidity / whole.TorsionRigidity, 0.99, 1.001);
        Assert.InRange(cut.FlapRigidity / whole.FlapRigidity, 0.99, 1.001);
    }

    private static SectionStiffness Section(double chord, double last, double edge = 0, double end = 1)
    {
        const double ratio = 0.1;
        double Half(double x)
        {
            if (x > end)
                return 0;
            double s = Math.Clamp(x / chord, 0, 1);
            return Math.Max(0, 5 * ratio * chord * (0.2969 * Math.Sqrt(s) - 0.1260 * s - 0.3516 * s * s + 0.2843 * s * s * s + last * s * s * s * s));
        }

        return SectionSolver.Of(new()
        {
            LeadingX = 0,
            TrailingX = chord,
            Surface = x => (-Math.Max(Half(x), edge / 2), Math.Max(Half(x), edge / 2)),
            WallDepth = _ => double.MaxValue,
            Wall = Elasticity.Isotropic(2.4e9, 0.38, 1270),
            Core = Elasticity.Isotropic(2.4e9, 0.38, 1270),
        });
    }
}
