namespace Finwright.Strength.Bench;

/// <summary>What is read on the bench.</summary>
public enum BenchQuantity
{
    /// <summary>How far a place moves, metres, positive the way the weight pulls.</summary>
    Deflection,

    /// <summary>How far a section turns, radians, positive when its trailing edge goes farther the way the weight pulls.</summary>
    Twist,
}

/// <summary>One number read on the bench under a hung weight, less the same number without it.</summary>
/// <param name="Load">The weight.</param>
/// <param name="ReadDepth">Depth at which it was read, from the hull plane, metres, 0 to the span.</param>
/// <param name="ReadShare">Where along the chord it was read: 0 at the leading edge, 1 at the trailing edge; without meaning for a twist, which is that of the section.</param>
/// <param name="Quantity">What was read.</param>
/// <param name="Value">The reading, metres or radians.</param>
/// <param name="Deviation">Its standard deviation, in the same unit; above 0.</param>
/// <param name="Name">Its name for messages, beginning with a capital letter: "The deflection on line 7".</param>
public readonly record struct BenchMeasurement(BenchLoad Load, double ReadDepth, double ReadShare, BenchQuantity Quantity, double Value, double Deviation, string Name);
