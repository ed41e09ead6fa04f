namespace Finwright.Geometry.Sections;

/// <summary>Polynomials in Bernstein form over 0 to 1.</summary>
/// <remarks>Nested evaluation after Farin, 2002, "Curves and surfaces for CAGD", 5th edition: linear in the order, no allocation.</remarks>
internal static class Bernstein
{
    /// <summary>Value of Σ cᵢ Bᵢ,ₙ(x), n being one less than the count of coefficients; 0 without any.</summary>
    public static double Value(ReadOnlySpan<double> coefficients, double x)
    {
        int n = coefficients.Length - 1;
        if (n < 0)
            return 0;
        if (n == 0)
            return coefficients[0];
        double u = 1 - x, binomial = 1, power = 1, sum = coefficients[0] * u;
        for (int i = 1; i < n; i++)
        {
            power *= x;
            binomial = binomial * (n - i + 1) / i;
            sum = (sum + power * binomial * coefficients[i]) * u;
        }

        return sum + power * x * coefficients[n];
    }

    /// <summary>Coefficients of the derivative, one fewer.</summary>
    public static double[] Derivative(ReadOnlySpan<double> coefficients)
    {
        int n = coefficients.Length - 1;
        double[] derivative = new double[Math.Max(n, 0)];
        for (int i = 0; i < derivative.Length; i++)
            derivative[i] = n * (coefficients[i + 1] - coefficients[i]);
        return derivative;
    }

    /// <summary>All basis polynomials of order <c>basis.Length - 1</c> at x.</summary>
    public static void Basis(double x, Span<double> basis)
    {
        // Raise the order one at a time: Bᵢ,ₖ = (1-x) Bᵢ,ₖ₋₁ + x Bᵢ₋₁,ₖ₋₁.
        basis[0] = 1;
        for (int k = 1; k < basis.Length; k++)
        {
            basis[k] = x * basis[k - 1];
            for (int i = k - 1; i > 0; i--)
                basis[i] = (1 - x) * basis[i] + x * basis[i - 1];
            basis[0] *= 1 - x;
        }
    }
}
