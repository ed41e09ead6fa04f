using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;

namespace Finwright.Terminal;

/// <summary>How the parts are printed, as plain text.</summary>
internal static class PrintText
{
    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">An answer with parts.</param>
    /// <param name="verdicts">The verdicts, worst first.</param>
    public static void Write(TextStreams streams, PrintSummary summary, IReadOnlyList<Verdict> verdicts)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name);
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        foreach (Verdict verdict in verdicts)
            VerdictText.Write(streams, verdict);
        o.WriteLine();
        o.WriteLine("  part                  lies      layers  height   hours        plastic  filament   cost");
        o.WriteLine("                                             mm  (range)              g         m");
        foreach (PartPrintSummary part in summary.Parts)
            o.WriteLine($"  {part.Name,-20}  {Choice.Of(part.Attitude),-9}{part.Layers,7}{part.HeightMm,8:0.0}  {$"{part.Hours.Value:0.0} ({part.Hours.Low:0.0}-{part.Hours.High:0.0})",-14}{part.PlasticGrams,6:0}{part.FilamentM,10:0.0}{part.FilamentCost,7:0.00}");
        foreach (PlatePrintSummary plate in summary.Plates)
        {
            o.WriteLine();
            o.WriteLine(Wrapping.Wrap($"Plate {plate.Plate}: {string.Join(", ", plate.Parts)}; {plate.Hours.Value:0.0} h ({plate.Hours.Low:0.0} to {plate.Hours.High:0.0}), {plate.PlasticGrams:0} g.", streams.Width, 4));
            if (plate.Stops.Count == 0)
                o.WriteLine("  No stops.");
            foreach (StopSummary stop in plate.Stops)
                o.WriteLine("  " + Wrapping.Wrap($"Stop before layer {stop.BeforeLayer}, at {stop.AtHeightMm:0.00} mm: {string.Join("; ", stop.Items.Select(item => $"{item.Item} (room above it {item.ClearanceMm:0.00} mm)"))}.", streams.Width, 4, 2));
        }

        foreach (PartPrintSummary part in summary.Parts.Where(part => part.Advice.Count > 0 || part.WithoutStop.Count > 0))
        {
            o.WriteLine();
            o.WriteLine($"{part.Name}");
            foreach (string item in part.WithoutStop)
                o.WriteLine("  " + Wrapping.Wrap($"{item}: its pocket stays open, so it goes in after the print.", streams.Width, 4, 2));
            foreach (string word in part.Advice)
                o.WriteLine("  " + Wrapping.Wrap(word, streams.Width, 4, 2));
            foreach (OrientationSummary way in part.Orientations.Where(way => way.Rank <= 3))
                o.WriteLine("  " + Wrapping.Wrap($"{way.Rank}. {Choice.Of(way.Attitude)}: {way.Reason}", streams.Width, 5, 2));
        }

        NotesText.Write(streams, summary.Notes);
    }
}
