using Finwright.Assessment.Made;
using Finwright.Making.Cure;
using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Assessment.Verdicts;

/// <summary>Whether the cure melts its own print.</summary>
public static class CureVerdicts
{
    private const double Kelvin = 273.15, Hour = 3600;

    // A wall warmed to within this of its softening point gives under a finger (judgement).
    private const double SoftMargin = 5;

    // From here on epoxy yellows, smokes and cracks (common practice: 100 to 200 °C).
    private const double SmokingCelsius = 100, WarmCelsius = 80;

    private const string HowSure = "Range: rate from half to twice, cooling 30 % more or less. A cup test of your own resin narrows it (finwright resins fit). The resin's data sheet goes before it.";

    /// <summary>All verdicts, worst first.</summary>
    /// <param name="cured">The cure.</param>
    public static IReadOnlyList<Verdict> Of(FinCured cured)
    {
        ArgumentNullException.ThrowIfNull(cured);
        if (cured.Parts.Count == 0)
            return [];
        if (cured.Parts.FirstOrDefault(part => !part.IsWhole) is { } lost)
            return [WaterVerdicts.Unknown("softening", "walls stay below softening", WhySoft, $"The cure of the {lost.Name} could not be followed to its end.", "Change resin, thickness or cooling a little and try again.") with { Ground = "not-followed" }];
        return [.. ((Verdict?[])[Softening(cured), Edge(cured), Water(cured), Hardened(cured), Cup(cured), Reservoir(cured)]).OfType<Verdict>().OrderBy(verdict => verdict.State)];
    }

    private const string WhySoft = "A print that softens bends under its own weight and the resin's; the blade sets crooked, or the pour runs out.";

    private static Verdict Softening(FinCured cured)
    {
        PartCured worst = cured.Parts.MaxBy(part => part.Range(run => run.WallInside.Temperature).High)!;
        (double low, double high) = worst.Range(run => run.WallInside.Temperature);
        double nominal = worst.Band.Nominal.WallInside.Temperature, limit = cured.Softening;
        VerdictState state = nominal > limit ? VerdictState.Fails : high > limit - SoftMargin ? VerdictState.Tight : VerdictState.Holds;
        return new()
        {
            Code = "softening",
            Part = worst.Name,
            Ground = worst.Case.Bath is null ? "air" : "bath",
            Checked = $"walls of the {worst.Name} stay below softening",
            State = state,
            Value = new(nominal - Kelvin, "°C", 0),
            Limit = new(limit - Kelvin, "°C", 0),
            Uncertainty = new(Math.Max(high - nominal, nominal - low), "°C", 0),
            Certainty = Certainty.Derived,
            HowSure = HowSure,
            Found = $"The resin peaks at {worst.Band.Nominal.Resin.Temperature - Kelvin:0} °C after {Hours(worst.Band.Nominal.Resin.Time)}, the inside of the walls at {nominal - Kelvin:0} °C (range {low - Kelvin:0} to {high - Kelvin:0} °C), {Place(worst)}.",
            Why = WhySoft,
            Change = state == VerdictState.Holds ? "" : worst.Case.Bath is null
                ? "Stand it in a water bath (pour.cooling), pour it in stages, or use a slower resin."
                : "Cool the bath, pour in stages with time between, or use a slower resin.",
        };
    }

    private static Verdict Edge(FinCured cured)
    {
        PartCured worst = cured.Parts.MaxBy(part => part.Band.Sensitivity)!;
        double change = worst.Band.Sensitivity * CureBand.SmallChange;
        return new()
        {
            Code = "near-critical",
            Part = worst.Name,
            Checked = $"a little less cooling changes little: {worst.Name}",
            State = worst.Band.IsNearCritical ? VerdictState.Tight : VerdictState.Holds,
            Value = new(change, "K for 5 %", 1),
            Limit = new(CureBand.CriticalSensitivity * CureBand.SmallChange, "K for 5 %", 1),
            Certainty = Certainty.Derived,
            HowSure = "Found on a coarser grid by changing rate and cooling by 5 % each way. The limit is judgement.",
            Found = worst.Band.IsNearCritical
                ? $"Five per cent less cooling or a resin five per cent faster moves the peak by {change:0.0} K: this pour stands near the edge where heat feeds itself."
                : $"Five per cent less cooling or a resin five per cent faster moves the peak by {change:0.0} K.",
            Why = "Near the edge no forecast is worth much: a warm day decides between a warm part and a molten one.",
            Change = worst.Band.IsNearCritical ? "Move away from the edge: colder water, thinner pours in stages, a slower resin." : "",
        };
    }

