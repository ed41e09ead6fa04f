using System.Runtime.Intrinsics;

namespace Finwright.Numerics.Differentiation;

/// <summary>A number with its derivatives by three groups of four variables: one group upstream, one downstream, one of their own.</summary>
/// <param name="Value">The value.</param>
/// <param name="First">Derivatives by the first group.</param>
/// <param name="Second">Derivatives by the second group.</param>
/// <param name="Third">Derivatives by the third group.</param>
public readonly record struct Jet12(double Value, Vector256<double> First, Vector256<double> Second, Vector256<double> Third) : IJet<Jet12>
{
    /// <summary>A jet whose four variables are the first group.</summary>
    public static Jet12 FromFirst(Jet4 jet) => new(jet.Value, jet.Slope, Vector256<double>.Zero, Vector256<double>.Zero);

    /// <summary>A jet whose four variables are the second group.</summary>
    public static Jet12 FromSecond(Jet4 jet) => new(jet.Value, Vector256<double>.Zero, jet.Slope, Vector256<double>.Zero);

    /// <summary>One of the variables of the third group.</summary>
    /// <param name="value">Its value.</param>
    /// <param name="index">Which one, 0 to 3.</param>
    public static Jet12 OfThird(double value, int index) =>
        new(value, Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero.WithElement(index, 1.0));

    /// <inheritdoc/>
    public static Jet12 Constant(double value) => new(value, Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero);

    /// <inheritdoc/>
    public static Jet12 Chain(Jet12 x, double value, double slope) => new(value, slope * x.First, slope * x.Second, slope * x.Third);

    /// <inheritdoc/>
    public static Jet12 operator +(Jet12 a, Jet12 b) => new(a.Value + b.Value, a.First + b.First, a.Second + b.Second, a.Third + b.Third);

    /// <inheritdoc/>
    public static Jet12 operator +(Jet12 a, double b) => a with { Value = a.Value + b };

    /// <inheritdoc/>
    public static Jet12 operator -(Jet12 a, Jet12 b) => new(a.Value - b.Value, a.First - b.First, a.Second - b.Second, a.Third - b.Third);

    /// <inheritdoc/>
    public static Jet12 operator -(double a, Jet12 b) => new(a - b.Value, -b.First, -b.Second, -b.Third);

    /// <inheritdoc/>
    public static Jet12 operator -(Jet12 a, double b) => a with { Value = a.Value - b };

    /// <inheritdoc/>
    public static Jet12 operator *(Jet12 a, Jet12 b) => new(
        a.Value * b.Value,
        b.Value * a.First + a.Value * b.First,
        b.Value * a.Second + a.Value * b.Second,
        b.Value * a.Third + a.Value * b.Third);

    /// <inheritdoc/>
    public static Jet12 operator *(double a, Jet12 b) => new(a * b.Value, a * b.First, a * b.Second, a * b.Third);

    /// <inheritdoc/>
    public static Jet12 operator /(Jet12 a, Jet12 b)
    {
        double inverse = 1 / b.Value, ratio = a.Value * inverse;
        return new(ratio, inverse * (a.First - ratio * b.First), inverse * (a.Second - ratio * b.Second), inverse * (a.Third - ratio * b.Third));
    }
}
