using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using DesignOutline = Finwright.Design.Outline;

namespace Finwright.Page.Drawings;

/// <summary>The handles of a planform, and what becomes of the design when one is moved.</summary>
public static class PlanformHandles
{
    // Neighbours along an edge may share a depth, sections may not share a place.
    private const double LeastBetweenSections = 0.5;

    // Points this close in depth stand level, mm.
    private const double Level = 1e-6;

    private const string OutlinePath = "$.shape.outline";

    /// <summary>Where the drawing's x counts from, mm aft of the root's quarter chord, negated: with free points the design file's own line, so that nothing moves but what the hand moves.</summary>
    /// <param name="outline">The outline.</param>
    public static double Datum(DesignOutline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return outline is { Family: OutlineFamily.Free, LeadingEdge.Count: > 0, TrailingEdge.Count: > 0 } ? 0.75 * outline.LeadingEdge[0].AftMm + 0.25 * outline.TrailingEdge[0].AftMm : 0;
    }

    /// <summary>All handles of a design; none of an outline that gives no points.</summary>
    public static IReadOnlyList<PlanformHandle> Of(FinDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        DesignOutline outline = design.Shape.Outline;
        return outline.Family == OutlineFamily.Free ? [.. Points(outline), .. Sections(design)] : [.. Numbers(outline), .. Sections(design)];
    }

