using Finwright.Design;

namespace Finwright.Workshop.Season;

/// <summary>The revisions of the three demo designs; the last but one, or the last, is the demo as it stands in <c>examples</c>.</summary>
internal static class SeasonFins
{
    /// <summary>The upright fin: thicker, then its rods deeper.</summary>
    public static IReadOnlyList<SeasonRevision> Fairway(FinDesign demo)
    {
        FinDesign shallow = demo with { Hardware = demo.Hardware with { CarbonRods = [.. demo.Hardware.CarbonRods.Select((rod, i) => rod with { ToDepthMm = i == 0 ? 180 : 170 })] } };
        FinDesign thin = shallow with { Shape = shallow.Shape with { Sections = [.. shallow.Shape.Sections.Select(own => own with { ThicknessPercent = own.ThicknessPercent - 0.5 })] } };
        return
        [
            new(thin, null, new(2027, 3, 6), "As drawn for the big sail."),
            new(shallow, 1, new(2027, 3, 14), "Half a per cent thicker: the first one looked thin beside the box."),
            new(demo, 2, new(2027, 5, 2), "Rods 45 mm deeper, to carry the bending farther out."),
        ];
    }

    /// <summary>The wide fin: a little wider.</summary>
    public static IReadOnlyList<SeasonRevision> Sandbar(FinDesign demo) =>
    [
        new(demo with { Shape = demo.Shape with { Outline = demo.Shape.Outline with { AreaCm2 = 276 } } }, null, new(2027, 3, 20), "For low water over the banks."),
        new(demo, 1, new(2027, 4, 24), "10 cm² more: does it get going earlier?"),
    ];

    /// <summary>The raked fin: raked more, then with a narrower tip.</summary>
    public static IReadOnlyList<SeasonRevision> Eelgrass(FinDesign demo) =>
    [
        new(demo with { Shape = demo.Shape with { Outline = demo.Shape.Outline with { RakeDegrees = 41 } } }, null, new(2027, 4, 3), "For the meadows."),
        new(demo, 1, new(2027, 6, 12), "3 degrees more rake: long grass stayed on the first one."),
        new(demo with { Shape = demo.Shape with { Outline = demo.Shape.Outline with { TipChordPercent = 35 } } }, 2, new(2027, 9, 18), "Narrower tip. Not built yet."),
    ];
}

/// <summary>A revision of a demo design.</summary>
/// <param name="Design">The design.</param>
/// <param name="Parent">Number of the revision that it was made from.</param>
/// <param name="Day">When it was kept.</param>
/// <param name="Note">What was tried.</param>
internal sealed record SeasonRevision(FinDesign Design, int? Parent, DateOnly Day, string Note);
