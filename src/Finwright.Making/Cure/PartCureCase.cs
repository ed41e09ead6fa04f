using Finwright.Geometry;
using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Making.Cure;

/// <summary>One of the pours that fill a part.</summary>
/// <param name="Time">s from the first pour.</param>
/// <param name="Level">Height up to which the part is full after it, along the case's up, in layer axes, metres; infinite for the top.</param>
/// <param name="Temperature">Of the resin as it goes in, K.</param>
public sealed record CurePour(double Time, double Level, double Temperature);

/// <summary>Water that the part stands in for a while.</summary>
/// <param name="Start">s from the first pour.</param>
/// <param name="Duration">s.</param>
/// <param name="Temperature">Of the water, kept, K.</param>
/// <param name="Level">Height of the water along the case's up, in layer axes, metres; infinite when it covers all.</param>
public sealed record WaterBath(double Start, double Duration, double Temperature, double Level);

/// <summary>A part that cures: everything beside its shape. SI, K.</summary>
public sealed record PartCureCase
{
    /// <summary>The resin.</summary>
    public required ResinSystem Resin { get; init; }

    /// <summary>The plastic.</summary>
    public PlasticHeat Plastic { get; init; } = PlasticHeat.Petg;

    /// <summary>Share of the core that is plastic, 0 to 0.6.</summary>
    public required double InfillShare { get; init; }

    /// <summary>Thickness of the walls, metres; for the temperature of their inner face.</summary>
    public required double WallThickness { get; init; }

    /// <summary>Temperature of the room and of the part before the first pour, K.</summary>
    public required double Room { get; init; }

    /// <summary>Which way is up while it cures, in layer axes.</summary>
    public Point3 Up { get; init; } = new(0, 0, 1);

    /// <summary>The pours, times rising; none for one pour at the room's temperature to the top.</summary>
    public IReadOnlyList<CurePour> Pours { get; init; } = [];

    /// <summary>The bath; null for none.</summary>
    public WaterBath? Bath { get; init; }

    /// <summary>What air does to its surface; null for still air at a wall of the part's own height.</summary>
    public SurfaceCooling? InAir { get; init; }

    /// <summary>What water does to its surface; null for still water at a wall of the part's own height.</summary>
    public SurfaceCooling? InWater { get; init; }

    /// <summary>How long it is followed, s.</summary>
    public double Duration { get; init; } = 24 * 3600;

    /// <summary>Multiplies the rate of reaction.</summary>
    public double RateFactor { get; init; } = 1;

    /// <summary>Multiplies the coefficients of the surface.</summary>
    public double CoolingFactor { get; init; } = 1;

    /// <summary>How finely it is followed in time.</summary>
    public CureOptions Options { get; init; } = new(0.05, 5e-4);

    /// <summary>The pours as they happen: one to the top when none are told.</summary>
    internal IReadOnlyList<CurePour> PoursDone => Pours.Count > 0 ? Pours : [new(0, double.PositiveInfinity, Room)];

    internal void Check()
    {
        Require.Between(InfillShare, 0, 0.6);
        Require.NotNegative(WallThickness);
        Require.Between(Room, 250, 350);
        Require.Positive(Up.Dot(Up));
        Require.Positive(Duration);
        Require.NotNegative(RateFactor);
        Require.Positive(CoolingFactor);
        Require.Positive(Resin.Density);
        Require.Positive(Resin.HeatCapacity);
        Require.Positive(Resin.Conductivity);
        Require.Positive(Plastic.Density);
        Require.Positive(Plastic.HeatCapacity);
        Require.Positive(Plastic.Conductivity);
        Require.Positive(Options.TemperatureTolerance);
        Require.Positive(Options.ConversionTolerance);
        if (Options.LongestStep is { } longest)
            Require.Positive(longest);
        double last = 0;
        foreach (CurePour pour in PoursDone)
        {
            Require.AtLeast(pour.Time, last, nameof(Pours));
            Require.Between(pour.Temperature, 250, 400, nameof(Pours));
            // Infinite is to the top; not a number is not.
            Require.Between(pour.Level, double.NegativeInfinity, double.PositiveInfinity, nameof(Pours));
            last = pour.Time;
        }

        Require.Between(PoursDone[0].Time, 0, Math.BitDecrement(Duration), nameof(Pours));
        if (Bath is null)
            return;
        Require.NotNegative(Bath.Start, nameof(Bath));
        Require.NotNegative(Bath.Duration, nameof(Bath));
        Require.Between(Bath.Temperature, 270, 370, nameof(Bath));
        Require.Between(Bath.Level, double.NegativeInfinity, double.PositiveInfinity, nameof(Bath));
    }
}

