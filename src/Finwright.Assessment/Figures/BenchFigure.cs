using Finwright.Numerics;
using Finwright.Strength.Bench;
using Finwright.Strength.Plates;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Finwright.Assessment.Figures;

/// <summary>Draws what the bench should show: how far the blade bends from root to tip under the weight, with its range where it is read, and room to mark what was read.</summary>
public static class BenchFigure
{
    // Of the axes beyond the last thing that is drawn.
    private const double Air = 0.06;

    // Bars of one station stand beside each other, this share of the span apart.
    private const double Apart = 0.012, BarEnd = 0.005;

    // The rest of the width is for the names of the lines.
    private const double PlotShare = 0.76, LabelHeight = 22;

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin.</param>
    /// <param name="bench">The prediction.</param>
    /// <param name="says">What it says; null for English and millimetres.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, BenchPrediction bench, BenchFigureWords? says = null)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(bench);
        BenchFigureWords say = says ?? BenchFigureWords.English;
        string[] notes = [say.Note];
        PlotModel figure = FigureSheet.Start(title, notes.Length);
        figure.Culture = say.Culture;
        figure.PlotMargins = new(62, 8, 4, 48);
        double span = say.Lengths(bench.AtTip.Depth), most = Ends(bench, say).Max(), least = Math.Min(0, Ends(bench, say).Min());
        Axis depth = FigureSheet.Axis(AxisPosition.Bottom, $"{say.Depth}, {say.Unit}", 0, (1 + Air) * span);
        Axis deflection = FigureSheet.Axis(AxisPosition.Left, $"{say.Deflection}, {say.Unit}", least < 0 ? -FigureSheet.RoundUp(-least) : 0, FigureSheet.RoundUp((1 + Air) * most));
        // The blade lies level and bends down.
        (deflection.StartPosition, deflection.EndPosition) = (1, 0);
        depth.EndPosition = PlotShare;
        depth.CropGridlines = deflection.CropGridlines = true;
        figure.Axes.Add(depth);
        figure.Axes.Add(deflection);

        (string Name, OxyColor Colour, LineStyle Style, Func<SectionBend, double> Along, Func<StationBend, Ranged> At)[] edges =
        [
            (say.LeadingEdge, FigureSheet.QuietInk, LineStyle.Dash, section => section.LeadingEdge, station => station.LeadingEdge),
            (say.MidChord, FigureSheet.Ink, LineStyle.Solid, section => section.MidChord, station => station.MidChord),
            (say.TrailingEdge, FigureSheet.Water, LineStyle.DashDot, section => section.TrailingEdge, station => station.TrailingEdge),
        ];
        foreach ((int index, var edge) in edges.Index())
        {
            figure.Series.Add(FigureSheet.Line(bench.Along.Select(section => new DataPoint(say.Lengths(section.Depth), say.Lengths(edge.Along(section)))), edge.Colour, edge.Style, Thickness(edge.Style)));
            foreach (StationBend station in (StationBend[])[bench.AtLoad, bench.AtTip])
                Bar(figure, say.Lengths(station.Depth) + (index - 1) * Apart * span, edge.At(station), edge.Colour, say, BarEnd * span);
        }

        figure.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Vertical, X = say.Lengths(bench.Load.Depth), Color = FigureSheet.Tight, LineStyle = LineStyle.Dot, StrokeThickness = 1 });
        FigureSheet.Name(figure, new(say.Lengths(bench.Load.Depth), deflection.Maximum), say.Weight(say.Mass(bench.Load.Mass)), FigureSheet.Tight, HorizontalAlignment.Left, VerticalAlignment.Bottom, reversed: true);
        Names(figure, [.. edges.Select(edge => (say.Lengths(edge.At(bench.AtTip).Value), edge.Name, edge.Colour, edge.Style))], (1 + Air) * span, deflection);
        Ranged middle = bench.AtTip.MidChord;
        return FigureSheet.Finish(figure, say.Sentence(say.Length(middle.Value), say.Length(middle.Low), say.Length(middle.High)), notes);
    }

    // Of bars and lines: near the root an edge may move the other way.
    private static IEnumerable<double> Ends(BenchPrediction bench, BenchFigureWords say) =>
    [
        .. from section in bench.Along
           from end in (double[])[section.LeadingEdge, section.MidChord, section.TrailingEdge]
           select say.Lengths(end),
        .. from station in (StationBend[])[bench.AtLoad, bench.AtTip]
           from edge in (Ranged[])[station.LeadingEdge, station.MidChord, station.TrailingEdge]
           from end in (double[])[edge.Low, edge.High]
           select say.Lengths(end),
    ];

    private static void Bar(PlotModel figure, double x, Ranged range, OxyColor colour, BenchFigureWords say, double half)
    {
        double low = say.Lengths(range.Low), high = say.Lengths(range.High);
        foreach ((DataPoint from, DataPoint to) in (ReadOnlySpan<(DataPoint, DataPoint)>)[(new(x, low), new(x, high)), (new(x - half, low), new(x + half, low)), (new(x - half, high), new(x + half, high))])
        {
            LineSeries line = FigureSheet.Line([from, to], colour, LineStyle.Solid, 1);
            figure.Series.Add(line);
        }
    }

    /// <summary>Names near the ends of the lines, spread so that none stands close to another; a piece of each line before its name tells which it is, as lines meet at the tip.</summary>
    private static void Names(PlotModel figure, (double Height, string Name, OxyColor Colour, LineStyle Style)[] ends, double last, Axis deflection)
    {
        (double Height, string Name, OxyColor Colour, LineStyle Style)[] down = [.. ends.OrderBy(end => end.Height).ThenBy(end => end.Name, StringComparer.Ordinal)];
        double perPoint = (deflection.Maximum - deflection.Minimum) / 340;
        double[] middles = OverDepthFigure.Spread([.. down.Select(end => end.Height)], [.. down.Select(_ => LabelHeight * perPoint)], deflection.Minimum, deflection.Maximum);
        for (int i = 0; i < down.Length; i++)
        {
            FigureSheet.Leader(figure, new(last * 1.01, middles[i]), new(last * 1.055, middles[i]), down[i].Colour, down[i].Style, Thickness(down[i].Style));
            FigureSheet.Name(figure, new(last * 1.065, middles[i]), down[i].Name, down[i].Colour).Offset = new(0, 0);
        }
    }

    private static double Thickness(LineStyle style) => style is LineStyle.Solid ? 2 : 1.25;
}
