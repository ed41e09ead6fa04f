using System.Globalization;
using Finwright.Assessment.Packing;

namespace Finwright.Terminal;

/// <summary>What a fin takes, costs, and how long it takes, as plain text.</summary>
internal static class PlanText
{
    private const int ItemColumns = 44;

    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">An answer with bill and schedule.</param>
    public static void Write(TextStreams streams, PlanSummary summary)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name);
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        o.WriteLine();
        o.WriteLine($"  {"it takes",-ItemColumns}{"amount",12}{"cost",9}{"to buy",10}  {summary.Currency}");
        foreach (BillLineSummary line in summary.Bill)
        {
            string[] item = Wrapping.Wrap(line.Item, ItemColumns, 2).Split('\n');
            foreach (string above in item[..^1])
                o.WriteLine($"  {above}");
            o.WriteLine($"  {item[^1],-ItemColumns}{$"{line.Amount.ToString("0.##", CultureInfo.InvariantCulture)} {Unit(line)}",12}{line.Cost,9:0.00}{line.CostToBuy,10:0.00}");
        }

        o.WriteLine($"  {"together",-ItemColumns}{"",12}{summary.CostOfFin,9:0.00}{summary.CostToBuy,10:0.00}");
        o.WriteLine($"  {"a spare copy",-ItemColumns}{"",12}{summary.CostOfSpareCopy,9:0.00}");
        o.WriteLine();
        o.WriteLine("  begins     takes   hands on   step");
        foreach (ScheduleStepSummary step in summary.Schedule)
        {
            string head = $"  day {step.StartHours / 24 + 1,-4:0.0}{Time(step.ElapsedHours),8}{$"{step.HandsOnMinutes:0} min",11}   ";
            o.WriteLine(head + Wrapping.Wrap(step.Step, streams.Width, head.Length, head.Length));
        }

        o.WriteLine();
        o.WriteLine("Take care");
        foreach (string caution in summary.Schedule.SelectMany(step => step.Cautions).Distinct(StringComparer.Ordinal))
            o.WriteLine("  " + Wrapping.Wrap(caution, streams.Width, 4, 2));
    }

    private static string Unit(BillLineSummary line) => line is { Unit: "pieces", Amount: 1 } ? "piece" : line.Unit;

    private static string Time(double hours) => hours < 2 ? $"{60 * hours:0} min" : hours < 48 ? $"{hours:0.0} h" : $"{hours / 24:0.0} d";
}