    /// <summary>Moves a handle.</summary>
    /// <param name="design">The design as it is.</param>
    /// <param name="handle">One of its handles, by kind and number.</param>
    /// <param name="to">Where to, as <see cref="PlanformHandle.At"/>; mm.</param>
    /// <param name="decimals">Decimals of the number that changes.</param>
    /// <returns>The design with the handle there, or as near as its range and its neighbours allow.</returns>
    public static FinDesign Move(FinDesign design, PlanformHandle handle, Point2 to, int decimals = 1)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(handle);
        DesignOutline outline = design.Shape.Outline;
        return handle.Kind switch
        {
            HandleKind.Section => With(design, MovedSection(design.Shape, handle.Index, to.Y, decimals)),
            HandleKind.LeadingPoint or HandleKind.TrailingPoint or HandleKind.MeetingPoint => With(design, MovedPoint(outline, handle, to, decimals)),
            HandleKind.Span => With(design, outline with { SpanMm = Math.Round(Math.Clamp(to.Y, 40, 800), decimals) }),
            _ => With(design, OutlineNumber.Of(handle.Kind, outline).MovedTo(to.X, decimals)),
        };
    }

    /// <summary>Puts a further point half way to the next one along an edge of free points.</summary>
    /// <param name="design">The design.</param>
    /// <param name="edge">The edge.</param>
    /// <param name="after">Number of the point before it; that of the last one puts it before the last.</param>
    public static FinDesign AddPoint(FinDesign design, OutlineEdge edge, int after)
    {
        ArgumentNullException.ThrowIfNull(design);
        IReadOnlyList<OutlinePoint> points = Edge(design.Shape.Outline, edge);
        int at = Math.Clamp(after, 0, points.Count - 2);
        OutlinePoint one = points[at], next = points[at + 1];
        OutlinePoint between = new() { DepthMm = Math.Round((one.DepthMm + next.DepthMm) / 2, 2), AftMm = Math.Round((one.AftMm + next.AftMm) / 2, 2) };
        return With(design, WithEdge(design.Shape.Outline, edge, [.. points.Take(at + 1), between, .. points.Skip(at + 1)]));
    }

    /// <summary>Whether a point can be taken out: the ends of an edge stay, and two more, so that it can be curved.</summary>
    public static bool MayTakePoint(FinDesign design, OutlineEdge edge, int index)
    {
        ArgumentNullException.ThrowIfNull(design);
        int count = Edge(design.Shape.Outline, edge).Count;
        return count > 4 && index > 0 && index < count - 1;
    }

    /// <summary>Takes a point out.</summary>
    public static FinDesign TakePoint(FinDesign design, OutlineEdge edge, int index) => MayTakePoint(design, edge, index)
        ? With(design, WithEdge(design.Shape.Outline, edge, [.. Edge(design.Shape.Outline, edge).Where((_, i) => i != index)]))
        : design;

    private static FinDesign With(FinDesign design, DesignOutline outline) => design with { Shape = design.Shape with { Outline = outline } };

    private static FinDesign With(FinDesign design, IReadOnlyList<SectionStation> sections) => design with { Shape = design.Shape with { Sections = sections } };

    private static IReadOnlyList<OutlinePoint> Edge(DesignOutline outline, OutlineEdge edge) => edge is OutlineEdge.Leading ? outline.LeadingEdge : outline.TrailingEdge;

    private static DesignOutline WithEdge(DesignOutline outline, OutlineEdge edge, IReadOnlyList<OutlinePoint> points) =>
        edge is OutlineEdge.Leading ? outline with { LeadingEdge = points } : outline with { TrailingEdge = points };

    private static IEnumerable<PlanformHandle> Numbers(DesignOutline outline)
    {
        if (OutlineFromDesign.Points(outline, []) is not { } points)
            yield break;
        double aftmost = points.TrailingEdge.Concat(points.LeadingEdge).Max(p => p.X), span = points.LeadingEdge[^1].Y;
        yield return new(HandleKind.RootChord, 0, outline.RootChordMm is null ? $"{OutlinePath}.area_cm2" : $"{OutlinePath}.root_chord_mm", Mm(points.TrailingEdge[0]), HandleWay.Across);
        yield return new(HandleKind.TipChord, 0, $"{OutlinePath}.tip_chord_percent", Mm(points.LeadingEdge[^2]), HandleWay.Across);
        yield return new(HandleKind.Rake, 0, $"{OutlinePath}.rake_degrees", Mm(points.LeadingEdge[^1]), HandleWay.Across);
        yield return new(HandleKind.Span, 0, $"{OutlinePath}.span_mm", Mm(new(aftmost, span)), HandleWay.Down);

        static Point2 Mm(Point2 point) => 1e3 * point;
    }

    private static IEnumerable<PlanformHandle> Points(DesignOutline outline)
    {
        bool meet = Meet(outline);
        foreach (OutlineEdge edge in Enum.GetValues<OutlineEdge>())
        {
            IReadOnlyList<OutlinePoint> points = Edge(outline, edge);
            string path = $"{OutlinePath}.{(edge is OutlineEdge.Leading ? "leading_edge" : "trailing_edge")}";
            for (int i = 0; i < points.Count - (meet ? 1 : 0); i++)
                yield return new(edge is OutlineEdge.Leading ? HandleKind.LeadingPoint : HandleKind.TrailingPoint, i, $"{path}[{i}]", At(points[i]), i == 0 ? HandleWay.Across : HandleWay.Free);
        }

        if (meet)
            yield return new(HandleKind.MeetingPoint, 0, $"{OutlinePath}.leading_edge[{outline.LeadingEdge.Count - 1}]", At(outline.LeadingEdge[^1]), HandleWay.Free);

        static Point2 At(OutlinePoint point) => new(point.AftMm, point.DepthMm);
    }

    private static IEnumerable<PlanformHandle> Sections(FinDesign design)
    {
        double span = SpanMm(design.Shape.Outline);
        for (int i = 0; i < design.Shape.Sections.Count; i++)
            yield return new(HandleKind.Section, i, $"$.shape.sections[{i}].at_percent", new(0, design.Shape.Sections[i].AtPercent / 100 * span), HandleWay.Down);
    }

    /// <summary>Depth of the tip, mm; 0 when it is not known.</summary>
    internal static double SpanMm(DesignOutline outline) =>
        outline.Family == OutlineFamily.Free ? outline.LeadingEdge.Count > 0 ? outline.LeadingEdge[^1].DepthMm : 0 : outline.SpanMm ?? 0;

    private static bool Meet(DesignOutline outline) => outline is { LeadingEdge.Count: > 1, TrailingEdge.Count: > 1 } && outline.LeadingEdge[^1] == outline.TrailingEdge[^1];

    private static IReadOnlyList<SectionStation> MovedSection(Shape shape, int index, double depth, int decimals)
    {
        double span = SpanMm(shape.Outline);
        if (span <= 0 || index >= shape.Sections.Count)
            return shape.Sections;
        double low = index == 0 ? 0 : shape.Sections[index - 1].AtPercent + LeastBetweenSections;
        double high = index == shape.Sections.Count - 1 ? 100 : shape.Sections[index + 1].AtPercent - LeastBetweenSections;
        double at = Math.Round(Math.Clamp(100 * depth / span, Math.Min(low, high), high), decimals);
        return [.. shape.Sections.Select((section, i) => i == index ? section with { AtPercent = at } : section)];
    }

    private static DesignOutline MovedPoint(DesignOutline outline, PlanformHandle handle, Point2 to, int decimals)
    {
        OutlineEdge edge = handle.Kind is HandleKind.TrailingPoint ? OutlineEdge.Trailing : OutlineEdge.Leading;
        bool meeting = handle.Kind is HandleKind.MeetingPoint;
        IReadOnlyList<OutlinePoint> points = Edge(outline, edge);
        int index = meeting ? points.Count - 1 : handle.Index;
        if (index < 0 || index >= points.Count)
            return outline;
        double aft = Math.Round(Math.Clamp(to.X, -800, 1200), decimals);
        if (index == 0)
            return WithEdge(outline, edge, Replaced(points, 0, points[0] with { AftMm = aft }));
        if (index < points.Count - 1)
        {
            double depth = Math.Round(Math.Clamp(to.Y, points[index - 1].DepthMm, points[index + 1].DepthMm), decimals);
            return WithEdge(outline, edge, Replaced(points, index, new() { AftMm = aft, DepthMm = Math.Clamp(depth, points[index - 1].DepthMm, points[index + 1].DepthMm) }));
        }

        // Both edges end at one depth, and what stood level with the tip stays level with it.
        double old = points[^1].DepthMm;
        double floor = outline.LeadingEdge.Concat(outline.TrailingEdge).Where(p => p.DepthMm < old - Level).Select(p => p.DepthMm).DefaultIfEmpty(0).Max() + 1;
        double tip = Math.Round(Math.Clamp(to.Y, Math.Min(floor, old), 800), decimals);
        OutlinePoint end = new() { AftMm = aft, DepthMm = tip };
        return outline with
        {
            LeadingEdge = Ended(outline.LeadingEdge, meeting || edge is OutlineEdge.Leading),
            TrailingEdge = Ended(outline.TrailingEdge, meeting || edge is OutlineEdge.Trailing),
        };

        IReadOnlyList<OutlinePoint> Ended(IReadOnlyList<OutlinePoint> own, bool takesEnd) =>
            [.. own.Select((p, i) => i == own.Count - 1 && takesEnd ? end : i == own.Count - 1 || p.DepthMm >= old - Level ? p with { DepthMm = tip } : p)];
    }

    private static IReadOnlyList<OutlinePoint> Replaced(IReadOnlyList<OutlinePoint> points, int index, OutlinePoint point) => [.. points.Select((own, i) => i == index ? point : own)];
}
