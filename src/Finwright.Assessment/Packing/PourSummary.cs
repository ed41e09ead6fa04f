using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Making.Pores;
using Finwright.Making.Quantities;
using Finwright.Numerics;

namespace Finwright.Assessment.Packing;

/// <summary>
/// How the parts are poured, as <c>pour.json</c> and <c>finwright pour --json</c> give it. Field names are these properties in lower case with underscores; each
/// carries its unit. Places are in the axes of the part's mesh: of a fin, x aft, y from the hull to the tip, z to starboard.
/// </summary>
public sealed record PourSummary() : DesignAnswer("finwright-pour")
{
    /// <summary>Name of the resin system.</summary>
    public string? Resin { get; init; }

    /// <summary>How it stands, worst first.</summary>
    public IReadOnlyList<VerdictSummary> Verdicts { get; init; } = [];

    /// <summary>The motion file from which pores were taken; null when they are as planned.</summary>
    public MotionPoresSummary? Motion { get; init; }

    /// <summary>Part by part.</summary>
    public IReadOnlyList<PouredPartSummary> Parts { get; init; } = [];

    /// <summary>All parts together.</summary>
    public PourNeedSummary? Total { get; init; }

    /// <summary>Edge of the gyroid's cell.</summary>
    public double? GyroidCellMm { get; init; }

    /// <summary>What is assumed, and what to take care of.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Everything found, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Sums up.</summary>
    /// <param name="result">What was worked out.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static PourSummary Of(MakingResult result, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(result);
        FinPoured? poured = result.Poured;
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Name,
            DesignSha256 = result.DesignHash,
            Sentence = poured is null ? "The pour was not worked out." : Said(poured),
            Resin = poured?.Resin.Name,
            Verdicts = [.. result.PourVerdicts.Select(VerdictSummary.Of)],
            Motion = result.Motion is { } motion ? MotionPoresSummary.Of(motion) : null,
            Parts = poured is null ? [] : [.. poured.Parts.Select(PouredPartSummary.Of)],
            Total = poured is null || poured.Parts.Count == 0 ? null : PourNeedSummary.Of([.. poured.Parts.Select(part => part.Need)], poured.Resin.Density),
            GyroidCellMm = poured is null ? null : Rounded.Mm(poured.CellEdge),
            Notes = poured is null || poured.Parts.Count == 0 ? [] :
            [
                result.Motion is { } used
                    ? $"Pores of plate {used.Plate}: everything inside the outlines less the plastic that {used.File} lays, shared among its parts as planned. Air and filling are judged by the planned pattern."
                    : "Pores: the room inside walls and solid layers, less the gyroid. What a motion file really lays may differ: pour --motion takes it into account.",
                "Air: resin rises level; bubbles that cling to lines are not seen. Tilt, rock and tap while it fills.",
                .. Cautions.Pour,
            ],
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
    }

    private static string Said(FinPoured poured)
    {
        if (poured.Parts.Count == 0)
            return "No part has room for resin.";
        double pores = poured.Parts.Sum(part => part.Need.Pores.Value), total = poured.Parts.Sum(part => part.Need.Total.Value), air = poured.Parts.Sum(part => part.Air.Volume);
        int cups = poured.Parts.Sum(part => part.Batches.Batches.Count);
        return $"The pores take {1e6 * pores:0} ml; mix {1e3 * total * poured.Resin.Density:0} g in {cups} {(cups == 1 ? "cup" : "cups")}, reservoirs and losses included. {(air * 1e6 < 0.05 ? "All air finds its way out." : $"Held as said, {1e6 * air:0.0} ml of air stay.")}";
    }
}

/// <summary>A motion file from which pores were taken.</summary>
/// <param name="File">Its name.</param>
/// <param name="Plate">Number of the plate that it prints.</param>
/// <param name="Parts">The parts on it, whose pores are from the file.</param>
/// <param name="LaidMl">Plastic that it lays in them.</param>
/// <param name="PlannedMl">Plastic that was planned.</param>
public sealed record MotionPoresSummary(string File, int Plate, IReadOnlyList<string> Parts, double LaidMl, double PlannedMl)
{
    internal static MotionPoresSummary Of(MotionPores motion) => new(motion.File, motion.Plate, motion.Parts, Rounded.Cm3(motion.Laid), Rounded.Cm3(motion.Planned));
}

