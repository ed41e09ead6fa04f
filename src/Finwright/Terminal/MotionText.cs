using Finwright.Assessment.Packing;
using Finwright.Making.Motion;

namespace Finwright.Terminal;

/// <summary>What a motion file does, as plain text.</summary>
internal static class MotionText
{
    // Words that mean moves or settings of every file; what else there is, is what to look at.
    private const int MostWords = 24;

    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="answer">An answer about a file that could be read.</param>
    public static void Write(TextStreams streams, MotionAnswer answer)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap(answer.Sentence, streams.Width));
        o.WriteLine();
        if (answer.Box is { } box)
            Row("box of the part, mm", $"x {box.FromMm[0]:0.00} to {box.ToMm[0]:0.00}, y {box.FromMm[1]:0.00} to {box.ToMm[1]:0.00}, z {box.FromMm[2]:0.00} to {box.ToMm[2]:0.00} (middles of lines)");
        Row("plastic, cm³", $"{answer.PartCm3:0.00} in the part, {answer.PlasticCm3:0.00} in all{(answer.ApartCm3 is double apart ? $", {apart:0.00} in priming lines and skirts" : "")}");
        Row("paths, m", $"{answer.LaidM:0.0} laid, {answer.TravelM:0.0} empty");
        Row("time, h", $"{answer.Hours:0.00}; by feed rates alone {answer.LeastHours:0.00}");
        Row("greatest flow, mm³/s", $"{answer.GreatestFlowMm3PerS:0.0} on line {answer.GreatestFlowLine}");
        foreach (SpiralSummary spiral in answer.Spirals)
            Row("spiral, mm", $"from {spiral.FromMm:0.00} to {spiral.ToMm:0.00}");
        foreach (MotionStopSummary stop in answer.Stops)
            Row("stop", $"{stop.Word} on line {stop.Line}, after the layer at {stop.AfterMm:0.00} mm{(stop.BeforeMm is double before ? $", before {before:0.00} mm" : "")}");
        Row("words", string.Join(", ", answer.Words.OrderByDescending(word => word.Value).ThenBy(word => word.Key, StringComparer.Ordinal).Take(MostWords).Select(word => $"{word.Key} {word.Value}")));
        if (answer.Plate is { } plate)
        {
            o.WriteLine();
            o.WriteLine(Wrapping.Wrap($"Plate {plate.Number}: {string.Join(", ", plate.Parts)}", streams.Width, 4));
            Row("size, mm", $"{Size(plate.SizeMm)}, planned {Size(plate.PlannedSizeMm)}");
            Row("layers", $"{plate.Layers}, planned {plate.PlannedLayers}");
            Row("plastic, cm³", $"{plate.PlasticCm3:0.0}, planned {plate.PlannedPlasticCm3:0.0}");
            foreach (NeededStopSummary stop in plate.Stops)
                Row(stop.State == StopState.Present ? "stop is there" : "stop is missing", $"{stop.Items}: {stop.Reason}");
        }

        if (answer.Inserted is { Written: true } inserted)
        {
            o.WriteLine();
            o.WriteLine(Wrapping.Wrap($"Wrote {inserted.File} with {inserted.Stops.Count} {(inserted.Stops.Count == 1 ? "stop" : "stops")}; read back, all else is the same byte for byte ({inserted.Proof!.BytesCompared} bytes compared), with the same plastic, box and way.", streams.Width));
            foreach (InsertedStopSummary stop in inserted.Stops)
                Row($"line {stop.Line}", $"at {stop.AtHeightMm:0.00} mm: {stop.Items}");
        }
        else if (answer.Inserted is not null)
        {
            o.WriteLine();
            o.WriteLine("No copy was written.");
        }

        void Row(string what, string text) => o.WriteLine($"  {what,-22}" + Wrapping.Wrap(text, streams.Width, 24, 24));
    }

    private static string Size(IReadOnlyList<double> size) => $"{size[0]:0.0} × {size[1]:0.0} × {size[2]:0.0}";
}
