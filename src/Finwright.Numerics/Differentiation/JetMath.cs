namespace Finwright.Numerics.Differentiation;

/// <summary>Elementary functions of jets. Domains are those of <see cref="Math"/>.</summary>
public static class JetMath
{
    /// <summary>Natural logarithm.</summary>
    public static T Log<T>(T x)
        where T : struct, IJet<T> => T.Chain(x, Math.Log(x.Value), 1 / x.Value);

    /// <summary>Exponential.</summary>
    public static T Exp<T>(T x)
        where T : struct, IJet<T>
    {
        double e = Math.Exp(x.Value);
        return T.Chain(x, e, e);
    }

    /// <summary>Square root.</summary>
    public static T Sqrt<T>(T x)
        where T : struct, IJet<T>
    {
        double root = Math.Sqrt(x.Value);
        return T.Chain(x, root, 0.5 / root);
    }

    /// <summary>Square.</summary>
    public static T Square<T>(T x)
        where T : struct, IJet<T> => T.Chain(x, x.Value * x.Value, 2 * x.Value);

    /// <summary>Power with a constant exponent; positive argument.</summary>
    public static T Pow<T>(T x, double exponent)
        where T : struct, IJet<T>
    {
        double power = Math.Pow(x.Value, exponent);
        return T.Chain(x, power, exponent * power / x.Value);
    }

    /// <summary>Hyperbolic tangent.</summary>
    public static T Tanh<T>(T x)
        where T : struct, IJet<T>
    {
        double t = Math.Tanh(x.Value);
        return T.Chain(x, t, 1 - t * t);
    }

    /// <summary>The greater of a jet and a constant; where the constant wins, nothing depends on the jet any more.</summary>
    public static T Max<T>(T x, double floor)
        where T : struct, IJet<T> => x.Value >= floor ? x : T.Constant(floor);

    /// <summary>The lesser of a jet and a constant; where the constant wins, nothing depends on the jet any more.</summary>
    public static T Min<T>(T x, double ceiling)
        where T : struct, IJet<T> => x.Value <= ceiling ? x : T.Constant(ceiling);
}
