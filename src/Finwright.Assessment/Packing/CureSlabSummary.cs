using Finwright.Making.Cure;
using Finwright.Making.Resins;

namespace Finwright.Assessment.Packing;

/// <summary>
/// The cure of a slab between two printed walls, as <c>finwright cure-slab --json</c> gives it; field names are these properties in camel case. What
/// did not happen, or was not asked, is null.
/// </summary>
public sealed record CureSlabSummary
{
    private const double Kelvin = 273.15, Minute = 60;

    /// <summary>Says what the file is.</summary>
    public string Kind { get; init; } = "finwright-cure-slab";

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; init; } = 2;

    /// <summary>Name and version of the program.</summary>
    public required string MadeBy { get; init; }

    /// <summary>The answer in plain words.</summary>
    public required string Sentence { get; init; }

    /// <summary>Name of the resin.</summary>
    public required string Resin { get; init; }

    /// <summary>Thickness of the resin between the walls; null when only the thickest pour was asked for.</summary>
    public required double? ThicknessMm { get; init; }

    /// <summary>Thickness of each wall.</summary>
    public required double WallMm { get; init; }

    /// <summary>Share of the inside that is plastic.</summary>
    public required double InfillPercent { get; init; }

    /// <summary>What lies on the walls: air, water.</summary>
    public required string Cooling { get; init; }

    /// <summary>The coefficient given; null when it is worked out.</summary>
    public required double? ConvectionWPerM2K { get; init; }

    /// <summary>Temperature of the surroundings.</summary>
    public required double AmbientCelsius { get; init; }

    /// <summary>Temperature of resin and walls at the beginning.</summary>
    public required double StartCelsius { get; init; }

    /// <summary>Temperature at which the walls soften.</summary>
    public required double SofteningCelsius { get; init; }

    /// <summary>Highest temperature in the middle, nominal.</summary>
    public double? PeakCentreCelsius => Nominal?.PeakCentreCelsius;

    /// <summary>When, after the pour, nominal.</summary>
    public double? PeakMinutes => Nominal?.PeakMinutes;

    /// <summary>Highest temperature of the walls' inner face, nominal.</summary>
    public double? PeakWallCelsius => Nominal?.PeakWallCelsius;

    /// <summary>When the middle no longer flows, nominal; null when it still does at the end.</summary>
    public double? GelMinutes => Nominal?.GelMinutes;

    /// <summary>Half the rate, cooling 30 % better.</summary>
    public CureSlabNumbers? Slow { get; init; }

    /// <summary>As given.</summary>
    public CureSlabNumbers? Nominal { get; init; }

    /// <summary>Twice the rate, cooling 30 % worse.</summary>
    public CureSlabNumbers? Fast { get; init; }

    /// <summary>Whether a small change of rate or cooling makes a large one of the peak.</summary>
    public bool? NearCritical { get; init; }

    /// <summary>Change of the peak with the logarithm of rate or cooling, K.</summary>
    public double? SensitivityKelvin { get; init; }

    /// <summary>Heat the slab can make over that at which it would run away, by one number; about 1 to 2 at the edge.</summary>
    public double? IgnitionShare { get; init; }

    /// <summary>Rise of temperature if no heat left at all.</summary>
    public required double AdiabaticRiseKelvin { get; init; }

    /// <summary>Thickest pour that stays below softening; null when it was not asked for.</summary>
    public CureThickestNumbers? Thickest { get; init; }

    /// <summary>What is assumed, and what to take care of.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Sums up.</summary>
    /// <param name="slab">The nominal case; its thickness counts only with a band.</param>
    /// <param name="band">The cure with its range; null when only the thickest pour was asked for.</param>
    /// <param name="thickest">Thickest pour by the nominal case and by the warm end; null when it was not asked for.</param>
    /// <param name="softening">Temperature at which the walls soften, K.</param>
    /// <param name="convection">The coefficient given, W/(m² K); null when it is worked out.</param>
    /// <param name="isWater">Whether water lies on the walls.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static CureSlabSummary Of(SlabCase slab, SlabBand? band, (ThickestPour Nominal, ThickestPour High)? thickest, double softening, double? convection, bool isWater, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(slab);
        CureThickestNumbers? numbers = thickest is { } pair ? CureThickestNumbers.Of(pair.Nominal, pair.High) : null;
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Sentence = string.Join(' ', ((string?[])[band is null ? null : Said(band, softening), numbers?.Sentence]).OfType<string>()),
            Resin = slab.Resin.Name,
            ThicknessMm = band is null ? null : Rounded.Mm(slab.Thickness),
            WallMm = Rounded.Mm(slab.WallThickness),
            InfillPercent = Rounded.Percent(slab.InfillShare),
            Cooling = isWater ? "water" : "air",
            ConvectionWPerM2K = convection,
            AmbientCelsius = Celsius(slab.Surroundings),
            StartCelsius = Celsius(slab.StartTemperature),
            SofteningCelsius = Celsius(softening),
            Slow = band is null ? null : CureSlabNumbers.Of(band.Slow),
            Nominal = band is null ? null : CureSlabNumbers.Of(band.Nominal),
            Fast = band is null ? null : CureSlabNumbers.Of(band.Fast),
            NearCritical = band?.IsNearCritical,
            SensitivityKelvin = band is null ? null : Rounded.Digits(band.Sensitivity),
            IgnitionShare = band is null ? null : Rounded.Digits(band.IgnitionShare),
            AdiabaticRiseKelvin = Rounded.Digits(CureRate.AdiabaticRise(slab.Resin)),
            Thickest = numbers,
            Notes = Assumptions(slab.Resin),
        };
    }

    internal static double Celsius(double kelvin) => Rounded.Digits(kelvin - Kelvin);

    internal static double? Minutes(double seconds) => double.IsFinite(seconds) ? Rounded.Digits(seconds / Minute) : null;

    private static string Said(SlabBand band, double softening)
    {
        double low = band.Slow.Centre.Temperature - Kelvin, nominal = band.Nominal.Centre.Temperature - Kelvin, high = band.Fast.Centre.Temperature - Kelvin, limit = softening - Kelvin;
        string wall = band.Nominal.WallInside.Temperature > softening ? $"; the walls soften at {limit:0} °C and reach it"
            : band.Fast.WallInside.Temperature > softening ? $"; at the warm end the walls pass the {limit:0} °C at which they soften"
            : $"; the walls stay below the {limit:0} °C at which they soften";
        string edge = band.IsNearCritical ? " It stands near the edge of running away: a little less cooling or a slightly faster resin makes a large difference." : "";
        return $"The middle peaks at {nominal:0} °C after {band.Nominal.Centre.Time / Minute:0} minutes (range {low:0} to {high:0} °C){wall}.{edge}";
    }

    private static IReadOnlyList<string> Assumptions(ResinSystem resin) =>
    [
        "Wide slab, heat leaves through both walls alone; edges and ends would cool it further.",
        "Range: rate from half to twice, cooling 30 % more or less. A cup test of your own resin narrows it: finwright resins fit.",
        resin.GlassTransition is null ? "This resin has no glass transition curve, so the reaction is never held back: at room temperature the end of the cure comes out too early." : "The reaction slows as the resin turns to glass.",
        "An estimate: the resin maker's data sheet goes before it. Feel the part, keep cold water at hand.",
    ];
}

