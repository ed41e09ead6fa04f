using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;
using OxyPlot;

namespace Finwright.Papers.Templates;

/// <summary>A part as it is held for the pour, to set it up by and to cut its supports from.</summary>
internal static class PourJigTemplate
{
    private const double Millimetres = 1e-3, Bench = 12e-3, SupportHalf = 7e-3, Beyond = 3.5e-3;

    // Points of the outline that lie closer to the line than this are left out, mm: it is found on dots, and their steps are not drawn.
    private const double Thinning = 0.3;

    // Supports stand so far to either side of the middle, as a share of the width.
    private const double SupportShare = 0.28;

    // Directions seen shorter than this are seen too much from their end to lay anything by.
    private const double LeastSeen = 0.5;

    // Below this an angle is not drawn, radians.
    private const double LeastAngle = 0.5 * Math.PI / 180;

    public static Template Draw(TemplateFin fin, PartPoured part, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        TemplateSheet sheet = new(fin, tongue);
        SideView view = new(part.Voxels, part.Layers, part.Up, part.Layers.ToLayers.Turn(new(1, 0, 0)));
        Point2[][] rings = [.. view.Silhouette.Select(ring => RingThinning.Of(ring, Thinning).Select(Metres).ToArray())];
        foreach (Point2[] ring in rings)
            sheet.Ring("part", TemplatePens.Edge, ring);
        sheet.Key(TemplatePens.Edge, words.PartFromTheSide);
        DrawnBox box = DrawnBox.Round(rings.SelectMany(ring => ring));
        Point2 middle = 0.5 * (box.From + box.To);
        double bench = box.To.Y + Bench;
        // Lines first, so that numbers find room between them; the arc last, since it can be of any size.
        double turn = Axes(sheet, part, view, box, middle, tongue);
        Supports(sheet, rings, box, bench, tongue);
        sheet.Stroke("level", TemplatePens.Edge, new Point2(box.From.X - Beyond, bench), new(box.To.X + Beyond, bench));
        sheet.Say(words.BenchLevel, new(box.From.X - Beyond, bench + 4e-3));

        List<IReadOnlyList<string>> rows = [];
        foreach ((int index, PouredPort port) in part.Ports.Index())
            rows.Add(Port(sheet, view, port, index + 1, bench, tongue));
        OnLevel(sheet, words.Level, new(box.From.X - Beyond, middle.Y), new(box.To.X + Beyond, middle.Y));
        if (Math.Abs(turn) > LeastAngle)
            Angle(sheet, middle, turn, tongue);
        sheet.Table(new(["", words.PortHead, words.AboveBenchHead], [true, false, true], rows));
        string name = tongue.Words.Names.Part(part.Name);
        return sheet.Finish("pour-jig-" + Kebab(part.Name), words.JigTitle(name), words.JigUse(tongue.Words.Names.Attitude(part.Held(part.Attitude))));
    }

    private static Point2 Metres(DataPoint p) => new(Millimetres * p.X, Millimetres * p.Y);

