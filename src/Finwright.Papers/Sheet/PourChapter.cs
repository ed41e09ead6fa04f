using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Making.Pores;
using Finwright.Making.Quantities;
using Finwright.Numerics;
using Finwright.Papers.Pictures;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>The pour, part by part.</summary>
internal static class PourChapter
{
    private const double PictureHeight = 0.095, Celsius = 273.15, Hour = 3600;

    // Less air than this is none: a drop.
    private const double Drop = 0.05e-6;

    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue, Pour pour) = (paper.Words, paper.Tongue, paper.Design.Pour);
        if (paper.Result.Poured is not { Parts.Count: > 0 } poured)
        {
            paper.Chapter(words.Pour, paper.Result.Poured is null ? words.PourNotPlanned : words.NothingPoured);
            return;
        }

        Batch[] cups = [.. poured.Parts.SelectMany(part => part.Batches.Batches)];
        paper.Chapter(words.Pour, words.PourSentence(tongue.Millilitres(poured.Parts.Sum(part => part.Need.Pores.Value)), tongue.Grams(cups.Sum(cup => cup.Mass.Value)), words.Cups(cups.Length)));
        paper.Judge(verdict => verdict.Code is "trapped-air" or "ports-open-both" or "fill-time" or "thin-core" or "pore-opinion" or "cup" or "reservoir");
        paper.Step(words.LayOut, Cautions.Skin);
        paper.Step(words.WarmResin(tongue.Temperature((pour.ResinCelsius ?? pour.RoomCelsius) + Celsius), tongue.Temperature(pour.RoomCelsius + Celsius)));
        if (pour.Cooling == Cooling.WaterBath)
            paper.Step(words.FillBath(tongue.Temperature(pour.BathCelsius + Celsius)), Cautions.Bath);
        paper.Step(words.HowToMix(tongue.Grams(1e-3 * pour.CupGrams)), Cautions.Runaway, Cautions.SealedCup);
        foreach (PartPoured part in poured.Parts)
            Part(paper, part);
        paper.Step(words.Leftovers, Cautions.Waste);
    }

    private static void Part(SheetPaper paper, PartPoured part)
    {
        (SheetWords words, Tongue tongue, Pour pour) = (paper.Words, paper.Tongue, paper.Design.Pour);
        string name = paper.Part(part.Name);
        paper.Flow.Head(name);
        paper.Flow.Picture(SheetPictures.Pour(paper.Result, part.Name, tongue, paper.Flow.Width, PictureHeight), words.PourCaption(name));
        paper.Flow.Table(
            [new(words.PortColumn, 1.2, IsNumber: true), new(words.NameColumn, 4), new(words.RoleColumn, 2), new(words.DiameterColumn, 1.6, IsNumber: true), new(words.DepthColumn, 1.8, IsNumber: true)],
            [
                .. part.Ports.Select((port, index) => (IReadOnlyList<string>)
                [
                    tongue.Number(index + 1, 0), tongue.Words.Names.Port(port.Name), words.Role(port.IsFeed), tongue.Length(port.Port.Diameter), tongue.Length(DrillDepth.FromSkin(paper.Result.Parts!, part, port)),
                ]),
            ]);
        if (part.ArePortsSuggested)
            paper.Flow.Text(words.PortsSuggested);
        paper.Step(words.DrillPorts(name));
        paper.Step(words.Hold(name, paper.Held(part, part.Attitude)));
        string head = tongue.Length(1e-3 * pour.HeadMm, 0);
        paper.Step(pour.ReservoirMl > 0 ? words.SetReservoir(tongue.Millilitres(1e-6 * pour.ReservoirMl), head) : words.SetSyringe(head));
        Stages(paper);
        Cups(paper, part, name);
        Air(paper, part);
        paper.Step(words.Rock);
        paper.Step(words.TopUp, Cautions.SealedCup);
    }

    private static void Stages(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        IReadOnlyList<PourStage> stages = paper.Design.Pour.Stages;
        if (stages.Count == 0)
            return;
        paper.Flow.Text(words.Staged(stages.Count));
        paper.Flow.Table(
            [new(words.StageColumn, 1, IsNumber: true), new(words.LevelColumn, 2, IsNumber: true), new(words.AfterColumn, 2, IsNumber: true), new(words.PouredAtColumn, 3)],
            [.. stages.Select((stage, index) => (IReadOnlyList<string>)[tongue.Number(index + 1, 0), tongue.Percent(stage.ToPercent / 100), tongue.Duration(stage.AfterHours * Hour), ""])],
            boxed: true);
        paper.Step(words.PourStages);
    }

    private static void Cups(SheetPaper paper, PartPoured part, string name)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        IReadOnlyList<Batch> cups = part.Batches.Batches;
        double density = paper.Result.Poured!.Resin.Density;
        paper.StepAbove(words.PourCups(name, words.Cups(cups.Count), tongue.Grams(cups.Sum(cup => cup.Mass.Value)), tongue.Duration(cups[0].PouringTime)));
        paper.Flow.Table(
            [
                new(words.Done, 1.2), new(words.CupColumn, 1.1, IsNumber: true), new(words.ResinColumn, 1.6, IsNumber: true), new(words.HardenerColumn, 1.6, IsNumber: true),
                new(words.MixColumn, 1.6, IsNumber: true), new(words.MixedAtColumn, 2), new(words.PouredAtColumn, 2),
            ],
            [
                .. cups.Select(cup => (IReadOnlyList<string>)
                [
                    paper.Tick(), tongue.Number(cup.Number, 0), Grams(cup.ResinMass), Grams(cup.HardenerMass), Grams(cup.Mass), "", "",
                ]),
            ],
            boxed: true);
        paper.Flow.Text(words.PoresRange(tongue.Range(part.Need.Pores, volume => tongue.Millilitres(volume)), tongue.Range(Times(part.Need.Total, density), mass => tongue.Grams(mass))));
        double life = Math.Min(part.CupLife, part.Batches.PotLife ?? double.PositiveInfinity);
        paper.Flow.Text($"{(double.IsFinite(life) ? words.WorkingTime(tongue.Duration(life)) : words.WorkingTimeUnknown)} {words.LimitedBy(part.Batches.Limit)}");
        paper.Flow.Text(part.Fill is { Status: FillStatus.Filled, Time: double time } ? words.Filling(tongue.Duration(time)) : words.FillingUnknown);

        string Grams(Ranged? mass) => mass is { } known ? tongue.Grams(known.Value, 1) : words.NotKnown;
    }

    private static Ranged Times(Ranged range, double factor) => new(factor * range.Value, factor * range.Low, factor * range.High);

    private static void Air(SheetPaper paper, PartPoured part)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        if (part.Air.Volume < Drop)
        {
            paper.Flow.Text(words.NoAir);
            return;
        }

        List<string> said = [words.AirStays(tongue.Millilitres(part.Air.Volume, 1), tongue.Percent(part.Air.Share, 1))];
        if (part.Search is { } search)
        {
            if (search.Best.Air.Volume < part.Air.Volume - AttitudeSearch.TieShare * part.Air.Total)
                said.Add(words.AirBetter(paper.Held(part, search.Best.Attitude), tongue.Millilitres(search.Best.Air.Volume, 1)));
            else if (search.Pair is { } pair && pair.Air.Volume < part.Air.Volume)
                said.Add(words.AirRocking(paper.Held(part, pair.First.Attitude), paper.Held(part, pair.Second.Attitude), tongue.Millilitres(pair.Air.Volume, 1)));
        }

        paper.Flow.Text(string.Join(' ', said));
    }
}
