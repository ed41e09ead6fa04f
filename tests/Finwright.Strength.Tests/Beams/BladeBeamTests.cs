using Finwright.Strength.Beams;
using Finwright.Strength.Plates;
using Finwright.Strength.Sections;
using Finwright.Strength.Tests.Plates;
using Finwright.Strength.Tests.Sections;

namespace Finwright.Strength.Tests.Beams;

public sealed class BladeBeamTests
{
    [Fact]
    public void SectionAt_root_of_a_layered_fin_is_the_layered_section()
    {
        // Chord 110 mm, 12 %, walls 1.2 mm: the published section.
        SectionStiffness root = SectionSolver.Of(BladeBeam.SectionAt(PlateCases.Layered, 0)), same = SectionSolver.Of(SectionCases.Layered);
        Assert.Equal(1, root.FlapRigidity / same.FlapRigidity, 6);
        Assert.Equal(1, root.TorsionRigidity / same.TorsionRigidity, 6);
        Assert.Equal(same.ShearCentre, root.ShearCentre, 7);
    }

    [Fact]
    public void Sideways_of_a_strip_is_the_beam_it_is()
    {
        IReadOnlyList<BladeSection> sections = BladeBeam.Sections(PlateCases.Strip, 3);
        double exact = 20 * Math.Pow(0.2, 3) / (3 * 2900e6 * 0.03 * 1e-6 / 12) + 20 * 0.2 / (5.0 / 6 * 2900e6 / 2.7 * 0.03 * 0.01);
        Assert.Equal(1, BladeBeam.Sideways(sections).Solve([new(0.015, 0.2, 20)]).DeflectionAt(0.015, 0.2) / exact, 9);
        double edge = Math.Pow(0.2, 3) / (3 * 2900e6 * 0.01 * 27e-6 / 12) + 0.2 / (5.0 / 6 * 2900e6 / 2.7 * 0.03 * 0.01);
        Assert.Equal(1, EdgewiseCompliance.At(BladeBeam.Edgewise(sections), 0.2) / edge, 9);
    }

    [Fact]
    public void SectionAt_with_rods_and_hollows_cuts_them_where_they_are()
    {
        PlateFin fin = PlateCases.Strip with
        {
            Rods =
            [
                new(0.010, 0, 0.010, 0.1, 0.001, 0.004, 125e9, 4.2e9, 1500),
                new(0.005, 0, 0.025, 0.02, 0, 0.003, 100e9, 4e9, 1500),
                new(0.002, 0.01, 0.028, 0.011, 0, 0.003, 100e9, 4e9, 1500),
            ],
            Voids = [PlateVoid.Circle(0.02, 0.01, 0.005, -0.002, 0.002), PlateVoid.Rectangle(0.001, 0.004, 0.15, 0.18, -0.001, 0.001)],
        };
        CompositeSection section = BladeBeam.SectionAt(fin, 0.013);
        // Upright; at 45°, 13 mm along and cos³ of its stiffness; almost along the chord: left out.
        Assert.Equal(2, section.Rods.Count);
        Assert.Equal((0.010, 0.001, 125e9), (section.Rods[0].X, section.Rods[0].Z, section.Rods[0].Modulus));
        Assert.Equal(0.018, section.Rods[1].X, 12);
        Assert.Equal(1, section.Rods[1].Modulus / (100e9 / Math.Sqrt(8)), 9);
        // 3 mm off the middle of a circle of 5: half a chord of 4.
        SectionVoid hollow = Assert.Single(section.Voids);
        Assert.Equal(0.016, hollow.FromX, 12);
        Assert.Equal(0.024, hollow.ToX, 12);
        Assert.Empty(BladeBeam.SectionAt(fin, 0.12).Rods);
    }

    [Fact]
    public void Sections_of_a_round_tip_end_in_a_section_that_still_has_a_chord()
    {
        IReadOnlyList<BladeSection> sections = BladeBeam.Sections(PlateCases.RoundTip);
        Assert.Equal(9, sections.Count);
        Assert.Equal(PlateCases.RoundTip.Span, sections[^1].Y, 12);
        Assert.True(sections[^1].Stiffness.FlapRigidity > 0);
        for (int i = 1; i < sections.Count; i++)
            Assert.True(sections[i].Stiffness.FlapRigidity <= sections[i - 1].Stiffness.FlapRigidity);
    }
}
