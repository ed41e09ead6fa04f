using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using Finwright.Geometry.Pictures;

namespace Finwright.Assessment.Packing;

/// <summary>The drawings of a pack: outline, sections and base at true scale, with what lies inside.</summary>
internal static class FinDrawings
{
    /// <summary>Greatest distance between a drawn line and the true one: a tenth of a pen's width.</summary>
    private const double Tolerance = 2e-5;

    // Odd, so that one point is the nose.
    private const int PointsRound = 241;
    private const int SectionCount = 5;
    private const int CirclePoints = 48;

    /// <summary>Blade and base from the side.</summary>
    public static SvgDrawing Outline(string title, Planform planform, Outline outline, FinSolids solids, PartPlan plan)
    {
        IEnumerable<DrawnLine> cuts =
            from cut in plan.Cuts
            let exits = cut.Exits(outline)
            where exits is not null
            let leading = exits.Value.Leading
            let trailing = exits.Value.Trailing
            select new DrawnLine([new(outline.LeadingEdge(leading), leading), new(outline.TrailingEdge(trailing), trailing)]);
        IEnumerable<DrawnLine> dowels = plan.Dowels.Select(dowel => new DrawnLine(FeatureVolume.Cylinder(dowel.BoreDiameter, dowel.From, dowel.To).SideView(), Closed: true));
        IEnumerable<DrawnLine> slot = solids.Slot is { } strip ? [new(strip.SideView())] : [];
        IEnumerable<DrawnLine> inside = solids.Features.Select(feature => new DrawnLine(feature.Volume.SideView(), Closed: true));
        return OutlineDrawings.Planform(title, planform.Polyline(Tolerance), [new(solids.Plan.Ring(), Closed: true)], [.. inside, .. slot, .. cuts, .. dowels]);
    }

    /// <summary>Sections at even steps from the root, the last one short of the tip.</summary>
    public static SvgDrawing Sections(string title, BladeShape blade, FinSolids solids) =>
        OutlineDrawings.Sections(title, [.. Enumerable.Range(0, SectionCount).Select(i => Section(blade, solids, blade.Span * i / SectionCount))]);

    /// <summary>The base from the side; what goes on into the blade ends at the hull.</summary>
    public static SvgDrawing Base(string title, FinSolids solids)
    {
        IEnumerable<IReadOnlyList<Point2>> inside = solids.Features.Select(feature => AboveHull(feature.Volume.SideView())).Where(view => view.Count >= 3);
        return OutlineDrawings.BaseSide(title, solids.Plan.Ring(), [.. inside.Select(view => new DrawnLine(view, Closed: true))]);
    }

    /// <summary>The part of a convex outline above the hull plane.</summary>
    private static List<Point2> AboveHull(IReadOnlyList<Point2> view)
    {
        List<Point2> kept = [];
        for (int i = 0; i < view.Count; i++)
        {
            Point2 here = view[i], next = view[(i + 1) % view.Count];
            if (here.Y <= 0)
                kept.Add(here);
            if (here.Y < 0 != next.Y < 0 && here.Y != 0 && next.Y != 0)
                kept.Add(here + here.Y / (here.Y - next.Y) * (next - here));
        }

        return kept;
    }

    private static SectionDrawing Section(BladeShape blade, FinSolids solids, double depth)
    {
        Point2[] outline = new Point2[PointsRound];
        for (int i = 0; i < PointsRound; i++)
        {
            Point3 point = blade.Skin(depth, i / (PointsRound - 1.0));
            outline[i] = new(point.X, point.Z);
        }

        IEnumerable<DrawnLine> bores =
            from bore in solids.Bores
            let rise = bore.To.Y - bore.From.Y
            let share = (depth - bore.From.Y) / rise
            where share is >= 0 and <= 1
            let centre = bore.From + share * (bore.To - bore.From)
            select Circle(new(centre.X, centre.Z), bore.Diameter / 2);
        return new($"{1e3 * depth:0} mm below the hull", outline, [.. bores]);
    }

    private static DrawnLine Circle(Point2 centre, double radius) =>
        new([.. Enumerable.Range(0, CirclePoints).Select(i => centre + radius * new Point2(Math.Cos(Math.Tau * i / CirclePoints), Math.Sin(Math.Tau * i / CirclePoints)))], Closed: true);
}
