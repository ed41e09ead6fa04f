using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;

namespace Finwright.Terminal;

/// <summary>How warm the parts grow while they cure, as plain text.</summary>
internal static class CureText
{
    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">An answer with parts.</param>
    /// <param name="verdicts">The verdicts, worst first.</param>
    public static void Write(TextStreams streams, CureSummary summary, IReadOnlyList<Verdict> verdicts)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name);
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        foreach (Verdict verdict in verdicts)
            VerdictText.Write(streams, verdict);
        foreach (CuredPartSummary part in summary.Parts)
        {
            o.WriteLine();
            if (part.Name.Length > 30)
                o.WriteLine(part.Name);
            o.WriteLine($"{(part.Name.Length > 30 ? "" : part.Name),-30}{"slow",9}{"nominal",9}{"fast",9}");
            Row("peak of the resin, °C", part, numbers => numbers.PeakResinCelsius, "0.0");
            Row("  after, h", part, numbers => numbers.PeakHours, "0.0");
            Row("wall inside, °C", part, numbers => numbers.PeakWallCelsius, "0.0");
            Row("wall outside, °C", part, numbers => numbers.PeakWallOuterCelsius, "0.0");
            Row("all gelled after, h", part, numbers => numbers.GelHours, "0.0");
            Row("to handle after, h", part, numbers => numbers.HandlingHours, "0.0");
            Row("reacted at the end, %", part, numbers => 100 * numbers.MeanConversion, "0");
        }

        NotesText.Write(streams, summary.Notes);

        void Row(string what, CuredPartSummary part, Func<CureNumbers, double?> of, string format) =>
            o.WriteLine($"  {what,-28}{Number(of(part.Slow), format),9}{Number(of(part.Nominal), format),9}{Number(of(part.Fast), format),9}");
    }

    private static string Number(double? value, string format) => value is double number ? number.ToString(format, CultureInfo.InvariantCulture) : "-";
}
