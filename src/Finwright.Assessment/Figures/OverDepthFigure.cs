using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>A line over the depth.</summary>
/// <param name="Name">What tells it from the others; the value at the tip is added.</param>
/// <param name="Colour">Its colour.</param>
/// <param name="Style">Its kind.</param>
/// <param name="Samples">Depth in millimetres and value, from the root to the tip.</param>
internal sealed record DepthLine(string Name, OxyColor Colour, LineStyle Style, IReadOnlyList<(double DepthMm, double Value)> Samples);

/// <summary>Draws how far a fin bends or twists, from the board down to the tip; each line is named where it ends.</summary>
internal static class OverDepthFigure
{
    private const double Left = 66, Right = 12, Top = 52, Bottom = 50;

    // Of the padding of the sheet beside the margins above.
    private const double Padding = 32;

    private const double LabelGap = 16, LabelDrop = 30;

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin and what.</param>
    /// <param name="notes">What to know before reading it, line by line; may be empty.</param>
    /// <param name="quantity">Quantity and unit along the top.</param>
    /// <param name="unit">Unit that follows the numbers in the names, with its blank.</param>
    /// <param name="spanMm">Depth of the tip.</param>
    /// <param name="lines">The lines, one or more.</param>
    /// <param name="limit">A value that a line marks, with its name; null for none.</param>
    /// <param name="words">What it says.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, IReadOnlyList<string> notes, string quantity, string unit, double spanMm, IReadOnlyList<DepthLine> lines, (double Value, string Name)? limit, string words)
    {
        PlotModel figure = FigureSheet.Start(title, notes.Count);
        figure.PlotMargins = new(Left, Top, Right, 0);
        double[] values = [.. lines.SelectMany(line => line.Samples).Select(sample => sample.Value)];
        double most = Math.Max(0, values.Max()), least = Math.Min(0, values.Min());
        // All of one sign: the axis ends on round numbers. Else a little air on both sides.
        double from = least < 0 ? -FigureSheet.RoundUp(-least * 1.05) : 0, to = most > 0 ? FigureSheet.RoundUp(most * 1.05) : 0;
        if (least < 0 && most > 0)
            (from, to) = (Math.Max(from, -FigureSheet.RoundUp(0.2 * (most - least) - least)), Math.Min(to, FigureSheet.RoundUp(0.2 * (most - least) + most)));
        Axis depth = FigureSheet.Axis(AxisPosition.Left, "depth below the hull, mm", 0, spanMm);
        (depth.StartPosition, depth.EndPosition) = (1, Bottom / 400);
        Axis value = FigureSheet.Axis(AxisPosition.Top, quantity, from, to);
        value.CropGridlines = true;
        figure.Axes.Add(depth);
        figure.Axes.Add(value);
        double perPoint = (to - from) / (FigureSheet.Width - Left - Right - Padding), depthPerPoint = spanMm / (400 - Bottom);
        if (limit is { } marked)
        {
            figure.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Vertical, X = marked.Value, Color = FigureSheet.Fails, LineStyle = LineStyle.DashDot });
            bool isRight = marked.Value + FigureSheet.WidthOf(marked.Name) * perPoint < to;
            FigureSheet.Name(figure, new(marked.Value, 0.06 * spanMm), marked.Name, FigureSheet.Fails, isRight ? HorizontalAlignment.Left : HorizontalAlignment.Right);
        }

        foreach (DepthLine line in lines)
            figure.Series.Add(FigureSheet.Line(line.Samples.Select(sample => new DataPoint(sample.Value, sample.DepthMm)), line.Colour, line.Style, line.Style is LineStyle.Solid ? 2 : 1.5));
        DepthLine[] across = [.. lines.OrderBy(line => line.Samples[^1].Value)];
        string[] names = [.. across.Select(line => $"{line.Name}, {Told(line.Samples[^1].Value)}{unit}")];
        double[] middles = Spread([.. across.Select(line => line.Samples[^1].Value)], [.. names.Select(name => perPoint * (FigureSheet.WidthOf(name) + LabelGap))], from, to);
        for (int i = 0; i < across.Length; i++)
        {
            double end = across[i].Samples[^1].Value, last = across[i].Samples[^1].DepthMm;
            PolylineAnnotation leader = new() { Color = across[i].Colour, StrokeThickness = 0.75, LineStyle = LineStyle.Solid, ClipByXAxis = false, ClipByYAxis = false, MinimumSegmentLength = 0 };
            leader.Points.Add(new(end, last + 3 * depthPerPoint));
            leader.Points.Add(new(middles[i], last + (LabelDrop - 8) * depthPerPoint));
            figure.Annotations.Add(leader);
            FigureSheet.Name(figure, new(middles[i], last + LabelDrop * depthPerPoint), names[i], across[i].Colour, HorizontalAlignment.Center);
        }

        return FigureSheet.Finish(figure, words, notes);
    }

    /// <summary>Middles of labels in one row: as near to where they belong as their widths allow, in the same order.</summary>
    /// <param name="wanted">Where they belong, rising.</param>
    /// <param name="widths">Their widths.</param>
    /// <param name="from">Where the row begins.</param>
    /// <param name="to">Where it ends.</param>
    internal static double[] Spread(double[] wanted, double[] widths, double from, double to)
    {
        double[] middles = [.. wanted];
        double edge = from;
        for (int i = 0; i < middles.Length; i++)
        {
            middles[i] = Math.Max(middles[i], edge + widths[i] / 2);
            edge = middles[i] + widths[i] / 2;
        }

        edge = to;
        for (int i = middles.Length - 1; i >= 0; i--)
        {
            middles[i] = Math.Min(middles[i], edge - widths[i] / 2);
            edge = middles[i] - widths[i] / 2;
        }

        return middles;
    }

    // Two digits are what the method deserves.
    private static string Told(double value) => Math.Abs(value) < 10 ? $"{value:0.0}" : $"{value:0}";
}
