using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;
using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>Draws two blades over each other: outlines, root quarter chord on root quarter chord, and sections beside them. The first in one line, the second in a dashed one, each with its letter.</summary>
public static class OutlinePairFigure
{
    private const string First = "A", Second = "B";

    private const double Millimetres = 1e3;

    // Room for outlines and for sections, points.
    private const double OutlineWidth = 380, SectionsFrom = 425, Top = 22, Deep = 340, RowHeight = 124, KeyHeight = 46;

    private const double LetterAway = 11, LetterBox = 15, Sample = 34;

    private const double Fineness = 0.05;

    private const int EdgeSteps = 60, SkinPoints = 200, LongestName = 56;

    private static readonly (double Share, string Name)[] Places = [(0, "at the root"), (0.5, "at half span"), (0.9, "at 90 % of the span")];

    private static readonly int[] BarsMm = [100, 50, 20, 10];

    /// <summary>Draws the figure.</summary>
    /// <param name="firstName">How the first is called.</param>
    /// <param name="first">The first blade.</param>
    /// <param name="secondName">How the second is called.</param>
    /// <param name="second">The second blade.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string firstName, Blade first, string secondName, Blade second)
    {
        ArgumentNullException.ThrowIfNull(firstName);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(secondName);
        ArgumentNullException.ThrowIfNull(second);
        FigurePaper paper = new("Two blades over each other", ["root quarter chord on root quarter chord; sections, each at its share of its own span, quarter chord on quarter chord"], Top + Deep + KeyHeight + 12);
        Planform[] plans = [Planform.Of(first.SplineOutline), Planform.Of(second.SplineOutline)];
        Outlines(paper, first, second, plans);
        Sections(paper, first, second);
        Key(paper, Top + Deep + 20, First, firstName, plans[0], FigureSheet.Ink, LineStyle.Solid);
        Key(paper, Top + Deep + 42, Second, secondName, plans[1], FigureSheet.Water, LineStyle.Dash);
        return paper.Finish($"{First}, {firstName}: {Measures(plans[0])}. {Second}, {secondName}: {Measures(plans[1])}.");
    }

    private static void Outlines(FigurePaper paper, Blade first, Blade second, Planform[] plans)
    {
        double deepest = plans.Max(plan => plan.Span), tolerance = Fineness * deepest / Deep;
        IReadOnlyList<Point2> a = plans[0].Polyline(tolerance), b = plans[1].Polyline(tolerance);
        double left = Math.Min(a.Min(p => p.X), b.Min(p => p.X)), right = Math.Max(a.Max(p => p.X), b.Max(p => p.X));
        double scale = Math.Min((Deep - 26) / deepest, (OutlineWidth - 4 * LetterAway) / (right - left)), at = 2 * LetterAway - scale * left;
        DataPoint Place(double x, double y) => new(at + scale * x, Top + scale * y);
        DataPoint[] ringA = [.. a.Select(p => Place(p.X, p.Y))], ringB = [.. b.Select(p => Place(p.X, p.Y))];
        paper.Fill([ringA], Tone);
        paper.Ring([ringA], FigureSheet.Ink, 1.6);
        paper.Ring([ringB], FigureSheet.Water, 1.6, LineStyle.Dash);
        paper.Line([new(0, Top), new(OutlineWidth, Top)], FigureSheet.Ink, 2);
        paper.Mark(Place(0, 0), 3, FigureSheet.Paper, FigureSheet.QuietInk);
        Letter(paper, First, first, second, Place, FigureSheet.Ink);
        Letter(paper, Second, second, first, Place, FigureSheet.Water);
        Bar(paper, 1, Top + Deep, scale / Millimetres);
    }

    /// <summary>The letter of an outline, beside that edge by which it stands out farthest from the other; within it where it nowhere does.</summary>
    private static void Letter(FigurePaper paper, string letter, Blade own, Blade other, Func<double, double, DataPoint> place, OxyColor colour)
    {
        (double Out, double Depth, double X, int Side) best = (double.NegativeInfinity, 0, 0, 1);
        for (int i = 6; i <= EdgeSteps - 6; i++)
        {
            double depth = own.Span * i / EdgeSteps, leading = own.Outline.LeadingEdge(depth), trailing = own.Outline.TrailingEdge(depth);
            bool isBelow = depth > other.Span;
            double ahead = isBelow ? own.Span : other.Outline.LeadingEdge(depth) - leading, behind = isBelow ? own.Span : trailing - other.Outline.TrailingEdge(depth);
            if (ahead > best.Out)
                best = (ahead, depth, leading, -1);
            if (behind > best.Out)
                best = (behind, depth, trailing, 1);
        }

        double hair = 1e-3 * own.Span;
        int outward = best.Out < -hair ? -1 : 1;
        // Two that are as good as the same: each letter by an edge of its own.
        if (Math.Abs(best.Out) <= hair)
            best = letter == First ? (0, own.Span / 2, own.Outline.LeadingEdge(own.Span / 2), -1) : (0, own.Span / 2, own.Outline.TrailingEdge(own.Span / 2), 1);
        DataPoint edge = place(best.X, best.Depth);
        // Within, an edge that leans comes close to a corner of the letter.
        double x = edge.X + outward * best.Side * (outward > 0 ? LetterAway : 1.7 * LetterAway);
        if (outward < 0)
            paper.Box(x - LetterBox / 2, edge.Y - LetterBox / 2, LetterBox, LetterBox, FigureSheet.Paper);
        paper.Text(x, edge.Y, letter, colour, HorizontalAlignment.Center, isBold: true);
    }

