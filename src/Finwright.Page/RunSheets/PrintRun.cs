using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Making.Printing;
using Finwright.Making.Quantities;

namespace Finwright.Page.RunSheets;

/// <summary>The steps of the day of the print.</summary>
internal static class PrintRun
{
    private const double Celsius = 273.15;

    // Drying and taking off: as the advice of the print says.
    private const double DryAt = 65 + Celsius, CoolBelow = 40 + Celsius, DryFor = 4 * 3600;

    /// <summary>Lays the steps out.</summary>
    /// <param name="result">A fin whose print was worked out.</param>
    /// <param name="printed">Its print.</param>
    /// <param name="text">How it speaks.</param>
    public static IReadOnlyList<RunChapter> Of(AssessmentResult result, FinPrinted printed, RunText text) =>
        [Ready(result, printed, text), .. printed.Plates.OrderByDescending(plate => plate.IsGauge).Select(plate => Plate(plate, text)), .. After(printed, text)];

    private static RunChapter Ready(AssessmentResult result, FinPrinted printed, RunText text)
    {
        Print print = result.Design!.Print;
        (double seconds, double mass) = (printed.Plates.Sum(plate => plate.Time.Seconds.Value), printed.Plates.Sum(plate => plate.Time.Mass));
        double width = 1e-3 * print.LineWidthMm, thickness = printed.Parts.Count > 0 ? printed.Parts[0].Layers.Settings.WallThickness : print.Walls * width;
        List<RunStep> steps =
        [
            text.Step(text.Words.DryFilament(text.Tongue.Temperature(DryAt))) with { Timer = new(text.T["It is in the dryer"], DryFor, text.T["The usual least time is over; the data sheet goes before it."]) },
            text.Step(text.T["Set the printer's program as follows"], text.T["All numbers of this sheet are for these settings."]) with
            {
                Facts =
                [
                    new(text.Words.PlasticSetting, print.Filament),
                    new(text.Words.LayerSetting, text.Millimetres(1e-3 * print.LayerMm, 2)),
                    new(text.Words.WallSetting, text.Words.WallValue(print.Walls, text.Millimetres(width, 2), text.Millimetres(thickness, 2))),
                    new(text.Words.SolidSetting, text.Words.SolidValue(print.SolidLayers)),
                    new(text.Words.InfillSetting, text.Words.InfillValue(text.Tongue.Percent(print.InfillPercent / 100))),
                    new(text.Words.SpeedSetting, text.Words.SpeedValue(Pace(print.Machine.OuterWallSpeedMmPerS), Pace(print.Machine.InnerSpeedMmPerS))),
                    new(text.Words.HeatSetting, text.Words.HeatValue),
                ],
            },
            text.Step(text.Words.KeepAttitude),
        ];
        foreach (IGrouping<(BedGrip Grip, double Width), PartPrinted> alike in printed.Parts.GroupBy(part => (part.Advice.Grip, part.Advice.GripWidth)))
        {
            string names = text.Tongue.List([.. alike.Select(part => text.Part(part.Part.Name))]), size = text.Millimetres(alike.Key.Width, 0);
            if (alike.Key.Grip == BedGrip.Brim)
                steps.Add(text.Step(text.Words.Brim(names, size)));
            else if (alike.Key.Grip == BedGrip.Discs)
                steps.Add(text.Step(text.Words.Discs(names, size)));
        }

        return new(text.T["Make ready"], text.Words.PrintSentence(text.Tongue.Duration(seconds), text.Words.Plates(printed.Plates.Count), text.Tongue.Grams(mass), text.Words.Stops(printed.Plates.Sum(plate => plate.Stops.Count))), steps);

        string Pace(double millimetresPerSecond) => $"{text.Tongue.Number(millimetresPerSecond, 0)} mm/s";
    }

    private static RunChapter Plate(PlatePrinted plate, RunText text)
    {
        List<RunStep> steps = [];
        if (plate.Stops.Count > 0)
            steps.Add(text.Step(text.Words.SetPauses) with { Facts = [.. plate.Stops.Select(stop => new RunFact(text.T["before layer {0}", stop.LayerNumber], text.T["at {0}", text.Millimetres(stop.Height, 2)]))] });
        RunStep print = text.Step(text.Words.PrintPlate(plate.Number, text.Tongue.Range(plate.Time.Seconds, text.Tongue.Duration), text.Tongue.Grams(plate.Time.Mass)));
        print = print with { Timer = new(text.T["The print has started"], plate.Time.Seconds.Value, text.T["About now the print should be done."]) };
        steps.Add(print);
        steps.Add(text.Step(text.Words.FirstLayers));
        foreach (PrintStop stop in plate.Stops)
        {
            steps.Add(text.Step(
                text.T["Pause before layer {0}, at {1}: put in {2}", stop.LayerNumber, text.Millimetres(stop.Height, 2), text.Tongue.List([.. stop.Items.Select(item => text.Tongue.Words.Names.Feature(item.Name))])],
                text.Words.PutIn.Text,
                Cautions.Nozzle) with
            {
                Facts = [.. stop.Items.Select(item => new RunFact(text.Tongue.Words.Names.Feature(item.Name), text.T["{0} of room above it", text.Millimetres(item.Clearance, 2)]))],
                Due = Due(plate, stop, print.Id),
            });
        }

        steps.Add(text.Step(text.Words.CoolPlate(text.Tongue.Temperature(CoolBelow))));
        if (plate.IsGauge)
            steps.Add(text.Step(text.Words.TryGauge));
        return new(text.Words.PlateHead(plate.Number, text.Tongue.List([.. plate.Parts.Select(part => text.Part(part.Part.Name))])), "", steps);
    }

    /// <summary>When a stop comes: by the layers before it, with the range of the whole print.</summary>
    private static RunDue Due(PlatePrinted plate, PrintStop stop, string step)
    {
        double all = plate.Time.Layers.Sum(layer => layer.Seconds), before = plate.Time.Layers.Take(stop.LayerNumber - 1).Sum(layer => layer.Seconds);
        double share = all > 0 ? before / all : 0;
        return new(step, share * plate.Time.Seconds.Low, share * plate.Time.Seconds.Value, share * plate.Time.Seconds.High);
    }

    private static IEnumerable<RunChapter> After(FinPrinted printed, RunText text)
    {
        string[] later = [.. printed.Parts.SelectMany(part => part.StopPlan.NotNeeded).Select(text.Tongue.Words.Names.Feature)];
        string[] lost = [.. printed.Parts.SelectMany(part => part.StopPlan.NotPossible).Select(text.Tongue.Words.Names.Feature)];
        List<RunStep> steps = [];
        if (later.Length > 0)
            steps.Add(text.Step(text.Words.PutInLater(text.Tongue.List(later))));
        steps.Add(text.Step(text.Words.CleanParts, Cautions.Edges) with { Notes = lost.Length > 0 ? [text.Words.CannotPutIn(text.Tongue.List(lost))] : [] });
        yield return new(text.T["After the print"], "", steps);
    }
}
