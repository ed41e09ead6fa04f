namespace Finwright.Numerics.Differentiation;

/// <summary>
/// A number that carries its derivatives along (forward differentiation; Griewank and Walther, 2008, Evaluating Derivatives, ch. 3).
/// Formulas written once over it give values alone, or values with exact derivatives, at the speed of the type put in.
/// </summary>
/// <typeparam name="T">The type itself.</typeparam>
public interface IJet<T>
    where T : struct, IJet<T>
{
    /// <summary>The value.</summary>
    double Value { get; }

    /// <summary>A number that depends on nothing.</summary>
    static abstract T Constant(double value);

    /// <summary>A function of one jet, by the chain rule.</summary>
    /// <param name="x">Argument.</param>
    /// <param name="value">Value of the function at the argument.</param>
    /// <param name="slope">Derivative of the function at the argument.</param>
    static abstract T Chain(T x, double value, double slope);

    /// <summary>Sum.</summary>
    static abstract T operator +(T a, T b);

    /// <summary>Sum with a constant.</summary>
    static abstract T operator +(T a, double b);

    /// <summary>Difference.</summary>
    static abstract T operator -(T a, T b);

    /// <summary>Difference from a constant.</summary>
    static abstract T operator -(double a, T b);

    /// <summary>Difference with a constant.</summary>
    static abstract T operator -(T a, double b);

    /// <summary>Product.</summary>
    static abstract T operator *(T a, T b);

    /// <summary>Product with a constant.</summary>
    static abstract T operator *(double a, T b);

    /// <summary>Quotient.</summary>
    static abstract T operator /(T a, T b);
}
