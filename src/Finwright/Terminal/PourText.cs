using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;

namespace Finwright.Terminal;

/// <summary>How the parts are poured, as plain text.</summary>
internal static class PourText
{
    /// <summary>Writes the answer.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="summary">An answer with parts.</param>
    /// <param name="verdicts">The verdicts, worst first.</param>
    public static void Write(TextStreams streams, PourSummary summary, IReadOnlyList<Verdict> verdicts)
    {
        TextWriter o = streams.Out;
        o.WriteLine(summary.Name);
        o.WriteLine(Wrapping.Wrap(summary.Sentence, streams.Width));
        if (summary.Motion is { } motion)
            o.WriteLine(Wrapping.Wrap($"Pores of plate {motion.Plate} ({string.Join(", ", motion.Parts)}) from {motion.File}: it lays {motion.LaidMl:0.0} ml of plastic, planned {motion.PlannedMl:0.0} ml.", streams.Width));
        foreach (Verdict verdict in verdicts)
            VerdictText.Write(streams, verdict);
        foreach (PouredPartSummary part in summary.Parts)
            WritePart(streams, part);
        NotesText.Write(streams, summary.Notes);
    }

    private static void WritePart(TextStreams streams, PouredPartSummary part)
    {
        TextWriter o = streams.Out;
        o.WriteLine();
        o.WriteLine(part.Name);
        Say($"Pores {part.PoresMl.Value:0.0} ml ({part.PoresMl.Low:0.0} to {part.PoresMl.High:0.0}) of {part.CoreMl:0.0} ml inside walls; to mix {part.Need.TotalMl.Value:0} ml ({part.Need.TotalMl.Low:0} to {part.Need.TotalMl.High:0}), {part.Need.TotalGrams.Value:0} g: reservoirs {part.Need.ReservoirsMl:0} ml, losses {part.Need.LossesMl.Value:0} ml, shrinkage {part.Need.TopUpMl.Value:0} ml.");
        Say($"Hold it with the {part.Attitude}{(part.AttitudeFound ? " (found by the least air)" : "")}: {part.TrappedMl:0.0} ml of air stay, {part.TrappedPercent:0.0} % of the pores.");
        foreach (BubbleSummary bubble in part.Bubbles.Take(4))
            Say($"  bubble of {bubble.VolumeMl:0.00} ml, highest at {Place(bubble.Highest)}{(bubble.Closed ? "; no way to any vent" : "")}");
        if (part.Rocking is { } rocking)
            Say($"Rocked between {rocking.First} and {rocking.Second}: {rocking.TrappedMl:0.0} ml stay.");
        foreach (PortSummary port in part.Ports)
            Say($"{(port.Role == "feed" ? "Feed" : "Vent")} \"{port.Name}\" at {Place(port.AtCore)}, {port.DiameterMm:0.0} mm wide, drilled {port.DepthMm:0.0} mm into the core: opens both labyrinths at {port.OpensBothPercent:0} % of the places it may meet.");
        if (!part.PortsSuggested && part.Suggested.TrappedMl < part.TrappedMl)
            Say($"Better places held so: feed at {Place(part.Suggested.Feed)}; {(part.Suggested.Vents.Count == 1 ? "vent" : "vents")} at {string.Join("; ", part.Suggested.Vents.Select(Place))}: {part.Suggested.TrappedMl:0.0} ml stay.");
        if (part.FillMinutes is double minutes)
            Say($"The pores let it fill in {minutes:0.#} min at the head given; a full cup stays workable for {(part.CupLifeMinutes is double cup ? $"{cup:0} min" : "more than two days")} by its kinetics{(part.PotLifeMinutes is double sheet ? $", {sheet:0} min by its data sheet" : "")}.");
        o.WriteLine();
        o.WriteLine($"  {"cup",3}{"mix, g",9}{"resin, g",11}{"hardener, g",14}{"resin, ml",12}{"hardener, ml",15}{"to pour, ml",14}");
        foreach (BatchSummary batch in part.Batches)
            o.WriteLine($"  {batch.Number,3}{batch.MassGrams.Value,9:0.0}{Number(batch.ResinGrams),11}{Number(batch.HardenerGrams),14}{Number(batch.ResinMl),12}{Number(batch.HardenerMl),15}{batch.VolumeMl.Value,14:0.0}");

        void Say(string text) => o.WriteLine("  " + Wrapping.Wrap(text, streams.Width, 4, 2));
    }

    private static string Number(RangeSummary? range) => range is null ? "-" : $"{range.Value:0.0}";

    private static string Place(PlaceSummary place) => $"x {place.XMm:0}, y {place.YMm:0}, z {place.ZMm:0} mm";
}
