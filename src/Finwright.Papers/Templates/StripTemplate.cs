using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates;

/// <summary>The strip for the trailing edge, to cut from sheet.</summary>
internal static class StripTemplate
{
    // From the strip to its words, metres.
    private const double Aside = 9e-3;

    public static Template Draw(TemplateFin fin, StripSlot slot, Strip strip, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        TemplateSheet sheet = new(fin, tongue);
        IReadOnlyList<Point2> edge = slot.Line(0), inner = slot.Line(slot.Depth), outer = slot.Line(-fin.Overhang);
        sheet.Ring("strip", TemplatePens.Edge, [.. inner, .. fin.Overhang > 0 ? outer.Reverse() : edge.Reverse()]);
        sheet.Key(TemplatePens.Edge, words.StripCutLine);
        if (fin.Overhang > 0)
        {
            sheet.Stroke("printed-edge", TemplatePens.Middle, [.. edge]);
            sheet.Key(TemplatePens.Middle, words.StripPrintedEdge);
        }

        // Words stand beside the middle of either side, the arrow beside the lower third.
        int middle = edge.Count / 2, third = edge.Count * 3 / 4;
        double left = inner.Min(p => p.X), right = outer.Max(p => p.X);
        Point2 inSlot = 0.5 * (inner[middle] + edge[middle]);
        sheet.Dimensions.Leader(inSlot, new(Math.Min(left, inSlot.X) - Aside, inSlot.Y), words.StripInSlot(tongue.Length(slot.Depth)));
        if (fin.Overhang > 0)
        {
            Point2 outside = 0.5 * (outer[middle] + edge[middle]);
            sheet.Dimensions.Leader(outside, new(Math.Max(right, outside.X) + Aside, outside.Y), words.StripOutside(tongue.Length(fin.Overhang)));
        }

        Point2 from = outer[middle + 2], to = outer[third], way = 1 / (to - from).Length * (to - from), behind = new(way.Y, -way.X);
        if (behind.X < 0)
            behind = -1 * behind;
        (from, to) = (from + 6e-3 * behind, to + 6e-3 * behind);
        from += 0.35 * (to - from);
        sheet.Stroke("dimensions", TemplatePens.Thin, [from, to]);
        sheet.Dimensions.Arrow(to, way);
        sheet.SayNear(words.ToTheTip, to, 3e-3);
        sheet.SayNear(words.RootEnd, inner[0], 4e-3);
        return sheet.Finish("strip", words.StripTitle, words.StripUse(tongue.Length(strip.SheetMm * 1e-3), tongue.Length(slot.Depth + fin.Overhang), tongue.Length(slot.EdgeLength)));
    }
}
