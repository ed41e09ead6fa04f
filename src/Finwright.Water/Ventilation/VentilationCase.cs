using Finwright.Numerics;

namespace Finwright.Water.Ventilation;

/// <summary>The flow over one strip of the fin, as the ventilation margins need it.</summary>
/// <param name="Depth">Depth of the strip below the hull, m.</param>
/// <param name="AngleOfAttack">Effective angle of attack without sign, radians.</param>
/// <param name="StallAngle">Angle at which the strip's section has its highest lift, radians, above zero.</param>
/// <param name="Separation">Where the suction side's layer leaves for good, x/c; 1 when attached.</param>
/// <param name="MinimumCp">Lowest pressure coefficient, on the speed of sailing.</param>
/// <param name="Load">Side force per depth, N/m, without sign; weights the strips.</param>
public readonly record struct StripCondition(double Depth, double AngleOfAttack, double StallAngle, double Separation, double MinimumCp, double Load);

/// <summary>Ways for air to the root.</summary>
public sealed record AirPath
{
    /// <summary>Gap between hull and root, m.</summary>
    public required double RootGap { get; init; }

    /// <summary>Whether the bolt holes are sealed; null when not known.</summary>
    public bool? BoltHolesSealed { get; init; }

    /// <summary>Least distance of hull between the root and open air, to the side or behind, m; negative when the root stands out.</summary>
    public required double HullCover { get; init; }

    /// <summary>Chord at the root, m.</summary>
    public required double RootChord { get; init; }
}

/// <summary>One load case as the ventilation margins need it; plain numbers from whatever worked out the flow.</summary>
public sealed record VentilationCase
{
    /// <summary>The water.</summary>
    public required WaterProperties Water { get; init; }

    /// <summary>m/s.</summary>
    public required double Speed { get; init; }

    /// <summary>Depth of the tip below the hull, m.</summary>
    public required double Span { get; init; }

    /// <summary>Area of the fin, m².</summary>
    public required double Area { get; init; }

    /// <summary>Side force on the fin, N, without sign.</summary>
    public required double SideForce { get; init; }

    /// <summary>Strips from root to tip; empty when the flow is not known.</summary>
    public required IReadOnlyList<StripCondition> Strips { get; init; }

    /// <summary>
    /// The angle at which the root zone's separation reaches its limit, over the present angle, when a polar tells; null when not known.
    /// Only gives the speed at which it begins.
    /// </summary>
    public double? RootSeparationAngleRatio { get; init; }

    /// <summary>Ways for air; null when not known.</summary>
    public AirPath? AirPath { get; init; }

    internal void Check()
    {
        Require.Positive(Speed);
        Require.Positive(Span);
        Require.Positive(Area);
        Require.NotNegative(SideForce);
        foreach (StripCondition strip in Strips)
        {
            Require.Between(strip.Depth, 0, Span);
            Require.Between(strip.AngleOfAttack, 0, Math.PI / 2);
            Require.Positive(strip.StallAngle);
            Require.Between(strip.Separation, 0, 1);
            Require.Finite(strip.MinimumCp);
            Require.NotNegative(strip.Load);
        }

        if (RootSeparationAngleRatio is double ratio)
            Require.Positive(ratio);
        if (AirPath is AirPath path)
        {
            Require.NotNegative(path.RootGap);
            Require.Finite(path.HullCover);
            Require.Positive(path.RootChord);
        }
    }
}
