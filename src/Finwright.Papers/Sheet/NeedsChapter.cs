using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Making.Pores;
using Finwright.Making.Quantities;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>What to buy, cut and lay out.</summary>
internal static class NeedsChapter
{
    // How much shorter than said a rod may be cut (common practice, no source).
    private const double ShortRod = 0.5e-3, ShortDowel = 1e-3, ShortThread = 1e-3;

    // What scales and gauges must show.
    private const double ScalesShow = 0.1e-3, GaugeShows = 0.1e-3;

    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        paper.Chapter(paper.Words.Needs, paper.Words.NeedsSentence);
        CutList(paper);
        Materials(paper);
        Tools(paper);
    }

    private static void CutList(SheetPaper paper)
    {
        SheetWords words = paper.Words;
        paper.Flow.Head(words.CutList);
        if (paper.Result.Hardware.Count == 0)
        {
            paper.Flow.Text(words.CutNothing);
            return;
        }

        NameWords names = paper.Tongue.Words.Names;
        paper.Flow.Table(
            [new(words.Done, 1.5), new(words.CountColumn, 1.5, IsNumber: true), new(words.ItemColumn, 4), new(words.LengthColumn, 1.6, IsNumber: true), new(words.ToleranceColumn, 3), new(words.PlaceColumn, 3)],
            [
                .. paper.Result.Hardware.Select(item => (IReadOnlyList<string>)
                [
                    paper.Tick(), paper.Tongue.Number(item.Count, 0), names.Size(item, paper.Tongue), item.Length > 0 ? paper.Tongue.Length(item.Length) : "", Tolerance(paper, item.Kind), names.Place(item),
                ]),
            ]);
        if (paper.Bought(HardwareKind.BoxBolt).Count > 0)
            paper.Flow.Text(words.BoltNote, quiet: true);
    }

    private static string Tolerance(SheetPaper paper, HardwareKind kind) => kind switch
    {
        HardwareKind.BoxBolt => paper.Words.BoltTolerance,
        HardwareKind.ThreadedRod => paper.Words.RodTolerance(paper.Tongue.Length(ShortThread)),
        HardwareKind.CarbonRod => paper.Words.CutShort(paper.Tongue.Length(ShortRod)),
        HardwareKind.Dowel => paper.Words.CutShort(paper.Tongue.Length(ShortDowel)),
        HardwareKind.CrossPin or HardwareKind.PlateScrew => paper.Words.ByBox,
        HardwareKind.StripSheet or HardwareKind.Lid => paper.Words.ByTemplate,
        _ => "",
    };

    private static void Materials(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue, FinDesign design) = (paper.Words, paper.Tongue, paper.Design);
        List<IReadOnlyList<string>> rows = [];
        if (paper.Result.Printed is { } printed)
        {
            double plastic = printed.Plates.Sum(plate => plate.Time.Mass), spool = design.Prices.SpoolKg;
            rows.Add([words.Filament(design.Print.Filament), tongue.Grams(plastic), words.OfSpool(tongue.Percent(plastic / spool), tongue.Grams(spool))]);
        }

        if (paper.Result.Poured is { } poured)
        {
            Batch[] cups = [.. poured.Parts.SelectMany(part => part.Batches.Batches)];
            rows.Add(cups.Length == 0
                ? [words.Mix(tongue.Words.Names.Resin(design.Pour.Resin)), "", words.NoMix]
                : [words.Mix(tongue.Words.Names.Resin(design.Pour.Resin)), tongue.Grams(cups.Sum(cup => cup.Mass.Value)), Shares(paper, cups)]);
        }

        if (rows.Count == 0)
            return;
        paper.Flow.Head(words.Materials);
        paper.Flow.Table([new(words.ItemColumn, 4), new(words.AmountColumn, 1.5, IsNumber: true), new(words.RemarkColumn, 4.5)], rows);
        paper.Flow.Text(words.MaterialsNote, quiet: true);
    }

    private static string Shares(SheetPaper paper, Batch[] cups) => cups.All(cup => cup is { ResinMass: not null, HardenerMass: not null })
        ? paper.Words.MixOf(paper.Tongue.Grams(cups.Sum(cup => cup.ResinMass!.Value.Value)), paper.Tongue.Grams(cups.Sum(cup => cup.HardenerMass!.Value.Value)))
        : paper.Words.MixByDataSheet;

    private static void Tools(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue, FinDesign design) = (paper.Words, paper.Tongue, paper.Design);
        PartPoured[] poured = [.. paper.Result.Poured?.Parts ?? []];
        paper.Flow.Head(words.Tools);
        paper.Step(words.ToolsBody, Cautions.Skin);
        if (poured.Length > 0)
        {
            paper.Step(words.ToolsMixing(words.Cups(poured.Sum(part => part.Batches.Batches.Count)), tongue.Grams(ScalesShow, 1)));
            paper.Step(words.ToolsPouring(tongue.List([.. poured.SelectMany(part => part.Ports).Select(port => tongue.Length(port.Port.Diameter)).Distinct(StringComparer.Ordinal)])));
            paper.Step(words.ToolsSealing);
            if (design.Pour.Cooling == Cooling.WaterBath)
                paper.Step(words.ToolsBath(tongue.Percent(design.Pour.BathLevelPercent / 100)));
            paper.Step(words.ToolsTray);
        }

        paper.Step(words.ToolsBonding);
        paper.Step(words.ToolsSanding);
        paper.Step(words.ToolsFitting);
        paper.Step(words.ToolsBench(tongue.Mass(design.Prove.MassKg), tongue.Length(GaugeShows)));
    }
}