/// <summary>The cure of a slab at one end or in the middle of its range.</summary>
/// <param name="PeakCentreCelsius">Highest temperature in the middle.</param>
/// <param name="PeakMinutes">When.</param>
/// <param name="PeakWallCelsius">Highest temperature of the walls' inner face.</param>
/// <param name="PeakWallOuterCelsius">Highest temperature of their outer face.</param>
/// <param name="GelMinutes">When the middle no longer flows; null when it still does at the end.</param>
/// <param name="GelEverywhereMinutes">When no place flows any more.</param>
/// <param name="ConversionAtPeak">Share reacted in the middle at the peak.</param>
/// <param name="ConversionAtEnd">Mean share reacted at the end.</param>
/// <param name="EnergyGapPercent">How far released, stored and lost heat miss each other.</param>
public sealed record CureSlabNumbers(
    double PeakCentreCelsius, double PeakMinutes, double PeakWallCelsius, double PeakWallOuterCelsius, double? GelMinutes, double? GelEverywhereMinutes,
    double ConversionAtPeak, double ConversionAtEnd, double EnergyGapPercent)
{
    internal static CureSlabNumbers Of(SlabCure cure) => new(
        CureSlabSummary.Celsius(cure.Centre.Temperature), Rounded.Digits(cure.Centre.Time / 60), CureSlabSummary.Celsius(cure.WallInside.Temperature), CureSlabSummary.Celsius(cure.WallOutside.Temperature),
        CureSlabSummary.Minutes(cure.GelAtCentre), CureSlabSummary.Minutes(cure.GelEverywhere), Rounded.Digits(cure.ConversionAtPeak), Rounded.Digits(cure.MeanConversion), Rounded.Percent(cure.Balance.Gap));
}

/// <summary>How thick may I pour?</summary>
/// <param name="NominalMm">Thickest by the nominal case; null when even the thinnest grows too warm.</param>
/// <param name="CautiousMm">Thickest by the warm end of the range; null when even the thinnest grows too warm.</param>
/// <param name="LookedAtToMm">Thickest slab looked at; a thickness equal to it means "at least".</param>
/// <param name="Sentence">In words.</param>
public sealed record CureThickestNumbers(double? NominalMm, double? CautiousMm, double LookedAtToMm, string Sentence)
{
    internal static CureThickestNumbers Of(ThickestPour nominal, ThickestPour high)
    {
        double? Mm(ThickestPour pour) => pour.Status == ThicknessStatus.NoneIsThinEnough ? null : Rounded.Mm(pour.Thickness);
        string Words(ThickestPour pour) => pour.Status switch
        {
            ThicknessStatus.NoneIsThinEnough => "not even 1 mm",
            ThicknessStatus.AllStayBelow => $"{1e3 * pour.Thickness:0} mm and more",
            _ => $"{1e3 * pour.Thickness:0.0} mm",
        };
        string steady = nominal.IsMonotone && high.IsMonotone ? "" : " Some thicker slabs come out cooler; the first limit is told.";
        return new(Mm(nominal), Mm(high), Rounded.Mm(ThickestPour.Thickest), $"Below softening you may pour {Words(high)} to be safe, {Words(nominal)} if resin and cooling are as told.{steady}");
    }
}
