using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Templates.Tiling;
using Finwright.Papers.Words;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace Finwright.Papers.Tests.Tiling;

/// <summary>A book of templates read back with PdfPig, which shares no code with what writes it. Millimetres from the upper left corner of a page.</summary>
internal static class TileSheets
{
    private const double PointMm = 25.4 / 72;

    /// <summary>An ink that nothing else on paper has.</summary>
    public static Ink Ink { get; } = new(200, 10, 30);

    private static readonly Lazy<AssessmentResult> AnyFin = new(() => MadeFins.Worked("fairway-upright", AssessmentDepth.Shape));

    public static PaperSettings Settings { get; } = new() { Date = new(2026, 11, 27), ProgramVersion = "0.9.0" };

    public static byte[] Write(PaperSettings settings, params IReadOnlyList<Template> templates) => TemplateBook.Write(templates, AnyFin.Value, settings, new Tongue(settings));

    /// <summary>A leaf of many points with a notch, so that sheets cut it in several places.</summary>
    public static Template Leaf(double width, double height)
    {
        Drawing drawing = new();
        const int points = 400;
        drawing.Add(new DrawnStroke(
            "leaf", new(Ink, 0.25e-3),
            [.. Enumerable.Range(0, points).Select(i => Math.Tau * i / points).Select(turn => new Point2(width / 2 * (1 + Math.Cos(turn)), height / 2 * (1 + Math.Sin(turn) * (0.8 + 0.2 * Math.Cos(6 * turn)))))],
            Closed: true));
        return new("leaf", "Leaf", "To see whether sheets go together.", drawing);
    }

    public static IReadOnlyList<T> Read<T>(byte[] file, Func<Page, T> read)
    {
        using PdfDocument document = PdfDocument.Open(file);
        return [.. document.GetPages().Select(read)];
    }

    /// <summary>Lines of a page, by points.</summary>
    public static IEnumerable<(PdfPath Path, Point2[] Points)> Lines(Page page) =>
        from path in page.Paths
        where path.IsStroked
        from sub in path
        let points = Points(page, sub)
        where points.Length > 1
        select (path, points);

    public static bool HasInk(PdfPath path)
    {
        (double r, double g, double b) = path.StrokeColor?.ToRGBValues() ?? default;
        return Math.Abs(255 * r - Ink.Red) < 1 && Math.Abs(255 * g - Ink.Green) < 1 && Math.Abs(255 * b - Ink.Blue) < 1;
    }

    public static Point2 At(Page page, PdfPoint point) => new(PointMm * point.X, PointMm * (page.Height - point.Y));

    private static Point2[] Points(Page page, PdfSubpath sub)
    {
        List<Point2> points = [];
        foreach (PdfSubpath.IPathCommand command in sub.Commands)
        {
            if (command is PdfSubpath.Move move)
                points.Add(At(page, move.Location));
            else if (command is PdfSubpath.Line line)
                points.Add(At(page, line.To));
            else if (command is PdfSubpath.Close && points.Count > 0)
                points.Add(points[0]);
        }

        return [.. points];
    }
}
