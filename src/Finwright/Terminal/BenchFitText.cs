using Finwright.Assessment.Packing;
using Finwright.Strength.Bench;

namespace Finwright.Terminal;

/// <summary>What the bench taught, as plain text.</summary>
internal static class BenchFitText
{
    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">An answer with factors.</param>
    public static void Write(TextStreams streams, BenchFitSummary summary)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name);
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        o.WriteLine();
        o.WriteLine("  stiffness of  before   range            after   range         doubt left");
        foreach (FactorSummary own in summary.Factors)
            o.WriteLine($"  {BenchCalibration.NameOf(own.Part),-12}{own.Before,8:0.00}   {$"{own.BeforeLow:0.00} to {own.BeforeHigh:0.00}",-15}{own.Factor,7:0.00}   {$"{own.Low:0.00} to {own.High:0.00}",-15}{own.DoubtLeftPercent,7:0} %");
        o.WriteLine();
        o.WriteLine("  line     kg  at mm  read at mm                    read  before   after  off by");
        foreach (ReadingSummary own in summary.Readings)
            o.WriteLine($"  {own.Line,4}{own.MassKg,7:0.##}{own.AtMm,7:0.#}{own.ReadAtMm,7:0.#} {Where(own),-20}{Unit(own),2}{own.Read,7:0.00}{own.Before,8:0.00}{own.After,8:0.00}{own.Residual,7:+0.0;-0.0;0.0}{(own.LooksWrong ? "?" : "")}");
        o.WriteLine("  off by: read less predicted after, in standard deviations of the reading");
        o.WriteLine($"  their squares add up to {summary.ChiSquare:0.0}; about {summary.Readings.Count} is to be expected");
        NotesText.Write(streams, "What the readings leave open", summary.Remarks);
        NotesText.Write(streams, "How sure this is", summary.Notes);
        if (summary.SavedAs is string saved)
        {
            o.WriteLine();
            o.WriteLine($"Wrote {saved}, with the factors of {string.Join(" and ", summary.Factors.Where(own => own.Part is not StiffnessPart.Root).Select(own => BenchCalibration.NameOf(own.Part)))}.");
        }
    }

    private static string Where(ReadingSummary own) => own.Quantity is BenchQuantity.Twist ? "twist" : Choice.Of(own.ReadChord).Replace('-', ' ');

    private static string Unit(ReadingSummary own) => own.Quantity is BenchQuantity.Twist ? "°" : "mm";
}
