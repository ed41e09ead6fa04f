using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;

namespace Finwright.Terminal;

/// <summary>Whether a fin bends, twists, opens or breaks, as plain text.</summary>
internal static class StrengthText
{
    private const string Missing = "-";

    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">The answer.</param>
    /// <param name="verdicts">The verdicts, worst first.</param>
    public static void Write(TextStreams streams, StrengthSummary summary, IReadOnlyList<Verdict> verdicts)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name);
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        foreach (Verdict verdict in verdicts)
            VerdictText.Write(streams, verdict);
        if (summary.LoadCases.Count > 0)
            WriteCases(o, summary);
        if (summary.LoadCases.FirstOrDefault(own => own.Case == Water.Sailing.LoadCaseKind.Overload) is { Stresses.Count: > 0 } overload)
            StressText.Write(o, overload.Stresses, overload.Joint);
        if (summary.FrequenciesInAirHz.Count > 0)
            WriteFrequencies(o, summary);
        if (summary.Root is { Torques.Count: > 0 } root)
            WriteTorques(streams, root);
        o.WriteLine();
        o.WriteLine("How sure this is");
        foreach (string assumption in summary.Assumptions)
            o.WriteLine("  " + Wrapping.Wrap(assumption, streams.Width, 4, 2));
    }

    private static void WriteCases(TextWriter o, StrengthSummary summary)
    {
        o.WriteLine();
        o.WriteLine("  load case           side   root     tip    of span  twist   leeway, °       side force");
        o.WriteLine("                  force,N    N·m      mm          %      °  stiff   bent   by bending, %");
        foreach (LoadedSummary own in summary.LoadCases)
        {
            BendSummary? tip = own.Along.Count > 0 ? own.Along[^1] : null;
            o.WriteLine($"  {Choice.Of(own.Case).Replace('-', ' '),-15}{own.SideForceN,8:0}{own.RootMomentNm,7:0}{Number(tip?.MidChordMm, "0.0"),8}{Number(own.DeflectionPercent, "0.0"),11}{Number(tip?.TwistDegrees, "0.0"),7}{Number(own.StiffLeewayDegrees, "0.0"),7}{Number(own.BentLeewayDegrees, "0.0"),7}{Number(own.SideForceChangePercent, "+0;-0;0"),17}{Remark(own)}");
        }

        o.WriteLine("  twist: positive when the trailing edge goes farther, which unloads the tip");
    }

    private static string Remark(LoadedSummary own) => own.Status switch
    {
        Assessment.Loaded.LoadedStatus.NotCarried => "  stalls first",
        Assessment.Loaded.LoadedStatus.NotSettled => "  not settled",
        Assessment.Loaded.LoadedStatus.NotSolved => "  not solved",
        Assessment.Loaded.LoadedStatus.BeyondRange => "  bends too far to tell",
        _ => "",
    };

    private static void WriteFrequencies(TextWriter o, StrengthSummary summary)
    {
        o.WriteLine();
        o.WriteLine($"  swings at       {string.Join(", ", summary.FrequenciesInAirHz.Select(hertz => $"{hertz:0}"))} Hz in air{(summary.FrequenciesInWaterHz.Count > 0 ? $"; {string.Join(", ", summary.FrequenciesInWaterHz.Select(hertz => $"{hertz:0}"))} Hz in water" : "")}");
    }

    private static void WriteTorques(TextStreams streams, RootSummary root)
    {
        streams.Out.WriteLine();
        streams.Out.WriteLine("  tightening, estimates; makers' data go before them");
        foreach (TorqueSummary own in root.Torques)
            streams.Out.WriteLine($"  {own.Bolt}: {Wrapping.Wrap(own.Reason, streams.Width, 4, own.Bolt.Length + 4)}");
    }

    private static string Number(double? value, string format) => value is double number ? (number + 0.0).ToString(format, CultureInfo.InvariantCulture) : Missing;
}
