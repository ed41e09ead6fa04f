using Finwright.Assessment.Figures;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Finwright.Papers.Tests.Pages;

/// <summary>A small plot.</summary>
internal static class PlotSample
{
    public static Figure Figure()
    {
        PlotModel plot = new() { Title = "Side force over leeway", TitlePadding = 23, DefaultFontSize = 13, Background = OxyColor.Parse("#fbfaf6"), PlotAreaBorderThickness = new(0) };
        plot.Axes.Add(new LinearAxis { Position = AxisPosition.Bottom, Title = "Leeway α, °", Minimum = 0, Maximum = 10 });
        plot.Axes.Add(new LinearAxis { Position = AxisPosition.Left, Title = "Side force, N", Minimum = 0, Maximum = 500 });
        LineSeries inside = new() { Color = OxyColors.Blue }, beyond = new() { Color = OxyColors.Red, LineStyle = LineStyle.Dash };
        inside.Points.AddRange([new(0, 0), new(10, 450)]);
        beyond.Points.AddRange([new(0, 0), new(10, 5000)]);
        plot.Series.Add(inside);
        plot.Series.Add(beyond);
        plot.Annotations.Add(new RectangleAnnotation { MinimumX = 8, MaximumX = 10, MinimumY = 0, MaximumY = 100, Fill = plot.Background });
        return new(plot, "Side force grows with leeway.", ["measured in a tank"], 380);
    }
}
