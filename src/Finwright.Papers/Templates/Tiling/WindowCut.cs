using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>Takes out of a drawing what lies in a window.</summary>
internal static class WindowCut
{
    /// <summary>Lines are cut, areas trimmed at the window; words that reach into it are kept whole.</summary>
    public static Drawing Of(Drawing drawing, DrawnBox window)
    {
        Drawing cut = new();
        foreach (DrawnItem item in drawing.Items)
        {
            DrawnBox box = DrawnBox.Round(Extent.Of(item));
            if (box.To.X < window.From.X || box.From.X > window.To.X || box.To.Y < window.From.Y || box.From.Y > window.To.Y)
                continue;
            bool whole = item is DrawnText || box.From.X >= window.From.X && box.To.X <= window.To.X && box.From.Y >= window.From.Y && box.To.Y <= window.To.Y;
            if (whole)
                cut.Add(item);
            else if (item is DrawnStroke stroke)
                foreach (List<Point2> run in Runs(stroke, window))
                    cut.Add(stroke with { Points = run, Closed = false });
            else if (item is DrawnArea area && (IReadOnlyList<IReadOnlyList<Point2>>)[.. area.Rings.Select(ring => Trim(ring, window)).Where(ring => ring.Count > 2)] is { Count: > 0 } rings)
                cut.Add(area with { Rings = rings });
        }

        return cut;
    }

    private static IEnumerable<List<Point2>> Runs(DrawnStroke stroke, DrawnBox window)
    {
        List<Point2> run = [];
        int count = stroke.Points.Count, last = stroke.Closed ? count : count - 1;
        for (int i = 0; i < last; i++)
        {
            Point2 a = stroke.Points[i], b = stroke.Points[(i + 1) % count];
            (double From, double To)? inside = window.Inside(a, b);
            if (inside is not { } part)
                continue;
            // A run goes on when this piece begins where the last one ended.
            if (part.From > 0 || run.Count == 0)
            {
                if (run.Count > 1)
                    yield return run;
                run = [part.From > 0 ? a + part.From * (b - a) : a];
            }

            run.Add(part.To < 1 ? a + part.To * (b - a) : b);
            if (part.To < 1)
            {
                yield return run;
                run = [];
            }
        }

        if (run.Count > 1)
            yield return run;
    }

    // Side by side (Sutherland and Hodgman 1974, from memory): edges that it leaves along the window enclose nothing.
    private static IReadOnlyList<Point2> Trim(IReadOnlyList<Point2> ring, DrawnBox window)
    {
        ring = HalfPlane.Trim(ring, new(-1, 0), -window.From.X);
        ring = HalfPlane.Trim(ring, new(1, 0), window.To.X);
        ring = HalfPlane.Trim(ring, new(0, -1), -window.From.Y);
        return HalfPlane.Trim(ring, new(0, 1), window.To.Y);
    }
}