/// <summary>A value with its range.</summary>
/// <param name="Value">The value.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public sealed record RangeSummary(double Value, double Low, double High)
{
    internal static RangeSummary Of(Ranged range, double factor) => new(Rounded.Digits(range.Value * factor), Rounded.Digits(range.Low * factor), Rounded.Digits(range.High * factor));

    internal static RangeSummary? Of(Ranged? range, double factor) => range is { } given ? Of(given, factor) : null;
}

/// <summary>A place, mm.</summary>
/// <param name="XMm">x.</param>
/// <param name="YMm">y.</param>
/// <param name="ZMm">z.</param>
public sealed record PlaceSummary(double XMm, double YMm, double ZMm)
{
    internal static PlaceSummary Of(Point3 place) => new(Rounded.Mm(place.X), Rounded.Mm(place.Y), Rounded.Mm(place.Z));
}

/// <summary>What must be mixed.</summary>
/// <param name="PoresMl">Room for resin.</param>
/// <param name="TopUpMl">What the resin shrinks by.</param>
/// <param name="ReservoirsMl">What stands in tubes and funnels at the end.</param>
/// <param name="LossesMl">What stays in cups and syringe, and drips.</param>
/// <param name="TotalMl">All together.</param>
/// <param name="TotalGrams">Its mass.</param>
public sealed record PourNeedSummary(RangeSummary PoresMl, RangeSummary TopUpMl, double ReservoirsMl, RangeSummary LossesMl, RangeSummary TotalMl, RangeSummary TotalGrams)
{
    private const double Millilitres = 1e6, Grams = 1e3;

    internal static PourNeedSummary Of(IReadOnlyList<PourNeed> needs, double density)
    {
        Ranged Sum(Func<PourNeed, Ranged> of) => new(needs.Sum(n => of(n).Value), needs.Sum(n => of(n).Low), needs.Sum(n => of(n).High));
        Ranged total = Sum(need => need.Total);
        return new(
            RangeSummary.Of(Sum(need => need.Pores), Millilitres), RangeSummary.Of(Sum(need => need.TopUp), Millilitres), Rounded.Digits(Millilitres * needs.Sum(need => need.Reservoirs)),
            RangeSummary.Of(Sum(need => need.Losses), Millilitres), RangeSummary.Of(total, Millilitres), RangeSummary.Of(total, density * Grams));
    }
}

/// <summary>A part's pour.</summary>
public sealed record PouredPartSummary
{
    private const double Millilitres = 1e6, Grams = 1e3;

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Room inside walls and solid layers, gyroid and pores together.</summary>
    public required double CoreMl { get; init; }

    /// <summary>Room for resin.</summary>
    public required RangeSummary PoresMl { get; init; }

    /// <summary>What the range is made of.</summary>
    public required IReadOnlyList<string> PoresReasons { get; init; }

    /// <summary>What must be mixed for it.</summary>
    public required PourNeedSummary Need { get; init; }

    /// <summary>How it is held, in words.</summary>
    public required string Attitude { get; init; }

    /// <summary>Upward unit vector in the axes of the mesh.</summary>
    public required IReadOnlyList<double> Up { get; init; }

    /// <summary>Whether the attitude was found rather than given.</summary>
    public required bool AttitudeFound { get; init; }

    /// <summary>Air that stays.</summary>
    public required double TrappedMl { get; init; }

    /// <summary>Its share of the pores.</summary>
    public required double TrappedPercent { get; init; }

    /// <summary>The bubbles, the largest first.</summary>
    public required IReadOnlyList<BubbleSummary> Bubbles { get; init; }

    /// <summary>Of the attitudes tried, the one that keeps least air; null with suggested ports.</summary>
    public OtherAttitudeSummary? BestAttitude { get; init; }

