using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>Draws a map of how much of their strength the walls use on the outline of the blade, at true proportions: board above, tip down.</summary>
internal static class StressFigure
{
    private const double Left = 66, Right = 8, Top = 6, Bottom = 52;

    // What title, padding and margins take of the sheet; true proportions are kept whatever is left.
    private const double Around = 24 + 24 + Top + Bottom, NoteLine = 17;
    private const double PlotWidth = FigureSheet.Width - 32 - Left - Right;

    // Room of the board above the blade, and of the blade with a little below it.
    private const double BoardHeight = 26, GreatestBlade = 480, Below = 10;

    // Room for the scale and for what is said of the worst place.
    private const double PanelWidth = 236, PanelGap = 26;
    private const double BoxWidth = 26, BoxHeight = 24, LineHeight = 17;
    private const int MostBands = 8;

    private static readonly double[] Digits = [1, 2, 5, 10];

    // Of the strength, per cent: there the walls may give.
    private const double Strength = 100;

    /// <summary>Where the bands begin.</summary>
    /// <param name="worst">Greatest value, per cent, positive.</param>
    public static IReadOnlyList<double> Levels(double worst)
    {
        double step = Step(worst);
        return [.. Enumerable.Range(0, (int)Math.Clamp(Math.Ceiling(worst / step), 1, MostBands)).Select(i => i * step)];
    }

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin and load.</param>
    /// <param name="notes">What to know before reading it, line by line; may be empty.</param>
    /// <param name="use">Use of strength, per cent; places in millimetres aft and of depth, rows from the root to the tip, columns from the leading to the trailing edge.</param>
    /// <param name="worst">Where it is greatest.</param>
    /// <param name="greatest">How great it is there, per cent.</param>
    /// <param name="about">What is said beside it, line by line.</param>
    /// <param name="words">What it says.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, IReadOnlyList<string> notes, FieldGrid use, DataPoint worst, double greatest, IReadOnlyList<string> about, string words)
    {
        PlotModel figure = FigureSheet.Start(title, notes.Count);
        figure.PlotType = PlotType.Cartesian;
        figure.PlotMargins = new(Left, Top, Right, Bottom);
        DataPoint[] outline = Outline(use);
        double least = outline.Min(point => point.X), most = outline.Max(point => point.X), span = outline.Max(point => point.Y);
        double room = PlotWidth - PanelWidth - PanelGap;
        IReadOnlyList<double> levels = Levels(greatest);
        // Millimetres for each point of the sheet.
        double perPoint = Math.Max((most - least) / (room - 2 * PanelGap), span / GreatestBlade);
        double panel = (about.Count + 3.5) * LineHeight + levels.Count * BoxHeight;
        double plot = BoardHeight + Math.Max(span / perPoint + Below, panel);
        double shown = Math.Min(room, (most - least) / perPoint + 2 * PanelGap);
        Axis depth = FigureSheet.Axis(AxisPosition.Left, "depth below the hull, mm", 0, (plot - BoardHeight) * perPoint);
        (depth.StartPosition, depth.EndPosition) = (1 - BoardHeight / plot, 0);
        Axis aft = FigureSheet.Axis(AxisPosition.Bottom, "aft of the root's quarter chord, mm", (least + most) / 2 - shown / 2 * perPoint, (least + most) / 2 + shown / 2 * perPoint);
        aft.EndPosition = shown / PlotWidth;
        depth.CropGridlines = aft.CropGridlines = true;
        figure.Axes.Add(depth);
        figure.Axes.Add(aft);
        // From low to high, each band over all that lies above it: no seams between them.
        figure.Annotations.Add(Area(outline, BandColours.Of(0, levels.Count)));
        for (int i = 1; i < levels.Count; i++)
            if (use.RegionFrom(levels[i]) is { Count: > 0 } rings)
                figure.Annotations.Add(Area(FieldGrid.Joined(rings), BandColours.Of(i, levels.Count)));
        if (levels.Any(IsStrength))
            foreach (IReadOnlyList<DataPoint> ring in use.RegionFrom(Strength))
                figure.Annotations.Add(Border(ring, FigureSheet.Fails, 1.5));
        figure.Annotations.Add(Border(outline, FigureSheet.Ink, 1));
        Board(figure, least, most, perPoint);
        double x = aft.Maximum + PanelGap * perPoint;
        double next = About(figure, about, worst, x, perPoint);
        Scale(figure, levels, greatest, x, next + 2.2 * LineHeight * perPoint, perPoint);
        figure.Annotations.Add(new PointAnnotation { X = worst.X, Y = worst.Y, Size = 4, Shape = MarkerType.Circle, Fill = FigureSheet.Paper, Stroke = FigureSheet.Ink, StrokeThickness = 1.5, Layer = AnnotationLayer.AboveSeries });
        return FigureSheet.Finish(figure, words, notes, Around + notes.Count * NoteLine + plot);
    }

