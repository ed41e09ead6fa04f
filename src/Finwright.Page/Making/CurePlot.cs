using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Making.Cure;
using Finwright.Page.Plots;
using Finwright.Page.Words;
using Finwright.Papers;
using Finwright.Papers.Sheet;
using Finwright.Papers.Words;

namespace Finwright.Page.Making;

/// <summary>How warm a part grows while it cures, as a plot.</summary>
internal static class CurePlot
{
    private const double Hour = 3600, Celsius = 273.15;

    // Moments on a line: more than anybody reads off.
    private const int Moments = 160;

    /// <summary>The plot.</summary>
    /// <param name="cured">The cure of the fin.</param>
    /// <param name="part">The part, followed to its end.</param>
    /// <param name="reader">In whose words and units.</param>
    public static PlotSheet Of(FinCured cured, PartCured part, Reader reader)
    {
        bool isInch = reader.Choice.Units is PaperUnits.Inch;
        PartCureBand band = part.Band;
        CureCurveWords words = reader.Tongue.Words.Sheet.CureCurves;
        double last = CureCurvesFigure.LastHour(band, part.Case.Bath);
        double[] hours = [.. Enumerable.Range(0, Moments + 1).Select(i => last * i / Moments)];
        PlotLine[] lines =
        [
            new(words.Hottest, Line(band.Nominal, moment => moment.Hottest), PlotInk.Fails),
            new(words.Fast, Line(band.Fast, moment => moment.Hottest), PlotInk.Quiet, PlotDash.Dotted),
            new(words.Slow, Line(band.Slow, moment => moment.Hottest), PlotInk.Quiet, PlotDash.Dotted),
            new(words.WallInside, Line(band.Nominal, moment => moment.WallInside), PlotInk.Tight, PlotDash.Dashed),
            new(words.WallOutside, Line(band.Nominal, moment => moment.WallOutside), PlotInk.Ink),
            new(words.Surroundings, Line(band.Nominal, moment => moment.Surroundings), PlotInk.Water, PlotDash.DashDot),
        ];
        return new(
            reader["{0}: temperature while it cures", reader.Tongue.Words.Names.Part(part.Name)],
            new(reader["after the first pour"], "h", last < 10 ? 1 : 0) { Least = 0, Greatest = last },
            new(reader["temperature"], isInch ? "°F" : "°C", 0),
            lines)
        {
            Bands = [new(1, 2, PlotInk.Fails)],
            Limits = [new(reader["the walls soften"], Degrees(cured.Softening), PlotInk.Fails)],
            Notes = [reader["Dotted: reacting half and twice as fast, cooled 30 % better and worse."]],
        };

        IReadOnlyList<PlotPoint> Line(PartCureResult run, Func<CureMoment, double> of) =>
            [.. hours.Where(hour => hour * Hour <= run.History[^1].Time).Select(hour => new PlotPoint(hour, Degrees(CureTimes.At(run.History, hour * Hour, of))))];

        double Degrees(double kelvin) => isInch ? UnitScale.Fahrenheit * (kelvin - Celsius) + UnitScale.FahrenheitZero : kelvin - Celsius;
    }
}
