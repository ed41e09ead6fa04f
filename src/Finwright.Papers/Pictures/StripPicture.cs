using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Pictures;

/// <summary>The rear of the blade with slot and sheet, cut across at the middle of the strip.</summary>
internal static class StripPicture
{
    /// <summary>Layer of the sheet.</summary>
    public const string SheetLayer = "sheet";

    /// <summary>Layer of the slot.</summary>
    public const string SlotLayer = "slot";

    private const double Left = 2e-3, Right = 14e-3, Above = 15e-3, Below = 14e-3, First = 5.5e-3, Second = 11e-3, WordRoom = 8e-3;
    private const int Steps = 60;

    public static Drawing? Draw(AssessmentResult result, Tongue tongue, double width, double height)
    {
        if (result is not { Design: { } design, Blade: { } blade, Solids: { } solids })
            throw new ArgumentException("Blade and slot of the fin were not worked out.", nameof(result));
        if (design.Shape.Strip is not { } strip || solids.Slot is not { } slot)
            return null;
        double y = (strip.FromPercent + strip.ToPercent) / 200 * blade.Span, sheet = 1e-3 * strip.SheetMm, overhang = 1e-3 * strip.OverhangMm;
        EdgeCut cut = new(blade, y);
        double wall = 1e-3 * design.Print.Walls * design.Print.LineWidthMm, inner = slot.Depth + Math.Max(0.7 * slot.Depth, 4e-3);
        double[] stations = [.. Enumerable.Range(0, Steps + 1).Select(i => inner * i / Steps)];
        double half = stations.Max(s => cut.Half(s) + Math.Abs(cut.Middle(s)));
        PictureWords words = tongue.Words.Pictures;
        IReadOnlyList<string> Said(string ratio) => [words.Scale(ratio), words.Glue, words.CutAt(tongue.Length(y, 0))];
        double most = (height - Above - Below - Notes.Height(Said("88:1"), width)) / (2 * half), told = Extent.Length(words.Overhang(tongue.Length(overhang)), Dimensions.WordSize) + WordRoom;
        RoundScale Fitting(double right) => RoundScale.Largest(Math.Min((width - Left - right) / (inner + overhang), most));
        RoundScale scale = Fitting(Right);
        // Words that do not fit between their arrows stand to the right of them.
        if (overhang > 0 && scale.Factor * overhang < told)
            scale = Fitting(Math.Max(Right, told));
        double factor = scale.Factor, axis = Above + factor * half;
        // Aft is to the right, starboard up.
        Point2 On(double s, double z) => new(Left + factor * (inner - s), axis - factor * z);
        Point2 Starboard(double s, double off) => On(s, cut.Middle(s) + off);
        IReadOnlyList<Point2> Band(double from, double to, Func<double, double> low, Func<double, double> high)
        {
            double[] along = [.. Enumerable.Range(0, Steps + 1).Select(i => from + (to - from) * i / Steps)];
            return [.. along.Select(s => Starboard(s, high(s))), .. along.Reverse().Select(s => Starboard(s, low(s)))];
        }

        Drawing drawing = new();
        IReadOnlyList<Point2> body = Band(0, inner, s => -cut.Half(s), cut.Half);
        drawing.Add(new DrawnArea("wall", PictureInk.Wall, [body]));
        double core = slot.Depth + wall, coreFrom = stations.Where(s => s >= core && cut.Half(s) > wall).DefaultIfEmpty(inner).Min();
        if (coreFrom < inner)
            drawing.Add(new DrawnArea("core", PictureInk.Part, [Band(coreFrom, inner, s => wall - cut.Half(s), s => cut.Half(s) - wall)]));
        double besideFrom = stations.Where(s => cut.Half(s) > slot.Width / 2 + 2 * wall).DefaultIfEmpty(inner).Min();
        if (besideFrom < core)
        {
            drawing.Add(new DrawnArea("core", PictureInk.Part, [Band(besideFrom, core, _ => slot.Width / 2 + wall, s => cut.Half(s) - wall)]));
            drawing.Add(new DrawnArea("core", PictureInk.Part, [Band(besideFrom, core, s => wall - cut.Half(s), _ => -slot.Width / 2 - wall)]));
        }

        // The cut end is left open, a wavy line ends it.
        drawing.Add(new DrawnStroke("skin", PictureInk.Outline, [.. body.Take(Steps + 1).Reverse(), .. body.Skip(Steps + 1).Reverse()], Closed: false));
        drawing.Add(new DrawnStroke("break", PictureInk.Thin, Wavy(body[Steps], body[Steps + 1]), Closed: false));
        IReadOnlyList<Point2> room = Band(0, slot.Depth, _ => -slot.Width / 2, _ => slot.Width / 2), laid = Band(-overhang, slot.Depth, _ => -sheet / 2, _ => sheet / 2);
        drawing.Add(new DrawnArea(SlotLayer, PictureInk.Bare, [room]));
        drawing.Add(new DrawnStroke(SlotLayer, PictureInk.Fitting, room, Closed: true));
        drawing.Add(new DrawnArea(SheetLayer, Palette.Quiet, [laid]));
        drawing.Add(new DrawnStroke(SheetLayer, PictureInk.Fitting, laid, Closed: true));

        double low = axis + factor * half;
        Dimensions dimensions = new(drawing, tongue);
        dimensions.Across(Starboard(slot.Depth, -slot.Width / 2), Starboard(0, -cut.Half(0)), low + First, words.Overlap(tongue.Length(slot.Depth)));
        if (overhang > 0)
            dimensions.Across(Starboard(0, -cut.Half(0)), Starboard(-overhang, -sheet / 2), low + Second, words.Overhang(tongue.Length(overhang)));
        Labels labels = new(drawing, new(default, new(width, axis)));
        bool IsOutside(Point2 place) => !Silhouette.Holds([body], place);
        void Tell(string text, Point2 place, double wanted) => labels.PutBeside(new(text), place, 4e-3, wanted, IsOutside, leader: 0);
        Tell(words.Sheet(tongue.Length(sheet)), Starboard(-0.6 * overhang, sheet / 2), Math.PI / 2);
        Tell(words.PrintedEdge(tongue.Length(2 * cut.Half(0))), Starboard(0, cut.Half(0)), Math.PI / 2);
        Tell(words.WallBeside(tongue.Length(cut.Half(0.3 * slot.Depth) - slot.Width / 2, 2)), Starboard(0.3 * slot.Depth, (cut.Half(0.3 * slot.Depth) + slot.Width / 2) / 2), Math.PI / 2);
        Tell(words.Slot(tongue.Length(slot.Width)), Starboard(0.75 * slot.Depth, slot.Width / 2), Math.PI / 2);
        Notes.Write(drawing, Said(tongue.Ratio(scale.Factor)), low + Below - 1.5e-3, width);
        return drawing;
    }

    private static IReadOnlyList<Point2> Wavy(Point2 from, Point2 to)
    {
        const double height = 0.8e-3;
        return [.. Enumerable.Range(0, 33).Select(i => from + i / 32.0 * (to - from) + new Point2(height * Math.Sin(Math.Tau * i / 32.0), 0))];
    }
}
