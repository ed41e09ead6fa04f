namespace Finwright.Numerics;

/// <summary>A value with the range it may lie in; as good as certain that it does (about two standard deviations to each side).</summary>
/// <param name="Value">The value to compute with.</param>
/// <param name="Low">Lower end, not above the value.</param>
/// <param name="High">Upper end, not below the value.</param>
public readonly record struct Ranged(double Value, double Low, double High)
{
    /// <summary>A value that is taken as exact.</summary>
    public static Ranged Exact(double value) => new(value, value, value);

    /// <summary>Standard deviation over the value, taking the range as two standard deviations to each side; 0 for an exact value.</summary>
    public double RelativeDeviation => Value is 0 ? 0 : (High - Low) / (4 * Math.Abs(Value));

    /// <summary>Value and range times a factor.</summary>
    public Ranged Times(double factor) => factor >= 0
        ? new(factor * Value, factor * Low, factor * High)
        : new(factor * Value, factor * High, factor * Low);
}
