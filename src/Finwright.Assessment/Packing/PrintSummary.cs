using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Making.Printing;
using Finwright.Making.Quantities;

namespace Finwright.Assessment.Packing;

/// <summary>
/// How the parts are printed, as <c>print.json</c> and <c>finwright print --json</c> give it. Field names are these properties in lower case with underscores; each
/// carries its unit. Heights count from the bed; layers are numbered from 1.
/// </summary>
public sealed record PrintSummary() : DesignAnswer("finwright-print")
{
    /// <summary>How it stands, worst first.</summary>
    public IReadOnlyList<VerdictSummary> Verdicts { get; init; } = [];

    /// <summary>Bed by bed.</summary>
    public IReadOnlyList<PlatePrintSummary> Plates { get; init; } = [];

    /// <summary>Part by part.</summary>
    public IReadOnlyList<PartPrintSummary> Parts { get; init; } = [];

    /// <summary>What is assumed, and what to take care of.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Everything found, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Sums up.</summary>
    /// <param name="result">What was worked out.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static PrintSummary Of(MakingResult result, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(result);
        FinPrinted? printed = result.Printed;
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Name,
            DesignSha256 = result.DesignHash,
            Sentence = printed is null ? "The print was not planned." : Said(printed),
            Verdicts = [.. result.PrintVerdicts.Select(VerdictSummary.Of)],
            Plates = printed is null ? [] : [.. printed.Plates.Select(PlatePrintSummary.Of)],
            Parts = printed is null ? [] : [.. printed.Parts.Select(part => PartPrintSummary.Of(part, part.Filament(result.Prices)))],
            Notes = printed is null ? [] :
            [
                "Time: lines over speed, held back by the melt and by acceleration, from a stated model of your printer (print.machine); what prepares the file decides the rest. Plastic: walls, solid layers and infill; brim, skirt and supports not counted.",
                "A motion file says what is really laid, and whether it stops where it must: finwright motion.",
                Cautions.Nozzle,
            ],
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
    }

    private static string Said(FinPrinted printed)
    {
        double hours = printed.Plates.Sum(plate => plate.Time.Seconds.Value) / 3600, grams = 1e3 * printed.Plates.Sum(plate => plate.Time.Mass);
        int stops = printed.Plates.Sum(plate => plate.Stops.Count);
        return $"{hours:0.0} h of printing on {(printed.Plates.Count == 1 ? "one plate" : $"{printed.Plates.Count} plates")}, {grams:0} g of plastic, {(stops == 0 ? "no stops" : stops == 1 ? "one stop" : $"{stops} stops")} to put things in.";
    }
}

/// <summary>A bed.</summary>
/// <param name="Plate">Number, from 1.</param>
/// <param name="Parts">Names of its parts.</param>
/// <param name="Hours">Time.</param>
/// <param name="PlasticGrams">Plastic.</param>
/// <param name="Stops">Where it stops.</param>
public sealed record PlatePrintSummary(int Plate, IReadOnlyList<string> Parts, RangeSummary Hours, double PlasticGrams, IReadOnlyList<StopSummary> Stops)
{
    internal static PlatePrintSummary Of(PlatePrinted plate) => new(
        plate.Number, [.. plate.Parts.Select(part => part.Part.Name)], RangeSummary.Of(plate.Time.Seconds, 1.0 / 3600), Rounded.Digits(1e3 * plate.Time.Mass), [.. plate.Stops.Select(StopSummary.Of)]);
}

/// <summary>A stop.</summary>
/// <param name="BeforeLayer">The layer before which it stops.</param>
/// <param name="AtHeightMm">Height of the layers laid so far.</param>
/// <param name="Items">What is put in.</param>
public sealed record StopSummary(int BeforeLayer, double AtHeightMm, IReadOnlyList<StopItemSummary> Items)
{
    internal static StopSummary Of(PrintStop stop) => new(stop.LayerNumber, Rounded.Mm(stop.Height), [.. stop.Items.Select(item => new StopItemSummary(item.Name, Rounded.Mm(item.Clearance)))]);
}

/// <summary>Something that is put in at a stop.</summary>
/// <param name="Item">What.</param>
/// <param name="ClearanceMm">Room between its top and the next layer; negative when the nozzle would strike it.</param>
public sealed record StopItemSummary(string Item, double ClearanceMm);

/// <summary>A part's print.</summary>
public sealed record PartPrintSummary
{
    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Standing or lying; for a part that came as a mesh, standing is as it came.</summary>
    public required PrintAttitude Attitude { get; init; }

    /// <summary>Layers.</summary>
    public required int Layers { get; init; }

    /// <summary>Height.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Time.</summary>
    public required RangeSummary Hours { get; init; }

