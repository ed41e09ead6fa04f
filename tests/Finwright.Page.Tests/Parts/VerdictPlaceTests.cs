using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Page.Fields;
using Finwright.Page.Parts;
using Finwright.Papers.Words.German;

namespace Finwright.Page.Tests.Parts;

public sealed class VerdictPlaceTests
{
    // What papers say in German names every code and ground that the checks have: a test there reads them off the checks' sources.
    private static readonly Saying[] Sayings = [.. WaterSayings.All, .. StrengthSayings.All, .. MakingSayings.All];

    private static readonly FinDesign Plain = new() { Name = "Plain", Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 120 } } };

    private static readonly FinDesign[] Designs =
    [
        Plain,
        Plain with { Shape = Plain.Shape with { Flange = new(), Outline = Plain.Shape.Outline with { RootChordMm = null, AreaCm2 = 300 } } },
        Plain with { Shape = Plain.Shape with { Outline = new() { Family = OutlineFamily.Free } }, Pour = new() { Cooling = Cooling.StillAir } },
    ];

    [Fact]
    public void Every_code_has_a_chapter_and_a_place_and_no_other_has()
    {
        Assert.Equal(Sayings.Select(saying => saying.Code.Split('/')[0]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), VerdictPlace.Codes.Order(StringComparer.Ordinal));
        Assert.Throws<ArgumentException>(() => VerdictPlace.AreaOf(Verdict("no-such-check", "", "")));
        Assert.Throws<ArgumentException>(() => VerdictPlace.Of(Verdict("no-such-check", "", ""), Plain));
    }

    [Fact]
    public void Every_place_is_a_field_or_group_that_the_design_has()
    {
        foreach (FinDesign design in Designs)
        {
            foreach (Saying saying in Sayings)
            {
                foreach (string ground in saying.Changes.Keys)
                {
                    foreach (string part in (string[])["", "base", "blade"])
                    {
                        string place = VerdictPlace.Of(Verdict(saying.Code.Split('/')[0], ground, part), design);
                        // The group around the field is there too; else the page shows no input that could be led to.
                        Assert.Equal(place, FieldAt.Of(design, place).Path);
                        string group = place[..place.LastIndexOf('.')];
                        Assert.True(group == "$" || FieldAt.Of(design, group).Value is not null, place);
                    }
                }
            }
        }
    }

    [Fact]
    public void A_draught_that_is_too_deep_leads_to_the_span_and_a_base_to_its_own_attitude()
    {
        Assert.Equal("$.shape.outline.span_mm", VerdictPlace.Of(Verdict("draught", "", ""), Plain));
        Assert.Equal("$.parts.base_attitude", VerdictPlace.Of(Verdict("overhang", "lying", "base"), Plain));
        Assert.Equal("$.shape.outline.area_cm2", VerdictPlace.Of(Verdict("stall-reserve", "area", ""), Designs[1]));
    }

    private static Verdict Verdict(string code, string ground, string part) => new()
    {
        Code = code,
        Ground = ground,
        Part = part,
        Checked = "",
        State = VerdictState.Fails,
        Certainty = Certainty.Judgement,
        HowSure = "",
        Found = "",
        Why = "",
    };
}
