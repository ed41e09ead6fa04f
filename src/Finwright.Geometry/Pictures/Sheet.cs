namespace Finwright.Geometry.Pictures;

/// <summary>Collects lines, dimensions and notes wherever they fall, then cuts a sheet round them with a line to check the scale by.</summary>
/// <param name="title">What is drawn; stands at the foot.</param>
internal sealed class Sheet(string title)
{
    private const double Margin = 10e-3;
    private const double CheckLength = 100e-3;
    private const double TickLength = 2e-3;

    /// <summary>Average width of a letter against its height: wide enough that no note leaves the sheet.</summary>
    private const double LetterWidth = 0.62;

    private static readonly Pen DimensionPen = new(Palette.Quiet, 0.13);
    private static readonly Pen CheckPen = new(Palette.Holds, 0.25);
    private readonly List<(string Name, Pen Pen, List<DrawnLine> Lines)> _groups = [];
    private readonly List<DrawnLine> _dimensions = [];
    private readonly List<(string Text, Point2 Place, bool Centred)> _notes = [];
    private Point2 _low = new(double.MaxValue, double.MaxValue), _high = new(double.MinValue, double.MinValue);

    /// <summary>Lowest place used so far, metres.</summary>
    public double Bottom => _high.Y;

    /// <summary>Adds lines to a group.</summary>
    public void Add(string group, Pen pen, IEnumerable<DrawnLine> lines)
    {
        int at = _groups.FindIndex(existing => existing.Name == group);
        if (at < 0)
        {
            at = _groups.Count;
            _groups.Add((group, pen, []));
        }

        foreach (DrawnLine line in lines)
        {
            _groups[at].Lines.Add(line);
            Cover(line.Points);
        }
    }

    /// <summary>Adds a note.</summary>
    public void Note(string text, Point2 place, bool centred = false)
    {
        double length = text.Length * SvgDrawing.NoteHeight * LetterWidth, start = place.X - (centred ? length / 2 : 0);
        Cover([new(start, place.Y - SvgDrawing.NoteHeight), new(start + length, place.Y + 0.3 * SvgDrawing.NoteHeight)]);
        _notes.Add((text, place, centred));
    }

    /// <summary>A length along x, with its number above.</summary>
    public void Across(double from, double to, double y)
    {
        Dimension([new(from, y), new(to, y)], new(0, TickLength));
        Note(Length(to - from), new((from + to) / 2, y - 1.2e-3), centred: true);
    }

    /// <summary>A length along y, with its number to the right.</summary>
    public void Down(double from, double to, double x)
    {
        Dimension([new(x, from), new(x, to)], new(TickLength, 0));
        Note(Length(to - from), new(x + 2e-3, (from + to + SvgDrawing.NoteHeight) / 2));
    }

    /// <summary>The finished drawing.</summary>
    public SvgDrawing Draw()
    {
        double left = _low.X, foot = Bottom + 4 * SvgDrawing.NoteHeight;
        Add("check-100-mm", CheckPen,
        [
            new([new(left, foot), new(left + CheckLength, foot)]),
            new([new(left, foot - TickLength), new(left, foot + TickLength)]),
            new([new(left + CheckLength, foot - TickLength), new(left + CheckLength, foot + TickLength)]),
        ]);
        Note("100 mm: measure this line before use", new(left + TickLength, foot - TickLength));
        Note(title, new(left, foot + 2 * SvgDrawing.NoteHeight));

        Point2 shift = new Point2(Margin, Margin) - _low, size = _high - _low;
        SvgDrawing drawing = new(size.X + 2 * Margin, size.Y + 2 * Margin, title);
        foreach ((string name, Pen pen, List<DrawnLine> lines) in _groups)
            drawing.Add(name, pen, Shifted(lines, shift));
        if (_dimensions.Count > 0)
            drawing.Add("dimensions", DimensionPen, Shifted(_dimensions, shift));
        foreach ((string text, Point2 place, bool centred) in _notes)
            drawing.AddNote(text, place + shift, centred);
        return drawing;
    }

    private void Dimension(Point2[] ends, Point2 tick)
    {
        DrawnLine[] lines = [new(ends), .. ends.Select(end => new DrawnLine([end - tick, end + tick]))];
        foreach (DrawnLine line in lines)
            Cover(line.Points);
        _dimensions.AddRange(lines);
    }

    private static string Length(double metres) => $"{1e3 * metres:0.0} mm";

    private static IReadOnlyList<DrawnLine> Shifted(List<DrawnLine> lines, Point2 shift) =>
        [.. lines.Select(line => line with { Points = [.. line.Points.Select(p => p + shift)] })];

    private void Cover(IReadOnlyList<Point2> points)
    {
        foreach (Point2 p in points)
        {
            _low = new(Math.Min(_low.X, p.X), Math.Min(_low.Y, p.Y));
            _high = new(Math.Max(_high.X, p.X), Math.Max(_high.Y, p.Y));
        }
    }
}
