using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>The fin from below: root section, a section near the tip, flange and base. Starboard lies below.</summary>
internal static class PlanOfFin
{
    private const int PointsRound = 241;

    /// <summary>Half of its height on paper at full size, metres.</summary>
    public static double HalfWidth(TemplateFin fin) =>
        Math.Max(Rim(fin).Max(p => Math.Abs(p.Y)), Math.Max(fin.Solids.Plan.HullWidth, fin.Solids.Plan.DeepWidth) / 2);

    /// <summary>Draws it.</summary>
    public static void Draw(Drawing drawing, TemplateFin fin, Tongue tongue, ViewFrame frame, double aside)
    {
        Geometry.Bases.BasePlan plan = fin.Solids.Plan;
        IReadOnlyList<Point2> root = frame.At(Section(fin, 0)), rim = frame.At(Rim(fin)), tip = frame.At(Section(fin, SideDimensions.NearTip * fin.Blade.Span));
        double half = plan.HullWidth / 2;
        Point2[] box = [frame.At(plan.FrontX, -half), frame.At(plan.RearX, -half), frame.At(plan.RearX, half), frame.At(plan.FrontX, half)];
        drawing.Add(new DrawnArea("flange-tone", ViewPens.Base, [rim]));
        drawing.Add(new DrawnArea("blade-tone", ViewPens.Blade[0], [root]));
        drawing.Add(new DrawnStroke("base", ViewPens.Hidden, box, Closed: true));
        if (fin.FlangeHeight > 0)
            drawing.Add(new DrawnStroke("flange", ViewPens.Fine, rim, Closed: true));
        drawing.Add(new DrawnStroke("blade", ViewPens.Edge, root, Closed: true));
        drawing.Add(new DrawnArea("blade-tone", ViewPens.Blade[1], [tip]));
        drawing.Add(new DrawnStroke("blade", ViewPens.Fine, tip, Closed: true));
        DrawnBox reach = drawing.GeometryBounds;
        drawing.Add(new DrawnStroke("axes", ViewPens.Axis, [new(reach.From.X - 2e-3, frame.At(0, 0).Y), new(reach.To.X + 2e-3, frame.At(0, 0).Y)], Closed: false));
        if (fin.FlangeHeight <= 0)
            return;
        Point2 front = rim.MinBy(p => p.X), rear = rim.MaxBy(p => p.X), starboard = rim.MaxBy(p => p.Y), port = rim.MinBy(p => p.Y);
        new Dimensions(drawing, tongue).Across(front, rear, Math.Max(starboard.Y, box[2].Y) + aside, tongue.BareLength((rear.X - front.X) / frame.Scale));
        NumberBeside.Down(drawing, tongue, port, starboard, reach.To.X + aside, tongue.BareLength((starboard.Y - port.Y) / frame.Scale));
    }

    private static IEnumerable<Point2> Section(TemplateFin fin, double depth) =>
        Enumerable.Range(0, PointsRound).Select(i => fin.Blade.Skin(depth, i / (PointsRound - 1.0))).Select(p => new Point2(p.X, p.Z));

    // The skin just below the hull, flange and all.
    private static IReadOnlyList<Point2> Rim(TemplateFin fin)
    {
        const double hair = 1e-6;
        return MeshSlice.Rings(fin.Skin, hair).MaxBy(ring => ring.Count) ?? throw new ArgumentException("The skin does not reach the hull.", nameof(fin));
    }
}
