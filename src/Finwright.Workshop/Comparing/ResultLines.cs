using Finwright.Assessment;
using Finwright.Assessment.Afloat;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;
using Finwright.Making.Pores;
using Finwright.Numerics;

namespace Finwright.Workshop.Comparing;

/// <summary>Gathers the lines of a result, group by group. Numbers are those of the files of a pack; a name says what, its key stays.</summary>
internal sealed class ResultLines
{
    // Numbers of the summaries are all that is needed of the program's version here.
    private const string AnyVersion = "";

    private const double Kelvin = 273.15;

    // What stands in the reservoirs at the end is cut off or runs back: so much of it is not known (judgement).
    private const double ReservoirSpread = 1.0 / 3;

    private readonly List<ResultLine> _lines = [];
    private readonly HashSet<string> _keys = new(StringComparer.Ordinal);

    /// <summary>The lines so far.</summary>
    public IReadOnlyList<ResultLine> Lines => _lines;

    /// <summary>The groups so far.</summary>
    public IReadOnlyList<ResultGroup> Groups => [.. _lines.Select(line => line.Group).Distinct()];

    /// <summary>Adds every result.</summary>
    public void AddAll(AssessmentResult result)
    {
        MakingResult made = MakingResult.Of(result);
        Shape(FinSummary.Of(result, AnyVersion));
        if (result.Afloat is not null)
            Water(result, WaterSummary.Of(result, AnyVersion));
        if (result.Loaded is not null)
            Strength(StrengthSummary.Of(result, AnyVersion));
        if (result.Printed is { } printed)
            Print(printed, PrintSummary.Of(made, AnyVersion));
        if (result.Poured is not null && PourSummary.Of(made, AnyVersion) is { Total: not null } pour)
            Pour(pour);
        if (result.Cured is { } cured)
            Cure(cured, CureSummary.Of(made, AnyVersion));
        if (result.Plan is not null)
            Plan(result, PlanSummary.Of(made, AnyVersion));
        if (result.Bench is { Prediction: not null })
            Bench(BenchSummary.Of(result, AnyVersion));
        foreach (Verdict verdict in AllVerdicts.Of(result))
            Judged(verdict);
    }

    private void Shape(FinSummary fin)
    {
        if (fin.Planform is not { } planform)
            return;
        const ResultGroup group = ResultGroup.Shape;
        Number(group, "shape.span", "span", planform.SpanMm, "mm", 1);
        Number(group, "shape.area", "area", planform.AreaCm2, "cm²", 1);
        Number(group, "shape.aspect_ratio", "aspect ratio", planform.AspectRatio, "", 2);
        Number(group, "shape.mean_chord", "mean chord", planform.MeanChordMm, "mm", 1);
        Number(group, "shape.aerodynamic_chord", "mean aerodynamic chord", planform.MeanAerodynamicChordMm, "mm", 1);
        Number(group, "shape.area_depth", "middle of area, depth", planform.CentroidDepthMm, "mm", 1);
        Number(group, "shape.area_aft", "middle of area, aft of the root quarter chord", planform.CentroidAftMm, "mm", 1);
        Number(group, "shape.rake", "rake", planform.RakeDegrees, "°", 1);
        Number(group, "shape.leading_edge_sweep", "sweep of the leading edge at mid-span", planform.LeadingEdgeSweepDegrees, "°", 1);
        foreach ((int station, string key, string where) in (ReadOnlySpan<(int, string, string)>)[(0, "root", "at the root"), (5, "half", "at half span"), (9, "tip", "at 90 % of the span")])
        {
            StationSummary own = fin.Stations[station];
            Number(group, $"shape.{key}.chord", $"chord {where}", own.ChordMm, "mm", 1);
            Number(group, $"shape.{key}.thickness", $"thickness {where}", own.ThicknessMm, "mm", 1);
            Number(group, $"shape.{key}.thickness_share", $"thickness over chord {where}", own.ThicknessPercent, "%", 1);
            Number(group, $"shape.{key}.twist", $"twist {where}", own.TwistDegrees, "°", 1);
        }

        Number(group, "shape.volume", "volume of blade and flange", fin.PlainBladeVolumeCm3, "cm³", 1);
        Number(group, "shape.parts_volume", "volume of the parts", fin.PartsVolumeCm3, "cm³", 1);
    }