    /// <summary>Two attitudes to rock between; null when no pair is better than the best alone.</summary>
    public RockingSummary? Rocking { get; init; }

    /// <summary>The ports, the feed first.</summary>
    public required IReadOnlyList<PortSummary> Ports { get; init; }

    /// <summary>Whether these are suggested, because the part has none of its own.</summary>
    public required bool PortsSuggested { get; init; }

    /// <summary>Where ports should go in this attitude, and what air would stay.</summary>
    public required SuggestedPortsSummary Suggested { get; init; }

    /// <summary>Core in which the labyrinths break into pockets.</summary>
    public required double ThinCoreMl { get; init; }

    /// <summary>Core thinner than this is meant.</summary>
    public required double ThinCoreMm { get; init; }

    /// <summary>How the filling ends; null when it is not known.</summary>
    public FillStatus? Fill { get; init; }

    /// <summary>How long the pores need at least; null unless filled.</summary>
    public double? FillMinutes { get; init; }

    /// <summary>Working time of a full cup by its kinetics; null when it does not end in the time it is followed.</summary>
    public double? CupLifeMinutes { get; init; }

    /// <summary>Working time by the data sheet at the pour's temperature; null when it is not known.</summary>
    public double? PotLifeMinutes { get; init; }

    /// <summary>What limits a batch.</summary>
    public required BatchLimit BatchLimit { get; init; }

    /// <summary>Cup by cup.</summary>
    public required IReadOnlyList<BatchSummary> Batches { get; init; }

    internal static PouredPartSummary Of(PartPoured part)
    {
        Point3 up = part.Layers.ToLayers.RigidInverse().Turn(part.Up);
        return new()
        {
            Name = part.Name,
            CoreMl = Rounded.Cm3(part.Layers.CoreVolume),
            PoresMl = RangeSummary.Of(part.Pores.Pores, Millilitres),
            PoresReasons = part.Pores.Reasons,
            Need = PourNeedSummary.Of([part.Need], part.Batches.Batches[0].Mass.Value / (part.Batches.Batches[0].Volume.Value + BatchPlan.LeftInCup)),
            Attitude = part.Held(part.Attitude),
            Up = [Rounded.Digits(up.X), Rounded.Digits(up.Y), Rounded.Digits(up.Z)],
            AttitudeFound = part.IsAttitudeFound,
            TrappedMl = Rounded.Cm3(part.Air.Volume),
            TrappedPercent = Rounded.Percent(part.Air.Share),
            Bubbles = [.. part.Air.Regions.Select(region => BubbleSummary.Of(part, region))],
            BestAttitude = part.Search is { } search ? new(part.Held(search.Best.Attitude), Rounded.Cm3(search.Best.Air.Volume), search.Tried) : null,
            Rocking = part.Search?.Pair is { } pair ? new(part.Held(pair.First.Attitude), part.Held(pair.Second.Attitude), Rounded.Cm3(pair.Air.Volume)) : null,
            Ports = [.. part.Ports.Select(port => PortSummary.Of(part, port))],
            PortsSuggested = part.ArePortsSuggested,
            Suggested = new(
                PlaceSummary.Of(part.InMesh(part.Suggested.Feed.Mouth)),
                [.. part.Suggested.Vents.Select(vent => PlaceSummary.Of(part.InMesh(vent.Mouth)))],
                Rounded.Cm3(part.Suggested.Air.Volume)),
            ThinCoreMl = Rounded.Cm3(part.Thin.Volume),
            ThinCoreMm = Rounded.Mm(part.Thin.Thickness),
            Fill = part.Fill?.Status,
            FillMinutes = part.Fill?.Time is double time ? Rounded.Digits(time / 60) : null,
            CupLifeMinutes = CureSlabSummary.Minutes(part.CupLife),
            PotLifeMinutes = part.Batches.PotLife is double life ? Rounded.Digits(life / 60) : null,
            BatchLimit = part.Batches.Limit,
            Batches = [.. part.Batches.Batches.Select(batch => new BatchSummary(
                batch.Number, RangeSummary.Of(batch.Volume, Millilitres), RangeSummary.Of(batch.Mass, Grams), RangeSummary.Of(batch.ResinMass, Grams), RangeSummary.Of(batch.HardenerMass, Grams),
                RangeSummary.Of(batch.ResinVolume, Millilitres), RangeSummary.Of(batch.HardenerVolume, Millilitres), Rounded.Digits(batch.PouringTime / 60)))],
        };
    }
}