    /// <summary>Layers that wait for the one below to set.</summary>
    public required int LayersHeldBack { get; init; }

    /// <summary>Volume inside the outlines.</summary>
    public required double EnvelopeCm3 { get; init; }

    /// <summary>Room inside walls and solid layers.</summary>
    public required double CoreCm3 { get; init; }

    /// <summary>Plastic of the walls.</summary>
    public required double WallsCm3 { get; init; }

    /// <summary>Plastic of solid layers.</summary>
    public required double SolidCm3 { get; init; }

    /// <summary>Plastic of the gyroid.</summary>
    public required double InfillCm3 { get; init; }

    /// <summary>All plastic.</summary>
    public required double PlasticCm3 { get; init; }

    /// <summary>Its mass.</summary>
    public required double PlasticGrams { get; init; }

    /// <summary>Length of filament of 1.75 mm.</summary>
    public required double FilamentM { get; init; }

    /// <summary>Share of a spool.</summary>
    public required double SpoolPercent { get; init; }

    /// <summary>Cost of the filament.</summary>
    public required double FilamentCost { get; init; }

    /// <summary>Where it stops.</summary>
    public required IReadOnlyList<StopSummary> Stops { get; init; }

    /// <summary>Items whose pocket stays open: they are put in afterwards.</summary>
    public required IReadOnlyList<string> WithoutStop { get; init; }

    /// <summary>Area that hangs over more than prints without support, as it lies.</summary>
    public required double OverhangCm2 { get; init; }

    /// <summary>Area on the bed, as it lies.</summary>
    public required double BedContactCm2 { get; init; }

    /// <summary>Ways it could lie, the best first.</summary>
    public required IReadOnlyList<OrientationSummary> Orientations { get; init; }

    /// <summary>Grip on the bed, cooling, drying.</summary>
    public required IReadOnlyList<string> Advice { get; init; }

    internal static PartPrintSummary Of(PartPrinted part, FilamentUse filament) => new()
    {
        Name = part.Part.Name,
        Attitude = part.AsLaid.Way.Attitude,
        Layers = part.Layers.Layers.Count,
        HeightMm = Rounded.Mm(part.Layers.Size.Z),
        Hours = RangeSummary.Of(part.Time.Seconds, 1.0 / 3600),
        LayersHeldBack = part.Time.Layers.Count(layer => layer.IsHeldBack),
        EnvelopeCm3 = Rounded.Cm3(part.Layers.EnvelopeVolume),
        CoreCm3 = Rounded.Cm3(part.Layers.CoreVolume),
        WallsCm3 = Rounded.Cm3(part.Time.WallVolume),
        SolidCm3 = Rounded.Cm3(part.Time.SolidVolume),
        InfillCm3 = Rounded.Cm3(part.Time.InfillVolume),
        PlasticCm3 = Rounded.Cm3(part.Time.Volume),
        PlasticGrams = Rounded.Digits(1e3 * part.Time.Mass),
        FilamentM = Rounded.Digits(filament.Length),
        SpoolPercent = Rounded.Percent(filament.SpoolShare),
        FilamentCost = Rounded.Digits(filament.Cost),
        Stops = [.. part.Stops.Select(StopSummary.Of)],
        WithoutStop = part.StopPlan.NotNeeded,
        OverhangCm2 = Rounded.Cm2(part.AsLaid.Overhang),
        BedContactCm2 = Rounded.Cm2(part.AsLaid.Contact),
        Orientations = [.. part.Orientations.Select(OrientationSummary.Of)],
        Advice = part.Advice.Words,
    };
}

/// <summary>A way to lie on the bed.</summary>
/// <param name="Rank">From 1, the best.</param>
/// <param name="Attitude">Standing or lying.</param>
/// <param name="Fits">Whether it fits the printer.</param>
/// <param name="HeightMm">Height as printed.</param>
/// <param name="OverhangCm2">Area that hangs over more than prints without support.</param>
/// <param name="BedContactCm2">Area on the bed.</param>
/// <param name="LayersToLoad">How the layers lie to the bending at the root.</param>
/// <param name="RoughHours">Time, good for comparing only.</param>
/// <param name="Reason">Why it stands where it stands.</param>
public sealed record OrientationSummary(int Rank, PrintAttitude Attitude, bool Fits, double HeightMm, double OverhangCm2, double BedContactCm2, LayersToLoad LayersToLoad, double RoughHours, string Reason)
{
    internal static OrientationSummary Of(RankedWay way) => new(
        way.Rank, way.Way.Attitude, way.Laid.Fits, Rounded.Mm(way.Height), Rounded.Cm2(way.Overhang), Rounded.Cm2(way.Contact), way.Load, Rounded.Digits(way.Seconds / 3600), way.Reason);
}
