using Finwright.Assessment.Made;
using Finwright.Making.Cure;
using Finwright.Making.Quantities;
using Finwright.Making.Resins;

namespace Finwright.Assessment.Packing;

/// <summary>
/// How the parts cure, as <c>cure.json</c> and <c>finwright cure --json</c> give it. Field names are these properties in lower case with underscores; each carries its unit.
/// What did not happen in the time followed is null.
/// </summary>
public sealed record CureSummary() : DesignAnswer("finwright-cure", 2)
{
    /// <summary>Name of the resin system.</summary>
    public string? Resin { get; init; }

    /// <summary>Temperature at which the walls soften.</summary>
    public double? SofteningCelsius { get; init; }

    /// <summary>How it stands, worst first.</summary>
    public IReadOnlyList<VerdictSummary> Verdicts { get; init; } = [];

    /// <summary>Part by part.</summary>
    public IReadOnlyList<CuredPartSummary> Parts { get; init; } = [];

    /// <summary>A full cup left standing.</summary>
    public LumpSummary? Cup { get; init; }

    /// <summary>The resin in tube and funnel.</summary>
    public LumpSummary? Reservoir { get; init; }

    /// <summary>What is assumed, and what to take care of.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Everything found, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Sums up.</summary>
    /// <param name="result">What was worked out.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static CureSummary Of(MakingResult result, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(result);
        FinCured? cured = result.Cured;
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Name,
            DesignSha256 = result.DesignHash,
            Sentence = cured is null ? "The cure was not worked out." : Said(cured),
            Resin = cured?.Resin.Name,
            SofteningCelsius = cured is null ? null : CureSlabSummary.Celsius(cured.Softening),
            Verdicts = [.. result.CureVerdicts.Select(VerdictSummary.Of)],
            Parts = cured is null ? [] : [.. cured.Parts.Select(CuredPartSummary.Of)],
            Cup = cured is null ? null : LumpSummary.Of(cured.Cup),
            Reservoir = cured?.Reservoir is { } reservoir ? LumpSummary.Of(reservoir) : null,
            Notes = cured is null || cured.Parts.Count == 0 ? [] :
            [
                "Range: rate from half to twice, cooling 30 % more or less. A cup test of your own resin narrows it: finwright resins fit.",
                "Bores and narrow slots do not cool; rods and nuts carry no heat away; the bath keeps its temperature.",
                .. Cautions.Cure,
            ],
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
    }

    private static string Said(FinCured cured)
    {
        if (cured.Parts.Count == 0)
            return "No part is poured.";
        PartCured worst = cured.Parts.MaxBy(part => part.Range(run => run.Resin.Temperature).High)!;
        (double low, double high) = worst.Range(run => run.Resin.Temperature);
        PartCureBand band = worst.Band;
        string edge = band.IsNearCritical ? " It stands near the edge of running away." : "";
        return $"The warmest part, the {worst.Name}, peaks at {CureSlabSummary.Celsius(band.Nominal.Resin.Temperature):0} °C after {band.Nominal.Resin.Time / 3600:0.0} h (range {CureSlabSummary.Celsius(low):0} to {CureSlabSummary.Celsius(high):0} °C); its walls soften at {CureSlabSummary.Celsius(cured.Softening):0} °C.{edge}";
    }
}

/// <summary>A part's cure.</summary>
public sealed record CuredPartSummary
{
    // A curve of some two hundred points shows everything.
    private const int MostMoments = 240;

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Resin poured in.</summary>
    public required double ResinGrams { get; init; }

    /// <summary>Half the rate, cooling 30 % better.</summary>
    public required CureNumbers Slow { get; init; }

    /// <summary>As given.</summary>
    public required CureNumbers Nominal { get; init; }

    /// <summary>Twice the rate, cooling 30 % worse.</summary>
    public required CureNumbers Fast { get; init; }

    /// <summary>Whether a small change of rate or cooling makes a large one of the peak.</summary>
    public required bool NearCritical { get; init; }

    /// <summary>Change of the peak with the logarithm of rate or cooling, K.</summary>
    public required double SensitivityKelvin { get; init; }

    /// <summary>Heat it can make in air over that at which it would run away there, by one number.</summary>
    public required double IgnitionShare { get; init; }

    /// <summary>How long it must stand in water; null when it stands in none.</summary>
    public WaterTimeSummary? Water { get; init; }

    /// <summary>Edge lengths of a cell of the grid.</summary>
    public required IReadOnlyList<double> CellMm { get; init; }

    /// <summary>Cells that take part.</summary>
    public required int Cells { get; init; }

    /// <summary>The nominal cure over time.</summary>
    public required IReadOnlyList<CureMomentSummary> History { get; init; }

    internal static CuredPartSummary Of(PartCured part)
    {
        PartCureBand band = part.Band;
        return new()
        {
            Name = part.Name,
            ResinGrams = Rounded.Digits(1e3 * band.Nominal.ResinMass),
            Slow = CureNumbers.Of(part, band.Slow),
            Nominal = CureNumbers.Of(part, band.Nominal),
            Fast = CureNumbers.Of(part, band.Fast),
            NearCritical = band.IsNearCritical,
            SensitivityKelvin = Rounded.Digits(band.Sensitivity),
            IgnitionShare = Rounded.Digits(band.IgnitionShare),
            Water = part.Water is { } water ? WaterTimeSummary.Of(water) : null,
            CellMm = [Rounded.Mm(part.Voxels.Cell.X), Rounded.Mm(part.Voxels.Cell.Y), Rounded.Mm(part.Voxels.Cell.Z)],
            Cells = band.Nominal.Cells.Count,
            History = [.. Thinned(band.Nominal.History).Select(CureMomentSummary.Of)],
        };
    }

