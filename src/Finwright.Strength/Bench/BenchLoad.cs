namespace Finwright.Strength.Bench;

/// <summary>A known weight hung on a fin that is held by its base, blade level.</summary>
/// <param name="Mass">kg, positive.</param>
/// <param name="Depth">Where it hangs along the span, from the hull plane, metres.</param>
/// <param name="ChordShare">Where it hangs along the chord: 0 at the leading edge, 1 at the trailing edge.</param>
public readonly record struct BenchLoad(double Mass, double Depth, double ChordShare)
{
    /// <summary>Standard acceleration of free fall, m/s² (BIPM, The International System of Units; exact).</summary>
    public const double FreeFall = 9.80665;

    /// <summary>Its weight, N.</summary>
    public double Force => Mass * FreeFall;
}
