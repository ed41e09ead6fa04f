using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Making.Cure;
using Finwright.Making.Pores;
using Finwright.Making.Quantities;
using Finwright.Numerics;
using Finwright.Papers.Sheet;
using Finwright.Papers.Templates;

namespace Finwright.Page.RunSheets;

/// <summary>The steps of the day of the pour, and of the cure after it.</summary>
internal static class PourRun
{
    private const double Celsius = 273.15, Hour = 3600, Quarter = 900;

    // Points of a curve: finer than anybody reads a thermometer.
    private const int CurvePoints = 96;

    // Less air than this is none: a drop.
    private const double Drop = 0.05e-6;

    /// <summary>What to do when a part or cup gets too hot.</summary>
    /// <param name="result">The fin.</param>
    /// <param name="text">How it speaks.</param>
    public static RunDanger Danger(AssessmentResult result, RunText text) => new(
        result.Cured is { } cured ? text.Words.NeverAbove(text.Tongue.Temperature(cured.Softening)) : text.Words.NeverAboveUnknown,
        text.Words.Runaway(result.Design!.Pour.Cooling == Cooling.WaterBath));

    /// <summary>Lays the steps out.</summary>
    /// <param name="result">A fin whose pour was worked out.</param>
    /// <param name="poured">Its pour.</param>
    /// <param name="text">How it speaks.</param>
    public static IReadOnlyList<RunChapter> Of(AssessmentResult result, FinPoured poured, RunText text)
    {
        List<RunChapter> chapters = [Ready(result, poured, text)];
        foreach (PartPoured part in poured.Parts)
        {
            (RunChapter pour, string clock) = Pour(result, poured, part, text);
            chapters.Add(pour);
            chapters.Add(Cure(result, part, clock, text));
        }

        chapters.Add(new(text.T["Afterwards"], "",
        [
            text.Step(text.Words.Leftovers, Cautions.Waste),
            text.Step(text.Words.ClosePorts, Cautions.Edges),
            text.Step(text.Words.Harden, Cautions.Dust),
        ]));
        return chapters;
    }

    private static RunChapter Ready(AssessmentResult result, FinPoured poured, RunText text)
    {
        Pour pour = result.Design!.Pour;
        Batch[] cups = [.. poured.Parts.SelectMany(part => part.Batches.Batches)];
        List<RunStep> steps =
        [
            text.Step(text.T["Read the safety data sheets of resin and hardener before anything is opened"], text.T["They and the law of your place go before everything that stands here."], Cautions.Skin),
            text.Step(text.Words.LayOut),
            text.Step(text.Words.WarmResin(text.Tongue.Temperature((pour.ResinCelsius ?? pour.RoomCelsius) + Celsius), text.Tongue.Temperature(pour.RoomCelsius + Celsius))),
        ];
        if (pour.Cooling == Cooling.WaterBath)
            steps.Add(text.Step(text.Words.FillBath(text.Tongue.Temperature(pour.BathCelsius + Celsius)), Cautions.Bath));
        steps.Add(text.Step(text.Words.HowToMix(text.Tongue.Grams(1e-3 * pour.CupGrams)), Cautions.Runaway, Cautions.SealedCup));
        return new(text.T["Make ready"], text.Words.PourSentence(text.Tongue.Millilitres(poured.Parts.Sum(part => part.Need.Pores.Value)), text.Tongue.Grams(cups.Sum(cup => cup.Mass.Value)), text.Words.Cups(cups.Length)), steps);
    }

