using Finwright.Assessment.Packing;

namespace Finwright.Terminal;

/// <summary>What the bench should show, as plain text.</summary>
internal static class BenchText
{
    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">An answer with a prediction.</param>
    public static void Write(TextStreams streams, BenchSummary summary)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name);
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        o.WriteLine();
        o.WriteLine("  deflection, mm            expected      range");
        Section("at the weight", b => b.LoadStation);
        Section("at the tip", b => b.Tip);
        o.WriteLine($"  {"twist of the tip, °",-22}{summary.TwistDegrees,12:0.00}    {summary.TwistLowDegrees:0.00} to {summary.TwistHighDegrees:0.00}");
        o.WriteLine($"  {"twist at the weight, °",-22}{summary.TwistAtLoadDegrees,12:0.00}");
        BenchNumbers numbers = summary.Prediction!;
        o.WriteLine($"  {"push at 40 %, N/mm",-22}{numbers.PushStiffnessNPerMm,12:0.0}    {numbers.PushStiffnessLowNPerMm:0.0} to {numbers.PushStiffnessHighNPerMm:0.0}");
        StressText.Write(o, numbers.Stresses, numbers.Joint);
        o.WriteLine();
        o.WriteLine("How sure this is");
        foreach (string note in summary.Notes)
            o.WriteLine("  " + Wrapping.Wrap(note, streams.Width, 4, 2));

        void Section(string where, Func<BenchDeflections, EdgeDeflections> of)
        {
            EdgeDeflections middle = of(summary.DeflectionMm!), low = of(summary.DeflectionLowMm!), high = of(summary.DeflectionHighMm!);
            Row($"{where}, leading edge", middle.LeadingEdge, low.LeadingEdge, high.LeadingEdge);
            Row($"{where}, mid-chord", middle.MidChord, low.MidChord, high.MidChord);
            Row($"{where}, trailing edge", middle.TrailingEdge, low.TrailingEdge, high.TrailingEdge);
        }

        void Row(string what, double value, double low, double high) => o.WriteLine($"  {what,-28}{value,6:0.00}    {low:0.00} to {high:0.00}");
    }
}