    private static string Kebab(string name) => string.Join('-', name.Split([.. name.Where(c => !char.IsAsciiLetterOrDigit(c)).Distinct()], StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant();

    /// <summary>Two wedges between bench and part.</summary>
    private static void Supports(TemplateSheet sheet, Point2[][] rings, DrawnBox box, double bench, Tongue tongue)
    {
        foreach (double share in (double[])[0.5 - SupportShare, 0.5 + SupportShare])
        {
            double x = box.From.X + share * box.Width;
            if (Lowest(rings, x) is not { } y)
                continue;
            sheet.Ring("supports", TemplatePens.Part, [new(x, y), new(x + SupportHalf, bench), new(x - SupportHalf, bench)]);
            sheet.SayNear(tongue.BareLength(bench - y), new(x, (y + bench) / 2), SupportHalf + 1e-3);
        }

        sheet.Key(TemplatePens.Part, tongue.Words.Templates.Support);
    }

    /// <summary>The lowest place of the part on a line straight down; null when the line misses it.</summary>
    private static double? Lowest(Point2[][] rings, double x)
    {
        double lowest = double.NegativeInfinity;
        foreach (Point2[] ring in rings)
        {
            for (int i = 0; i < ring.Length; i++)
            {
                (Point2 a, Point2 b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (a.X <= x != b.X <= x)
                    lowest = Math.Max(lowest, a.Y + (x - a.X) / (b.X - a.X) * (b.Y - a.Y));
            }
        }

        return double.IsFinite(lowest) ? lowest : null;
    }

    /// <summary>Level and plumb through the middle, and how the hull line or the span lies to level: its turn counter-clockwise, radians.</summary>
    private static double Axes(TemplateSheet sheet, PartPoured part, SideView view, DrawnBox box, Point2 middle, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        Point2 left = new(box.From.X - Beyond, middle.Y), right = new(box.To.X + Beyond, middle.Y), top = new(middle.X, box.From.Y - Beyond);
        sheet.Stroke("level", TemplatePens.Thin, left, right);
        sheet.Stroke("plumb", TemplatePens.Thin, top, new Point2(middle.X, box.To.Y + Bench));
        sheet.Say(words.Plumb, new(middle.X, top.Y - 1e-3), TextAnchor.Middle);

        DataPoint hull = view.Way(part.Layers.ToLayers.Turn(new(1, 0, 0))), span = view.Way(part.Layers.ToLayers.Turn(new(0, 1, 0)));
        bool byHull = Math.Sqrt(hull.X * hull.X + hull.Y * hull.Y) > LeastSeen;
        DataPoint way = byHull ? hull : span;
        string name = byHull ? words.AlongHull : words.AlongSpan;
        // A line has no ends: it is turned to run to the right, or up.
        double turn = Math.Atan2(-way.Y, way.X);
        if (turn > Math.PI / 2 + 1e-9)
            turn -= Math.PI;
        else if (turn < -Math.PI / 2 + 1e-9)
            turn += Math.PI;
        (double sin, double cos) = Math.SinCos(turn);
        double reach = Math.Min(cos > 1e-9 ? box.Width / 2 / cos : double.PositiveInfinity, Math.Abs(sin) > 1e-9 ? box.Height / 2 / Math.Abs(sin) : double.PositiveInfinity) + Beyond;
        sheet.Stroke("reference", TemplatePens.Middle, Rounds.At(middle, reach, turn + Math.PI), Rounds.At(middle, reach, turn));
        sheet.Key(TemplatePens.Middle, words.ReferenceToLevel(name, tongue.Angle(Math.Abs(turn))));
        return turn;
    }

    /// <summary>Writes words above a level line, or below it, as far to the left as they stand clear.</summary>
    private static void OnLevel(TemplateSheet sheet, string text, Point2 left, Point2 right)
    {
        const double step = 2e-3;
        double length = Extent.Length(text, Dimensions.WordSize);
        int places = Math.Max(1, (int)((right.X - left.X - length) / step));
        double[] sinks = [-1e-3, 1e-3 + 0.8 * Dimensions.WordSize];
        DrawnText[] tries =
        [
            .. sinks.SelectMany(sink => Enumerable.Range(0, places).Select(i =>
                new DrawnText(Dimensions.WordLayer, text, left + new Point2(i * step, sink), new(Dimensions.WordSize, TemplatePens.Edge.Colour)))),
        ];
        sheet.Drawing.Add(tries.FirstOrDefault(there => FreeRoom.IsClear(sheet.Drawing, there, 0.2e-3)) ?? tries[0]);
    }

    /// <summary>Draws the angle from level with the smallest arc whose number stands clear, and that crosses no words.</summary>
    private static void Angle(TemplateSheet sheet, Point2 middle, double turn, Tongue tongue)
    {
        const double least = 15e-3, most = 90e-3, step = 3e-3;
        for (double radius = least; ; radius += step)
        {
            Drawing arc = new();
            new Dimensions(arc, tongue).Angle(middle, 0, turn, radius, legs: false);
            if (radius < most && !(AreClear(arc, sheet.Drawing) && AreClear(sheet.Drawing, arc)))
                continue;
            sheet.Drawing.Add(arc, default);
            return;
        }
    }

    private static bool AreClear(Drawing words, Drawing of) => words.Items.OfType<DrawnText>().All(text => FreeRoom.IsClear(of, text, 0.4e-3));

    /// <summary>Draws a port with its number, and gives its row of the table.</summary>
    private static IReadOnlyList<string> Port(TemplateSheet sheet, SideView view, PouredPort port, int number, double bench, Tongue tongue)
    {
        Point2 at = Metres(view.At(port.Port.Mouth));
        DataPoint way = view.Way(port.Port.Outward);
        double radius = port.Port.Diameter / 2;
        sheet.Ring("ports", TemplatePens.Edge, Rounds.Circle(at, radius));
        if (port.IsFeed)
            sheet.Drawing.Add(new DrawnArea("ports", TemplatePens.Edge.Colour, [Rounds.Circle(at, radius)]));
        if (Math.Sqrt(way.X * way.X + way.Y * way.Y) > LeastSeen)
            sheet.Stroke("ports", TemplatePens.Edge, at + radius * new Point2(way.X, way.Y), at + (radius + 6e-3) * new Point2(way.X, way.Y));
        sheet.SayNear(tongue.Number(number, 0), at, radius + 2e-3, bold: true);
        TemplateWords words = tongue.Words.Templates;
        return [tongue.Number(number, 0), words.PortRole(tongue.Words.Names.Port(port.Name), port.IsFeed), tongue.BareLength(bench - at.Y)];
    }
}