    private static void Sections(FigurePaper paper, Blade first, Blade second)
    {
        double width = FigurePaper.Width - SectionsFrom;
        double chord = Math.Max(first.Outline.Chord(0), second.Outline.Chord(0));
        foreach ((double share, _) in Places)
            chord = Math.Max(chord, Math.Max(first.Outline.Chord(share * first.Span), second.Outline.Chord(share * second.Span)));
        double scale = width / (1.04 * chord), quarter = SectionsFrom + 0.26 * chord * scale;
        foreach ((int row, (double share, string name)) in Places.Index())
        {
            double top = Top + row * RowHeight, middle = top + 66;
            paper.Text(SectionsFrom, top, name, FigureSheet.Ink, isBold: true);
            paper.Text(SectionsFrom, top + 17, $"{First} {Size(first, share)}", FigureSheet.Ink);
            paper.Text(SectionsFrom + width / 2, top + 17, $"{Second} {Size(second, share)}", FigureSheet.Water);
            paper.Line([new(SectionsFrom, middle), new(FigurePaper.Width, middle)], FigureSheet.Rule, 0.75);
            DataPoint[] a = Ring(first, share, scale, quarter, middle), b = Ring(second, share, scale, quarter, middle);
            paper.Fill([a], Tone);
            paper.Ring([a], FigureSheet.Ink, 1.4);
            paper.Ring([b], FigureSheet.Water, 1.4, LineStyle.Dash);
        }

        Bar(paper, SectionsFrom, Top + Deep, scale / Millimetres);
    }

    private static DataPoint[] Ring(Blade blade, double share, double scale, double quarter, double middle)
    {
        double depth = share * blade.Span, origin = blade.Outline.LeadingEdge(depth) + 0.25 * blade.Outline.Chord(depth);
        return [.. Enumerable.Range(0, SkinPoints).Select(i => blade.Skin(depth, (i + 0.5) / SkinPoints)).Select(p => new DataPoint(quarter + scale * (p.X - origin), middle - scale * p.Z))];
    }

    private static string Size(Blade blade, double share)
    {
        double depth = share * blade.Span, chord = blade.Outline.Chord(depth), thickness = blade.ThicknessRatio(depth) * chord;
        return $"{Millimetres * chord:0.0} x {Millimetres * thickness:0.0} mm";
    }

    private static void Key(FigurePaper paper, double y, string letter, string name, Planform plan, OxyColor colour, LineStyle style)
    {
        paper.Text(0, y, letter, colour, isBold: true);
        paper.Line([new(LetterBox, y), new(LetterBox + Sample, y)], colour, 1.6, style);
        paper.Text(LetterBox + Sample + 8, y, $"{(name.Length <= LongestName ? name : name[..(LongestName - 3)] + "...")}: {Measures(plan)}", colour);
    }

    private static void Bar(FigurePaper paper, double x, double y, double pointsPerMm)
    {
        int bar = Array.Find(BarsMm, length => length * pointsPerMm <= 160);
        double end = x + bar * pointsPerMm;
        paper.Line([new(x, y - 3), new(x, y + 3)], FigureSheet.QuietInk, 1);
        paper.Line([new(x, y), new(end, y)], FigureSheet.QuietInk, 1);
        paper.Line([new(end, y - 3), new(end, y + 3)], FigureSheet.QuietInk, 1);
        paper.Text(end + 6, y, $"{bar} mm", FigureSheet.QuietInk);
    }

    private static string Measures(Planform plan) => $"{Millimetres * plan.Span:0.#} mm deep, {1e4 * plan.Area:0.#} cm², rake {double.RadiansToDegrees(plan.Rake):0.#}°";

    private static OxyColor Tone => OxyColor.FromAColor(0x22, FigureSheet.Water);
}
