using CsCheck;
using Finwright.Geometry.Outlines;

namespace Finwright.Geometry.Tests.Outlines;

public sealed class OutlineFamiliesTests
{
    private static readonly Dictionary<string, OutlineFamilies> Families = new(StringComparer.Ordinal)
    {
        ["upright"] = OutlineFamilies.Upright,
        ["raked"] = OutlineFamilies.Raked,
        ["steep rake"] = OutlineFamilies.SteepRake,
        ["wide delta"] = OutlineFamilies.WideDelta,
    };

    public static TheoryData<string> Names => [.. Families.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Family_meets_span_root_chord_and_rake(string name)
    {
        Gen.Select(Gen.Double[0.1, 0.6], Gen.Double[0.08, 0.3], Gen.Double[-0.2, 0.6], Gen.Double[0.1, 0.9]).Hold((span, root, rake, tip) =>
        {
            if (Families[name].WithRootChord(span, root, rake, tip).Outline([]) is not { } outline)
                return;
            Assert.Equal(span, outline.Span, 1e-12);
            Assert.Equal(root, outline.Chord(0), 1e-12);
            Assert.Equal(-root / 4, outline.LeadingEdge(0), 1e-12);
            Assert.Equal(rake, Planform.Of(outline).Rake, 1e-9);
        }, iter: 300);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Family_meets_an_area(string name)
    {
        Gen.Select(Gen.Double[0.15, 0.6], Gen.Double[0.012, 0.05]).Hold((span, area) =>
        {
            if (Families[name].WithArea(span, area)?.Outline([]) is { } outline)
                Assert.Equal(1, Planform.Of(outline).Area / area, 1e-10);
        }, iter: 300);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Family_of_its_own_numbers_is_fair_and_round_at_the_tip(string name)
    {
        SplineOutline outline = Families[name].WithRootChord(0.3, 0.12).Outline([])!;
        // The leading edge bends one way only: aft, all the way down.
        double before = double.MinValue;
        Planform planform = Planform.Of(outline);
        for (int i = 0; i <= 200; i++)
        {
            double sweep = planform.LeadingEdgeSweep(0.3 * i / 200);
            Assert.True(sweep >= before - 1e-3, $"the leading edge turns forward at {i / 2.0} % of the span");
            before = sweep;
        }

        Assert.Equal(Math.PI / 2, planform.LeadingEdgeSweep(0.3), 1e-9);
        Assert.Equal(0, outline.Chord(0.3), 1e-12);
    }

    [Fact]
    public void Steep_rake_has_a_leading_edge_that_sheds_weed()
    {
        // Weed slides off from about 45 degrees on (common practice, no source).
        Planform planform = Planform.Of(OutlineFamilies.SteepRake.WithRootChord(0.3, 0.13).Outline([])!);
        for (int i = 0; i <= 100; i++)
            Assert.True(planform.LeadingEdgeSweep(0.3 * i / 100) > 44.5 * Math.PI / 180);
    }
}
