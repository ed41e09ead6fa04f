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
        if (summary is { Slow: { } slow, Nominal: { } nominal, Fast: { } fast })
        {
            o.WriteLine();
            o.WriteLine("                               slow  nominal     fast");
            Row("peak in the middle, °C", slow.PeakCentreCelsius, nominal.PeakCentreCelsius, fast.PeakCentreCelsius, "0.0");
            Row("  after, min", slow.PeakMinutes, nominal.PeakMinutes, fast.PeakMinutes, "0");
            Row("wall inside, °C", slow.PeakWallCelsius, nominal.PeakWallCelsius, fast.PeakWallCelsius, "0.0");
            Row("wall outside, °C", slow.PeakWallOuterCelsius, nominal.PeakWallOuterCelsius, fast.PeakWallOuterCelsius, "0.0");
            Row("middle gels after, min", slow.GelMinutes, nominal.GelMinutes, fast.GelMinutes, "0");
            Row("reacted at the end, %", 100 * slow.ConversionAtEnd, 100 * nominal.ConversionAtEnd, 100 * fast.ConversionAtEnd, "0");
        }

        o.WriteLine();
        o.WriteLine("How sure this is");
        foreach (string note in summary.Notes)
            o.WriteLine("  " + Wrapping.Wrap(note, streams.Width, 4, 2));

        void Row(string what, double? a, double? b, double? c, string format) => o.WriteLine($"  {what,-26}{Number(a, format),7}{Number(b, format),9}{Number(c, format),9}");
    }

    private static string Number(double? value, string format) => value is double number ? number.ToString(format, CultureInfo.InvariantCulture) : "-";
}
