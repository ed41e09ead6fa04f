using System.Globalization;
using Finwright.Assessment.Packing;

namespace Finwright.Terminal;

/// <summary>The cure of a slab as plain text.</summary>
internal static class CureSlabText
{
    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">The answer.</param>
    public static void Write(TextStreams streams, CureSlabSummary summary)
    {
        TextWriter o = streams.Out;
        string cooling = summary.ConvectionWPerM2K is double given ? $"{summary.Cooling}, {given:0.#} W/(m² K)" : $"still {summary.Cooling}";
        o.WriteLine($"{summary.Resin}, {(summary.ThicknessMm is double thick ? $"{thick:0.##} mm" : "any thickness")} between walls of {summary.WallMm:0.##} mm, infill {summary.InfillPercent:0.#} %, {cooling} at {summary.AmbientCelsius:0.#} °C");
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        if (summary is { Low: { } low, Nominal: { } nominal, High: { } high })
        {
            o.WriteLine();
            o.WriteLine("                                low  nominal     high");
            Row("peak in the middle, °C", low.PeakCentreCelsius, nominal.PeakCentreCelsius, high.PeakCentreCelsius, "0.0");
            Row("  after, min", low.PeakMinutes, nominal.PeakMinutes, high.PeakMinutes, "0");
            Row("wall inside, °C", low.PeakWallCelsius, nominal.PeakWallCelsius, high.PeakWallCelsius, "0.0");
            Row("wall outside, °C", low.PeakWallOuterCelsius, nominal.PeakWallOuterCelsius, high.PeakWallOuterCelsius, "0.0");
            Row("middle gels after, min", low.GelMinutes, nominal.GelMinutes, high.GelMinutes, "0");
            Row("reacted at the end, %", 100 * low.ConversionAtEnd, 100 * nominal.ConversionAtEnd, 100 * high.ConversionAtEnd, "0");
        }

        o.WriteLine();
        o.WriteLine("How sure this is");
        foreach (string note in summary.Notes)
            o.WriteLine("  " + Wrapping.Wrap(note, streams.Width, 4, 2));

        void Row(string what, double? a, double? b, double? c, string format) => o.WriteLine($"  {what,-26}{Number(a, format),7}{Number(b, format),9}{Number(c, format),9}");
    }

    private static string Number(double? value, string format) => value is double number ? number.ToString(format, CultureInfo.InvariantCulture) : "-";
}