    private static Verdict? Water(FinCured cured)
    {
        if (cured.Parts.Where(part => part.Water is not null).MaxBy(part => part.Water!.Status == WaterTimeStatus.NotEnough ? double.PositiveInfinity : part.Water.Duration) is not { Water: { } water, Case.Bath: { } bath } worst)
            return null;
        VerdictState state = water.Status switch
        {
            WaterTimeStatus.NotEnough => VerdictState.Fails,
            WaterTimeStatus.Found when water.Duration > bath.Duration => VerdictState.Fails,
            WaterTimeStatus.Found when water.Duration > 0.7 * bath.Duration => VerdictState.Tight,
            _ => VerdictState.Holds,
        };
        return new()
        {
            Code = "water-time",
            Part = worst.Name,
            Ground = water.Status == WaterTimeStatus.NotEnough ? "not-enough" : "longer",
            Checked = $"time in the bath: {worst.Name}",
            State = state,
            Value = water.Status == WaterTimeStatus.NotEnough ? null : new(bath.Duration / Hour, "h", 1),
            Limit = water.Status == WaterTimeStatus.NotEnough ? null : new(water.Duration / Hour, "h", 1),
            MustStayAbove = true,
            Certainty = Certainty.Derived,
            HowSure = "At the warm end of the range, on a coarser grid; the bath is taken to keep its temperature.",
            Found = water.Status switch
            {
                WaterTimeStatus.NotNeeded => $"No water is needed: even in air, at the warm end of the range, the resin stays at {water.PeakWithout - Kelvin:0} °C.",
                WaterTimeStatus.Found => $"Taken out after {Hours(water.Duration)} or later it stays below softening; without water it would reach {water.PeakWithout - Kelvin:0} °C at the warm end of the range.",
                _ => $"Even all the time in this water the resin reaches {water.Peak - Kelvin:0} °C at the warm end of the range.",
            },
            Why = "Taken out too early, the rest of the heat comes out in air, where it cannot leave.",
            Change = state switch
            {
                VerdictState.Holds => "",
                _ when water.Status == WaterTimeStatus.NotEnough => "Colder water, thinner pours in stages, or a slower resin.",
                _ => $"Leave it in the bath for {Hours(water.Duration)} at least (pour.bath_hours).",
            },
        };
    }

    private static Verdict Hardened(FinCured cured)
    {
        PartCured worst = cured.Parts.MaxBy(part => part.Band.Nominal.Handling)!;
        double time = worst.Band.Nominal.Handling, followed = worst.Case.Duration;
        bool done = double.IsFinite(time);
        string range = double.IsFinite(worst.Band.Slow.Handling) ? $"{Hours(worst.Band.Fast.Handling)} to {Hours(worst.Band.Slow.Handling)}" : $"{(double.IsFinite(worst.Band.Fast.Handling) ? Hours(worst.Band.Fast.Handling) : Hours(followed))} or longer";
        return new()
        {
            Code = "handling",
            Part = worst.Name,
            Checked = $"hard enough to handle: {worst.Name}",
            State = done ? VerdictState.Holds : VerdictState.Tight,
            Value = done ? new(time / Hour, "h", 0) : null,
            Certainty = Certainty.Derived,
            HowSure = HowSure,
            Found = done
                ? $"All of it is past gel and firm after {Hours(time)} (range {range}). Sand a day later; full strength takes five to seven days."
                : $"After {Hours(followed)} it is {100 * worst.Band.Nominal.LeastConversion:0} % reacted at the coldest place and not firm yet.",
            Why = "Resin moved before it has set shifts and cracks; cold resin may never harden fully.",
            Change = done ? "" : "Take it out of the cold water once the warmth has passed, and keep it at 20 to 25 °C for days.",
        };
    }

    private static Verdict Cup(FinCured cured) => OfLump(cured.Cup, "cup", "the mixing cup left standing", cured, "Mix less at a time (pour.cup_grams), pour it at once, spread leftovers thin on a metal tray outdoors.");

    private static Verdict? Reservoir(FinCured cured) => cured.Reservoir is { } run ? OfLump(run, "reservoir", "the resin in tube and funnel", cured, "Keep less resin standing on the ports (pour.reservoir_ml), in a thin tube.") : null;

    private static Verdict OfLump(CupRun run, string code, string what, FinCured cured, string change)
    {
        double peak = run.Peak.Temperature - Kelvin;
        VerdictState state = run.Status != CureStatus.Done ? VerdictState.NotKnown : WaterVerdicts.Below(peak, WarmCelsius, SmokingCelsius);
        return new()
        {
            Code = code,
            Checked = what,
            State = state == VerdictState.Fails ? VerdictState.Tight : state,
            Value = new(peak, "°C", 0),
            Limit = new(SmokingCelsius, "°C", 0),
            Certainty = Certainty.Judgement,
            HowSure = "One temperature for all of it, slim cup in still air: good to some tens of degrees.",
            Found = $"Left standing it reaches {peak:0} °C after {Hours(run.Peak.Time)}{(peak > SmokingCelsius ? ": it smokes, cracks, and can melt its cup" : "")}.",
            Why = "A mass of mixed resin heats itself; the fumes are harmful, and the cup can burn you.",
            Change = state == VerdictState.Holds ? "" : change,
        };
    }

    private static string Hours(double seconds) => seconds < 2 * Hour ? $"{seconds / 60:0} min" : $"{seconds / Hour:0.#} h";

    private static string Place(PartCured part)
    {
        Geometry.Point3 place = part.HottestPlace;
        return part.Part.IsImported
            ? $"at x {1e3 * place.X:0}, y {1e3 * place.Y:0}, z {1e3 * place.Z:0} mm"
            : $"{1e3 * Math.Abs(place.Y):0} mm {(place.Y >= 0 ? "below" : "above")} the hull plane";
    }
}
