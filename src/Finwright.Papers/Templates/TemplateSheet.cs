using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates;

/// <summary>Collects a template's lines and words; then puts its title and use above with the key beside them, or below where that is too wide; then tables and check line.</summary>
internal sealed class TemplateSheet
{
    private const double TitleSize = 4.6e-3, TextSize = 2.8e-3, Line = 4.2e-3, KeyLine = 4.6e-3, Gap = 6e-3, Sample = 14e-3;

    // Words need so much width, however narrow the drawing is; wider than this they would run over the edge of a sheet of A4.
    private const double LeastWidth = 120e-3, GreatestWidth = 140e-3;

    private readonly TemplateFin _fin;
    private readonly Tongue _tongue;
    private readonly List<(Pen Pen, string Text)> _key = [];
    private readonly List<TemplateTable> _tables = [];

    public TemplateSheet(TemplateFin fin, Tongue tongue)
    {
        (_fin, _tongue) = (fin, tongue);
        Dimensions = new(Drawing, tongue);
    }

    public Drawing Drawing { get; } = new();

    public Dimensions Dimensions { get; }

    /// <summary>Draws a closed line.</summary>
    public void Ring(string layer, Pen pen, IReadOnlyList<Point2> points) => Drawing.Add(new DrawnStroke(layer, pen, points, Closed: true));

    /// <summary>Draws a line.</summary>
    public void Stroke(string layer, Pen pen, params IReadOnlyList<Point2> points) => Drawing.Add(new DrawnStroke(layer, pen, points, Closed: false));

    /// <summary>Writes words.</summary>
    public void Say(string text, Point2 at, TextAnchor anchor = TextAnchor.Start, double size = Dimensions.WordSize, bool bold = false) =>
        Drawing.Add(new DrawnText(Dimensions.WordLayer, text, at, new(size, Palette.Line, anchor, bold)));

    /// <summary>Writes words as near to a place as there is room.</summary>
    public void SayNear(string text, Point2 at, double nearest, bool bold = false) =>
        FreeRoom.Put(Drawing, new(Dimensions.WordLayer, text, at, new(Dimensions.WordSize, Palette.Line, TextAnchor.Middle, bold)), nearest);

    /// <summary>Says in the key what a pen draws; once is enough.</summary>
    public void Key(Pen pen, string text)
    {
        if (!_key.Contains((pen, text)))
            _key.Add((pen, text));
    }

    /// <summary>Adds a table below; none when it has no rows.</summary>
    public void Table(TemplateTable table)
    {
        if (table.Rows.Count > 0)
            _tables.Add(table);
    }

    /// <summary>The finished template.</summary>
    public Template Finish(string name, string title, string what)
    {
        DrawnBox box = Drawing.Bounds;
        Frame(box, title, what);
        return new(name, title, what, Drawing.Moved(-1 * Drawing.Bounds.From));
    }

    private void Frame(DrawnBox box, string title, string what)
    {
        double width = Math.Clamp(box.Width, LeastWidth, GreatestWidth), left = box.From.X, y = box.From.Y - Gap;
        string[] use = [.. Extent.Wrap(what, TextSize, width), $"{_tongue.Words.Templates.TrueSize} {_tongue.Words.Templates.LengthsIn(_tongue.LengthUnit)}"];
        foreach (string line in use.Reverse())
        {
            Drawing.Add(new DrawnText("notes", line, new(left, y), new(TextSize, Palette.Line)));
            y -= Line;
        }

        // The fin's name stands beside the title, or between it and the use where there is no room.
        string fin = _tongue.Words.Templates.Fin(_fin.Design.Name, _fin.Design.Parts.Number);
        double beside = Extent.Length(title, TitleSize, bold: true) + 4e-3;
        bool isBeside = beside + Extent.Length(fin, TextSize) <= width;
        Drawing.Add(new DrawnText("notes", fin, new(left + (isBeside ? beside : 0), y - 1e-3), new(TextSize, Palette.Quiet)));
        Drawing.Add(new DrawnText("notes", title, new(left, y - 1e-3 - (isBeside ? 0 : Line + 1e-3)), new(TitleSize, Palette.Line, Bold: true)));
        bool isKeyAbove = width + Gap + KeyWidth <= box.Width;
        // As far to the right as it goes: sheets are then joined between the words and the key.
        if (isKeyAbove)
            DrawKey(new(box.To.X - KeyWidth, box.From.Y - Gap - (_key.Count - 1) * KeyLine));
        Below(new(left, box.To.Y + Gap), isKeyAbove);
    }

    private double KeyWidth => Sample + 3e-3 + _key.Select(entry => Extent.Length(entry.Text, TextSize)).DefaultIfEmpty(0).Max();

    private void DrawKey(Point2 at)
    {
        foreach ((int index, (Pen pen, string text)) in _key.Index())
        {
            double y = at.Y + index * KeyLine;
            Drawing.Add(new DrawnStroke("key", pen, [new(at.X, y - TextSize * 0.36), new(at.X + Sample, y - TextSize * 0.36)], Closed: false));
            Drawing.Add(new DrawnText("notes", text, new(at.X + Sample + 3e-3, y), new(TextSize, Palette.Line)));
        }
    }

    /// <summary>Key when it does not stand above, tables and check line. A table that is narrow enough stands beside the key.</summary>
    private void Below(Point2 from, bool isKeyAbove)
    {
        double y = from.Y;
        IEnumerable<TemplateTable> tables = _tables;
        if (!isKeyAbove)
        {
            DrawKey(from);
            y += _key.Count * KeyLine;
            double beside = KeyWidth + Gap;
            if (_tables is [{ } only] && beside + only.Width <= GreatestWidth)
            {
                y = Math.Max(y, from.Y - TextSize + only.Draw(Drawing, from + new Point2(beside, -TextSize)) + Gap);
                tables = [];
            }
        }

        foreach (TemplateTable table in tables)
            y += table.Draw(Drawing, new(from.X, y - TextSize)) + Gap;
        Marks.CheckLine(Drawing, _tongue, new(from.X, y));
    }
}