    private void Water(AssessmentResult result, WaterSummary water)
    {
        const ResultGroup group = ResultGroup.Water;
        foreach (LoadCaseSummary own in water.LoadCases.Where(own => own.Status is not null))
        {
            string key = $"water.{Key(own.Case)}", when = CaseWords.When(own.Case);
            Range(group, $"{key}.side_force", $"side force {when}", own.SideForceN, own.SideForceLowN, own.SideForceHighN, "N", 0);
            (double? low, double? high) = (own.UnderMirror?.LeewayDegrees, own.UnderBareSurface?.LeewayDegrees);
            bool rises = low <= high;
            Range(group, $"{key}.leeway", $"leeway {when}", own.LeewayDegrees, rises ? low : high, rises ? high : low, "°", 2);
            Number(group, $"{key}.lift", $"lift coefficient {when}", own.CL, "", 3);
            Number(group, $"{key}.drag", $"drag {when}", own.Drag?.TotalN, "N", 1);
            Number(group, $"{key}.induced_drag", $"induced drag {when}", own.Drag?.InducedN, "N", 1);
            Number(group, $"{key}.section_drag", $"drag of the sections {when}", own.Drag?.SectionN, "N", 1);
            Number(group, $"{key}.effort_depth", $"depth of the load {when}", own.CentreOfEffortDepthMm, "mm", 0);
            Number(group, $"{key}.effort_from_box", $"load aft of the middle of the box {when}", own.CentreOfEffortFromBoxMm, "mm", 0);
            Number(group, $"{key}.stall_leeway", $"leeway where stall starts {when}", own.StallOnset?.LeewayDegrees, "°", 1);
            Number(group, $"{key}.stall_force", $"side force where stall starts {when}", own.StallOnset?.SideForceN, "N", 0);
            Number(group, $"{key}.greatest_force", $"greatest side force {when}", own.GreatestSideForceN, "N", 0);
            Number(group, $"{key}.share_of_stall", $"share of stall {when}", own.ShareOfStall, "", 2);
        }

        if (result.Afloat?[Finwright.Water.Sailing.LoadCaseKind.Cruise] is CaseAfloat { IsCarried: true } cruise)
            Number(group, "water.cruise.lift_over_drag", "side force over drag at cruise", Math.Abs(cruise.UnderHull.Result.SideForce) / cruise.UnderHull.Result.Drag.Total, "", 1);
    }

    private void Strength(StrengthSummary strength)
    {
        const ResultGroup group = ResultGroup.Strength;
        foreach (LoadedSummary own in strength.LoadCases)
        {
            string key = $"strength.{Key(own.Case)}", when = CaseWords.When(own.Case);
            Number(group, $"{key}.root_moment", $"bending moment at the root {when}", own.RootMomentNm, "N m", 1);
            BendSummary? tip = own.Along.Count > 0 ? own.Along[^1] : null;
            Number(group, $"{key}.tip_deflection", $"deflection of the tip {when}", tip?.MidChordMm, "mm", 1);
            Number(group, $"{key}.tip_twist", $"twist of the tip {when}", tip?.TwistDegrees, "°", 2);
            Number(group, $"{key}.bent_leeway", $"leeway of the bent fin {when}", own.BentLeewayDegrees, "°", 2);
            Number(group, $"{key}.grip_lost", $"change of side force by bending {when}", own.SideForceChangePercent, "%", 1);
            StressSummary? weakest = own.Stresses.Where(stress => stress.Reserve is not null).MinBy(stress => stress.Reserve);
            Number(group, $"{key}.reserve", $"load may grow before something gives {when}", weakest?.Reserve, "times", 2);
            Said(group, $"{key}.weakest", $"what gives first {when}", weakest?.Name);
            Number(group, $"{key}.joint_contact", $"share of the joint in contact {when}", own.Joint is { } joint ? 100 * joint.ContactShare : null, "%", 0);
        }

        Number(group, "strength.grounding.bearable_speed", "speed of a strike that is borne", strength.Grounding?.BearableSpeedMPerS, "m/s", 2);
        Number(group, "strength.divergence", "speed at which the blade would twist without end", strength.DivergenceSpeedMPerS, "m/s", 1);
        foreach ((int i, double frequency) in strength.FrequenciesInWaterHz.Index())
            Number(group, $"strength.wet_frequency_{i + 1}", $"frequency {i + 1} in water", frequency, "Hz", 0);
        if (strength.Sections.Count > 0)
        {
            Number(group, "strength.root_bending", "bending rigidity of the root section", strength.Sections[0].BendingRigidityNm2, "N m²", 1);
            Number(group, "strength.root_torsion", "torsional rigidity of the root section", strength.Sections[0].TorsionRigidityNm2, "N m²", 1);
        }
    }

