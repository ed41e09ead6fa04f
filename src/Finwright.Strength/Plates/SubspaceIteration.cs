using Finwright.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Finwright.Strength.Plates;

/// <summary>The smallest values λ of K φ = λ M φ, for band matrices.</summary>
/// <remarks>Bathe and Wilson (1973), subspace iteration (from memory). Start from smooth pseudo-random vectors that are the same each time.</remarks>
internal static class SubspaceIteration
{
    // Change of a value from one iteration to the next, over the value; shapes are then good to about its root.
    private const double Settled = 1e-10;
    private const int MostIterations = 60;

    // Vectors beside the wanted ones: each iteration shrinks the error by λ over the first value left out.
    private const int Guard = 6;

    /// <summary>Unknowns a wanted value takes at the least.</summary>
    public const int LeastUnknowns = 6;

    public static SubspaceResult Solve(BandCholesky factor, BandMatrix stiffness, BandMatrix mass, int count)
    {
        int n = factor.Order, size = Math.Min(n / LeastUnknowns, count + Math.Max(Guard, count));
        double[][] vectors = Start(n, size), products = Vectors(n, size);
        double[] values = new double[size], before = new double[size];
        bool converged = false;
        for (int iteration = 0; iteration < MostIterations && !converged; iteration++)
        {
            for (int i = 0; i < size; i++)
            {
                // K x̄ = M x: the projections need only x̄, M x and M x̄.
                mass.Multiply(vectors[i], products[i]);
                products[i].CopyTo(vectors[i], 0);
                factor.Solve(vectors[i]);
            }

            Matrix<double> stiff = Project(vectors, products);
            for (int i = 0; i < size; i++)
                mass.Multiply(vectors[i], products[i]);
            Matrix<double> heavy = Project(vectors, products);
            if (TrySmallProblem(stiff, heavy, values) is not { } shapes)
                break;
            vectors = Combine(vectors, shapes);
            converged = true;
            for (int i = 0; i < count; i++)
                converged &= Math.Abs(values[i] - before[i]) <= Settled * values[i];
            values.CopyTo(before, 0);
        }

        double[] product = new double[n];
        for (int i = 0; i < count; i++)
        {
            stiffness.Multiply(vectors[i], product);
            double twice = Product(vectors[i], product);
            mass.Multiply(vectors[i], product);
            double weight = Product(vectors[i], product);
            values[i] = twice / weight;
            Scale(vectors[i], 1 / Math.Sqrt(weight));
        }

        return new(converged, values[..count], vectors[..count]);
    }

    private static double[][] Vectors(int n, int size)
    {
        double[][] vectors = new double[size][];
        for (int i = 0; i < size; i++)
            vectors[i] = new double[n];
        return vectors;
    }

    // Numbers without order, the same each time (Knuth's linear congruence, from memory); the first solution smooths them.
    private static double[][] Start(int n, int size)
    {
        const ulong Multiplier = 6364136223846793005, Increment = 1442695040888963407;
        double[][] vectors = Vectors(n, size);
        ulong state = 1;
        foreach (double[] vector in vectors)
        {
            for (int k = 0; k < n; k++)
            {
                state = unchecked(state * Multiplier + Increment);
                vector[k] = (state >> 11) * (1.0 / (1UL << 53)) - 0.5;
            }
        }

        return vectors;
    }

    private static Matrix<double> Project(double[][] left, double[][] right)
    {
        Matrix<double> small = Matrix<double>.Build.Dense(left.Length, left.Length);
        for (int i = 0; i < left.Length; i++)
        {
            for (int j = 0; j <= i; j++)
                small[i, j] = small[j, i] = Product(left[i], right[j]);
        }

        return small;
    }

    // Through the Cholesky factor of the small stiffness: C = L⁻¹ M L⁻ᵀ has the values 1/λ.
    private static Matrix<double>? TrySmallProblem(Matrix<double> stiff, Matrix<double> heavy, double[] values)
    {
        Matrix<double> lower;
        try
        {
            lower = stiff.Cholesky().Factor;
        }
        catch (ArgumentException)
        {
            // The library's word for: not positive definite, the vectors have fallen together.
            return null;
        }

        Matrix<double> half = lower.Solve(heavy), c = lower.Solve(half.Transpose());
        c = (c + c.Transpose()) / 2;
        Evd<double> evd = c.Evd(Symmetricity.Symmetric);
        int size = values.Length;
        Matrix<double> shapes = Matrix<double>.Build.Dense(size, size);
        for (int i = 0; i < size; i++)
        {
            int from = size - 1 - i;
            values[i] = 1 / evd.EigenValues[from].Real;
            shapes.SetColumn(i, evd.EigenVectors.Column(from));
        }

        return lower.Transpose().Solve(shapes);
    }

    private static double[][] Combine(double[][] vectors, Matrix<double> shapes)
    {
        int size = vectors.Length, n = vectors[0].Length;
        double[][] combined = Vectors(n, size);
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j < size; j++)
            {
                double share = shapes[j, i];
                for (int k = 0; k < n; k++)
                    combined[i][k] += share * vectors[j][k];
            }

            double largest = 0;
            foreach (double value in combined[i])
                largest = Math.Max(largest, Math.Abs(value));
            Scale(combined[i], 1 / largest, plain: true);
        }

        return combined;
    }

    // With the sign that makes the largest deflection positive, so that a shape is the same each time.
    private static void Scale(double[] vector, double factor, bool plain = false)
    {
        if (!plain)
        {
            int at = 0;
            for (int k = 0; k < vector.Length; k += 3)
                at = Math.Abs(vector[k]) > Math.Abs(vector[at]) ? k : at;
            factor *= Math.Sign(vector[at]);
        }

        for (int k = 0; k < vector.Length; k++)
            vector[k] *= factor;
    }

    private static double Product(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }
}

/// <summary>What an iteration for values found.</summary>
/// <param name="Converged">Whether the values settled.</param>
/// <param name="Values">λ, rising.</param>
/// <param name="Vectors">Of unit mass.</param>
internal sealed record SubspaceResult(bool Converged, double[] Values, double[][] Vectors);
