namespace Finwright.Numerics.Differentiation;

/// <summary>A jet without derivatives: a plain number.</summary>
/// <param name="Value">The value.</param>
public readonly record struct Real(double Value) : IJet<Real>
{
    /// <inheritdoc/>
    public static Real Constant(double value) => new(value);

    /// <inheritdoc/>
    public static Real Chain(Real x, double value, double slope) => new(value);

    /// <inheritdoc/>
    public static Real operator +(Real a, Real b) => new(a.Value + b.Value);

    /// <inheritdoc/>
    public static Real operator +(Real a, double b) => new(a.Value + b);

    /// <inheritdoc/>
    public static Real operator -(Real a, Real b) => new(a.Value - b.Value);

    /// <inheritdoc/>
    public static Real operator -(double a, Real b) => new(a - b.Value);

    /// <inheritdoc/>
    public static Real operator -(Real a, double b) => new(a.Value - b);

    /// <inheritdoc/>
    public static Real operator *(Real a, Real b) => new(a.Value * b.Value);

    /// <inheritdoc/>
    public static Real operator *(double a, Real b) => new(a * b.Value);

    /// <inheritdoc/>
    public static Real operator /(Real a, Real b) => new(a.Value / b.Value);
}