    // The least of 1, 2, 5 and their tens with which the bands do not become too many.
    private static double Step(double worst)
    {
        double least = worst / MostBands, power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return power * Digits.First(digit => digit * power >= least * (1 - 1e-9));
    }

    private static bool IsStrength(double level) => Math.Abs(level - Strength) < 0.5;

    private static DataPoint[] Outline(FieldGrid use) =>
    [
        .. Enumerable.Range(0, use.Columns).Select(i => use.At(0, i)),
        .. Enumerable.Range(1, use.Rows - 1).Select(i => use.At(i, use.Columns - 1)),
        .. Enumerable.Range(0, use.Columns - 1).Select(i => use.At(use.Rows - 1, use.Columns - 2 - i)),
        .. Enumerable.Range(1, use.Rows - 2).Select(i => use.At(use.Rows - 1 - i, 0)),
    ];

    private static void Board(PlotModel figure, double least, double most, double perPoint)
    {
        figure.Annotations.Add(new RectangleAnnotation
        {
            MinimumX = least - 18 * perPoint,
            MaximumX = most + 18 * perPoint,
            MinimumY = -6 * perPoint,
            MaximumY = 0,
            Fill = FigureSheet.QuietInk,
            ClipByXAxis = false,
            ClipByYAxis = false,
        });
        FigureSheet.Name(figure, new(least - 18 * perPoint, -7 * perPoint), "board", FigureSheet.QuietInk, HorizontalAlignment.Left, VerticalAlignment.Bottom).Offset = new(0, 0);
    }

    private static double About(PlotModel figure, IReadOnlyList<string> about, DataPoint worst, double x, double perPoint)
    {
        double y = LineHeight / 2 * perPoint;
        for (int i = 0; i < about.Count; i++, y += LineHeight * perPoint)
            FigureSheet.Name(figure, new(x, y), about[i], FigureSheet.Ink).Offset = new(0, 0);
        PolylineAnnotation leader = new() { Color = FigureSheet.Ink, StrokeThickness = 0.75, LineStyle = LineStyle.Solid, ClipByXAxis = false, ClipByYAxis = false, MinimumSegmentLength = 0, Layer = AnnotationLayer.AboveSeries };
        leader.Points.Add(worst);
        leader.Points.Add(new(x - 4 * perPoint, LineHeight / 2 * perPoint));
        figure.Annotations.Add(leader);
        return y;
    }

    private static void Scale(PlotModel figure, IReadOnlyList<double> levels, double greatest, double x, double top, double perPoint)
    {
        FigureSheet.Name(figure, new(x, top), "use of the walls' strength", FigureSheet.Ink).Offset = new(0, 0);
        top += LineHeight * perPoint;
        double height = BoxHeight * perPoint;
        for (int i = 0; i < levels.Count; i++)
        {
            double low = top + (levels.Count - i) * height;
            figure.Annotations.Add(new RectangleAnnotation
            {
                MinimumX = x,
                MaximumX = x + BoxWidth * perPoint,
                MinimumY = low - height,
                MaximumY = low,
                Fill = BandColours.Of(i, levels.Count),
                ClipByXAxis = false,
                ClipByYAxis = false,
            });
            Number(levels[i], low);
        }

        Number(levels[^1] + Step(greatest), top);

        void Number(double value, double y)
        {
            (OxyColor colour, string more) = IsStrength(value) ? (FigureSheet.Fails, ": here the walls may give") : (FigureSheet.Ink, "");
            FigureSheet.Name(figure, new(x + (BoxWidth + 6) * perPoint, y), $"{value:0.##} %{more}", colour).Offset = new(0, 0);
        }
    }

    private static PolygonAnnotation Area(IReadOnlyList<DataPoint> line, OxyColor fill)
    {
        // Every point counts: a line that goes to a hole and back must come back on itself.
        PolygonAnnotation area = new() { Fill = fill, Stroke = OxyColors.Undefined, StrokeThickness = 0, MinimumSegmentLength = 0, ClipByXAxis = false, ClipByYAxis = false };
        area.Points.AddRange(line);
        return area;
    }

    private static PolygonAnnotation Border(IReadOnlyList<DataPoint> line, OxyColor colour, double thickness)
    {
        PolygonAnnotation border = new() { Fill = OxyColors.Undefined, Stroke = colour, StrokeThickness = thickness, MinimumSegmentLength = 0, ClipByXAxis = false, ClipByYAxis = false };
        border.Points.AddRange(line);
        return border;
    }
}
