using Finwright.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Finwright.Strength.Vibrations;

/// <summary>Natural vibrations of the blade in water.</summary>
/// <remarks>
/// Ritz's method in the dry modes: (diag ω² − λ (1 + M)) a = 0 with M the added mass of the mass-normalised dry shapes. Frequencies come from above as more dry modes are taken;
/// take three more than are wanted. No stream, no damping.
/// </remarks>
public sealed class WetModes
{
    private readonly IReadOnlyList<Func<double, double, double>> _dry;
    private readonly double[] _shares;

    private WetModes(double[] angularFrequencies, double[] shares, IReadOnlyList<Func<double, double, double>> dry) => (AngularFrequencies, _shares, _dry) = (angularFrequencies, shares, dry);

    /// <summary>Rising, rad/s.</summary>
    public IReadOnlyList<double> AngularFrequencies { get; }

    /// <summary>From dry modes to wet ones.</summary>
    /// <param name="dryAngularFrequencies">rad/s, each above 0.</param>
    /// <param name="massNormalisedShapes">Shapes in the same order: ∫ mass per area · shape² dA = 1, so 1/√kg.</param>
    /// <param name="addedMass">The water around the blade.</param>
    /// <param name="density">Of the water, kg/m³.</param>
    /// <returns>As many wet modes as dry ones; null when the added mass could not be worked out.</returns>
    public static WetModes? Of(IReadOnlyList<double> dryAngularFrequencies, IReadOnlyList<Func<double, double, double>> massNormalisedShapes, AddedMass addedMass, double density)
    {
        ArgumentNullException.ThrowIfNull(dryAngularFrequencies);
        ArgumentNullException.ThrowIfNull(massNormalisedShapes);
        ArgumentNullException.ThrowIfNull(addedMass);
        int count = dryAngularFrequencies.Count;
        if (count == 0 || massNormalisedShapes.Count != count)
            throw new ArgumentException($"{count} frequencies and {massNormalisedShapes.Count} shapes; both need the same number, at least 1.", nameof(massNormalisedShapes));
        foreach (double frequency in dryAngularFrequencies)
            Require.Positive(frequency);
        double[]? water = addedMass.Matrix(massNormalisedShapes, density);
        if (water is null)
            return null;
        // With a = b/ω: eigenvalues 1/λ of (1 + M)/(ω ω), symmetric.
        Matrix<double> flexible = Matrix<double>.Build.Dense(count, count, (i, k) => ((i == k ? 1 : 0) + water[i * count + k]) / (dryAngularFrequencies[i] * dryAngularFrequencies[k]));
        MathNet.Numerics.LinearAlgebra.Factorization.Evd<double> system = flexible.Evd(Symmetricity.Symmetric);
        double[] wet = new double[count], shares = new double[count * count];
        for (int mode = 0; mode < count; mode++)
        {
            // Eigenvalues rise, so frequencies fall.
            int column = count - 1 - mode;
            double inverse = system.EigenValues[column].Real;
            wet[mode] = Require.Finite(1 / Math.Sqrt(inverse));
            for (int i = 0; i < count; i++)
                shares[mode * count + i] = system.EigenVectors[i, column] / (dryAngularFrequencies[i] * Math.Sqrt(inverse));
        }

        return new(wet, shares, massNormalisedShapes);
    }

    /// <summary>Shape of a wet mode at a place, normalised with the mass of blade and water together, 1/√kg.</summary>
    /// <param name="mode">0 for the lowest.</param>
    /// <param name="x">m.</param>
    /// <param name="y">m.</param>
    public double Shape(int mode, double x, double y)
    {
        int count = _dry.Count;
        double sum = 0;
        for (int i = 0; i < count; i++)
            sum += _shares[mode * count + i] * _dry[i](x, y);
        return sum;
    }

    /// <summary>How much of a dry mode a wet one holds; the squares sum to less than 1, the rest being the water's.</summary>
    /// <param name="mode">Wet mode, 0 for the lowest.</param>
    /// <param name="dry">Dry mode, 0 for the lowest.</param>
    public double Share(int mode, int dry) => _shares[mode * _dry.Count + dry];
}
