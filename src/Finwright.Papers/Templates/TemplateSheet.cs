using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;
using Pen = Finwright.Papers.Drawings.Pen;

namespace Finwright.Papers.Templates;

/// <summary>Collects a template's lines and words; then puts its title and use above, and key, tables and check line below.</summary>
internal sealed class TemplateSheet
{
    private const double TitleSize = 4.6e-3, TextSize = 2.8e-3, Line = 4.2e-3, Gap = 7e-3, Sample = 14e-3;

    // Words above and below need so much width, however narrow the drawing is.
    private const double LeastWidth = 120e-3;

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
        double width = Math.Max(box.Width, LeastWidth), left = box.From.X, y = box.From.Y - Gap;
        string[] use = [.. Extent.Wrap(what, TextSize, width), $"{_tongue.Words.Templates.TrueSize} {_tongue.Words.Templates.LengthsIn(_tongue.LengthUnit)}"];
        foreach (string line in use.Reverse())
        {
            Write(line, y, TextSize, Palette.Line);
            y -= Line;
        }

        Write(_tongue.Words.Templates.Fin(_fin.Design.Name, _fin.Design.Parts.Number), y - 0.6e-3, TextSize, Palette.Quiet);
        Drawing.Add(new DrawnText("notes", title, new(left, y - Line - 2e-3), new(TitleSize, Palette.Line, Bold: true)));

        y = box.To.Y + Gap;
        foreach ((Pen pen, string text) in _key)
        {
            Drawing.Add(new DrawnStroke("key", pen, [new(left, y - TextSize * 0.36), new(left + Sample, y - TextSize * 0.36)], Closed: false));
            Drawing.Add(new DrawnText("notes", text, new(left + Sample + 3e-3, y), new(TextSize, Palette.Line)));
            y += Line + 0.4e-3;
        }

        foreach (TemplateTable table in _tables)
            y += table.Draw(Drawing, new(left, y)) + Gap;
        Marks.CheckLine(Drawing, _tongue, new(left, y + 2e-3));

        void Write(string text, double at, double size, Ink ink) => Drawing.Add(new DrawnText("notes", text, new(left, at), new(size, ink)));
    }
}
