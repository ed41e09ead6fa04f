using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Geometry.Parts;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;

namespace Finwright.Papers.Views;

/// <summary>The fin from its starboard side turned so that the water comes from the left: board above, tip down.</summary>
internal static class SideOfFin
{
    // Marks of ports have one size on paper, whatever the scale.
    private const double PortRadius = 0.8e-3;

    /// <summary>Draws it.</summary>
    public static void Draw(Drawing drawing, TemplateFin fin, ViewFrame frame)
    {
        Blade(drawing, fin, frame);
        drawing.Add(new DrawnArea("base-tone", ViewPens.Base, [frame.At(fin.Solids.Plan.Ring())]));
        if (fin.FlangeHeight > 0)
            drawing.Add(new DrawnStroke("flange", ViewPens.Fine, frame.At(SkinSide.Rim(fin.Skin, fin.FlangeHeight)), Closed: false));
        Inside(drawing, fin, frame, fin.Solids.Features);
        drawing.Add(new DrawnStroke("blade", ViewPens.Edge, frame.At(fin.Planform.Polyline(TemplateFin.Tolerance)), Closed: true));
        drawing.Add(new DrawnStroke("base", ViewPens.Edge, frame.At(fin.Solids.Plan.Ring()), Closed: true));
        foreach (Dowel dowel in fin.Parts.Dowels)
            drawing.Add(new DrawnStroke("inside", ViewPens.Hidden, frame.At(FeatureVolume.Cylinder(dowel.BoreDiameter, dowel.From, dowel.To).SideView()), Closed: true));
        Cuts(drawing, fin, frame);
        Ports(drawing, fin, frame);
    }

    /// <summary>Rods in a tone, the rest as hidden edges.</summary>
    public static void Inside(Drawing drawing, TemplateFin fin, ViewFrame frame, IEnumerable<PlacedFeature> features)
    {
        ArgumentNullException.ThrowIfNull(fin);
        foreach (PlacedFeature feature in features.OrderBy(feature => IsRod(feature) ? 0 : 1))
        {
            IReadOnlyList<Point2> view = frame.At(feature.Volume.SideView());
            if (IsRod(feature))
                drawing.Add(new DrawnArea("rods", ViewPens.Rod, [view]));
            if (feature.Kind is not FeatureKind.NutWayIn)
                drawing.Add(new DrawnStroke("inside", IsRod(feature) ? ViewPens.Fine : ViewPens.Hidden, view, Closed: true));
        }
    }

    /// <summary>Whether a feature is filled by a rod that stays in the fin.</summary>
    public static bool IsRod(PlacedFeature feature) => feature.Kind is FeatureKind.CarbonRodBore or FeatureKind.ClampRodBore;

    private static void Blade(Drawing drawing, TemplateFin fin, ViewFrame frame)
    {
        if (fin.Solids.Slot is { } slot && fin.Overhang > 0)
        {
            IReadOnlyList<Point2> edge = slot.Line(0), outer = slot.Line(-fin.Overhang);
            drawing.Add(new DrawnArea("strip-tone", ViewPens.Sheet, [frame.At([.. edge, .. outer.Reverse()])]));
            drawing.Add(new DrawnStroke("strip", ViewPens.Strip, frame.At([edge[0], .. outer, edge[^1]]), Closed: false));
        }

        IReadOnlyList<Point2> rest = fin.Planform.Polyline(TemplateFin.Tolerance);
        int piece = 0;
        foreach (CutPlane cut in fin.Parts.Cuts)
        {
            Point2 toTip = new(cut.Normal.X, cut.Normal.Y);
            Tone(HalfPlane.Trim(rest, toTip, cut.Offset));
            rest = HalfPlane.Trim(rest, -1 * toTip, -cut.Offset);
        }

        Tone(rest);

        void Tone(IReadOnlyList<Point2> ring)
        {
            if (ring.Count > 2)
                drawing.Add(new DrawnArea("blade-tone", ViewPens.Blade[piece++ % ViewPens.Blade.Count], [frame.At(ring)]));
        }
    }

    private static void Cuts(Drawing drawing, TemplateFin fin, ViewFrame frame)
    {
        foreach (CutPlane cut in fin.Parts.Cuts)
            if (cut.Exits(fin.Blade.Outline) is { } exits)
                drawing.Add(new DrawnStroke(
                    "cuts", ViewPens.Cut, [frame.At(fin.Blade.Outline.LeadingEdge(exits.Leading), exits.Leading), frame.At(fin.Blade.Outline.TrailingEdge(exits.Trailing), exits.Trailing)], Closed: false));
    }

    // The feed is a filled disc, a vent a ring.
    private static void Ports(Drawing drawing, TemplateFin fin, ViewFrame frame)
    {
        foreach (PartPoured part in fin.Poured?.Parts ?? [])
        {
            foreach (PouredPort port in part.Ports)
            {
                Point3 mouth = part.InMesh(port.Port.Mouth);
                IReadOnlyList<Point2> disc = Rounds.Circle(frame.At(mouth.X, mouth.Y), PortRadius);
                drawing.Add(new DrawnArea("ports", port.IsFeed ? ViewPens.Edge.Colour : ViewPens.Paper, [disc]));
                drawing.Add(new DrawnStroke("ports", ViewPens.Fine, disc, Closed: true));
            }
        }
    }
}