    private void Print(FinPrinted printed, PrintSummary print)
    {
        const ResultGroup group = ResultGroup.Print;
        PartPrinted[] own = [.. printed.Parts.Where(part => !part.Part.IsGauge)];
        Range(group, ResultKeys.Plastic, "plastic of the parts", Plastic(own), "g", 0);
        Ranged[] plates = [.. printed.Plates.Where(plate => !plate.IsGauge).Select(plate => plate.Time.Seconds.Times(1.0 / 3600))];
        Range(group, ResultKeys.PrintTime, "time on the printer", new(plates.Sum(time => time.Value), plates.Sum(time => time.Low), plates.Sum(time => time.High)), "h", 1);
        Number(group, "print.plates", "plates", print.Plates.Count, "", 0);
        Number(group, "print.stops", "stops", printed.Plates.Sum(plate => plate.Stops.Count), "", 0);
        foreach (PartPrintSummary part in print.Parts.Where(part => own.Any(one => one.Part.Name == part.Name)))
        {
            Range(group, ResultKeys.PlasticOf(part.Name), $"plastic of the {part.Name}", Plastic([own.First(one => one.Part.Name == part.Name)]), "g", 1);
            Range(group, ResultKeys.TimeOf(part.Name), $"time of the {part.Name} by itself", part.Hours.Value, part.Hours.Low, part.Hours.High, "h", 1);
            Number(group, $"print.{part.Name}.height", $"height of the {part.Name} on the bed", part.HeightMm, "mm", 1);
            Number(group, $"print.{part.Name}.overhang", $"overhang of the {part.Name}", part.OverhangCm2, "cm²", 1);
        }
    }

    // What a filament that is not quite 1.75 mm thick lays, and an infill that is not quite as set.
    private static Ranged Plastic(IReadOnlyList<PartPrinted> parts)
    {
        double mass = 1e3 * parts.Sum(part => part.Time.Mass), infill = 1e3 * parts.Sum(part => part.Time.Volume > 0 ? part.Time.Mass * part.Time.InfillVolume / part.Time.Volume : 0);
        double spread = double.Hypot(PourVolume.PlasticSpread * mass, PourVolume.InfillSpread * infill);
        return new(mass, mass - spread, mass + spread);
    }

    private void Pour(PourSummary pour)
    {
        const ResultGroup group = ResultGroup.Pour;
        PourNeedSummary total = pour.Total!;
        Range(group, ResultKeys.Pores, "room for resin", total.PoresMl.Value, total.PoresMl.Low, total.PoresMl.High, "ml", 0);
        Ranged inFin = new(total.PoresMl.Value + total.TopUpMl.Value, total.PoresMl.Low + total.TopUpMl.Low, total.PoresMl.High + total.TopUpMl.High);
        Range(group, ResultKeys.ResinInFin, "resin that stays in the fin", inFin, "ml", 0);
        double poured = inFin.Value + total.ReservoirsMl, spread = double.Hypot((inFin.High - inFin.Low) / 2, ReservoirSpread * total.ReservoirsMl);
        Range(group, ResultKeys.ResinPoured, "resin poured, reservoirs included", new(poured, poured - spread, poured + spread), "ml", 0);
        Range(group, "pour.mix", "resin to mix", total.TotalGrams.Value, total.TotalGrams.Low, total.TotalGrams.High, "g", 0);
        foreach (PouredPartSummary part in pour.Parts)
        {
            string key = $"pour.{part.Name}", of = $"of the {part.Name}";
            Range(group, $"{key}.pores", $"room for resin {of}", part.PoresMl.Value, part.PoresMl.Low, part.PoresMl.High, "ml", 0);
            Number(group, $"{key}.air", $"air that stays in the {part.Name}", part.TrappedMl, "ml", 1);
            Number(group, $"{key}.fill_time", $"shortest time to fill the {part.Name}", part.FillMinutes, "min", 1);
            Number(group, $"{key}.cups", $"cups for the {part.Name}", part.Batches.Count, "", 0);
            Said(group, $"{key}.held", $"how the {part.Name} is held", part.Attitude);
        }
    }

