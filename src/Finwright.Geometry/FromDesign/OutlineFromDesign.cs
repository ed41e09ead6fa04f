using Finwright.Design;
using Finwright.Geometry.Outlines;
using static Finwright.Geometry.FromDesign.Wording;
using DesignOutline = Finwright.Design.Outline;

namespace Finwright.Geometry.FromDesign;

/// <summary>Turns the outline section of a design into an outline.</summary>
public static class OutlineFromDesign
{
    private const string Path = "$.shape.outline";

    // The range of the root chord in a design file, which an area must not lead out of.
    private const double LeastRootChord = 20e-3, GreatestRootChord = 400e-3;

    /// <summary>Makes the outline.</summary>
    /// <param name="outline">The outline as the design describes it; every value within the range of its field.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <returns>The outline, or null when an error was found.</returns>
    public static SplineOutline? Create(DesignOutline outline, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(findings);
        if (Points(outline, findings) is not { } points)
            return null;
        List<OutlineFault> faults = [];
        SplineOutline? made = points.Outline(faults);
        foreach (OutlineFault fault in faults)
            findings.Add(Told(fault, outline));
        return made;
    }

    /// <summary>The control points of a design's outline: the maker's own, or those of a family, ready to be moved.</summary>
    /// <param name="outline">The outline as the design describes it; every value within the range of its field.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <returns>The points, or null when an error was found.</returns>
    public static OutlinePoints? Points(DesignOutline outline, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(findings);
        if (outline.Family == OutlineFamily.Free)
            return new(Edge(outline.LeadingEdge), Edge(outline.TrailingEdge));

        if (outline.SpanMm is not double spanMm)
        {
            findings.Add(new(
                "span-missing", Severity.Error, $"{Path}.span_mm",
                "Only a free outline finds its depth by itself; this family needs the span.", "Add \"span_mm\"."));
            return null;
        }

        OutlineFamilies family = Family(outline.Family);
        double span = spanMm * 1e-3;
        double? rake = outline.RakeDegrees * Math.PI / 180, tip = outline.TipChordPercent / 100;
        if (outline.RootChordMm is double rootMm)
            return family.WithRootChord(span, rootMm * 1e-3, rake, tip);
        if (outline.AreaCm2 is not double areaCm2)
        {
            findings.Add(new(
                "size-missing", Severity.Error, $"{Path}.root_chord_mm",
                "Neither the root chord nor the area is given, so the blade has no size along the chord.", "Add \"root_chord_mm\" or \"area_cm2\"."));
            return null;
        }

        OutlinePoints? points = family.WithArea(span, areaCm2 * 1e-4, rake, tip);
        double root = points is null ? 0 : points.TrailingEdge[0].X - points.LeadingEdge[0].X;
        if (root is >= LeastRootChord and <= GreatestRootChord)
            return points;
        findings.Add(new(
            "area-does-not-fit-span", Severity.Error, $"{Path}.area_cm2",
            $"An area of {areaCm2:0.#} cm² over a span of {spanMm:0.#} mm needs a root chord of {Mm(root)}; chords from {Mm(LeastRootChord)} to {Mm(GreatestRootChord)} can be made.",
            root > GreatestRootChord ? "Make the area smaller or the span longer." : "Make the area larger or the span shorter.")
        { Value = Mm(root), Limit = Mm(root > GreatestRootChord ? GreatestRootChord : LeastRootChord) });
        return null;
    }

    /// <summary>The outline of a family as points that can be moved, to a ten-thousandth of a millimetre.</summary>
    /// <param name="outline">The outline as the design describes it; every value within the range of its field.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <returns>The same outline as free points, or null when an error was found.</returns>
    public static DesignOutline? AsFreePoints(DesignOutline outline, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(outline);
        if (outline.Family == OutlineFamily.Free)
            return outline;
        if (Points(outline, findings) is not { } points)
            return null;
        return new()
        {
            Family = OutlineFamily.Free,
            LeadingEdge = [.. points.LeadingEdge.Select(Millimetres)],
            TrailingEdge = [.. points.TrailingEdge.Select(Millimetres)],
        };

        // A rounded zero has no sign.
        static OutlinePoint Millimetres(Point2 point) => new() { DepthMm = Math.Round(1e3 * point.Y, 4) + 0.0, AftMm = Math.Round(1e3 * point.X, 4) + 0.0 };
    }