    /// <summary>At most so many moments, the hottest among them.</summary>
    internal static IEnumerable<CureMoment> Thinned(IReadOnlyList<CureMoment> history)
    {
        int step = Math.Max(1, (history.Count + MostMoments - 1) / MostMoments), hottest = 0;
        for (int i = 0; i < history.Count; i++)
            if (history[i].Hottest > history[hottest].Hottest)
                hottest = i;
        return history.Where((_, index) => index % step == 0 || index == history.Count - 1 || index == hottest);
    }
}

/// <summary>How long it must stand in water.</summary>
/// <param name="Status">How the search ended.</param>
/// <param name="Hours">Shortest time in water.</param>
/// <param name="PeakCelsius">Peak of the resin with it, at the warm end of the range.</param>
/// <param name="PeakInAirCelsius">Peak of the resin without water, at the warm end of the range.</param>
public sealed record WaterTimeSummary(WaterTimeStatus Status, double Hours, double PeakCelsius, double PeakInAirCelsius)
{
    internal static WaterTimeSummary Of(WaterTime water) => new(water.Status, Rounded.Digits(water.Duration / 3600), CureSlabSummary.Celsius(water.Peak), CureSlabSummary.Celsius(water.PeakWithout));
}

/// <summary>The cure of a part at one end or in the middle of its range.</summary>
/// <param name="Status">Whether it was followed to the end.</param>
/// <param name="PeakResinCelsius">Highest temperature of the resin.</param>
/// <param name="PeakHours">When.</param>
/// <param name="PeakPlace">Where, in the axes of the part's mesh.</param>
/// <param name="PeakWallCelsius">Highest temperature of the walls' inner face.</param>
/// <param name="PeakWallOuterCelsius">Highest temperature of the surface.</param>
/// <param name="GelHours">When no resin flows any more.</param>
/// <param name="HandlingHours">When it can be handled.</param>
/// <param name="MeanConversion">Mean share reacted at the end.</param>
/// <param name="LeastConversion">Least share reacted at the end.</param>
/// <param name="EnergyGapPercent">How far released, stored and lost heat miss each other.</param>
public sealed record CureNumbers(
    CureStatus Status, double PeakResinCelsius, double PeakHours, PlaceSummary PeakPlace, double PeakWallCelsius, double PeakWallOuterCelsius, double? GelHours, double? HandlingHours,
    double MeanConversion, double LeastConversion, double EnergyGapPercent)
{
    internal static CureNumbers Of(PartCured part, PartCureResult run) => new(
        run.Status, CureSlabSummary.Celsius(run.Resin.Temperature), Rounded.Digits(run.Resin.Time / 3600), PlaceSummary.Of(part.Part.InMesh(run.HottestPlace)),
        CureSlabSummary.Celsius(run.WallInside.Temperature), CureSlabSummary.Celsius(run.WallOutside.Temperature), Hours(run.GelEverywhere), Hours(run.Handling),
        Rounded.Digits(run.MeanConversion), Rounded.Digits(run.LeastConversion), Rounded.Percent(run.Balance.Gap));

    private static double? Hours(double seconds) => double.IsFinite(seconds) ? Rounded.Digits(seconds / 3600) : null;
}

/// <summary>A moment of a cure.</summary>
/// <param name="Hours">After the first pour.</param>
/// <param name="HottestCelsius">Hottest resin.</param>
/// <param name="MeanCelsius">Mean of the resin.</param>
/// <param name="WallInsideCelsius">Hottest inner face of the walls.</param>
/// <param name="WallOutsideCelsius">Hottest surface.</param>
/// <param name="SurroundingsCelsius">Air or water.</param>
/// <param name="MeanConversion">Mean share reacted.</param>
public sealed record CureMomentSummary(double Hours, double HottestCelsius, double MeanCelsius, double WallInsideCelsius, double WallOutsideCelsius, double SurroundingsCelsius, double MeanConversion)
{
    internal static CureMomentSummary Of(CureMoment moment) => new(
        Rounded.Digits(moment.Time / 3600), CureSlabSummary.Celsius(moment.Hottest), CureSlabSummary.Celsius(moment.Mean), CureSlabSummary.Celsius(moment.WallInside),
        CureSlabSummary.Celsius(moment.WallOutside), CureSlabSummary.Celsius(moment.Surroundings), Rounded.Digits(moment.MeanConversion));
}

/// <summary>A mass of resin that stands by itself.</summary>
/// <param name="PeakCelsius">Highest temperature.</param>
/// <param name="PeakMinutes">When.</param>
/// <param name="WorkingMinutes">End of its working time; null when it does not end in the time followed.</param>
/// <param name="GelMinutes">When it no longer flows.</param>
public sealed record LumpSummary(double PeakCelsius, double PeakMinutes, double? WorkingMinutes, double? GelMinutes)
{
    internal static LumpSummary Of(CupRun run) => new(CureSlabSummary.Celsius(run.Peak.Temperature), Rounded.Digits(run.Peak.Time / 60), CureSlabSummary.Minutes(run.PotLife), CureSlabSummary.Minutes(run.Gel));
}
