using System.Runtime.Intrinsics;

namespace Finwright.Numerics.Differentiation;

/// <summary>A number with its derivatives by four variables.</summary>
/// <param name="Value">The value.</param>
/// <param name="Slope">Derivatives by the four variables.</param>
public readonly record struct Jet4(double Value, Vector256<double> Slope) : IJet<Jet4>
{
    /// <summary>One of the four variables.</summary>
    /// <param name="value">Its value.</param>
    /// <param name="index">Which one, 0 to 3.</param>
    public static Jet4 Variable(double value, int index) => new(value, Vector256<double>.Zero.WithElement(index, 1.0));

    /// <inheritdoc/>
    public static Jet4 Constant(double value) => new(value, Vector256<double>.Zero);

    /// <inheritdoc/>
    public static Jet4 Chain(Jet4 x, double value, double slope) => new(value, slope * x.Slope);

    /// <inheritdoc/>
    public static Jet4 operator +(Jet4 a, Jet4 b) => new(a.Value + b.Value, a.Slope + b.Slope);

    /// <inheritdoc/>
    public static Jet4 operator +(Jet4 a, double b) => new(a.Value + b, a.Slope);

    /// <inheritdoc/>
    public static Jet4 operator -(Jet4 a, Jet4 b) => new(a.Value - b.Value, a.Slope - b.Slope);

    /// <inheritdoc/>
    public static Jet4 operator -(double a, Jet4 b) => new(a - b.Value, -b.Slope);

    /// <inheritdoc/>
    public static Jet4 operator -(Jet4 a, double b) => new(a.Value - b, a.Slope);

    /// <inheritdoc/>
    public static Jet4 operator *(Jet4 a, Jet4 b) => new(a.Value * b.Value, b.Value * a.Slope + a.Value * b.Slope);

    /// <inheritdoc/>
    public static Jet4 operator *(double a, Jet4 b) => new(a * b.Value, a * b.Slope);

    /// <inheritdoc/>
    public static Jet4 operator /(Jet4 a, Jet4 b)
    {
        double inverse = 1 / b.Value, ratio = a.Value * inverse;
        return new(ratio, inverse * (a.Slope - ratio * b.Slope));
    }
}
