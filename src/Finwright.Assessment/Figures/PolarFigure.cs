using OxyPlot;
using OxyPlot.Axes;

namespace Finwright.Assessment.Figures;

/// <summary>A point of a drawn polar.</summary>
/// <param name="AngleDegrees">Angle of attack.</param>
/// <param name="Cl">Lift coefficient.</param>
/// <param name="Cd">Drag coefficient.</param>
/// <param name="IsSolved">Whether it lies between solved points; else it is bridged or estimated, and drawn dashed.</param>
public readonly record struct PolarSample(double AngleDegrees, double Cl, double Cd, bool IsSolved);

/// <summary>One line of a drawn polar.</summary>
/// <param name="Name">What tells it from the others.</param>
/// <param name="Samples">Its points, angles rising.</param>
public sealed record PolarLine(string Name, IReadOnlyList<PolarSample> Samples);

/// <summary>Draws lift over angle of attack and lift over drag of a section, side by side.</summary>
public static class PolarFigure
{
    private const string AngleKey = "angle";
    private const string DragKey = "drag";

    // Beyond lies stall, where drag leaves every scale.
    private const double GreatestCdShown = 0.05;
    private static readonly OxyColor[] Colours = [FigureSheet.QuietInk, FigureSheet.Water, FigureSheet.Ink];

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which section of which fin.</param>
    /// <param name="lines">The lines, at most a few.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, IReadOnlyList<PolarLine> lines)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(lines);
        PlotModel figure = FigureSheet.Start(title);
        PolarSample[] all = [.. lines.SelectMany(line => line.Samples)];
        double most = FigureSheet.RoundUp(all.Max(sample => sample.Cl) * 1.05), least = Math.Min(0, all.Min(sample => sample.Cl));
        double first = all.Min(sample => sample.AngleDegrees), last = all.Max(sample => sample.AngleDegrees);
        Axis lift = FigureSheet.Axis(AxisPosition.Left, "lift coefficient", least, most);
        Axis angle = FigureSheet.Axis(AxisPosition.Bottom, "angle of attack, °", first, last);
        Axis drag = FigureSheet.Axis(AxisPosition.Bottom, "drag coefficient", 0, GreatestCdShown);
        (angle.Key, angle.EndPosition) = (AngleKey, 0.55);
        (drag.Key, drag.StartPosition) = (DragKey, 0.63);
        figure.Axes.Add(lift);
        figure.Axes.Add(angle);
        figure.Axes.Add(drag);
        for (int i = 0; i < lines.Count; i++)
        {
            OxyColor colour = Colours[i % Colours.Length];
            Add(figure, lines[i], sample => new(sample.AngleDegrees, sample.Cl), AngleKey, colour, _ => true);
            Add(figure, lines[i], sample => new(sample.Cd, sample.Cl), DragKey, colour, sample => sample.Cd <= GreatestCdShown);
            // The lines lie too close for names beside them: one below the other in the empty corner, in the colours of the lines.
            FigureSheet.Name(figure, new(last, least + (0.04 + 0.055 * (lines.Count - i)) * (most - least)), lines[i].Name, colour, HorizontalAlignment.Right).XAxisKey = AngleKey;
        }

        string words = string.Join(' ', lines.Select(line => line.Samples.MaxBy(sample => sample.Cl)).Zip(lines, (peak, line) => $"{line.Name}: lift peaks at {peak.Cl:0.00} at {peak.AngleDegrees:0.#}°."));
        return FigureSheet.Finish(figure, $"{words} Dashed parts are bridged or estimated.");
    }

    private static void Add(PlotModel figure, PolarLine line, Func<PolarSample, DataPoint> place, string axis, OxyColor colour, Func<PolarSample, bool> isShown)
    {
        int at = 0;
        while (at + 1 < line.Samples.Count)
        {
            // Runs of one kind; a run begins at the last point of the one before, so that the line has no gaps.
            bool solved = line.Samples[at + 1].IsSolved && line.Samples[at].IsSolved;
            int end = at + 1;
            while (end + 1 < line.Samples.Count && (line.Samples[end + 1].IsSolved && line.Samples[end].IsSolved) == solved)
                end++;
            var run = FigureSheet.Line(line.Samples.Skip(at).Take(end - at + 1).Where(isShown).Select(place), colour, solved ? LineStyle.Solid : LineStyle.Dash);
            run.XAxisKey = axis;
            figure.Series.Add(run);
            at = end;
        }
    }
}
