using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>The base from the side with its depths, its length, and the places of bolts and rods along the hull.</summary>
internal static class BaseOfFin
{
    private const double BeyondTop = 3e-3, BelowHull = 2e-3;

    // What goes on into the blade is cut off so far below the hull on paper, metres.
    private const double Shown = 1.2e-3;

    /// <summary>Draws it.</summary>
    public static void Draw(Drawing drawing, TemplateFin fin, Tongue tongue, ViewFrame frame, double aside)
    {
        BasePlan plan = fin.Solids.Plan;
        IReadOnlyList<Point2> ring = frame.At(plan.Ring());
        drawing.Add(new DrawnArea("base-tone", ViewPens.Base, [ring]));
        foreach (PlacedFeature feature in fin.Solids.Features.Where(feature => feature.IsInBase && feature.Kind is not FeatureKind.NutWayIn).OrderBy(feature => SideOfFin.IsRod(feature) ? 0 : 1))
        {
            IReadOnlyList<Point2> view = frame.At(HalfPlane.Trim(feature.Volume.SideView(), new(0, 1), Shown / frame.Scale));
            if (view.Count < 3)
                continue;
            if (SideOfFin.IsRod(feature))
                drawing.Add(new DrawnArea("rods", ViewPens.Rod, [view]));
            drawing.Add(new DrawnStroke("inside", SideOfFin.IsRod(feature) ? ViewPens.Fine : ViewPens.Hidden, view, Closed: true));
        }

        drawing.Add(new DrawnStroke("base", ViewPens.Edge, ring, Closed: true));
        Axis[] axes = [.. Axes(fin, tongue).OrderBy(axis => axis.Hull)];
        foreach (Axis axis in axes)
        {
            Point2 top = frame.At(axis.Top), hull = frame.At(axis.Hull, 0), way = 1 / (top - hull).Length * (top - hull);
            drawing.Add(new DrawnStroke("axes", ViewPens.Axis, [top + BeyondTop * way, hull - BelowHull * way], Closed: false));
        }

        Measure(drawing, fin, tongue, frame, aside, axes);
    }

    private static void Measure(Drawing drawing, TemplateFin fin, Tongue tongue, ViewFrame frame, double aside, Axis[] axes)
    {
        BasePlan plan = fin.Solids.Plan;
        Dimensions dimensions = new(drawing, tongue);
        Point2 front = frame.At(plan.FrontX, 0), rear = frame.At(plan.RearX, 0);
        double level = front.Y + BelowHull;
        foreach (Axis axis in axes)
        {
            level += aside;
            NumberBeside.Across(drawing, tongue, front, frame.At(axis.Hull, 0), level, $"{axis.Name}: {tongue.BareLength(axis.Hull - plan.FrontX)}");
        }

        dimensions.Across(front, rear, level + aside, tongue.BareLength(plan.HullLength));
        dimensions.Down(frame.At(plan.FrontTop), front, front.X - aside, tongue.BareLength(plan.FrontDepth));
        dimensions.Down(frame.At(plan.RearTop), rear, rear.X + aside, tongue.BareLength(plan.RearDepth));
    }

    // Where axes cross the hull, and how high they are followed.
    private static IEnumerable<Axis> Axes(TemplateFin fin, Tongue tongue)
    {
        BasePlan plan = fin.Solids.Plan;
        foreach (BoltAxis bolt in plan.Bolts.Concat(plan.PlateScrew is { } screw ? [screw] : []))
        {
            Point3 top = plan.OnTopEdge(bolt.AtHull, bolt.Up);
            yield return new(bolt.Thread.Name, bolt.AtHull.X, new(top.X, top.Y));
        }

        foreach (PlacedFeature rod in fin.Solids.Features.Where(feature => SideOfFin.IsRod(feature) && feature.IsInBase && feature.IsInBlade))
        {
            Point3 way = rod.Volume.To - rod.Volume.From, hull = rod.Volume.From - rod.Volume.From.Y / way.Y * way, top = rod.Volume.From.Y < rod.Volume.To.Y ? rod.Volume.From : rod.Volume.To;
            yield return new("Ø " + tongue.BareLength(rod.Volume.Diameter), hull.X, new(top.X, top.Y));
        }
    }

    private sealed record Axis(string Name, double Hull, Point2 Top);
}
