using Finwright.Numerics;

namespace Finwright.Strength.Joints;

/// <summary>A bolt or rod that holds two parts together where they meet.</summary>
public sealed record Reinforcement
{
    /// <summary>Where its axis crosses the joint, m aft.</summary>
    public required double X { get; init; }

    /// <summary>Where its axis crosses the joint, m to starboard.</summary>
    public required double Z { get; init; }

    /// <summary>Cross section that carries, m²: the stress area of a thread.</summary>
    public required double Area { get; init; }

    /// <summary>Young's modulus, Pa.</summary>
    public required double Modulus { get; init; }

    /// <summary>
    /// Length over which it stretches, m: from head to nut for a bolt; for a bonded rod about four diameters to each side of the joint, over which the
    /// bond takes over the force (judgement).
    /// </summary>
    public required double FreeLength { get; init; }

    /// <summary>Pull before the joint is loaded, N; 0 for a bonded rod.</summary>
    public double Preload { get; init; }

    /// <summary>Whether it pushes as well as pulls: a bonded rod does, a bolt goes slack.</summary>
    public bool CarriesCompression { get; init; }

    /// <summary>Pull over stretching, N/m.</summary>
    public double Stiffness => Modulus * Area / FreeLength;

    internal void Check()
    {
        Require.Finite(X);
        Require.Finite(Z);
        Require.Positive(Area);
        Require.Positive(Modulus);
        Require.Positive(FreeLength);
        Require.NotNegative(Preload);
    }
}
