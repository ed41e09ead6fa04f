using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Making.Cure;

/// <summary>Resin between two printed walls, wide enough that heat leaves through the walls alone. SI, K.</summary>
public sealed record SlabCase
{
    /// <summary>The resin.</summary>
    public required ResinSystem Resin { get; init; }

    /// <summary>Thickness of the resin between the walls, metres.</summary>
    public required double Thickness { get; init; }

    /// <summary>Thickness of each wall, outside the resin, metres; 0 for none.</summary>
    public double WallThickness { get; init; } = 0.0012;

    /// <summary>Share of the inside that is plastic, 0 to 0.6.</summary>
    public double InfillShare { get; init; }

    /// <summary>The plastic.</summary>
    public PlasticHeat Plastic { get; init; } = PlasticHeat.Petg;

    /// <summary>Temperature of resin and walls at the beginning, K.</summary>
    public required double StartTemperature { get; init; }

    /// <summary>Temperature of the surroundings, K.</summary>
    public required double Surroundings { get; init; }

    /// <summary>What lies on both walls.</summary>
    public required SurfaceCooling Cooling { get; init; }

    /// <summary>How long it is followed, s.</summary>
    public double Duration { get; init; } = 24 * 3600;

    /// <summary>Multiplies the rate of reaction.</summary>
    public double RateFactor { get; init; } = 1;

    /// <summary>Multiplies the coefficient of the surface.</summary>
    public double CoolingFactor { get; init; } = 1;

    /// <summary>Cells through half the resin; each wall takes a fifth as many, at least four.</summary>
    public int Cells { get; init; } = 40;

    /// <summary>How finely it is followed in time.</summary>
    public CureOptions Options { get; init; } = new();

    internal void Check()
    {
        Require.Positive(Thickness);
        Require.NotNegative(WallThickness);
        Require.Between(InfillShare, 0, 0.6);
        Require.Between(StartTemperature, 200, 500);
        Require.Between(Surroundings, 200, 500);
        Require.Positive(Duration);
        Require.NotNegative(RateFactor);
        Require.Positive(CoolingFactor);
        Require.Between(Cells, 2, 10000);
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
    }
}

/// <summary>What a slab does while it cures.</summary>
public sealed record SlabCure
{
    /// <summary>Whether it was followed to the end.</summary>
    public required CureStatus Status { get; init; }

    /// <summary>Highest temperature in the middle.</summary>
    public required CurePeak Centre { get; init; }

    /// <summary>Conversion in the middle at that time.</summary>
    public required double ConversionAtPeak { get; init; }

    /// <summary>Highest temperature where resin and wall meet.</summary>
    public required CurePeak WallInside { get; init; }

    /// <summary>Highest temperature of the surface.</summary>
    public required CurePeak WallOutside { get; init; }

    /// <summary>When the middle no longer flows, s; infinite when it still does.</summary>
    public required double GelAtCentre { get; init; }

    /// <summary>When the last place no longer flows, s; infinite when one still does.</summary>
    public required double GelEverywhere { get; init; }

    /// <summary>Mean conversion at the end.</summary>
    public required double MeanConversion { get; init; }

    /// <summary>Least conversion at the end.</summary>
    public required double LeastConversion { get; init; }

    /// <summary>Moments from beginning to end.</summary>
    public required IReadOnlyList<CureMoment> History { get; init; }

    /// <summary>Where the heat went, for each square metre of half the slab.</summary>
    public required HeatBalance Balance { get; init; }

    /// <summary>Steps in time.</summary>
    public required int Steps { get; init; }
}
