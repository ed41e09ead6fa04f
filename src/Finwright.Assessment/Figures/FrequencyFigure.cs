using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>Draws a fin's first frequencies in air and in water against those of the eddies that leave the trailing edge.</summary>
internal static class FrequencyFigure
{
    private const double Height = 340;
    private const double Left = 84, Right = 20;
    private const double AirRow = 2, WaterRow = 1, Lowest = 0.35, Highest = 2.9;

    // Numbers closer than this, points, stand in two rows.
    private const double NumberWidth = 38, NumberRow = 0.2;

    private static readonly double[] Round = [1, 2, 5];

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin.</param>
    /// <param name="inAir">First frequencies in air, Hz, rising; one or more.</param>
    /// <param name="inWater">The same in water; may be empty.</param>
    /// <param name="eddies">From and to, Hz; null when there are none.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, IReadOnlyList<double> inAir, IReadOnlyList<double> inWater, (double Low, double High)? eddies)
    {
        PlotModel figure = FigureSheet.Start(title);
        figure.PlotMargins = new(Left, 8, Right, 52);
        double[] all = [.. inAir, .. inWater, .. eddies is { } band ? [band.Low, band.High] : Array.Empty<double>()];
        double from = RoundDown(all.Min() / 1.15), to = RoundUp(all.Max() * 1.15);
        LogarithmicAxis hertz = Hertz(from, to);
        LinearAxis rows = FigureSheet.Axis(AxisPosition.Left, "", Lowest, Highest);
        (rows.MajorStep, rows.MajorGridlineStyle, rows.TickStyle, rows.AxislineStyle) = (AirRow - WaterRow, LineStyle.None, TickStyle.None, LineStyle.None);
        rows.LabelFormatter = row => row > (AirRow + WaterRow) / 2 ? "in air" : inWater.Count > 0 ? "in water" : "";
        figure.Axes.Add(hertz);
        figure.Axes.Add(rows);
        double perPoint = Math.Log(to / from) / (FigureSheet.Width - 32 - Left - Right);
        if (eddies is { } shed)
            Eddies(figure, shed, from, to, perPoint);
        for (int i = 0; i < Math.Min(inAir.Count, inWater.Count); i++)
            figure.Series.Add(FigureSheet.Line([new(inAir[i], AirRow), new(inWater[i], WaterRow)], FigureSheet.QuietInk, LineStyle.Dot, 1));
        Row(figure, AirRow, inAir, from, to, perPoint, _ => FigureSheet.QuietInk, 1);
        Row(figure, WaterRow, inWater, from, to, perPoint, own => eddies is { } met && own >= met.Low && own <= met.High ? FigureSheet.Tight : FigureSheet.Water, -1);
        return FigureSheet.Finish(figure, Words(inAir, inWater, eddies), height: Height);
    }

    private static void Row(PlotModel figure, double row, IReadOnlyList<double> frequencies, double from, double to, double perPoint, Func<double, OxyColor> colour, int side)
    {
        if (frequencies.Count == 0)
            return;
        figure.Series.Add(FigureSheet.Line([new(from, row), new(to, row)], FigureSheet.Rule, LineStyle.Solid, 1));
        bool isMoved = false;
        for (int i = 0; i < frequencies.Count; i++)
        {
            // Names of near neighbours change rows.
            isMoved = i > 0 && Math.Log(frequencies[i] / frequencies[i - 1]) < NumberWidth * perPoint && !isMoved;
            figure.Annotations.Add(new PointAnnotation
            {
                X = frequencies[i],
                Y = row,
                Size = 5,
                Shape = MarkerType.Circle,
                Fill = colour(frequencies[i]),
                Stroke = FigureSheet.Paper,
                StrokeThickness = 1,
                Layer = AnnotationLayer.AboveSeries,
            });
            FigureSheet.Name(figure, new(frequencies[i], row + side * (0.16 + (isMoved ? NumberRow : 0))), $"{frequencies[i]:0}", colour(frequencies[i]), HorizontalAlignment.Center);
        }
    }

