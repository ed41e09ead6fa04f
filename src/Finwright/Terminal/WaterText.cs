using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;

namespace Finwright.Terminal;

/// <summary>What a fin does when it sails, as plain text: a sentence, the verdicts worst first, a table of the load cases, how sure it is.</summary>
internal static class WaterText
{
    private const string Missing = "-";

    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">The answer.</param>
    /// <param name="verdicts">The verdicts, worst first.</param>
    /// <param name="showsSweep">Whether the sweep was asked for.</param>
    public static void Write(TextStreams streams, WaterSummary summary, IReadOnlyList<Verdict> verdicts, bool showsSweep)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name);
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        foreach (Verdict verdict in verdicts)
            VerdictText.Write(streams, verdict);
        if (summary.LoadCases.Any(own => own.Status is not null))
            WriteCases(o, summary);
        if (showsSweep)
            WriteSweep(o, summary.Sweep);
        if (summary.RulesOfThumb.Count > 0)
            WriteRules(o, summary);
        WriteHowSure(streams, summary);
    }

    private static void WriteCases(TextWriter o, WaterSummary summary)
    {
        o.WriteLine();
        o.WriteLine("  load case        speed    side  leeway   drag  load acts      stalls at   used");
        o.WriteLine("                     m/s force,N       °      N  mm deep  aft   N      °       %");
        foreach (LoadCaseSummary own in summary.LoadCases.Where(own => own.Status is not null))
        {
            o.WriteLine($"  {Choice.Of(own.Case).Replace('-', ' '),-15}{own.SpeedMPerS,7:0.#}{own.SideForceN,8:0}{Number(own.LeewayDegrees, "0.0"),8}{Number(own.Drag?.TotalN, "0"),7}"
                + $"{Number(own.CentreOfEffortDepthMm, "0"),9}{Number(own.CentreOfEffortFromBoxMm, "0"),5}{Number(own.StallOnset?.SideForceN, "0"),6}{Number(own.StallOnset?.LeewayDegrees, "0.0"),6}{Number(100 * own.ShareOfStall, "0"),7}");
        }

        o.WriteLine("  aft: mm behind the middle of the box; used: of the force at which it stalls");
        o.WriteLine();
        o.WriteLine("  drag, N          induced  section  tip and edge  root  total   side force/drag");
        foreach (LoadCaseSummary own in summary.LoadCases.Where(own => own.Drag is not null))
        {
            DragSummary drag = own.Drag!;
            o.WriteLine($"  {Choice.Of(own.Case).Replace('-', ' '),-15}{drag.InducedN,9:0}{drag.SectionN,9:0}{drag.SeparationN,14:0}{drag.JunctionN + drag.SprayN,6:0}{drag.TotalN,7:0}{own.SideForceN / drag.TotalN,14:0.0}");
        }
    }

    private static void WriteSweep(TextWriter o, IReadOnlyList<SweepSummary> sweep)
    {
        o.WriteLine();
        double speed = sweep.Count > 0 ? sweep[0].SpeedMPerS : 0;
        o.WriteLine($"  leeway at {speed:0.#} m/s   side force     drag       CL       CD   load acts");
        o.WriteLine("                 °            N        N                    mm deep   mm aft");
        foreach (SweepSummary row in sweep)
        {
            string remark = row.Status == Water.Lifting.LiftingStatus.Stalled ? "  stalled" : row.SideForceN is null ? "  not converged" : "";
            o.WriteLine($"  {row.LeewayDegrees,16:0.##}{Number(row.SideForceN, "0"),13}{Number(row.DragN, "0.0"),9}{Number(row.CL, "0.000"),9}{Number(row.CD, "0.0000"),9}{Number(row.CentreOfEffortDepthMm, "0"),10}{Number(row.CentreOfEffortAftMm, "0"),9}{remark}");
        }
    }

    private static void WriteRules(TextWriter o, WaterSummary summary)
    {
        o.WriteLine();
        o.WriteLine("  rules of thumb, beside the computed answer");
        foreach (RuleOfThumbSummary rule in summary.RulesOfThumb)
        {
            string unit = rule.Unit == "cm2" ? "cm²" : rule.Unit;
            o.WriteLine($"  {rule.Name,-22}{rule.Low,6:0} to {rule.High:0} {unit}; this fin {rule.Value:0} {unit}, {Choice.Of(rule.Position)}");
        }
    }

    private static void WriteHowSure(TextStreams streams, WaterSummary summary)
    {
        TextWriter o = streams.Out;
        o.WriteLine();
        o.WriteLine("How sure this is");
        if (summary.Water is { PolarPoints: > 0 } water)
        {
            Line($"Sections: {water.PolarPointsConverged} of {water.PolarPoints} points converged; starboard {water.StarboardFinish}, port {water.PortFinish}, n = {water.CriticalAmplification:0.0}. Lift and drag are good to about 10 %, stall is the least sure.");
            Line("Hull: a flat plate as wide as the tail, on water that gives way. An endless hull and no hull at all are the bounds; see --json.");
        }

        if (summary.Smoothness is { } smooth)
            Line($"Sanding: at {smooth.SpeedMPerS:0.#} m/s roughness below {smooth.FrictionBelowUm:0} µm adds no friction; ridges across the flow above {smooth.RidgesTripAboveUm:0} µm, as of printed layers, end the laminar layer a tenth of the chord behind the nose.");
        foreach (LoadCaseSummary own in summary.LoadCases.Where(own => own.Status is not null))
            Line($"{Sentence(own.Case)}: {own.SideForceLowN:0} to {own.SideForceHighN:0} N is possible. {own.Derivation}");
        foreach (string note in summary.LoadCases.SelectMany(own => own.Notes).Distinct(StringComparer.Ordinal))
            Line(note);
        foreach (string assumption in summary.Assumptions)
            Line(assumption);

        void Line(string text) => o.WriteLine("  " + Wrapping.Wrap(text, streams.Width, 4, 2));
    }

    private static string Sentence(Water.Sailing.LoadCaseKind kind)
    {
        string words = Choice.Of(kind).Replace('-', ' ');
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    private static string Number(double? value, string format) =>
        value is double number ? (number + 0.0).ToString(format, CultureInfo.InvariantCulture) : Missing;
}