    private static (RunChapter Chapter, string Clock) Pour(AssessmentResult result, FinPoured poured, PartPoured part, RunText text)
    {
        Pour pour = result.Design!.Pour;
        string name = text.Part(part.Name), head = text.Tongue.Length(1e-3 * pour.HeadMm, 0);
        List<RunStep> steps =
        [
            text.Step(text.Words.DrillPorts(name)) with
            {
                Facts = [.. part.Ports.Select((port, index) => new RunFact(
                    $"{index + 1} {text.Tongue.Words.Names.Port(port.Name)} ({text.Words.Role(port.IsFeed)})",
                    text.T["drill of {0}, {1} deep from the skin", text.Tongue.Length(port.Port.Diameter), text.Tongue.Length(DrillDepth.FromSkin(result.Parts!, part, port))]))],
                Notes = part.ArePortsSuggested ? [text.Words.PortsSuggested] : [],
            },
            text.Step(text.Words.Hold(name, text.Tongue.Words.Names.Attitude(part.Held(part.Attitude)))) with { Notes = [.. Air(part, text)] },
            text.Step(pour.ReservoirMl > 0 ? text.Words.SetReservoir(text.Tongue.Millilitres(1e-6 * pour.ReservoirMl), head) : text.Words.SetSyringe(head)),
        ];
        if (pour.Stages.Count > 0)
        {
            steps.Add(text.Step(text.Words.PourStages) with
            {
                Notes = [text.Words.Staged(pour.Stages.Count)],
                Facts = [.. pour.Stages.Select((stage, index) => new RunFact(text.T["pour {0}: up to {1}", index + 1, text.Tongue.Percent(stage.ToPercent / 100)], text.T["{0} after the first", text.Tongue.Duration(stage.AfterHours * Hour)]))],
            });
        }

        // The clock of the part: its cure is reckoned from the first cup.
        RunStep clock = text.Step(text.T["Start the clock of the {0} when its first cup goes in", name], text.T["Bath, readings and handling count from then."]) with { Timer = new(text.T["The first cup goes in"], null, "") };
        steps.Add(clock);
        double life = Math.Min(part.CupLife, part.Batches.PotLife ?? double.PositiveInfinity), density = poured.Resin.Density;
        foreach (Batch cup in part.Batches.Batches)
            steps.Add(Cup(cup, part, name, life, text));
        steps[^1] = steps[^1] with
        {
            Notes =
            [
                .. steps[^1].Notes,
                text.Words.PoresRange(text.Tongue.Range(part.Need.Pores, volume => text.Tongue.Millilitres(volume)), text.Tongue.Range(new Ranged(density * part.Need.Total.Value, density * part.Need.Total.Low, density * part.Need.Total.High), mass => text.Tongue.Grams(mass))),
                part.Fill is { Status: FillStatus.Filled, Time: double time } ? text.Words.Filling(text.Tongue.Duration(time)) : text.Words.FillingUnknown,
            ],
        };
        steps.Add(text.Step(text.Words.Rock));
        steps.Add(text.Step(text.Words.TopUp, Cautions.SealedCup) with { Timer = new(text.T["Looked at it"], Quarter, text.T["Look at the vents again, and top up."], Repeats: true) });
        return (new($"{name}: {text.Words.Pour}", "", steps), clock.Id);
    }

    private static RunStep Cup(Batch cup, PartPoured part, string name, double life, RunText text)
    {
        RunStep step = text.Step(text.T["Cup {0} of {1} for the {2}: weigh, mix, pour slowly through port 1", cup.Number, part.Batches.Batches.Count, name], "", Cautions.Runaway);
        bool isKnown = double.IsFinite(life);
        return step with
        {
            Facts = [new(text.Words.ResinColumn, Grams(cup.ResinMass)), new(text.Words.HardenerColumn, Grams(cup.HardenerMass)), new(text.Words.MixColumn, Grams(cup.Mass))],
            Notes = [$"{(isKnown ? text.Words.WorkingTime(text.Tongue.Duration(life)) : text.Words.WorkingTimeUnknown)}"],
            Timer = isKnown
                ? new(text.T["Resin and hardener meet"], life, text.T["Pour no more of this cup: what strings or grows warm goes outdoors on the tray."], BatchPlan.UsableShare * life, text.T["Half its time is over: what is still in the cup now is poured at once, or left."])
                : new(text.T["Resin and hardener meet"], null, ""),
        };

        string Grams(Ranged? mass) => mass is { } known ? text.Tongue.Grams(known.Value, 1) : text.Words.NotKnown;
    }

    private static IEnumerable<string> Air(PartPoured part, RunText text)
    {
        if (part.Air.Volume < Drop)
            yield return text.Words.NoAir;
        else
            yield return text.T["Held like this, {0} of air stay, {1} of the pores: tilt and rock it while it fills.", text.Tongue.Millilitres(part.Air.Volume, 1), text.Tongue.Percent(part.Air.Share, 1)];
    }

