using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Making.Cure;
using Finwright.Making.Quantities;
using Finwright.Numerics;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>The cure, part by part.</summary>
internal static class CureChapter
{
    private const double Celsius = 273.15, FigureHeight = 0.08;

    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        SheetWords words = paper.Words;
        if (paper.Result.Poured is { Parts.Count: 0 })
            return;
        if (paper.Result.Cured is not { Parts.Count: > 0 } cured)
        {
            paper.Chapter(words.Cure, words.CureNotWorkedOut);
            paper.Flow.Box(words.NeverAboveUnknown, words.Runaway(paper.Design.Pour.Cooling == Cooling.WaterBath));
            Harden(paper);
            return;
        }

        paper.Chapter(words.Cure, Sentence(paper, cured));
        paper.Flow.Box(words.NeverAbove(paper.Tongue.Temperature(cured.Softening)), words.Runaway(paper.Design.Pour.Cooling == Cooling.WaterBath));
        paper.Judge(verdict => verdict.Code is "softening" or "near-critical" or "water-time" or "handling");
        foreach (PartCured part in cured.Parts)
            Part(paper, part);
        Harden(paper);
    }

    private static string Sentence(SheetPaper paper, FinCured cured)
    {
        PartCured[] whole = [.. cured.Parts.Where(part => part.IsWhole)];
        if (whole.Length == 0)
            return paper.Words.CureNotWorkedOut;
        PartCured worst = whole.MaxBy(part => part.Range(run => run.Resin.Temperature).High)!;
        return paper.Words.CureSentence(paper.Part(worst.Name), Peak(paper, worst), paper.Tongue.Duration(worst.Band.Nominal.Resin.Time));
    }

    private static string Peak(SheetPaper paper, PartCured part)
    {
        (double low, double high) = part.Range(run => run.Resin.Temperature);
        return paper.Tongue.Range(new Ranged(part.Band.Nominal.Resin.Temperature, low, high), kelvin => paper.Tongue.Temperature(kelvin));
    }

    private static void Part(SheetPaper paper, PartCured part)
    {
        (SheetWords words, Tongue tongue, Pour pour) = (paper.Words, paper.Tongue, paper.Design.Pour);
        string name = paper.Part(part.Name);
        paper.Flow.Head(name);
        if (!part.IsWhole)
        {
            paper.Flow.Text(words.CureLost(name));
            return;
        }

        PartCureResult nominal = part.Band.Nominal;
        if (part.Case.Bath is { } bath)
        {
            paper.Step(words.IntoWater(name, tongue.Temperature(bath.Temperature), tongue.Percent(pour.BathLevelPercent / 100), tongue.Duration(CureTimes.InWater(part)!.Value)), Cautions.Bath, Cautions.SealedCup);
            if (part.Water is { } water)
            {
                paper.Flow.Text(water.Status switch
                {
                    WaterTimeStatus.NotNeeded => words.WaterNotNeeded,
                    WaterTimeStatus.Found => words.WaterNeeded(tongue.Duration(water.Duration)),
                    _ => words.WaterNotEnough,
                });
            }
        }
        else
        {
            paper.Step(words.IntoAir(name, tongue.Temperature(pour.RoomCelsius + Celsius)), Cautions.SealedCup);
        }

        paper.Flow.Text(words.Expected(Peak(paper, part), tongue.Duration(nominal.Resin.Time)));
        paper.Flow.Blanks(part.Case.Bath is null ? [words.PouredAt, words.HandledAt] : [words.PouredAt, words.IntoWaterAt, words.OutOfWaterAt, words.HandledAt]);
        paper.StepAbove(words.Measure(words.HottestPlace(tongue.Length(Math.Abs(part.HottestPlace.Y), 0), part.HottestPlace.Y >= 0)));
        Readings(paper, nominal);
        paper.Flow.Figure(SheetFigures.Cure(paper.Result.Cured!, part, paper.Design.Name, tongue), FigureHeight, words.CureCaption(name));
        Handle(paper, part, name);
    }

    private static void Readings(SheetPaper paper, PartCureResult nominal)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        paper.Flow.Table(
            [new(words.HoursColumn, 2, IsNumber: true), new(words.ResinHeatColumn, 2.4, IsNumber: true), new(words.SkinHeatColumn, 2.4, IsNumber: true), new(words.ClockColumn, 2), new(words.MeasuredColumn, 2)],
            [
                .. CureTimes.ToRead(nominal).Select(time => (IReadOnlyList<string>)
                [
                    tongue.Duration(time), tongue.Temperature(CureTimes.At(nominal.History, time, moment => moment.Hottest)), tongue.Temperature(CureTimes.At(nominal.History, time, moment => moment.WallOutside)), "", "",
                ]),
            ],
            boxed: true);
    }

    private static void Handle(SheetPaper paper, PartCured part, string name)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        double time = part.Band.Nominal.Handling;
        if (!double.IsFinite(time))
        {
            paper.Step(words.HandleUnknown(name));
            return;
        }

        double early = double.IsFinite(part.Band.Fast.Handling) ? part.Band.Fast.Handling : time;
        string? late = double.IsFinite(part.Band.Slow.Handling) ? tongue.Duration(part.Band.Slow.Handling) : null;
        paper.Step(words.Handle(name, tongue.Duration(time), words.HandleRange(tongue.Duration(early), late)));
    }

    private static void Harden(SheetPaper paper)
    {
        paper.Step(paper.Words.ClosePorts, Cautions.Edges);
        paper.Step(paper.Words.Harden);
    }
}
