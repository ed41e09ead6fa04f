using Finwright.Making.Cure;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>Draws how warm a part grows while it cures: resin with its range, walls, surroundings, against the temperature at which the walls soften.</summary>
public static class CureCurvesFigure
{
    private const double Hour = 3600;

    // Moments on a line: more than there are points across.
    private const int MostPoints = 400;

    // Share of the height left above the warmest of all.
    private const double Air = 0.1;

    private const double LabelHeight = 18;

    // The rest of the width is for the names of the lines.
    private const double PlotShare = 0.84;

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin and part.</param>
    /// <param name="band">The cure with its range.</param>
    /// <param name="softening">Temperature at which the walls soften, K.</param>
    /// <param name="bath">The bath; null for none.</param>
    /// <param name="says">What it says; null for English and °C.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, PartCureBand band, double softening, WaterBath? bath, CureCurveWords? says = null)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(band);
        CureCurveWords say = says ?? CureCurveWords.English;
        PartCureResult nominal = band.Nominal;
        double soft = say.Degrees(softening), last = LastHour(band, bath);
        CureMoment[] shown = [.. band.Slow.History.Concat(nominal.History).Concat(band.Fast.History).Where(moment => moment.Time <= last * Hour)];
        double least = Math.Floor((say.Degrees(shown.Min(moment => moment.Surroundings)) - 2) / 5) * 5;
        double warmest = Math.Max(soft, say.Degrees(shown.Max(moment => moment.Hottest)));
        double most = Math.Ceiling((warmest + Air * (warmest - least)) / 5) * 5;
        string[] notes = [say.Range];
        PlotModel figure = FigureSheet.Start(title, notes.Length);
        figure.Culture = say.Culture;
        figure.PlotMargins = new(58, 8, 4, 48);
        Axis time = FigureSheet.Axis(AxisPosition.Bottom, say.Time, 0, last), warmth = FigureSheet.Axis(AxisPosition.Left, $"{say.Temperature}, {say.Unit}", least, most);
        time.EndPosition = PlotShare;
        time.CropGridlines = warmth.CropGridlines = true;
        figure.Axes.Add(time);
        figure.Axes.Add(warmth);

