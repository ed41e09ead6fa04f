namespace Finwright.Strength.Calibration;

/// <summary>An unknown factor on a stiffness, as far as it is known before the bench.</summary>
/// <param name="Name">What it multiplies, in words: "walls", "core", "rods", "root".</param>
/// <param name="RelativeDeviation">Standard deviation of its logarithm before any reading, which for small ones is its relative deviation; above 0. From <see cref="Finwright.Numerics.Ranged.RelativeDeviation"/>.</param>
public sealed record BenchFactor(string Name, double RelativeDeviation);

/// <summary>One reading of the bench.</summary>
/// <param name="Value">What was read, in any unit that the prediction shares.</param>
/// <param name="Deviation">Standard deviation of the reading, in the same unit; above 0. Repeat the reading to know it: a dial gauge with its stand moves 0.1 mm, a ruler 0.5 mm (judgement).</param>
public readonly record struct BenchReading(double Value, double Deviation)
{
    /// <summary>Its name for remarks, beginning with a capital letter; null for its number.</summary>
    public string? Name { get; init; }
}
