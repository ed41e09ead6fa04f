using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Making.Cure;
using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>Draws how warm a part is when its resin is hottest, seen from the side as it stands: the warmest through the thickness.</summary>
internal static class CureMapFigure
{
    private const double PanelWidth = 236, Tallest = 500, LineHeight = 17, BoxWidth = 26, BoxHeight = 24, ArrowRoom = 46;

    private const double Kelvin = 273.15, Hour = 3600, Millimetres = 1e3;

    private const int MostBands = 8;

    private static readonly double[] Digits = [1, 2, 5, 10];

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin and part.</param>
    /// <param name="part">The part as it cures.</param>
    /// <param name="softening">Temperature at which the walls soften, K.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, PartCured part, double softening)
    {
        PartCureResult run = part.Band.Nominal;
        SideView view = new(part.Voxels, part.Part.Layers, part.Part.Up, part.Part.Layers.ToLayers.Turn(new(1, 0, 0)));
        double scale = Math.Min((FigurePaper.Width - PanelWidth - ArrowRoom) / view.Width, Tallest / view.Height);
        double[] warmth = new double[part.Voxels.Count];
        Array.Fill(warmth, double.NaN);
        for (int n = 0; n < run.Cells.Count; n++)
            warmth[run.Cells[n]] = run.FieldAtPeak[n] - Kelvin;
        FieldGrid field = view.Greatest(warmth);
        double peak = run.Resin.Temperature - Kelvin, soft = softening - Kelvin;
        double[] levels = Levels(field.Least, Math.Max(peak, field.Greatest));
        double panel = (7.5 + 1.5) * LineHeight + (levels.Length + 1) * BoxHeight;
        FigurePaper paper = new(title, ["As it stands while it cures; at each place the warmest through the thickness."], Math.Max(scale * view.Height, panel) + 16);
        DataPoint On(DataPoint p) => new(ArrowRoom + scale * p.X, 8 + scale * p.Y);
        IReadOnlyList<IReadOnlyList<DataPoint>> Placed(IReadOnlyList<IReadOnlyList<DataPoint>> rings) => [.. rings.Select(ring => (IReadOnlyList<DataPoint>)[.. ring.Select(On)])];

        IReadOnlyList<IReadOnlyList<DataPoint>> outline = Placed(view.Silhouette);
        paper.Fill(outline, BandColours.Of(0, levels.Length));
        for (int i = 1; i < levels.Length; i++)
        {
            IReadOnlyList<IReadOnlyList<DataPoint>> region = Placed(field.RegionFrom(levels[i]));
            paper.Fill(region, BandColours.Of(i, levels.Length));
            paper.Ring(region, FigureSheet.Paper, 0.5);
        }

        if (peak >= soft)
            paper.Ring(Placed(field.RegionFrom(soft)), FigureSheet.Fails, 1.5);
        // Beside the part the field is carried on; paper covers it.
        const double Over = 2;
        DataPoint[] frame = [On(new(-Over, -Over)), On(new(view.Width + Over, -Over)), On(new(view.Width + Over, view.Height + Over)), On(new(-Over, view.Height + Over))];
        bool isSame = view.Silhouette.Count > 0 && Turn(frame) * Turn(outline.MaxBy(ring => Math.Abs(Turn(ring)))!) > 0;
        paper.Fill([isSame ? [.. frame.Reverse()] : frame, .. outline], FigureSheet.Paper);
        paper.Ring(outline, FigureSheet.Ink, 1);
        paper.Line([new(14, 74), new(14, 14)], FigureSheet.Ink, 1.5);
        paper.Fill([[new(14, 6), new(9, 18), new(19, 18)]], FigureSheet.Ink);
        paper.Text(14, 84, "up", FigureSheet.Ink, HorizontalAlignment.Center);

        double x = FigurePaper.Width - PanelWidth + 16, y = 16;
        DataPoint hottest = On(view.At(run.HottestPlace));
        paper.Line([hottest, new(x - 6, y)], FigureSheet.Ink, 0.75);
        paper.Mark(hottest, 4, FigureSheet.Paper, FigureSheet.Ink);
        (double least, double greatest) = part.Range(each => each.Resin.Temperature - Kelvin);
        foreach (string line in (string[])[$"{peak:0.0} °C: hottest,", $"{run.Resin.Time / Hour:0.0} h after the first pour", $"(with its range {least:0.0} to {greatest:0.0} °C)", Place(part)])
        {
            paper.Text(x, y, line, FigureSheet.Ink);
            y += LineHeight;
        }

        Scale(paper, levels, soft, x, y + LineHeight);
        return paper.Finish($"The hottest resin reaches {peak:0.0} °C after {run.Resin.Time / Hour:0.0} h; the walls soften at {soft:0} °C.");
    }

    private static string Place(PartCured part)
    {
        Point3 place = part.HottestPlace;
        return $"at x {Millimetres * place.X:0}, y {Millimetres * place.Y:0}, z {Millimetres * place.Z:0} mm";
    }

    /// <summary>Where the bands begin, °C.</summary>
    private static double[] Levels(double least, double most)
    {
        double span = Math.Max(most - least, 0.5), wanted = span / MostBands, power = Math.Pow(10, Math.Floor(Math.Log10(wanted)));
        double step = power * Digits.First(digit => digit * power >= wanted * (1 - 1e-9)), first = Math.Floor(least / step);
        return [.. Enumerable.Range(0, Math.Max(1, (int)Math.Ceiling(most / step - first))).Select(i => (first + i) * step)];
    }

    private static void Scale(FigurePaper paper, double[] levels, double soft, double x, double y)
    {
        double step = levels.Length > 1 ? levels[1] - levels[0] : 1, top = levels[^1] + step;
        paper.Text(x, y, "temperature, °C", FigureSheet.Ink);
        y += LineHeight;
        string format = step < 1 ? "0.0" : "0";
        double bottom = y + levels.Length * BoxHeight, softAt;
        if (soft > top)
        {
            // Above the scale: told at its end, with a gap.
            softAt = y;
            (y, bottom) = (y + BoxHeight, bottom + BoxHeight);
            paper.Line([new(x + BoxWidth / 2, softAt), new(x + BoxWidth / 2, y)], FigureSheet.QuietInk, 0.75, LineStyle.Dot);
        }
        else
        {
            softAt = bottom - (soft - levels[0]) / step * BoxHeight;
        }

        for (int i = 0; i < levels.Length; i++)
            paper.Box(x, bottom - (i + 1) * BoxHeight, BoxWidth, BoxHeight, BandColours.Of(i, levels.Length));
        for (int i = 0; i <= levels.Length; i++)
            if (Math.Abs(bottom - i * BoxHeight - softAt) > 0.6 * LineHeight)
                paper.Text(x + BoxWidth + 8, bottom - i * BoxHeight, (levels[0] + i * step).ToString(format, System.Globalization.CultureInfo.InvariantCulture), FigureSheet.Ink);
        if (softAt > bottom + 1)
            return;
        paper.Line([new(x - 4, softAt), new(x + BoxWidth + 4, softAt)], FigureSheet.Fails, 1.5);
        paper.Text(x + BoxWidth + 8, softAt, $"{soft:0}: the walls soften", FigureSheet.Fails);
    }

    private static double Turn(IReadOnlyList<DataPoint> ring)
    {
        double sum = 0;
        for (int i = 0; i < ring.Count; i++)
        {
            (DataPoint a, DataPoint b) = (ring[i], ring[(i + 1) % ring.Count]);
            sum += a.X * b.Y - b.X * a.Y;
        }

        return sum;
    }
}
