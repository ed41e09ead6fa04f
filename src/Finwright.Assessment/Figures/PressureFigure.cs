using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>Draws the pressure along both sides of a section; suction upward, as is the custom.</summary>
public static class PressureFigure
{
    // The line of boiling water is drawn when it is not farther away than this many times the greatest suction.
    private const double FarAway = 1.6;

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which section and load.</param>
    /// <param name="x">Places of the surface points, shares of the chord, from the upper trailing edge over the nose to the lower one.</param>
    /// <param name="cp">Pressure coefficients there.</param>
    /// <param name="boilingCp">Pressure coefficient at which water boils at this depth and speed; null when not known.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, IReadOnlyList<double> x, IReadOnlyList<double> cp, double? boilingCp)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(cp);
        if (x.Count != cp.Count || x.Count < 3)
            throw new ArgumentException($"A pressure figure needs as many pressures as places, and at least 3; it was given {cp.Count} and {x.Count}.", nameof(cp));
        int nose = 0;
        for (int i = 1; i < x.Count; i++)
            if (x[i] < x[nose])
                nose = i;
        double least = cp.Min();
        bool boils = boilingCp is double limit && limit > FarAway * Math.Min(least, -1);
        double top = -FigureSheet.RoundUp(-(boils ? Math.Min(boilingCp!.Value, least) : least) * 1.05);
        PlotModel figure = FigureSheet.Start(title);
        figure.Axes.Add(FigureSheet.Axis(AxisPosition.Bottom, "place along the chord, %", 0, 100));
        Axis pressure = FigureSheet.Axis(AxisPosition.Left, "pressure coefficient", top, 1.1);
        (pressure.StartPosition, pressure.EndPosition) = (1, 0);
        figure.Axes.Add(pressure);
        DataPoint[] points = [.. x.Zip(cp, (place, value) => new DataPoint(100 * place, value))];
        figure.Series.Add(FigureSheet.Line(points[..(nose + 1)], FigureSheet.Water, LineStyle.Solid, 2));
        figure.Series.Add(FigureSheet.Line(points[nose..], FigureSheet.Ink, LineStyle.Dash));
        FigureSheet.Name(figure, points[nose / 2], "suction side", FigureSheet.Water, HorizontalAlignment.Left, VerticalAlignment.Bottom, reversed: true);
        FigureSheet.Name(figure, points[(nose + points.Length) / 2], "pressure side (dashed)", FigureSheet.Ink, HorizontalAlignment.Left, VerticalAlignment.Top, reversed: true);
        if (boils)
        {
            figure.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Horizontal, Y = boilingCp!.Value, Color = FigureSheet.Fails, LineStyle = LineStyle.DashDot });
            FigureSheet.Name(figure, new(100, boilingCp.Value), "water boils here", FigureSheet.Fails, HorizontalAlignment.Right, VerticalAlignment.Bottom, reversed: true);
        }

        int lowest = 0;
        for (int i = 1; i < cp.Count; i++)
            if (cp[i] < cp[lowest])
                lowest = i;
        return FigureSheet.Finish(figure, $"The lowest pressure coefficient is {least:0.00}, at {100 * x[lowest]:0.#} % of the chord.");
    }
}
