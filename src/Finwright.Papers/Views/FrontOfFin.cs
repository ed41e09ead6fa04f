using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>The fin from ahead: thickness over depth, with the base. Starboard lies to the left.</summary>
internal static class FrontOfFin
{
    private const int Depths = 160;

    /// <summary>Half of its width, metres.</summary>
    public static double HalfWidth(TemplateFin fin) => Math.Max(Silhouette(fin).Max(p => Math.Abs(p.X)), Math.Max(fin.Solids.Plan.HullWidth, fin.Solids.Plan.DeepWidth) / 2);

    /// <summary>Draws it with the widths of base and flange.</summary>
    public static void Draw(Drawing drawing, TemplateFin fin, Tongue tongue, ViewFrame frame, double aside)
    {
        Geometry.Bases.BasePlan plan = fin.Solids.Plan;
        IReadOnlyList<Point2> blade = frame.At(Silhouette(fin));
        Point2[] ends =
        [
            frame.At(-plan.HullWidth / 2, 0), frame.At(-plan.DeepWidth / 2, -plan.Depth), frame.At(plan.DeepWidth / 2, -plan.Depth), frame.At(plan.HullWidth / 2, 0),
        ];
        drawing.Add(new DrawnArea("base-tone", ViewPens.Base, [ends]));
        drawing.Add(new DrawnArea("blade-tone", ViewPens.Blade[0], [blade]));
        drawing.Add(new DrawnStroke("base", ViewPens.Edge, ends, Closed: true));
        drawing.Add(new DrawnStroke("blade", ViewPens.Edge, blade, Closed: true));
        Point2 top = frame.At(0, -plan.Depth), tip = frame.At(0, fin.Blade.Span);
        drawing.Add(new DrawnStroke("axes", ViewPens.Axis, [top - new Point2(0, 2e-3), tip + new Point2(0, 2e-3)], Closed: false));

        Dimensions dimensions = new(drawing, tongue);
        dimensions.Across(ends[1], ends[2], ends[1].Y - aside, tongue.BareLength(plan.DeepWidth));
        if (Math.Abs(plan.DeepWidth - plan.HullWidth) > 5e-5)
            dimensions.Across(ends[0], ends[3], ends[1].Y - 2 * aside, tongue.BareLength(plan.HullWidth));
    }

    // Cut a hair below the hull and above the tip, where the skin has faces that lie level.
    private static IEnumerable<Point2> Silhouette(TemplateFin fin)
    {
        const double hair = 1e-6;
        double span = fin.Blade.Span;
        // Closer together near both ends, where flange and tip curve.
        double[] depths = [.. Enumerable.Range(0, Depths + 1).Select(i => hair + (span - 2 * hair) * (1 - Math.Cos(Math.PI * i / Depths)) / 2)];
        IReadOnlyList<(double Port, double Starboard)> reach = MeshSlice.Reach(fin.Skin, depths);
        int[] met = [.. Enumerable.Range(0, depths.Length).Where(i => reach[i].Port <= reach[i].Starboard)];
        return [.. met.Select(i => new Point2(-reach[i].Starboard, depths[i])), .. met.Reverse().Select(i => new Point2(-reach[i].Port, depths[i]))];
    }
}