    private static RunChapter Cure(AssessmentResult result, PartPoured poured, string clock, RunText text)
    {
        (Pour pour, string name) = (result.Design!.Pour, text.Part(poured.Name));
        string title = $"{name}: {text.Words.Cure}";
        PartCured? part = result.Cured?.Parts.FirstOrDefault(own => string.Equals(own.Name, poured.Name, StringComparison.Ordinal));
        if (part is not { IsWhole: true })
        {
            RunStep blind = text.Step(text.Words.HandleUnknown(name)) with { Thermometer = new(name, clock, result.Cured?.Softening, []) };
            return new(title, part is null ? text.Words.CureNotWorkedOut : text.Words.CureLost(name), [blind]);
        }

        List<RunStep> steps = [];
        PartCureResult nominal = part.Band.Nominal;
        if (part.Case.Bath is { } bath && CureTimes.InWater(part) is double stays)
        {
            steps.Add(text.Step(text.Words.IntoWater(name, text.Tongue.Temperature(bath.Temperature), text.Tongue.Percent(pour.BathLevelPercent / 100), text.Tongue.Duration(stays)), Cautions.Bath, Cautions.SealedCup) with
            {
                Notes = part.Water is not { } water ? [] :
                [
                    water.Status switch
                    {
                        WaterTimeStatus.NotNeeded => text.Words.WaterNotNeeded,
                        WaterTimeStatus.Found => text.Words.WaterNeeded(text.Tongue.Duration(water.Duration)),
                        _ => text.Words.WaterNotEnough,
                    },
                ],
            });
            steps.Add(text.Step(text.T["Take the {0} out of the water, not before", name], "") with { Due = new(clock, stays, stays, stays) });
        }
        else
        {
            steps.Add(text.Step(text.Words.IntoAir(name, text.Tongue.Temperature(pour.RoomCelsius + Celsius)), Cautions.SealedCup));
        }

        (double low, double high) = part.Range(run => run.Resin.Temperature);
        string peak = text.Tongue.Range(new Ranged(nominal.Resin.Temperature, low, high), kelvin => text.Tongue.Temperature(kelvin));
        steps.Add(text.Step(text.Words.Measure(text.Words.HottestPlace(text.Tongue.Length(Math.Abs(part.HottestPlace.Y), 0), part.HottestPlace.Y >= 0))) with
        {
            Facts = [.. CureTimes.ToRead(nominal).Select(time => new RunFact(text.T["{0} after the pour", text.Tongue.Duration(time)], text.T["skin {0} expected", text.Tongue.Temperature(CureTimes.At(nominal.History, time, moment => moment.WallOutside))]))],
            Thermometer = new(name, clock, result.Cured!.Softening, Curve(part)),
        });
        steps.Add(Handle(part, name, clock, text));
        return new(title, text.Words.Expected(peak, text.Tongue.Duration(nominal.Resin.Time)), steps);
    }

    private static RunStep Handle(PartCured part, string name, string clock, RunText text)
    {
        double time = part.Band.Nominal.Handling;
        if (!double.IsFinite(time))
            return text.Step(text.Words.HandleUnknown(name));
        double early = double.IsFinite(part.Band.Fast.Handling) ? part.Band.Fast.Handling : time, late = part.Band.Slow.Handling;
        string? told = double.IsFinite(late) ? text.Tongue.Duration(late) : null;
        return text.Step(text.Words.Handle(name, text.Tongue.Duration(time), text.Words.HandleRange(text.Tongue.Duration(early), told))) with { Due = new(clock, early, time, double.IsFinite(late) ? late : time) };
    }

    /// <summary>What the skin should show over time, with its range: least and greatest of the three runs.</summary>
    private static RunWarmth[] Curve(PartCured part)
    {
        IReadOnlyList<CureMoment>[] runs = [part.Band.Slow.History, part.Band.Nominal.History, part.Band.Fast.History];
        double end = runs.Min(run => run[^1].Time);
        return [.. Enumerable.Range(0, CurvePoints + 1).Select(i =>
        {
            // Dense at the beginning, where it changes fast.
            double share = (double)i / CurvePoints, time = end * share * share;
            double[] warmth = [.. runs.Select(run => Math.Round(CureTimes.At(run, time, moment => moment.WallOutside), 2))];
            return new RunWarmth(Math.Round(time), warmth.Min(), warmth[1], warmth.Max());
        })];
    }
}
