using Finwright.Geometry;
using Finwright.Geometry.Parts;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates;

/// <summary>The fin from the side, to lay the print on and to mark depths by.</summary>
internal static class PlanformTemplate
{
    private const double Step = 50e-3, Beside = 3e-3, BeyondHull = 10e-3;

    // A line of a depth so near to the tip would only crowd it.
    private const double ClearOfTip = 8e-3;

    public static Template Draw(TemplateFin fin, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        TemplateSheet sheet = new(fin, tongue);
        sheet.Ring("blade", TemplatePens.Edge, fin.Planform.Polyline(TemplateFin.Tolerance));
        sheet.Key(TemplatePens.Edge, words.PrintedBlade);
        sheet.Ring("base", TemplatePens.Part, fin.Solids.Plan.Ring());
        sheet.Key(TemplatePens.Part, fin.FlangeHeight > 0 ? words.BaseAndFlange : words.Base);
        if (fin.FlangeHeight > 0)
            sheet.Stroke("flange", TemplatePens.Part, SkinSide.Rim(fin.Skin, fin.FlangeHeight));

        Strip(sheet, fin, words);
        foreach (CutPlane cut in fin.Parts.Cuts)
        {
            if (cut.Exits(fin.Blade.Outline) is not { } exits)
                continue;
            sheet.Stroke("cuts", TemplatePens.Cut, [new(fin.Blade.Outline.LeadingEdge(exits.Leading), exits.Leading), new(fin.Blade.Outline.TrailingEdge(exits.Trailing), exits.Trailing)]);
            sheet.Key(TemplatePens.Cut, words.CutBetweenParts);
        }

        Depths(sheet, fin, tongue);
        return sheet.Finish("planform", words.PlanformTitle, words.PlanformUse);
    }

    private static void Strip(TemplateSheet sheet, TemplateFin fin, TemplateWords words)
    {
        if (fin.Solids.Slot is not { } slot)
            return;
        IReadOnlyList<Point2> edge = slot.Line(0);
        if (fin.Overhang > 0)
        {
            sheet.Stroke("strip", TemplatePens.Strip, [edge[0], .. slot.Line(-fin.Overhang), edge[^1]]);
            sheet.Key(TemplatePens.Strip, words.StripEdge);
        }

        sheet.Stroke("slot", TemplatePens.Hidden, slot.SideView());
        sheet.Key(TemplatePens.Hidden, words.SlotBottom);
    }

    /// <summary>Hull line, depths with their chords, quarter chord and span.</summary>
    private static void Depths(TemplateSheet sheet, TemplateFin fin, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        Geometry.Outlines.Outline outline = fin.Blade.Outline;
        DrawnBox box = sheet.Drawing.GeometryBounds;
        double rootLeft = Math.Min(outline.LeadingEdge(0), fin.Solids.Plan.FrontX) - Overhang(fin), rootRight = Math.Max(outline.TrailingEdge(0), fin.Solids.Plan.RearX) + Overhang(fin);
        sheet.Stroke("quarter-chord", TemplatePens.Middle, QuarterChords(fin));
        sheet.Key(TemplatePens.Middle, words.QuarterChordLine);

        string rootChord = words.Chord(tongue.BareLength(outline.Chord(0)));
        double right = rootRight + Beside + Extent.Length(rootChord, Dimensions.WordSize);
        sheet.Stroke("hull", TemplatePens.Thin, [new(rootLeft - BeyondHull, 0), new(right, 0)]);
        sheet.Say(words.Hull, new(rootLeft - BeyondHull, -1e-3));
        sheet.Say(rootChord, new(rootRight + Beside, -1e-3));
        for (int i = 1; i * Step < fin.Blade.Span - ClearOfTip; i++)
        {
            double y = i * Step, leading = outline.LeadingEdge(y), trailing = outline.TrailingEdge(y);
            sheet.Stroke("stations", TemplatePens.Thin, [new(leading, y), new(trailing, y)]);
            Point2 sink = new(0, 0.36 * Dimensions.WordSize);
            sheet.Say(words.Depth(tongue.BareLength(y)), new Point2(leading - Beside, y) + sink, TextAnchor.End);
            // Past a raked strip's edge, which may lie further out above or below the line than on it.
            double clear = fin.Overhang > 0 ? fin.Overhang * 1.6 : 0;
            string chord = words.Chord(tongue.BareLength(outline.Chord(y)));
            sheet.Say(chord, new Point2(trailing + clear + Beside, y) + sink);
            right = Math.Max(right, trailing + clear + Beside + Extent.Length(chord, Dimensions.WordSize));
        }

        double tip = (outline.LeadingEdge(fin.Blade.Span) + outline.TrailingEdge(fin.Blade.Span)) / 2;
        sheet.Dimensions.Down(new(rootRight, 0), new(tip, fin.Blade.Span), Math.Max(right, box.To.X) + 6e-3);
    }

    /// <summary>The quarter-chord line, its points closer together toward the tip, where round edges turn fast.</summary>
    private static Point2[] QuarterChords(TemplateFin fin)
    {
        const int steps = 120;
        Geometry.Outlines.Outline outline = fin.Blade.Outline;
        return [.. Enumerable.Range(0, steps + 1).Select(i => 1 - (double)i / steps).Select(left => fin.Blade.Span * (1 - left * left)).Select(y => new Point2(outline.LeadingEdge(y) + outline.Chord(y) / 4, y))];
    }

    private static double Overhang(TemplateFin fin) => fin.Design.Shape.Flange is { } flange ? flange.OverhangMm * 1e-3 : 0;
}
