using OxyPlot;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>Side force at one depth.</summary>
/// <param name="DepthMm">Depth below the hull.</param>
/// <param name="LoadNPerCm">Side force per depth.</param>
/// <param name="EllipticNPerCm">The same, if the load were a half ellipse with the same force.</param>
public readonly record struct SpanLoadSample(double DepthMm, double LoadNPerCm, double EllipticNPerCm);

/// <summary>Draws how the side force is spread over the depth, against an ellipse; the hull is at the top.</summary>
public static class SpanLoadFigure
{
    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin and load.</param>
    /// <param name="spanMm">Depth of the tip.</param>
    /// <param name="samples">From root to tip.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, double spanMm, IReadOnlyList<SpanLoadSample> samples)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(samples);
        PlotModel figure = FigureSheet.Start(title);
        double most = FigureSheet.RoundUp(samples.Max(sample => Math.Max(sample.LoadNPerCm, sample.EllipticNPerCm)) * 1.1);
        Axis depth = FigureSheet.Axis(AxisPosition.Left, "depth below the hull, mm", 0, spanMm);
        (depth.StartPosition, depth.EndPosition) = (1, 0);
        figure.Axes.Add(depth);
        figure.Axes.Add(FigureSheet.Axis(AxisPosition.Bottom, "side force per depth, N/cm", Math.Min(0, samples.Min(sample => sample.LoadNPerCm)), most));
        figure.Series.Add(FigureSheet.Line(samples.Select(sample => new DataPoint(sample.EllipticNPerCm, sample.DepthMm)), FigureSheet.QuietInk, LineStyle.Dash));
        figure.Series.Add(FigureSheet.Line(samples.Select(sample => new DataPoint(sample.LoadNPerCm, sample.DepthMm)), FigureSheet.Water, LineStyle.Solid, 2));
        // The lines nearly meet on a good fin: the names stand in the empty corner, in the colours of the lines.
        FigureSheet.Name(figure, new(0.04 * most, 0.08 * spanMm), "this fin", FigureSheet.Water);
        FigureSheet.Name(figure, new(0.04 * most, 0.14 * spanMm), "ellipse of the same force (dashed)", FigureSheet.QuietInk);
        SpanLoadSample peak = samples.MaxBy(sample => sample.LoadNPerCm);
        return FigureSheet.Finish(figure, $"The load is greatest at {peak.DepthMm:0} mm below the hull: {peak.LoadNPerCm:0.0} N on each cm of depth.");
    }
}
