using Finwright.Assessment.Packing;

namespace Finwright.Terminal;

/// <summary>What a cup or a data sheet told of a resin, as plain text.</summary>
internal static class ResinFitText
{
    /// <summary>Writes the answer.</summary>
    public static void Write(TextStreams streams, ResinFitAnswer answer)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap(answer.Sentence, streams.Width));
        o.WriteLine();
        Row("rate, times", answer.RateFactor, "0.00");
        Row("heat of reaction, J/g", answer.HeatOfReactionJPerG, "0");
        if (answer.CupCoefficientWPerM2K is { } coefficient)
            Row("cup sheds, W/(m² K)", coefficient, "0.0");
        if (answer.Readings.Count > 0)
        {
            o.WriteLine();
            o.WriteLine("     min   read, °C    fit, °C");
            foreach (ResinFitReading reading in answer.Readings)
                o.WriteLine($"  {reading.Minutes,6:0.0}{reading.MeasuredCelsius,11:0.0}{reading.FittedCelsius,11:0.0}");
        }

        if (answer.Remarks.Count > 0)
        {
            o.WriteLine();
            foreach (string remark in answer.Remarks)
                o.WriteLine("  " + Wrapping.Wrap(remark, streams.Width, 4, 2));
        }

        if (answer.SavedAs is string file)
        {
            o.WriteLine();
            o.WriteLine(Wrapping.Wrap($"Wrote {file}. Next: name it in a design beside it, as pour.system.file.", streams.Width));
        }

        void Row(string what, RangeSummary range, string format) =>
            o.WriteLine($"  {what,-24}{range.Value.ToString(format, System.Globalization.CultureInfo.InvariantCulture),8}{(range.Low < range.High ? $"   {range.Low.ToString(format, System.Globalization.CultureInfo.InvariantCulture)} to {range.High.ToString(format, System.Globalization.CultureInfo.InvariantCulture)}" : "")}");
    }
}
