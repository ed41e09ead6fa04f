using Finwright.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Finwright.Strength.Hydroelastic;

/// <summary>Static divergence: the dynamic pressure at which the load that a twist brings makes that very twist.</summary>
/// <remarks>
/// With C the twist of the strips per load and A the load per twist and dynamic pressure, twist t = q C A t has a solution other than none where q is one over an eigenvalue of C A
/// (Bisplinghoff, Ashley and Halfman, Aeroelasticity, 1955, matrix form of divergence; from memory). Only real positive eigenvalues count. Linear lift and small deflections: well below
/// stall. A blade swept aft unloads as it bends and has none.
/// </remarks>
public static class Divergence
{
    // An eigenvalue whose imaginary part is larger than this share of it is a pair, not a real one.
    private const double RealShare = 1e-8;

    // Eigenvalues below this share of the greatest are rounding.
    private const double NoiseShare = 1e-10;

    /// <summary>Smallest dynamic pressure of divergence.</summary>
    /// <param name="flexibility">Twist of each strip per unit of each load: one row a strip, one column a load; loads are forces and moments of strips, in any order.</param>
    /// <param name="response">Loads per unit twist of each strip and unit dynamic pressure: one row a load, one column a strip.</param>
    /// <param name="strips">Number of strips, at least 1.</param>
    /// <returns>Pa; null when no dynamic pressure makes the blade diverge.</returns>
    /// <exception cref="ArgumentException">Lengths that do not fit each other, or a value that is not finite.</exception>
    public static double? Pressure(ReadOnlySpan<double> flexibility, ReadOnlySpan<double> response, int strips)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(strips);
        int loads = flexibility.Length / strips;
        if (loads == 0 || flexibility.Length != loads * strips || response.Length != flexibility.Length)
            throw new ArgumentException($"{strips} strips: flexibility has {flexibility.Length} values and response {response.Length}; both need strips times loads.", nameof(response));
        double[] product = new double[strips * strips];
        for (int i = 0; i < strips; i++)
        {
            for (int k = 0; k < loads; k++)
            {
                double twist = Require.Finite(flexibility[i * loads + k]);
                for (int j = 0; j < strips; j++)
                    product[j * strips + i] += twist * response[k * strips + j];
            }
        }

        foreach (double value in product)
            Require.Finite(value);
        double greatest = 0, largest = 0;
        foreach (System.Numerics.Complex value in Matrix<double>.Build.Dense(strips, strips, product).Evd(Symmetricity.Asymmetric).EigenValues)
        {
            largest = Math.Max(largest, value.Magnitude);
            if (Math.Abs(value.Imaginary) <= RealShare * value.Magnitude)
                greatest = Math.Max(greatest, value.Real);
        }

        return greatest > NoiseShare * largest ? 1 / greatest : null;
    }
}