/// <summary>What a part does while it cures.</summary>
public sealed record PartCureResult
{
    /// <summary>Whether it was followed to the end.</summary>
    public required CureStatus Status { get; init; }

    /// <summary>Highest temperature of the resin.</summary>
    public required CurePeak Resin { get; init; }

    /// <summary>Where, in layer axes, metres.</summary>
    public required Point3 HottestPlace { get; init; }

    /// <summary>Highest temperature of the walls' inner face.</summary>
    public required CurePeak WallInside { get; init; }

    /// <summary>Highest temperature of the surface.</summary>
    public required CurePeak WallOutside { get; init; }

    /// <summary>Mean conversion of the resin at the end.</summary>
    public required double MeanConversion { get; init; }

    /// <summary>Least conversion of the resin at the end.</summary>
    public required double LeastConversion { get; init; }

    /// <summary>When all the resin poured no longer flows, s; infinite when some still does at the end.</summary>
    public required double GelEverywhere { get; init; }

    /// <summary>When the part can be handled, s: all resin past <see cref="PartCure.HandlingConversion"/>; infinite when it is not yet so at the end.</summary>
    public required double Handling { get; init; }

    /// <summary>Moments from beginning to end.</summary>
    public required IReadOnlyList<CureMoment> History { get; init; }

    /// <summary>Cells of the grid that take part, by their numbers there.</summary>
    public required IReadOnlyList<int> Cells { get; init; }

    /// <summary>Temperature of each of them when the resin was hottest, K.</summary>
    public required IReadOnlyList<double> FieldAtPeak { get; init; }

    /// <summary>Where the heat went.</summary>
    public required HeatBalance Balance { get; init; }

    /// <summary>Resin poured in, kg.</summary>
    public required double ResinMass { get; init; }

    /// <summary>Steps in time.</summary>
    public required int Steps { get; init; }
}

/// <summary>A part's cure with its range.</summary>
/// <param name="Slow">Slow resin, well cooled.</param>
/// <param name="Nominal">As told.</param>
/// <param name="Fast">Fast resin, badly cooled.</param>
/// <param name="Sensitivity">Change of the nominal peak with the logarithm of rate or cooling, the greater of both, K; found on a grid of half as many cells each way.</param>
/// <param name="IgnitionShare">Heat the part can make in air over the heat at which it would run away there: see <see cref="Ignition"/>.</param>
public sealed record PartCureBand(PartCureResult Slow, PartCureResult Nominal, PartCureResult Fast, double Sensitivity, double IgnitionShare)
{
    /// <summary>True when a little less cooling or a little more rate changes the peak by much.</summary>
    public bool IsNearCritical => Sensitivity > CureBand.CriticalSensitivity;
}

/// <summary>How a search for a time in water ended.</summary>
public enum WaterTimeStatus
{
    /// <summary>No water is needed.</summary>
    NotNeeded,

    /// <summary>Found.</summary>
    Found,

    /// <summary>Even all the time in water is not enough.</summary>
    NotEnough,
}

/// <summary>How long a part must stay in water.</summary>
/// <param name="Status">How the search ended.</param>
/// <param name="Duration">Shortest time in water, s; the longest looked at when it is not enough.</param>
/// <param name="Peak">Peak of the resin with it, K.</param>
/// <param name="PeakWithout">Peak of the resin without water, K.</param>
/// <param name="Refinement">Cells of the grid used over those of the grid given, each way: 0.5 for the coarse grid.</param>
public sealed record WaterTime(WaterTimeStatus Status, double Duration, double Peak, double PeakWithout, double Refinement);
