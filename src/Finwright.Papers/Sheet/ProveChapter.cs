using Finwright.Design;
using Finwright.Making.Quantities;
using Finwright.Numerics;
using Finwright.Papers.Pictures;
using Finwright.Papers.Words;
using Finwright.Strength.Bench;
using Finwright.Strength.Plates;

namespace Finwright.Papers.Sheet;

/// <summary>The bench: what to hang where, what should be read, when to stop.</summary>
internal static class ProveChapter
{
    private const double PictureHeight = 0.09, FigureHeight = 0.09;

    // Of the table of readings with the step above it: it is read at one look.
    private const double ReadingsHeight = 0.125;

    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue, Prove prove) = (paper.Words, paper.Tongue, paper.Design.Prove);
        double distance = paper.Result.Bench?.Prediction?.Load.Depth ?? prove.AtSpanPercent / 100 * paper.Result.Planform!.Span;
        string mass = tongue.Mass(prove.MassKg), far = tongue.Length(distance, 0), where = words.Where(prove.AtChord);
        BenchPrediction? prediction = paper.Result.Bench?.Prediction;
        paper.Chapter(words.Prove, prediction is null ? words.ProveUnknown(mass, far, where) : words.ProveSentence(mass, far, where, tongue.Range(prediction.AtTip.MidChord, metres => tongue.Length(metres))));
        if (paper.Result.Bench?.Problem is { } problem)
        {
            paper.Flow.Text(words.ProveReason);
            paper.Flow.Text(problem, quiet: true);
        }

        paper.Judge(verdict => paper.Result.StrengthVerdicts.Contains(verdict) && verdict.Code is not ("grounding" or "hum" or "divergence"));
        paper.Step(words.FullCure);
        paper.StepAbove(words.HoldBase(paper.Design.Base.RootHold));
        if (prediction is not null)
            paper.Flow.Picture(SheetPictures.Bench(paper.Result, tongue, paper.Flow.Width, PictureHeight), words.BenchCaption);
        paper.Step(words.StandClear, Cautions.Proof);
        paper.Step(words.StopWhen);
        if (prediction?.FirstCrack is { } crack)
            paper.Flow.Text(words.FirstCrack(tongue.Number(crack.Reserve, 1), words.Stressed(crack.Part), tongue.Length(crack.Y, 0)));
        paper.Step(words.ReadBefore);
        paper.Step(words.Hang(mass, far, where));
        paper.Step(words.ReadLoaded);
        paper.Flow.Need(ReadingsHeight);
        paper.StepAbove(words.ReadAfter);
        Readings(paper, prediction);
        if (paper.Result.Vibration is { Dry.Count: > 0 } vibration)
            paper.Step(words.Tap(tongue.List([.. vibration.Dry.Select(hertz => $"{tongue.Number(hertz, 0)} Hz")])));
        paper.Flow.Blanks(words.ProveBlanks);
        if (prediction is { DeflectionShare: > PlateSolution.LinearShare })
            paper.Flow.Text(words.BendsFar(tongue.Percent(prediction.DeflectionShare), tongue.Percent(PlateSolution.LinearShare)));
        if (prediction is not null)
            paper.Flow.Figure(SheetFigures.Bench(paper, prediction), FigureHeight, words.BendCaption);
        paper.Flow.Text(words.ReadingsFor);
    }

    private static void Readings(SheetPaper paper, BenchPrediction? prediction)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        List<IReadOnlyList<string>> rows = [];
        foreach ((int station, StationBend? bend) in ((StationBend?[])[prediction?.AtLoad, prediction?.AtTip]).Index())
        {
            bool tip = station == 1;
            rows.Add(Row(words.Place(BenchPicture.Letters[3 * station], words.Where(ChordPlace.LeadingEdge), tip), bend?.LeadingEdge, Bare));
            rows.Add(Row(words.Place(BenchPicture.Letters[3 * station + 1], words.Where(ChordPlace.MidChord), tip), bend?.MidChord, Bare));
            rows.Add(Row(words.Place(BenchPicture.Letters[3 * station + 2], words.Where(ChordPlace.TrailingEdge), tip), bend?.TrailingEdge, Bare));
        }

        rows.Add(Row(words.LoadTurn, prediction?.AtLoad.Twist, Turn));
        rows.Add(Row(words.TipTurn, prediction?.AtTip.Twist, Turn));
        paper.Flow.Table(
            [
                new(words.ReadAtColumn, 2.8), new(words.PredictedColumn(tongue.LengthUnit), 1.85, IsNumber: true), new(words.RangeColumn, 2.4, IsNumber: true), new(words.PassColumn, 2.1, IsNumber: true),
                new(words.BeforeColumn, 1.5), new(words.LoadedColumn, 1.5), new(words.AfterwardsColumn, 1.5), new(words.DifferenceColumn, 1.7),
            ],
            rows, boxed: true);
        paper.Flow.Text(words.TurnNote, quiet: true);
        if (prediction is not null)
            paper.Flow.Text(words.PassNote);

        IReadOnlyList<string> Row(string place, Ranged? range, Func<double, string> show) => range is not { } known
            ? [place, words.NotKnown, words.NotKnown, words.NotKnown, "", "", "", ""]
            : [place, show(known.Value), words.FromTo(show(known.Low), show(known.High)), PassLine(words, known, show), "", "", "", ""];

        string Bare(double metres) => tongue.BareLength(metres);
        string Turn(double radians) => tongue.Angle(radians, 2);
    }

    /// <summary>The end of the range that a weaker fin would pass.</summary>
    private static string PassLine(SheetWords words, Ranged range, Func<double, string> show) =>
        Math.Abs(range.High) >= Math.Abs(range.Low) ? words.AtMost(show(range.High)) : words.AtLeast(show(range.Low));
}
