using System.Globalization;
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
        o.WriteLine($"  {"part",-12} {"lies",-8}{"layers",7}{"height",8}  {"hours",-16}{"plastic",7}{"filament",9}{"cost",7}");
        o.WriteLine($"  {"",-12} {"",-8}{"",7}{"mm",8}  {"(range)",-16}{"g",7}{"m",9}");
        foreach (PartPrintSummary part in summary.Parts)
        {
            // A long name has a line of its own.
            if (part.Name.Length > 12)
                o.WriteLine($"  {part.Name}");
            o.WriteLine($"  {(part.Name.Length > 12 ? "" : part.Name),-12} {Choice.Of(part.Attitude),-8}{part.Layers,7}{part.HeightMm,8:0.0}  {$"{Hours(part.Hours.Value)} ({Hours(part.Hours.Low)}-{Hours(part.Hours.High)})",-16}{part.PlasticGrams,7:0}{part.FilamentM,9:0.0}{part.FilamentCost,7:0.00}");
        }

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

    private static string Hours(double hours) => hours.ToString(hours < 100 ? "0.0" : "0", CultureInfo.InvariantCulture);
}