    private void Cure(FinCured cured, CureSummary cure)
    {
        const ResultGroup group = ResultGroup.Cure;
        if (cured.Parts.MaxBy(part => part.Range(run => run.Resin.Temperature).High) is not { } warmest)
            return;
        (double low, double high) = warmest.Range(run => run.Resin.Temperature);
        Range(group, ResultKeys.Peak, "highest temperature of the resin", warmest.Band.Nominal.Resin.Temperature - Kelvin, low - Kelvin, high - Kelvin, "°C", 0);
        foreach ((CuredPartSummary part, PartCured own) in cure.Parts.Zip(cured.Parts))
        {
            string key = $"cure.{part.Name}";
            (double least, double most) = own.Range(run => run.Resin.Temperature);
            Range(group, $"{key}.peak", $"peak of the {part.Name}", part.Nominal.PeakResinCelsius, least - Kelvin, most - Kelvin, "°C", 0);
            (double coolest, double hottest) = own.Range(run => run.WallInside.Temperature);
            Range(group, $"{key}.wall_peak", $"hottest wall of the {part.Name}", part.Nominal.PeakWallCelsius, coolest - Kelvin, hottest - Kelvin, "°C", 0);
            Number(group, $"{key}.peak_time", $"time of the peak of the {part.Name}", part.Nominal.PeakHours, "h", 1);
            Number(group, $"{key}.gel", $"gel of the {part.Name}", part.Nominal.GelHours, "h", 1);
            Number(group, $"{key}.handling", $"the {part.Name} can be handled after", part.Nominal.HandlingHours, "h", 1);
            Number(group, $"{key}.water", $"shortest time of the {part.Name} in water", part.Water?.Hours, "h", 1);
        }
    }

    private void Plan(AssessmentResult result, PlanSummary plan)
    {
        const ResultGroup group = ResultGroup.Plan;
        Mass(result);
        string currency = plan.Currency ?? "";
        Number(group, ResultKeys.Cost, "cost of what the fin takes", plan.CostOfFin, currency, 2);
        Number(group, "plan.cost_to_buy", "cost when nothing is at hand", plan.CostToBuy, currency, 2);
        Number(group, "plan.cost_of_spare", "cost of a spare copy", plan.CostOfSpareCopy, currency, 2);
        Number(group, "plan.hands_on", "time someone is busy", plan.HandsOnMinutes / 60, "h", 1);
        Number(group, "plan.elapsed", "from the first print to sailing", plan.ElapsedHours / 24, "days", 1);
    }

    private void Mass(AssessmentResult result)
    {
        const ResultGroup group = ResultGroup.Plan;
        if (result is not { Printed: { } printed, Poured: { } poured } || EmbeddedMass.Of(result) is not { } hardware)
            return;
        Ranged plastic = Plastic([.. printed.Parts.Where(part => !part.Part.IsGauge)]);
        // What shrinks is topped up, and weighs as it did when it was liquid.
        Ranged resin = new(Resin(need => need.Value), Resin(need => need.Low), Resin(need => need.High));
        hardware = hardware.Times(1e3);
        Range(group, ResultKeys.ResinMass, "mass of resin in the fin", resin, "g", 0);
        Range(group, ResultKeys.HardwareMass, "mass of rods, nuts and strip in the fin, about", hardware, "g", 0);
        Range(group, ResultKeys.FinMass, "mass of the finished fin", FinMass.Of(plastic, resin, hardware), "g", 0);

        double Resin(Func<Ranged, double> end) => 1e3 * poured.Resin.Density * poured.Parts.Sum(part => end(part.Need.Pores) + end(part.Need.TopUp));
    }