    /// <summary>The family that a design names; upright for free points, which are of none.</summary>
    public static OutlineFamilies Family(OutlineFamily family) => family switch
    {
        OutlineFamily.Raked => OutlineFamilies.Raked,
        OutlineFamily.SteepRake => OutlineFamilies.SteepRake,
        OutlineFamily.WideDelta => OutlineFamilies.WideDelta,
        _ => OutlineFamilies.Upright,
    };

    private static Point2[] Edge(IReadOnlyList<OutlinePoint> edge) => [.. edge.Select(p => new Point2(p.AftMm * 1e-3, p.DepthMm * 1e-3))];

    private static Finding Told(OutlineFault fault, DesignOutline outline)
    {
        (string key, string name) = fault.Edge == OutlineEdge.Leading ? ("leading_edge", "leading edge") : ("trailing_edge", "trailing edge");
        string edge = outline.Family == OutlineFamily.Free ? $"{Path}.{key}" : Path;
        string point = outline.Family == OutlineFamily.Free && fault.Point >= 0 ? $"{edge}[{fault.Point}]" : edge;
        return fault.Kind switch
        {
            OutlineFaultKind.TooFewPoints => new(
                "too-few-points", Severity.Error, edge, $"The {name} has fewer than two points, so it cannot be drawn.", "Give it four points or more, from the hull down to the tip."),
            OutlineFaultKind.NotFinite => new(
                "not-a-number", Severity.Error, point, $"A point of the {name} is not a number.", "Give its depth and its place aft in millimetres."),
            OutlineFaultKind.RootOffHull => new(
                "edge-starts-below-hull", Severity.Error, $"{point}.depth_mm", $"The {name} starts {Mm(fault.Depth)} below the hull.", "Let the first point stand at depth 0.")
            { Value = Mm(fault.Depth), Limit = "0 mm" },
            OutlineFaultKind.DepthFalls => new(
                "edge-turns-back", Severity.Error, $"{point}.depth_mm", $"The {name} goes {Mm(fault.Amount)} back up here; at some depths it would stand in several places.", "Give the points from the hull down, each at least as deep as the one before.")
            { Value = Mm(fault.Depth), Limit = Mm(fault.Depth + fault.Amount) },
            OutlineFaultKind.DepthStands => new(
                "edge-runs-level", Severity.Error, $"{point}.depth_mm", $"Four points of the {name} in a row lie {Mm(fault.Depth)} deep, so the edge runs level and stands in many places at one depth.", "Let no more than three points in a row share a depth.")
            { Value = Mm(fault.Depth) },
            OutlineFaultKind.TipsDiffer => new(
                "edges-end-apart", Severity.Error, $"{edge}", $"The {name} ends {Mm(fault.Depth)} deep, {Mm(fault.Amount)} short of the other edge; below that the blade has only one edge.", "Let both edges end at the same depth.")
            { Value = Mm(fault.Depth), Limit = Mm(fault.Depth + fault.Amount) },
            OutlineFaultKind.NoDepth => new(
                "outline-without-depth", Severity.Error, edge, $"The {name} ends at the hull, so the blade has no depth.", "Move its last points down to the tip."),
            _ => new(
                "edges-cross", Severity.Error, outline.Family == OutlineFamily.Free ? $"{Path}.trailing_edge" : Path,
                $"At {Mm(fault.Depth)} depth the trailing edge stands {Mm(-fault.Amount)} ahead of the leading edge, so the blade has no chord there.",
                outline.Family == OutlineFamily.Free ? "Move the trailing edge aft or the leading edge forward there." : "Give the blade more chord, a wider tip, or less rake.")
            { Value = Mm(fault.Amount), Limit = "0 mm" },
        };
    }
}
