using Finwright.Numerics;

namespace Finwright.Strength.Margins;

/// <summary>What of a fin may give.</summary>
public enum StressedPart
{
    /// <summary>The wall, pulled apart between its layers.</summary>
    WallAcrossLayers,

    /// <summary>The wall, along its layers.</summary>
    WallAlongLayers,

    /// <summary>The filled inside.</summary>
    Core,

    /// <summary>A carbon rod.</summary>
    Rod,

    /// <summary>The bond between a carbon rod and the blade.</summary>
    RodBond,

    /// <summary>The bond at a cut across the blade.</summary>
    Cut,

    /// <summary>The corner where a blade that was printed with its base meets the hull plane.</summary>
    RootCorner,
}

/// <summary>Where one part of a fin is strained most, against what it bears.</summary>
/// <param name="Part">What.</param>
/// <param name="Name">In words, with the number of a rod.</param>
/// <param name="X">Where, metres aft.</param>
/// <param name="Y">At what depth, metres.</param>
/// <param name="Stress">Equivalent stress there, Pa, positive.</param>
/// <param name="Strength">What the part bears, Pa.</param>
public sealed record StressPeak(StressedPart Part, string Name, double X, double Y, double Stress, Ranged Strength)
{
    /// <summary>By how much the load may grow before the part gives; as great as a number can be without stress.</summary>
    public double Reserve => Stress > 0 ? Strength.Value / Stress : double.MaxValue;

    /// <summary>The same with the weakest material within its range.</summary>
    public double LeastReserve => Stress > 0 ? Strength.Low / Stress : double.MaxValue;
}
