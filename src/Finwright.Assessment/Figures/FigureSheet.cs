using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Finwright.Assessment.Figures;

/// <summary>How every figure looks: ink on paper, thin lines, names on the lines, units on the axes.</summary>
internal static class FigureSheet
{
    /// <summary>Width of every figure, points.</summary>
    public const double Width = 760;

    private const double Height = 470;
    /// <summary>Type of all words.</summary>
    public const string Type = "Inter, Helvetica, Arial, sans-serif";
    private const double Away = 9;
    private const double TextSize = 13;
    private const double TitleSize = 15;
    private const double NoteSize = 12, NoteLine = 17, FirstNote = 42;
    private const double TitleGap = 6;

    // Mean width of a letter over the size of its type, generous; a title must fit between the margins.
    private const double LetterWidth = 0.56;
    private const double Margins = 40;

    public static OxyColor Paper { get; } = OxyColor.Parse("#fbfaf6");

    public static OxyColor Ink { get; } = OxyColor.Parse("#14273a");

    public static OxyColor QuietInk { get; } = OxyColor.Parse("#5b6b78");

    public static OxyColor Rule { get; } = OxyColor.Parse("#d8d5cb");

    public static OxyColor Water { get; } = OxyColor.Parse("#1f6f8b");

    public static OxyColor Tight { get; } = OxyColor.Parse("#946200");

    public static OxyColor Fails { get; } = OxyColor.Parse("#a3262a");

    /// <summary>An empty figure.</summary>
    /// <param name="title">What it shows, in a few words.</param>
    /// <param name="notes">How many lines there are below the title.</param>
    public static PlotModel Start(string title, int notes = 0) => new()
    {
        Title = title,
        TitlePadding = TitleGap + notes * NoteLine,
        TitleFontSize = Math.Min(TitleSize, Fitting(title)),
        TitleFontWeight = FontWeights.Bold,
        TitleColor = Ink,
        TitleHorizontalAlignment = TitleHorizontalAlignment.CenteredWithinView,
        DefaultFont = Type,
        DefaultFontSize = TextSize,
        TextColor = Ink,
        Background = Paper,
        PlotAreaBorderThickness = new(0),
        Padding = new(12, 12, 20, 12),
    };

    /// <summary>An axis with its quantity and unit.</summary>
    /// <param name="position">Side of the figure.</param>
    /// <param name="title">Quantity and unit.</param>
    /// <param name="least">Least value shown.</param>
    /// <param name="greatest">Greatest value shown.</param>
    public static LinearAxis Axis(AxisPosition position, string title, double least, double greatest) => new()
    {
        Position = position,
        Title = title,
        TitleColor = Ink,
        AxisTitleDistance = 14,
        TextColor = Ink,
        Minimum = least,
        Maximum = greatest,
        AxislineStyle = LineStyle.Solid,
        AxislineColor = QuietInk,
        AxislineThickness = 1,
        TicklineColor = QuietInk,
        TickStyle = TickStyle.Outside,
        MinorTickSize = 0,
        MajorGridlineStyle = LineStyle.Solid,
        MajorGridlineColor = Rule,
        MajorGridlineThickness = 0.5,
        ExtraGridlines = least < 0 && greatest > 0 ? [0] : [],
        ExtraGridlineColor = QuietInk,
        ExtraGridlineThickness = 0.5,
        IntervalLength = 48,
    };

    /// <summary>A line.</summary>
    public static LineSeries Line(IEnumerable<DataPoint> points, OxyColor colour, LineStyle style = LineStyle.Solid, double thickness = 1.5)
    {
        LineSeries line = new() { Color = colour, LineStyle = style, StrokeThickness = thickness };
        line.Points.AddRange(points);
        return line;
    }

    /// <summary>Adds a name at a place.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="at">The place.</param>
    /// <param name="text">The name.</param>
    /// <param name="colour">Its colour, that of the line.</param>
    /// <param name="horizontal">Which end of the text lies at the place.</param>
    /// <param name="vertical">Which edge of the text lies at the place.</param>
    /// <param name="reversed">Whether the vertical axis runs downward, which turns the way off the line over.</param>
    /// <returns>The name, so that it can be told its axes.</returns>
    public static TextAnnotation Name(PlotModel figure, DataPoint at, string text, OxyColor colour, HorizontalAlignment horizontal = HorizontalAlignment.Left, VerticalAlignment vertical = VerticalAlignment.Middle, bool reversed = false)
    {
        TextAnnotation name = new()
        {
            Text = text,
            TextPosition = at,
            TextColor = colour,
            Stroke = OxyColors.Transparent,
            Padding = new(1),
            TextHorizontalAlignment = horizontal,
            TextVerticalAlignment = vertical,
            FontSize = TextSize - 1,
            // Drawn over the lines, and whole even at the edge.
            Layer = AnnotationLayer.AboveSeries,
            ClipByXAxis = false,
            ClipByYAxis = false,
        };
        // A few points off the line.
        name.Offset = new(Sign(horizontal) * Away, (reversed ? -1 : 1) * Sign(vertical) * Away);
        figure.Annotations.Add(name);
        return name;
    }

    /// <summary>Adds a line that leads to a name, thin unless it is to look like the line that is named.</summary>
    public static void Leader(PlotModel figure, DataPoint from, DataPoint to, OxyColor colour, LineStyle style = LineStyle.Solid, double thickness = 0.75)
    {
        PolylineAnnotation leader = new() { Color = colour, StrokeThickness = thickness, LineStyle = style, ClipByXAxis = false, ClipByYAxis = false, MinimumSegmentLength = 0 };
        leader.Points.Add(from);
        leader.Points.Add(to);
        figure.Annotations.Add(leader);
    }

    /// <summary>A finished figure.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="words">What it says, in one sentence, for those who cannot see it.</param>
    /// <param name="notes">What to know before reading it, line by line below the title; as many as it was started with.</param>
    /// <param name="height">Height of the figure, points.</param>
    public static Figure Finish(PlotModel figure, string words, IReadOnlyList<string>? notes = null, double height = Height) => new(figure, words, notes ?? [], height);

    /// <summary>The notes of a figure where they belong: place of the middle of each one's base line, and size of its type, points.</summary>
    /// <param name="notes">The notes.</param>
    public static IEnumerable<(string Note, ScreenPoint Foot, double Size)> Placed(IReadOnlyList<string> notes) =>
        notes.Select((note, line) => (note, new ScreenPoint(Width / 2, FirstNote + line * NoteLine), Math.Min(NoteSize, Fitting(note))));

    /// <summary>About how wide a name is, points; rather too wide than too narrow.</summary>
    public static double WidthOf(string text) => LetterWidth * (TextSize - 1) * text.Length;

    /// <summary>A round step above a value, so that the axis ends on a number.</summary>
    public static double RoundUp(double value)
    {
        if (!(value > 0))
            return 1;
        double unit = Math.Pow(10, Math.Floor(Math.Log10(value)));
        foreach (double step in (double[])[1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8])
            if (step * unit >= value * 0.999)
                return step * unit;
        return 10 * unit;
    }

    private static double Fitting(string text) => text.Length == 0 ? TitleSize : (Width - Margins) / (LetterWidth * text.Length);

    private static int Sign(HorizontalAlignment side) => side switch
    {
        HorizontalAlignment.Left => 1,
        HorizontalAlignment.Right => -1,
        _ => 0,
    };

    private static int Sign(VerticalAlignment side) => side switch
    {
        VerticalAlignment.Top => 1,
        VerticalAlignment.Bottom => -1,
        _ => 0,
    };
}