    private void Bench(BenchSummary bench)
    {
        const ResultGroup group = ResultGroup.Bench;
        (BenchDeflections middle, BenchDeflections low, BenchDeflections high) = (bench.DeflectionMm!, bench.DeflectionLowMm!, bench.DeflectionHighMm!);
        Number(group, "bench.mass", "weight hung", bench.MassKg, "kg", 1);
        Number(group, "bench.at", "where it hangs, below the hull", bench.AtMm, "mm", 0);
        foreach ((string key, string where, Func<BenchDeflections, EdgeDeflections> of) in (ReadOnlySpan<(string, string, Func<BenchDeflections, EdgeDeflections>)>)[("load", "at the weight", b => b.LoadStation), ("tip", "at the tip", b => b.Tip)])
        {
            Range(group, $"bench.{key}.leading_edge", $"deflection {where}, leading edge", of(middle).LeadingEdge, of(low).LeadingEdge, of(high).LeadingEdge, "mm", 2);
            Range(group, $"bench.{key}.mid_chord", $"deflection {where}, mid-chord", of(middle).MidChord, of(low).MidChord, of(high).MidChord, "mm", 2);
            Range(group, $"bench.{key}.trailing_edge", $"deflection {where}, trailing edge", of(middle).TrailingEdge, of(low).TrailingEdge, of(high).TrailingEdge, "mm", 2);
        }

        Range(group, "bench.tip.twist", "twist of the tip", bench.TwistDegrees, bench.TwistLowDegrees, bench.TwistHighDegrees, "°", 2);
        BenchNumbers numbers = bench.Prediction!;
        Range(group, "bench.push", "push at 40 % of the span", numbers.PushStiffnessNPerMm, numbers.PushStiffnessLowNPerMm, numbers.PushStiffnessHighNPerMm, "N/mm", 1);
        Number(group, "bench.reserve", "weight may grow before the first crack", numbers.FirstCrackReserve, "times", 1);
        Number(group, "bench.blade_mass", "mass of the blade below the hull", numbers.BladeMassG, "g", 0);
        foreach ((int i, double frequency) in numbers.FrequenciesInAirHz.Index())
            Number(group, $"bench.frequency_{i + 1}", $"frequency {i + 1} in air", frequency, "Hz", 0);
    }

    private void Judged(Verdict verdict)
    {
        string key = $"verdict.{verdict.Code}{(verdict.Part.Length > 0 ? $".{verdict.Part}" : "")}{(verdict.Case is { } own ? $".{Key(own)}" : "")}";
        double? off = verdict.Uncertainty?.Value;
        Add(new(
            key, ResultGroup.Verdicts, verdict.Checked, Finite(verdict.Value?.Value), StateWords.Word(verdict.State), verdict.Value?.Unit ?? verdict.Limit?.Unit ?? "",
            Finite(verdict.Value?.Value - off), Finite(verdict.Value?.Value + off), verdict.Value?.Decimals ?? 0));
    }

    private void Number(ResultGroup group, string key, string name, double? value, string unit, int decimals) => Range(group, key, name, value, null, null, unit, decimals);

    private void Range(ResultGroup group, string key, string name, Ranged range, string unit, int decimals) => Range(group, key, name, range.Value, range.Low, range.High, unit, decimals);

    private void Range(ResultGroup group, string key, string name, double? value, double? low, double? high, string unit, int decimals)
    {
        if (Finite(value) is double known)
            Add(new(key, group, name, Rounded.Digits(known), null, unit, Finite(low) is double least ? Rounded.Digits(least) : null, Finite(high) is double most ? Rounded.Digits(most) : null, decimals));
    }

    private void Said(ResultGroup group, string key, string name, string? word)
    {
        if (word is { Length: > 0 })
            Add(new(key, group, name, null, word, "", null, null, 0));
    }

    private void Add(ResultLine line)
    {
        // Two of one name are told apart by their order.
        string key = line.Key;
        for (int number = 2; !_keys.Add(key); number++)
            key = $"{line.Key}#{number}";
        _lines.Add(line with { Key = key });
    }

    private static double? Finite(double? value) => value is double number && double.IsFinite(number) ? number : null;

    private static string Key<T>(T word)
        where T : struct, Enum => System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(word.ToString());
}
