using Finwright.Numerics;

namespace Finwright.Water;

/// <summary>How a value stands to its limit.</summary>
public enum MarginState
{
    /// <summary>Clear of the limit.</summary>
    Holds,

    /// <summary>Close to the limit.</summary>
    Tight,

    /// <summary>Beyond the limit.</summary>
    Fails,

    /// <summary>An input is missing or the method does not reach here.</summary>
    NotKnown,
}

/// <summary>One value against its limit, with how sure it is and when it begins.</summary>
/// <remarks>Never a bare yes or no: whoever shows the state shows value, limit and uncertainty with it.</remarks>
public sealed record Margin
{
    /// <summary>What is judged, in a few words.</summary>
    public required string Name { get; init; }

    /// <summary>The value; null when it is not known.</summary>
    public double? Value { get; init; }

    /// <summary>The limit that must not be passed; null when there is none.</summary>
    public double? Limit { get; init; }

    /// <summary>Whether the value must stay above the limit; else below.</summary>
    public bool MustStayAbove { get; init; }

    /// <summary>Room left, in the value's unit, negative when the limit is passed; null when either is not known.</summary>
    public double? Room => MustStayAbove ? Value - Limit : Limit - Value;

    /// <summary>How far the value may be off, in its own unit; null when not known.</summary>
    public double? Uncertainty { get; init; }

    /// <summary>How sure limit and uncertainty are.</summary>
    public required Certainty Certainty { get; init; }

    /// <summary>How the value stands.</summary>
    public required MarginState State { get; init; }

    /// <summary>Speed at which it begins; null when it never does or cannot be told.</summary>
    public Onset? Onset { get; init; }

    /// <summary>What stands behind the number, and what it means on the water; plain sentences.</summary>
    public required string Explanation { get; init; }

    /// <summary>State of a value that must stay below a limit, and is tight above a smaller one.</summary>
    /// <param name="value">The value.</param>
    /// <param name="tight">Where it becomes tight.</param>
    /// <param name="limit">Where it fails.</param>
    internal static MarginState Below(double value, double tight, double limit) =>
        value > limit ? MarginState.Fails : value > tight ? MarginState.Tight : MarginState.Holds;
}

/// <summary>The speed at which something begins.</summary>
/// <param name="Speed">m/s.</param>
/// <param name="Direction">Whether it begins when sailing faster or slower than this.</param>
/// <param name="Assumption">What is held while the speed changes.</param>
public readonly record struct Onset(double Speed, OnsetDirection Direction, string Assumption);

/// <summary>Which way a speed must change for something to begin.</summary>
public enum OnsetDirection
{
    /// <summary>Begins at this speed and above.</summary>
    Faster,

    /// <summary>Begins at this speed and below.</summary>
    Slower,
}
