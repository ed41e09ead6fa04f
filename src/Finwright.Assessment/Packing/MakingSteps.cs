using Finwright.Design;
using Finwright.Making.Quantities;

namespace Finwright.Assessment.Packing;

/// <summary>Print, pour and cure step by step with a fin's own numbers, each step with what to take care of.</summary>
internal static class MakingSteps
{
    /// <summary>How the plates are printed.</summary>
    public static IEnumerable<string> Print(FinDesign design, PrintSummary? print)
    {
        string way = $"{design.Print.Filament}, layers of {design.Print.LayerMm} mm, {design.Print.Walls} lines of {design.Print.LineWidthMm} mm in each wall, gyroid infill of {design.Print.InfillPercent} %. The parts lie as they should be printed";
        if (print is null || print.Plates.Count == 0)
        {
            yield return $"Print the plates: {way}. Pause where a nut must go in before the layers close over it.";
            yield break;
        }

        foreach (PlatePrintSummary plate in print.Plates.Where(plate => plate.Parts.Any(part => !IsGauge(design, part))))
        {
            string stops = plate.Stops.Count == 0
                ? "It needs no stop."
                : $"{(plate.Stops.Count == 1 ? "One stop" : $"{plate.Stops.Count} stops")}: {string.Join("; ", plate.Stops.Select(Stop))}. {Cautions.Nozzle}";
            yield return $"Print plate {plate.Plate} ({string.Join(", ", plate.Parts)}): {way}. About {plate.Hours.Value:0.0} h ({plate.Hours.Low:0.0} to {plate.Hours.High:0.0}), {plate.PlasticGrams:0} g. {stops}";
        }
    }

    /// <summary>How the parts are poured.</summary>
    public static IEnumerable<string> Pour(FinDesign design, PourSummary? pour)
    {
        if (pour is null || pour.Parts.Count == 0)
        {
            yield return "Seal, drill the ports at the dimples, pour the resin in small portions, and let each lose its heat before the next.";
            yield break;
        }

        yield return $"Seal the print, let it dry, look for leaks under water. {Cautions.Skin}";
        foreach (PouredPartSummary part in pour.Parts)
        {
            string where = part.PortsSuggested ? " It has no ports of its own; suggested places are in" : " See";
            string ports = string.Join("; ", part.Ports.Select(port => $"{(port.Name.StartsWith(port.Role, StringComparison.Ordinal) ? "" : port.Role + " ")}{port.Name}, {port.DiameterMm:0.#} mm wide and {port.DepthMm:0.0} mm into the core"));
            yield return $"Drill the ports of the {part.Name}: {ports}.{where} air-{part.Name.Replace(' ', '-')}.svg.";
            BatchSummary cup = part.Batches[0];
            string parts = cup is { ResinGrams: { } resin, HardenerGrams: { } hardener } ? $" ({resin.Value:0.0} g of resin, {hardener.Value:0.0} g of hardener)" : " (ratio by the data sheet)";
            string air = part.TrappedMl < 0.05 ? "All air finds its way out, if it is tilted, rocked and tapped while it fills." : $"{part.TrappedMl:0.0} ml of air would stay: tilt, rock and tap it while it fills.";
            yield return $"Pour the {part.Name}, held with the {part.Attitude}: {(part.Batches.Count == 1 ? "one cup" : $"{part.Batches.Count} cups, one after the other, each")} of {cup.MassGrams.Value:0.0} g{parts}, {part.Need.TotalMl.Value:0} ml in all. Never mix more than {design.Pour.CupGrams:0} g in a cup. Feed at the lowest port, slowly, until resin stands in the vents; top it up as it settles. {air}";
        }

        foreach (string caution in Cautions.Pour.Where(caution => caution != Cautions.Skin))
            yield return caution;
    }

    /// <summary>How the parts cure.</summary>
    public static IEnumerable<string> Cure(FinDesign design, CureSummary? cure)
    {
        if (cure is null || cure.Parts.Count == 0)
            yield break;
        string soft = cure.SofteningCelsius is double limit ? $" Never let it pass {limit:0} °C: there the walls soften." : "";
        foreach (CuredPartSummary part in cure.Parts)
        {
            string stand = part.Water is { } water
                ? $"Stand the {part.Name} in water of {design.Pour.BathCelsius:0.#} °C up to {design.Pour.BathLevelPercent:0} % of its height, vents above it, for {Math.Max(design.Pour.BathHours, water.Hours):0.#} h."
                : $"Let the {part.Name} cure in still air of {design.Pour.RoomCelsius:0.#} °C.";
            double[] peaks = [part.Slow.PeakResinCelsius, part.Nominal.PeakResinCelsius, part.Fast.PeakResinCelsius];
            string handle = part.Nominal.HandlingHours is double hours ? $"It can be handled after {hours:0} h{(part.Slow.HandlingHours is double late ? $" ({late:0} h if the resin is slow)" : "")}." : "When it can be handled is not known; wait until a scrap from the same cup is hard and glassy.";
            yield return $"{stand} Its resin should peak at {part.Nominal.PeakResinCelsius:0} °C after {part.Nominal.PeakHours:0.0} h (range {peaks.Min():0} to {peaks.Max():0} °C).{soft} {handle}";
        }

        foreach (string caution in Cautions.Cure.Where(caution => !Cautions.Pour.Contains(caution, StringComparer.Ordinal)))
            yield return caution;
    }

    private static string Stop(StopSummary stop) => $"before layer {stop.BeforeLayer}, at {stop.AtHeightMm:0.00} mm, for {string.Join(" and ", stop.Items.Select(item => item.Item))}";

    private static bool IsGauge(FinDesign design, string part) => design.Base.Gauge && part == "gauge";
}
