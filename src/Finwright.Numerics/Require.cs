using System.Runtime.CompilerServices;

namespace Finwright.Numerics;

/// <summary>Refuses numbers that no calculation can use, before they spread.</summary>
public static class Require
{
    /// <summary>The value, when it is a number within a closed range.</summary>
    public static double Between(double value, double least, double greatest, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= least && value <= greatest
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"Must lie between {least} and {greatest}.");

    /// <summary>The value, when it is finite and not below another.</summary>
    public static double AtLeast(double value, double least, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= least && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"Must be finite and not below {least}.");

    /// <summary>The value, when it is finite and greater than zero.</summary>
    public static double Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value > 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Must be finite and greater than zero.");

    /// <summary>The value, when it is finite and not below zero.</summary>
    public static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Must be finite and not below zero.");

    /// <summary>The value, when it is finite.</summary>
    public static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Must be finite.");
}
