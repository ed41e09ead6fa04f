using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>Forces at one leeway.</summary>
/// <param name="LeewayDegrees">Leeway.</param>
/// <param name="SideForceN">Side force.</param>
/// <param name="DragN">Drag.</param>
public readonly record struct LeewaySample(double LeewayDegrees, double SideForceN, double DragN);

/// <summary>Draws side force and drag over leeway at one speed, with the bounds of the root condition.</summary>
public static class LeewayFigure
{
    private const string ForceKey = "force";
    private const string DragKey = "drag";

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin and speed.</param>
    /// <param name="hull">The fin under its hull.</param>
    /// <param name="mirror">The same under an endless hull; the upper bound. May be empty.</param>
    /// <param name="bare">The same with no hull; the lower bound. May be empty.</param>
    /// <param name="at">Where the load case lies; null when its side force is not reached.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, IReadOnlyList<LeewaySample> hull, IReadOnlyList<LeewaySample> mirror, IReadOnlyList<LeewaySample> bare, LeewaySample? at)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(hull);
        ArgumentNullException.ThrowIfNull(mirror);
        ArgumentNullException.ThrowIfNull(bare);
        PlotModel figure = FigureSheet.Start(title);
        LeewaySample[] all = [.. hull, .. mirror, .. bare];
        double last = all.Max(sample => sample.LeewayDegrees);
        Axis leeway = FigureSheet.Axis(AxisPosition.Bottom, "leeway, °", 0, last);
        Axis force = FigureSheet.Axis(AxisPosition.Left, "side force, N", 0, FigureSheet.RoundUp(all.Max(sample => sample.SideForceN)));
        Axis drag = FigureSheet.Axis(AxisPosition.Left, "drag, N", 0, FigureSheet.RoundUp(hull.Max(sample => sample.DragN)));
        (force.Key, force.StartPosition) = (ForceKey, 0.42);
        (drag.Key, drag.EndPosition) = (DragKey, 0.34);
        figure.Axes.Add(leeway);
        figure.Axes.Add(force);
        figure.Axes.Add(drag);
        Add(figure, mirror, FigureSheet.QuietInk, LineStyle.Dash, "under an endless hull", isAbove: true, 0.35);
        Add(figure, bare, FigureSheet.QuietInk, LineStyle.Dot, "with no hull", isAbove: false, 0.35);
        Add(figure, hull, FigureSheet.Water, LineStyle.Solid, "under this board", isAbove: mirror.Count == 0, 0.75);
        var drawn = FigureSheet.Line(hull.Select(sample => new DataPoint(sample.LeewayDegrees, sample.DragN)), FigureSheet.Water, LineStyle.Solid, 2);
        drawn.YAxisKey = DragKey;
        figure.Series.Add(drawn);
        string words = "";
        if (at is { } load)
        {
            figure.Annotations.Add(Mark(load.LeewayDegrees, load.SideForceN, ForceKey));
            figure.Annotations.Add(Mark(load.LeewayDegrees, load.DragN, DragKey));
            words = $" The load of {load.SideForceN:0} N is carried at {load.LeewayDegrees:0.0}°, for {load.DragN:0} N of drag.";
        }

        LeewaySample peak = hull.MaxBy(sample => sample.SideForceN);
        return FigureSheet.Finish(figure, $"Side force is greatest at {peak.LeewayDegrees:0.0}° of leeway: {peak.SideForceN:0} N.{words}");
    }

    private static void Add(PlotModel figure, IReadOnlyList<LeewaySample> samples, OxyColor colour, LineStyle style, string name, bool isAbove, double along)
    {
        if (samples.Count == 0)
            return;
        var line = FigureSheet.Line(samples.Select(sample => new DataPoint(sample.LeewayDegrees, sample.SideForceN)), colour, style, style == LineStyle.Solid ? 2 : 1.2);
        line.YAxisKey = ForceKey;
        figure.Series.Add(line);
        LeewaySample at = samples[(int)(along * samples.Count)];
        FigureSheet.Name(
            figure,
            new(at.LeewayDegrees, at.SideForceN),
            name,
            colour,
            isAbove ? HorizontalAlignment.Right : HorizontalAlignment.Left,
            isAbove ? VerticalAlignment.Bottom : VerticalAlignment.Top).YAxisKey = ForceKey;
    }

    private static PointAnnotation Mark(double x, double y, string axis) => new()
    {
        X = x,
        Y = y,
        Size = 5,
        Shape = MarkerType.Circle,
        Fill = FigureSheet.Paper,
        Stroke = FigureSheet.Ink,
        StrokeThickness = 1.5,
        YAxisKey = axis,
        ToolTip = null,
    };
}