/// <summary>A bubble that stays.</summary>
/// <param name="VolumeMl">Pore volume.</param>
/// <param name="Highest">Its highest point; a vent there frees it.</param>
/// <param name="Middle">Its middle.</param>
/// <param name="HeightMm">From its highest point down to where the resin closes its way out.</param>
/// <param name="Closed">Whether it has no way to any vent, however the part is turned.</param>
public sealed record BubbleSummary(double VolumeMl, PlaceSummary Highest, PlaceSummary Middle, double HeightMm, bool Closed)
{
    internal static BubbleSummary Of(PartPoured part, TrappedRegion region) =>
        new(Rounded.Cm3(region.Volume), PlaceSummary.Of(part.InMesh(region.Highest)), PlaceSummary.Of(part.InMesh(region.Centroid)), Rounded.Mm(region.Depth), region.IsClosed);
}

/// <summary>Another attitude.</summary>
/// <param name="Attitude">In words.</param>
/// <param name="TrappedMl">Air that stays in it.</param>
/// <param name="Tried">Attitudes tried.</param>
public sealed record OtherAttitudeSummary(string Attitude, double TrappedMl, int Tried);

/// <summary>A pair of attitudes to rock between.</summary>
/// <param name="First">One.</param>
/// <param name="Second">The other.</param>
/// <param name="TrappedMl">Air that leaves in neither.</param>
public sealed record RockingSummary(string First, string Second, double TrappedMl);

/// <summary>A port.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Role">feed or vent.</param>
/// <param name="AtCore">Where it meets the core.</param>
/// <param name="DiameterMm">Diameter.</param>
/// <param name="DepthMm">How deep it is drilled into the core.</param>
/// <param name="OpensBothPercent">At how many of the places in the pattern it opens both labyrinths.</param>
/// <param name="OpensBothFromMm">Depth in the core from which it does so for certain; null when no depth does.</param>
public sealed record PortSummary(string Name, string Role, PlaceSummary AtCore, double DiameterMm, double DepthMm, double OpensBothPercent, double? OpensBothFromMm)
{
    internal static PortSummary Of(PartPoured part, PouredPort port) => new(
        port.Name, port.IsFeed ? "feed" : "vent", PlaceSummary.Of(part.InMesh(port.Port.Mouth)), Rounded.Mm(port.Port.Diameter), Rounded.Mm(port.Depth),
        Rounded.Percent(port.Opening.Share), port.LeastDepth is double least ? Rounded.Mm(least) : null);
}

/// <summary>Where ports should go.</summary>
/// <param name="Feed">For the resin.</param>
/// <param name="Vents">For the air, the highest first.</param>
/// <param name="TrappedMl">Air that stays with these vents.</param>
public sealed record SuggestedPortsSummary(PlaceSummary Feed, IReadOnlyList<PlaceSummary> Vents, double TrappedMl);

/// <summary>A cup.</summary>
/// <param name="Number">From 1.</param>
/// <param name="VolumeMl">To pour.</param>
/// <param name="MassGrams">Mix, with what stays in the cup.</param>
/// <param name="ResinGrams">Resin; null when the ratio is not known.</param>
/// <param name="HardenerGrams">Hardener.</param>
/// <param name="ResinMl">Resin by volume; null when its density is not known.</param>
/// <param name="HardenerMl">Hardener by volume.</param>
/// <param name="PouringMinutes">Time to pour it by hand.</param>
public sealed record BatchSummary(int Number, RangeSummary VolumeMl, RangeSummary MassGrams, RangeSummary? ResinGrams, RangeSummary? HardenerGrams, RangeSummary? ResinMl, RangeSummary? HardenerMl, double PouringMinutes);
