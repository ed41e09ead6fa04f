using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates;

/// <summary>Sections along the span, to check the sanding by and to cut gauges from.</summary>
internal static class SectionsTemplate
{
    // Odd, so that one point is the nose.
    private const int PointsRound = 481;

    // Ahead and behind, metres: enough to hold a knife to.
    private const double Ahead = 7e-3, Behind = 4e-3, Gap = 8e-3;

    private static readonly double[] Shares = [0, 0.25, 0.5, 0.75, 0.9];

    /// <summary>Depths that are drawn, metres: the first where the blade comes out of the flange.</summary>
    public static IEnumerable<double> Depths(TemplateFin fin) =>
        Shares.Select(share => share * fin.Blade.Span).Select(depth => Math.Max(depth, fin.FlangeHeight)).Distinct();

    public static Template Draw(TemplateFin fin, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        TemplateSheet sheet = new(fin, tongue);
        double top = 0;
        foreach (double depth in Depths(fin))
            top = Section(sheet, fin.Blade, depth, top, tongue) + Gap;
        sheet.Key(TemplatePens.Edge, words.SectionOutline);
        sheet.Key(TemplatePens.Middle, words.SectionMiddle);
        sheet.Key(TemplatePens.Thin, words.GreatestThickness);
        return sheet.Finish("sections", words.SectionsTitle, words.SectionsUse(fin.Blade.IsSymmetric));
    }

    /// <summary>Draws a section below a line of words, and tells where it ends.</summary>
    private static double Section(TemplateSheet sheet, Blade blade, double depth, double top, Tongue tongue)
    {
        Point2[] outline = [.. Enumerable.Range(0, PointsRound).Select(i => blade.Skin(depth, i / (PointsRound - 1.0))).Select(p => new Point2(p.X, -p.Z))];
        (Point2 starboard, Point2 port) = Thickest(blade, depth);
        double left = outline.Min(p => p.X), right = outline.Max(p => p.X), chord = blade.Outline.Chord(depth);
        Point2 nose = outline[PointsRound / 2], tail = 0.5 * (outline[0] + outline[^1]);
        double thickness = (starboard - port).Length, behind = (0.5 * (starboard + port) - nose).Dot(1 / (tail - nose).Length * (tail - nose));
        string label = tongue.Words.Templates.Section(
            tongue.BareLength(depth), tongue.Percent(depth / blade.Span), tongue.BareLength(chord), tongue.BareLength(thickness), tongue.BareLength(behind));
        double foot = top + Dimensions.WordSize;
        sheet.Say(label, new(0, foot));
        Point2 shift = new(-left, foot + 3e-3 - outline.Min(p => p.Y));
        sheet.Ring("sections", TemplatePens.Edge, [.. outline.Select(p => p + shift)]);
        sheet.Stroke("thickness", TemplatePens.Thin, starboard + shift, port + shift);
        Point2 along = 1 / (tail - nose).Length * (tail - nose), tip = nose + shift - Ahead * along;
        sheet.Stroke("middles", TemplatePens.Middle, tip, tail + shift + Behind * along);
        sheet.Dimensions.Arrow(tip, -1 * along);
        return shift.Y + outline.Max(p => p.Y);
    }

    /// <summary>The two points of the skin between which the section is thickest.</summary>
    private static (Point2 Starboard, Point2 Port) Thickest(Blade blade, double depth)
    {
        // Golden section search; the thickness rises once and falls once from the trailing edge (u = 0) to the nose (u = 1/2).
        double low = 0, high = 0.5, ratio = (Math.Sqrt(5) - 1) / 2;
        while (high - low > 1e-6)
        {
            double a = high - ratio * (high - low), b = low + ratio * (high - low);
            if (Thickness(a) > Thickness(b))
                high = b;
            else
                low = a;
        }

        double u = (low + high) / 2;
        return (Flat(u), Flat(1 - u));

        double Thickness(double place) => (Flat(place) - Flat(1 - place)).Length;

        Point2 Flat(double place)
        {
            Point3 p = blade.Skin(depth, place);
            return new(p.X, -p.Z);
        }
    }
}
