using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using Finwright.Geometry.Pictures;

namespace Finwright.Assessment.Packing;

/// <summary>The drawings of a pack: outline, sections and base at true scale, with what lies inside.</summary>
internal static class FinDrawings
{
    /// <summary>Greatest distance between a drawn line and the true one: a tenth of a pen's width.</summary>
    private const double Tolerance = 2e-5;

    private const int PointsRound = 240;
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
        IEnumerable<DrawnLine> dowels = plan.Dowels.Select(dowel => Bore(new("", dowel.From, dowel.To, dowel.BoreDiameter)));
        return OutlineDrawings.Planform(title, planform.Polyline(Tolerance), [new(solids.Plan.Ring(), Closed: true)], [.. Inside(solids), .. cuts, .. dowels]);
    }

    /// <summary>Sections at even steps from the root, the last one short of the tip.</summary>
    public static SvgDrawing Sections(string title, BladeShape blade, FinSolids solids) =>
        OutlineDrawings.Sections(title, [.. Enumerable.Range(0, SectionCount).Select(i => Section(blade, solids, blade.Span * i / SectionCount))]);

    /// <summary>The base from the side; bores that go on into the blade end at the hull.</summary>
    public static SvgDrawing Base(string title, FinSolids solids)
    {
        IEnumerable<DrawnLine> bores = solids.Bores.Select(AboveHull).OfType<BoreRecord>().Select(Bore);
        return OutlineDrawings.BaseSide(title, solids.Plan.Ring(), [.. bores, .. solids.Pockets.Where(pocket => pocket.Centre.Y < 0).Select(Pocket)]);
    }

    private static IEnumerable<DrawnLine> Inside(FinSolids solids) => [.. solids.Bores.Select(Bore), .. solids.Pockets.Select(Pocket)];

    private static BoreRecord? AboveHull(BoreRecord bore)
    {
        (Point3 high, Point3 low) = bore.From.Y < bore.To.Y ? (bore.From, bore.To) : (bore.To, bore.From);
        if (high.Y >= 0)
            return null;
        return low.Y <= 0 ? bore : bore with { From = high, To = high + high.Y / (high.Y - low.Y) * (low - high) };
    }

    private static DrawnLine Bore(BoreRecord bore)
    {
        Point2 from = new(bore.From.X, bore.From.Y), along = new Point2(bore.To.X, bore.To.Y) - from;
        // A bore square to the drawing is a circle, any other a strip.
        if (along.Length < Tolerance)
            return Circle(from, bore.Diameter / 2);
        Point2 aside = bore.Diameter / 2 / along.Length * new Point2(-along.Y, along.X);
        return new([from - aside, from + aside, from + along + aside, from + along - aside], Closed: true);
    }

    private static DrawnLine Pocket(PocketRecord pocket)
    {
        double x = pocket.Extent.X / 2, y = pocket.Extent.Y / 2;
        Point2 centre = new(pocket.Centre.X, pocket.Centre.Y);
        return new([centre + new Point2(-x, -y), centre + new Point2(x, -y), centre + new Point2(x, y), centre + new Point2(-x, y)], Closed: true);
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
