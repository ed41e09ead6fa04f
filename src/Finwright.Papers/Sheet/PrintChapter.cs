using Finwright.Assessment.Made;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Making.Printing;
using Finwright.Making.Quantities;
using Finwright.Papers.Pictures;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>The print: settings, plates, stops.</summary>
internal static class PrintChapter
{
    private const double PictureHeight = 0.075, Celsius = 273.15;

    // Drying and taking off: as the advice of the print says.
    private const double DryAt = 65 + Celsius, CoolBelow = 40 + Celsius;

    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        SheetWords words = paper.Words;
        if (paper.Result.Printed is not { Parts.Count: > 0 } printed)
        {
            paper.Chapter(words.Print, words.PrintNotPlanned);
            Settings(paper, null);
            return;
        }

        double seconds = printed.Plates.Sum(plate => plate.Time.Seconds.Value), mass = printed.Plates.Sum(plate => plate.Time.Mass);
        paper.Chapter(words.Print, words.PrintSentence(paper.Tongue.Duration(seconds), words.Plates(printed.Plates.Count), paper.Tongue.Grams(mass), words.Stops(printed.Plates.Sum(plate => plate.Stops.Count))));
        Settings(paper, printed);
        Parts(paper, printed);
        paper.Judge(verdict => verdict.Code is "overhang" or "layers-to-load");
        paper.Step(words.DryFilament(paper.Tongue.Temperature(DryAt)));
        paper.Step(words.KeepAttitude);
        foreach (IGrouping<(BedGrip Grip, double Width), PartPrinted> alike in printed.Parts.GroupBy(part => (part.Advice.Grip, part.Advice.GripWidth)))
            Grip(paper, alike.Key.Grip, alike.Key.Width, [.. alike]);
        foreach (PlatePrinted plate in printed.Plates)
            Plate(paper, plate);
        paper.Judge(verdict => verdict.Code is "stops");
        string[] lost = [.. printed.Parts.SelectMany(part => part.StopPlan.NotPossible).Select(paper.Tongue.Words.Names.Feature)];
        if (lost.Length > 0)
            paper.Flow.Text(words.CannotPutIn(paper.Tongue.List(lost)));
        string[] later = [.. printed.Parts.SelectMany(part => part.StopPlan.NotNeeded).Select(paper.Tongue.Words.Names.Feature)];
        if (later.Length > 0)
            paper.Step(words.PutInLater(paper.Tongue.List(later)));
    }

    private static void Settings(SheetPaper paper, FinPrinted? printed)
    {
        (SheetWords words, Tongue tongue, Print print) = (paper.Words, paper.Tongue, paper.Design.Print);
        double width = 1e-3 * print.LineWidthMm, thickness = printed?.Parts[0].Layers.Settings.WallThickness ?? print.Walls * width;
        bool hangs = paper.Verdicts.Any(verdict => verdict is { Code: "overhang", State: not VerdictState.Holds });
        paper.Flow.Head(words.Settings);
        paper.Flow.Table(
            [new(words.SettingColumn, 3), new(words.ValueColumn, 7)],
            [
                [words.PlasticSetting, print.Filament],
                [words.LayerSetting, paper.Millimetres(1e-3 * print.LayerMm, 2)],
                [words.WallSetting, words.WallValue(print.Walls, paper.Millimetres(width, 2), paper.Millimetres(thickness, 2))],
                [words.SolidSetting, words.SolidValue(print.SolidLayers)],
                [words.InfillSetting, words.InfillValue(tongue.Percent(print.InfillPercent / 100))],
                [words.SpeedSetting, words.SpeedValue(Pace(print.Machine.OuterWallSpeedMmPerS), Pace(print.Machine.InnerSpeedMmPerS))],
                [words.HeatSetting, words.HeatValue],
                [words.SupportSetting, words.SupportValue(hangs)],
            ]);

        string Pace(double millimetresPerSecond) => $"{tongue.Number(millimetresPerSecond, 0)} mm/s";
    }

    private static void Parts(SheetPaper paper, FinPrinted printed)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        paper.Flow.Head(words.PartsHead);
        paper.Flow.Table(
            [new(words.PartColumn, 3), new(words.PlateColumn, 1, IsNumber: true), new(words.SizeColumn(tongue.LengthUnit), 3, IsNumber: true), new(words.LiesColumn, 1.5), new(words.TimeColumn, 1.5, IsNumber: true), new(words.PlasticColumn, 1.5, IsNumber: true)],
            [
                .. from plate in printed.Plates
                   from part in plate.Parts
                   select (IReadOnlyList<string>)
                   [
                       paper.Part(part.Part.Name), tongue.Number(plate.Number, 0), Size(tongue, part.Layers.Size), words.Lies(part.AsLaid.Way.Attitude),
                       tongue.Duration(part.Time.Seconds.Value), tongue.Grams(part.Time.Mass),
                   ],
            ]);
    }

    private static string Size(Tongue tongue, Point3 size) => $"{tongue.BareLength(size.X, 0)} × {tongue.BareLength(size.Y, 0)} × {tongue.BareLength(size.Z, 0)}";

    private static void Grip(SheetPaper paper, BedGrip grip, double size, IReadOnlyList<PartPrinted> parts)
    {
        string names = paper.Tongue.List([.. parts.Select(part => paper.Part(part.Part.Name))]), width = paper.Millimetres(size, 0);
        if (grip == BedGrip.Brim)
            paper.Step(paper.Words.Brim(names, width));
        else if (grip == BedGrip.Discs)
            paper.Step(paper.Words.Discs(names, width));
    }

    private static void Plate(SheetPaper paper, PlatePrinted plate)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        paper.Flow.Head(words.PlateHead(plate.Number, tongue.List([.. plate.Parts.Select(part => paper.Part(part.Part.Name))])));
        paper.Flow.Picture(SheetPictures.Plate(paper.Result, plate.Number, tongue, paper.Flow.Width, PictureHeight), words.PlateCaption(plate.Number));
        if (plate.Stops.Count > 0)
        {
            paper.StepAbove(words.SetPauses);
            paper.Flow.Table(
                [new(words.Done, 1.2), new(words.LayerColumn, 1.6, IsNumber: true), new(words.HeightColumn, 1.6, IsNumber: true), new(words.PutInColumn, 5), new(words.RoomColumn, 1.8, IsNumber: true)],
                [
                    .. from stop in plate.Stops
                       from item in stop.Items
                       select (IReadOnlyList<string>)
                       [
                           paper.Tick(), tongue.Number(stop.LayerNumber, 0), paper.Millimetres(stop.Height, 2), tongue.Words.Names.Feature(item.Name), paper.Millimetres(item.Clearance, 2),
                       ],
                ],
                boxed: true);
        }

        paper.Step(words.PrintPlate(plate.Number, tongue.Range(plate.Time.Seconds, tongue.Duration), tongue.Grams(plate.Time.Mass)));
        paper.Step(words.FirstLayers);
        if (plate.Stops.Count > 0)
            paper.Step(words.PutIn, Cautions.Nozzle);
        paper.Step(words.CoolPlate(tongue.Temperature(CoolBelow)));
        if (plate.IsGauge)
            paper.Step(words.TryGauge);
    }
}