    private static void Eddies(PlotModel figure, (double Low, double High) shed, double from, double to, double perPoint)
    {
        figure.Annotations.Add(new RectangleAnnotation
        {
            MinimumX = shed.Low,
            MaximumX = shed.High,
            MinimumY = Lowest,
            MaximumY = Highest,
            Fill = OxyColor.FromAColor(36, FigureSheet.Tight),
            Layer = AnnotationLayer.BelowSeries,
        });
        string name = $"eddies of the trailing edge, {Told(shed.Low)} to {Told(shed.High)} Hz";
        double wide = FigureSheet.WidthOf(name) * perPoint;
        bool isInside = wide < Math.Log(shed.High / shed.Low), fitsBefore = wide < Math.Log(shed.Low / from);
        double place = isInside ? Math.Sqrt(shed.Low * shed.High) : fitsBefore ? shed.Low : to;
        FigureSheet.Name(figure, new(place, Highest - 0.14), name, FigureSheet.Tight, isInside ? HorizontalAlignment.Center : HorizontalAlignment.Right);
    }

    private static RoundLogarithmicAxis Hertz(double from, double to)
    {
        LinearAxis like = FigureSheet.Axis(AxisPosition.Bottom, "frequency, Hz", from, to);
        return new()
        {
            Position = like.Position,
            Title = like.Title,
            TitleColor = like.TitleColor,
            AxisTitleDistance = like.AxisTitleDistance,
            TextColor = like.TextColor,
            Minimum = from,
            Maximum = to,
            AxislineStyle = like.AxislineStyle,
            AxislineColor = like.AxislineColor,
            AxislineThickness = like.AxislineThickness,
            TicklineColor = like.TicklineColor,
            TickStyle = like.TickStyle,
            MinorTickSize = 3,
            MajorGridlineStyle = like.MajorGridlineStyle,
            MajorGridlineColor = like.MajorGridlineColor,
            MajorGridlineThickness = like.MajorGridlineThickness,
        };
    }

    private static string Words(IReadOnlyList<double> inAir, IReadOnlyList<double> inWater, (double Low, double High)? eddies)
    {
        string air = $"In air the fin swings at {List(inAir)} Hz", water = inWater.Count == 0 ? "." : $", in water at {List(inWater)} Hz.";
        if (eddies is not { } shed)
            return air + water;
        int met = inWater.Count(own => own >= shed.Low && own <= shed.High);
        string meets = inWater.Count == 0 ? "" : met == 0 ? ", and meet none of those in water" : $", and meet {met} of those in water: the fin may hum";
        return $"{air}{water} Eddies leave the trailing edge at {Told(shed.Low)} to {Told(shed.High)} Hz from getting going to top speed{meets}.";
    }

    // The eddies are known to two digits at best.
    private static string Told(double hertz)
    {
        double unit = Math.Pow(10, Math.Floor(Math.Log10(hertz)) - 1);
        return $"{Math.Round(hertz / unit) * unit:0.##}";
    }

    private static string List(IReadOnlyList<double> frequencies) => string.Join(", ", frequencies.Select(own => $"{own:0}"));

    private static double RoundDown(double value) => RoundNear(value, roundUp: false);

    private static double RoundUp(double value) => RoundNear(value, roundUp: true);

    // Labels at 1, 2, 5 and their tens, whatever the range; lines at every whole number of a ten between.
    private sealed class RoundLogarithmicAxis : LogarithmicAxis
    {
        public override void GetTickValues(out IList<double> majorLabelValues, out IList<double> majorTickValues, out IList<double> minorTickValues)
        {
            List<double> major = [], minor = [];
            for (double power = Math.Pow(10, Math.Floor(Math.Log10(ActualMinimum))); power <= ActualMaximum; power *= 10)
            {
                for (int digit = 1; digit <= 9; digit++)
                {
                    double value = digit * power;
                    if (value >= ActualMinimum * (1 - 1e-9) && value <= ActualMaximum * (1 + 1e-9))
                        (Round.Contains(digit) ? major : minor).Add(value);
                }
            }

            (majorLabelValues, majorTickValues, minorTickValues) = (major, major, minor);
        }
    }

    private static double RoundNear(double value, bool roundUp)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        double[] steps = [.. Round.Select(step => step * power), 10 * power];
        return roundUp ? steps.First(step => step >= value * (1 - 1e-9)) : steps.Last(step => step <= value * (1 + 1e-9));
    }
}