        figure.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Horizontal, Y = soft, Color = FigureSheet.Fails, LineStyle = LineStyle.DashDot, StrokeThickness = 1.25 });
        FigureSheet.Name(figure, new(0, soft), say.Soften(say.Warmth(softening, "0")), FigureSheet.Fails, HorizontalAlignment.Left, VerticalAlignment.Bottom);
        List<(double Height, string Name, OxyColor Colour)> ends = [];
        Add(nominal, moment => moment.Surroundings, FigureSheet.QuietInk, LineStyle.Dot, 1.25, say.Surroundings);
        Add(band.Slow, moment => moment.Hottest, FigureSheet.Ink, LineStyle.Dash, 1, say.Slow);
        Add(band.Fast, moment => moment.Hottest, FigureSheet.Ink, LineStyle.LongDash, 1, say.Fast);
        Add(nominal, moment => moment.WallOutside, FigureSheet.Water, LineStyle.Dash, 1.25, say.WallOutside);
        Add(nominal, moment => moment.WallInside, FigureSheet.Water, LineStyle.Solid, 1.25, say.WallInside);
        Add(nominal, moment => moment.Hottest, FigureSheet.Ink, LineStyle.Solid, 2.25, say.Hottest);
        Names(figure, ends, last, (most - least) / 320);

        List<string> words = [say.Sentence(say.Warmth(nominal.Resin.Temperature, "0.0"), say.Number(nominal.Resin.Time / Hour, "0.0"), say.Warmth(Least(band), "0.0"), say.Warmth(Greatest(band), "0.0"), say.Warmth(softening, "0"))];
        Upright(bath is { Duration: > 0 } water ? (water.Start + water.Duration) / Hour : null, say.OutOfBath, 0.06);
        Upright(double.IsFinite(nominal.Handling) ? nominal.Handling / Hour : null, say.Handled, 0.13);
        if (nominal.Resin.Time <= last * Hour)
        {
            figure.Annotations.Add(new PointAnnotation { X = nominal.Resin.Time / Hour, Y = say.Degrees(nominal.Resin.Temperature), Size = 4, Shape = MarkerType.Circle, Fill = FigureSheet.Paper, Stroke = FigureSheet.Ink, StrokeThickness = 1.5, Layer = AnnotationLayer.AboveSeries });
            FigureSheet.Name(figure, new(nominal.Resin.Time / Hour, say.Degrees(nominal.Resin.Temperature)), say.Warmth(nominal.Resin.Temperature, "0.0"), FigureSheet.Ink, HorizontalAlignment.Left, VerticalAlignment.Bottom);
        }

        return FigureSheet.Finish(figure, string.Join(' ', words), notes);

        void Add(PartCureResult run, Func<CureMoment, double> of, OxyColor colour, LineStyle style, double thickness, string name)
        {
            CureMoment[] moments = [.. run.History.Where(moment => moment.Time <= last * Hour)];
            int step = Math.Max(1, moments.Length / MostPoints);
            DataPoint[] points = [.. moments.Where((_, index) => index % step == 0 || index == moments.Length - 1).Select(moment => new DataPoint(moment.Time / Hour, say.Degrees(of(moment))))];
            if (points.Length == 0)
                return;
            figure.Series.Add(FigureSheet.Line(points, colour, style, thickness));
            ends.Add((points[^1].Y, name, colour));
        }

        void Upright(double? at, string name, double drop)
        {
            if (at is not { } hours)
                return;
            words.Add(say.Happens(name, say.Number(hours, "0.0")));
            if (hours > last)
                return;
            figure.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Vertical, X = hours, Color = FigureSheet.Tight, LineStyle = LineStyle.Dash, StrokeThickness = 1 });
            bool isRight = hours < 0.75 * last;
            FigureSheet.Name(figure, new(hours, soft - drop * (most - least)), $"{name}, {say.Number(hours, "0.0")} h", FigureSheet.Tight, isRight ? HorizontalAlignment.Left : HorizontalAlignment.Right);
        }
    }

    /// <summary>Names at the ends of the lines, spread so that none covers another, each with a leader.</summary>
    private static void Names(PlotModel figure, List<(double Height, string Name, OxyColor Colour)> ends, double last, double perPoint)
    {
        (double Height, string Name, OxyColor Colour)[] up = [.. ends.OrderBy(end => end.Height).ThenBy(end => end.Name, StringComparer.Ordinal)];
        LinearAxis warmth = (LinearAxis)figure.Axes[1];
        double[] middles = OverDepthFigure.Spread([.. up.Select(end => end.Height)], [.. up.Select(_ => LabelHeight * perPoint)], warmth.Minimum, warmth.Maximum);
        for (int i = 0; i < up.Length; i++)
        {
            FigureSheet.Leader(figure, new(last, up[i].Height), new(last * 1.03, middles[i]), up[i].Colour);
            FigureSheet.Name(figure, new(last * 1.035, middles[i]), up[i].Name, up[i].Colour).Offset = new(0, 0);
        }
    }

    /// <summary>Least peak of the range, K.</summary>
    private static double Least(PartCureBand band) => Math.Min(band.Slow.Resin.Temperature, Math.Min(band.Nominal.Resin.Temperature, band.Fast.Resin.Temperature));

    /// <summary>Greatest peak of the range, K.</summary>
    private static double Greatest(PartCureBand band) => Math.Max(band.Slow.Resin.Temperature, Math.Max(band.Nominal.Resin.Temperature, band.Fast.Resin.Temperature));

    /// <summary>Where the time axis ends: a while after the last thing that happens.</summary>
    /// <summary>Until when a cure is worth showing, h.</summary>
    /// <param name="band">The cure with its range.</param>
    /// <param name="bath">The bath; null for none.</param>
    public static double LastHour(PartCureBand band, WaterBath? bath)
    {
        ArgumentNullException.ThrowIfNull(band);
        double end = band.Nominal.History[^1].Time, last = Math.Max(band.Nominal.Resin.Time, band.Fast.Resin.Time);
        if (double.IsFinite(band.Nominal.Handling))
            last = Math.Max(last, band.Nominal.Handling);
        if (bath is not null)
            last = Math.Max(last, bath.Start + bath.Duration);
        return Math.Min(end, 1.15 * last) / Hour;
    }
}
