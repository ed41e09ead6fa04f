namespace Finwright.Geometry.Pictures;

/// <summary>One section of a blade as it is drawn.</summary>
/// <param name="Label">What it is, for example "120 mm below the hull".</param>
/// <param name="Outline">Closed outline, x aft, y to starboard, metres.</param>
/// <param name="Inside">Bores, slots and walls inside it; empty when none.</param>
public sealed record SectionDrawing(string Label, IReadOnlyList<Point2> Outline, IReadOnlyList<DrawnLine> Inside);

/// <summary>
/// Drawings of a fin at true scale for the bench: ink lines, dimensions in the drawing, a 100 mm line to check the print by.
/// All points in metres.
/// </summary>
public static class OutlineDrawings
{
    private const double Gap = 8e-3;
    private static readonly Pen Outline = new(Palette.Line, 0.35);
    private static readonly Pen Base = new(Palette.Water, 0.25);
    private static readonly Pen Inside = new(Palette.Line.Under(Palette.Water, 0.5), 0.18);

    /// <summary>The blade from the side with span and root chord, and whatever goes with it.</summary>
    /// <param name="title">Name of the fin.</param>
    /// <param name="blade">Closed outline, x aft, y down from the hull.</param>
    /// <param name="baseLines">The base above the hull (y negative); empty when none is drawn.</param>
    /// <param name="inside">Rods, slots and cuts; empty when none.</param>
    public static SvgDrawing Planform(string title, IReadOnlyList<Point2> blade, IReadOnlyList<DrawnLine> baseLines, IReadOnlyList<DrawnLine> inside)
    {
        CheckOutline(blade, nameof(blade));
        ArgumentNullException.ThrowIfNull(baseLines);
        ArgumentNullException.ThrowIfNull(inside);
        double top = blade.Min(p => p.Y), tip = blade.Max(p => p.Y);
        // The root is where the outline is at the hull: its ends, to a hundredth of a millimetre of depth.
        Point2[] root = [.. blade.Where(p => p.Y - top <= 1e-5)];
        double highest = Math.Min(top, baseLines.SelectMany(line => line.Points).Select(p => p.Y).DefaultIfEmpty(top).Min());
        double rightmost = Math.Max(blade.Max(p => p.X), baseLines.SelectMany(line => line.Points).Select(p => p.X).DefaultIfEmpty(double.MinValue).Max());

        Sheet sheet = new(title);
        sheet.Add("outline", Outline, [new(blade, Closed: true)]);
        if (baseLines.Count > 0)
            sheet.Add("base", Base, baseLines);
        if (inside.Count > 0)
            sheet.Add("inside", Inside, inside);
        if (root.Length > 1)
            sheet.Across(root.Min(p => p.X), root.Max(p => p.X), highest - Gap);
        sheet.Down(top, tip, rightmost + Gap);
        return sheet.Draw();
    }

    /// <summary>Sections below one another, each with its chord and greatest thickness.</summary>
    /// <param name="title">Name of the fin.</param>
    /// <param name="sections">From the root down; at least one.</param>
    public static SvgDrawing Sections(string title, IReadOnlyList<SectionDrawing> sections)
    {
        ArgumentNullException.ThrowIfNull(sections);
        ArgumentOutOfRangeException.ThrowIfZero(sections.Count, nameof(sections));
        Sheet sheet = new(title);
        double top = 0;
        foreach (SectionDrawing section in sections)
        {
            CheckOutline(section.Outline, nameof(sections));
            double left = section.Outline.Min(p => p.X), right = section.Outline.Max(p => p.X), starboard = section.Outline.Max(p => p.Y), port = section.Outline.Min(p => p.Y);
            sheet.Note(section.Label, new(0, top));
            sheet.Across(0, right - left, top + 2 * SvgDrawing.NoteHeight);
            // Starboard is drawn upwards.
            double middle = top + 2 * SvgDrawing.NoteHeight + Gap / 2 + starboard;
            DrawnLine Laid(DrawnLine line) => line with { Points = [.. line.Points.Select(p => new Point2(p.X - left, middle - p.Y))] };
            sheet.Add("outline", Outline, [Laid(new(section.Outline, Closed: true))]);
            if (section.Inside.Count > 0)
                sheet.Add("inside", Inside, section.Inside.Select(Laid));
            sheet.Down(middle - starboard, middle - port, right - left + Gap / 2);
            top = middle - port + 2 * Gap;
        }

        return sheet.Draw();
    }

    /// <summary>The base from the side with its length and height.</summary>
    /// <param name="title">Name of the fin.</param>
    /// <param name="outline">Closed outline, x aft, y down (negative above the hull).</param>
    /// <param name="inside">Bolts, nuts and rods; empty when none.</param>
    public static SvgDrawing BaseSide(string title, IReadOnlyList<Point2> outline, IReadOnlyList<DrawnLine> inside)
    {
        CheckOutline(outline, nameof(outline));
        ArgumentNullException.ThrowIfNull(inside);
        double left = outline.Min(p => p.X), right = outline.Max(p => p.X), top = outline.Min(p => p.Y), bottom = outline.Max(p => p.Y);
        Sheet sheet = new(title);
        sheet.Add("base", Base, [new(outline, Closed: true)]);
        if (inside.Count > 0)
            sheet.Add("inside", Inside, inside);
        sheet.Across(left, right, top - Gap);
        sheet.Down(top, bottom, right + Gap);
        return sheet.Draw();
    }

    private static void CheckOutline(IReadOnlyList<Point2> outline, string name)
    {
        ArgumentNullException.ThrowIfNull(outline, name);
        if (outline.Count < 3 || outline.Any(p => !double.IsFinite(p.X + p.Y)))
            throw new ArgumentException("An outline has fewer than three points or one that is not finite.", name);
    }
}
