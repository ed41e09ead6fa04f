using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>A figure that is laid out point by point: x to the right and y downward from the corner below the title, both in points.</summary>
internal sealed class FigurePaper
{
    /// <summary>Room across, points.</summary>
    public const double Width = FigureSheet.Width - 32;

    // What title and padding take above and below.
    private const double Around = 48, NoteLine = 17;

    // Less than the eye sees, points.
    private const double Finest = 0.12;

    private readonly PlotModel _figure;
    private readonly IReadOnlyList<string> _notes;
    private readonly double _height;

    /// <summary>An empty sheet.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="notes">What to know before reading it, line by line; may be empty.</param>
    /// <param name="height">Room below the title, points.</param>
    public FigurePaper(string title, IReadOnlyList<string> notes, double height)
    {
        (_notes, _height) = (notes, height);
        _figure = FigureSheet.Start(title, notes.Count);
        _figure.PlotMargins = new(0);
        _figure.PlotType = PlotType.Cartesian;
        _figure.Axes.Add(Hidden(AxisPosition.Bottom, Width));
        Axis down = Hidden(AxisPosition.Left, height);
        (down.StartPosition, down.EndPosition) = (1, 0);
        _figure.Axes.Add(down);
    }

    /// <summary>Fills what lies inside rings; holes run the other way round.</summary>
    public void Fill(IReadOnlyList<IReadOnlyList<DataPoint>> rings, OxyColor colour)
    {
        if (rings.Count == 0)
            return;
        // Every point counts: a line that goes to a hole and back must come back on itself.
        PolygonAnnotation area = new() { Fill = colour, Stroke = OxyColors.Undefined, StrokeThickness = 0, MinimumSegmentLength = 0, ClipByXAxis = false, ClipByYAxis = false };
        area.Points.AddRange(FieldGrid.Joined([.. rings.Select(ring => RingThinning.Of(ring, Finest))]));
        _figure.Annotations.Add(area);
    }

    /// <summary>Draws rings as lines.</summary>
    public void Ring(IReadOnlyList<IReadOnlyList<DataPoint>> rings, OxyColor colour, double thickness, LineStyle style = LineStyle.Solid)
    {
        foreach (IReadOnlyList<DataPoint> ring in rings.Select(ring => RingThinning.Of(ring, Finest)))
            Line([.. ring, ring[0]], colour, thickness, style);
    }

    /// <summary>Draws a line.</summary>
    public void Line(IReadOnlyList<DataPoint> points, OxyColor colour, double thickness, LineStyle style = LineStyle.Solid)
    {
        PolylineAnnotation line = new() { Color = colour, StrokeThickness = thickness, LineStyle = style, LineJoin = LineJoin.Round, ClipByXAxis = false, ClipByYAxis = false, MinimumSegmentLength = 0 };
        line.Points.AddRange(points);
        _figure.Annotations.Add(line);
    }

    /// <summary>Fills a box.</summary>
    public void Box(double x, double y, double width, double height, OxyColor fill, OxyColor? border = null) => _figure.Annotations.Add(new RectangleAnnotation
    {
        MinimumX = x,
        MaximumX = x + width,
        MinimumY = y,
        MaximumY = y + height,
        Fill = fill,
        Stroke = border ?? OxyColors.Undefined,
        StrokeThickness = border is null ? 0 : 0.75,
        ClipByXAxis = false,
        ClipByYAxis = false,
    });

    /// <summary>Draws a round mark.</summary>
    public void Mark(DataPoint at, double radius, OxyColor fill, OxyColor border) =>
        _figure.Annotations.Add(new PointAnnotation { X = at.X, Y = at.Y, Size = radius, Shape = MarkerType.Circle, Fill = fill, Stroke = border, StrokeThickness = 1.5, ClipByXAxis = false, ClipByYAxis = false });

    /// <summary>Writes a word with its middle on a line.</summary>
    public void Text(double x, double y, string text, OxyColor colour, HorizontalAlignment horizontal = HorizontalAlignment.Left, bool isBold = false)
    {
        TextAnnotation word = FigureSheet.Name(_figure, new(x, y), text, colour, horizontal);
        word.Offset = new(0, 0);
        if (isBold)
            word.FontWeight = FontWeights.Bold;
    }

    /// <summary>The finished figure.</summary>
    /// <param name="words">What it says.</param>
    public Figure Finish(string words) => FigureSheet.Finish(_figure, words, _notes, Around + _notes.Count * NoteLine + _height);

    private static LinearAxis Hidden(AxisPosition position, double length) => new()
    {
        Position = position,
        Minimum = 0,
        Maximum = length,
        IsAxisVisible = false,
    };
}
