using Finwright.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Finwright.Strength.Calibration;

/// <summary>
/// Stiffness factors from readings on the bench: least squares, each reading weighted by its deviation, with what was known before as one more reading of each factor.
/// </summary>
/// <remarks>
/// <para>Unknowns are the logarithms of the factors, so that none can turn negative: before the bench normal around 0. Steps are Gauss-Newton with differences for derivatives, halved
/// until the sum of squares falls; the covariance is that of the linearised problem (Tarantola, 2005, Inverse Problem Theory, ch. 3, from memory).</para>
/// <para>Limits: one optimum, deviations small enough that the prediction is nearly linear in the logarithms over them, readings that err independently. A wrong model or a
/// forgotten gap in the vice shows up as factors far from 1 or as residuals, not as an error.</para>
/// </remarks>
public static class BenchFit
{
    /// <summary>Share of the doubt of before that may be left in a direction for the readings to count as telling it (judgement).</summary>
    public const double DoubtThatCounts = 0.7;

    /// <summary>Residual, in standard deviations, beyond which a reading is an outlier (common practice, no source).</summary>
    public const double OutlierResidual = 3;

    private const int MostIterations = 100, MostHalvings = 30;

    // Difference in the logarithm for derivatives, central: its own error is a millionth, and a prediction that is itself iterated to a millionth costs a thousandth.
    private const double Difference = 1e-3;

    // Scatter of the sum of squares about its mean, in its standard deviations, that chance explains (common practice, no source).
    private const double ScatterOfChance = 3;

    // A step this small beside the deviation of before changes nothing that anybody could measure.
    private const double StepAtRest = 1e-7;

    // A step that promises to lower the sum by less than this is shorter than a three-thousandth of a standard deviation of the answer; beside a large sum, less than this share drowns in its rounding.
    private const double FallAtRest = 1e-7, ShareAtRest = 1e-12;

    // A step that promises less than this is shorter than a hundredth of a standard deviation of the answer. When it finds nothing lower, the prediction's own rounding hides what is left.
    private const double FallInNoise = 1e-4;

    /// <summary>Fits the factors.</summary>
    /// <param name="factors">Unknown factors, at least one.</param>
    /// <param name="readings">Readings, at least one.</param>
    /// <param name="predict">From factors, in their order, to predicted readings, in theirs; called some hundred times.</param>
    /// <exception cref="ArgumentException">Nothing to fit, or a deviation that is none.</exception>
    public static BenchFitResult Solve(IReadOnlyList<BenchFactor> factors, IReadOnlyList<BenchReading> readings, Func<double[], double[]> predict)
    {
        ArgumentNullException.ThrowIfNull(factors);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(predict);
        if (factors.Count == 0 || readings.Count == 0)
            throw new ArgumentException("Give at least one factor and one reading.", factors.Count == 0 ? nameof(factors) : nameof(readings));
        foreach (BenchFactor factor in factors)
            Require.Positive(factor.RelativeDeviation, nameof(factors));
        foreach (BenchReading reading in readings)
        {
            Require.Finite(reading.Value, nameof(readings));
            Require.Positive(reading.Deviation, nameof(readings));
        }

        return new Run(factors, readings, predict).Solve();
    }

    /// <summary>One fit with its work space. Unknowns are in deviations of before: u = ln f / s.</summary>
    private sealed class Run(IReadOnlyList<BenchFactor> factors, IReadOnlyList<BenchReading> readings, Func<double[], double[]> predict)
    {
        private readonly int _n = factors.Count, _m = readings.Count;
        private readonly double[] _jacobian = new double[readings.Count * factors.Count];
        private readonly double[] _normal = new double[factors.Count * factors.Count];
        private readonly DenseLu _solver = new(factors.Count);

        public BenchFitResult Solve()
        {
            double[] u = new double[_n], step = new double[_n], right = new double[_n], trial = new double[_n];
            if (Residuals(u) is not double[] residuals)
                return Failed(BenchFitStatus.PredictionFailed, 0);
            double sum = Sum(u, residuals);
            for (int iteration = 1; iteration <= MostIterations; iteration++)
            {
                if (!Linearise(u))
                    return Failed(BenchFitStatus.PredictionFailed, iteration);
                for (int i = 0; i < _n; i++)
                {
                    right[i] = -u[i];
                    for (int k = 0; k < _m; k++)
                        right[i] += _jacobian[k * _n + i] * residuals[k];
                }

                if (!_solver.Factor(_normal))
                    return Failed(BenchFitStatus.NotConverged, iteration);
                _solver.Solve(right, step);
                double largest = 0, promised = 0;
                for (int i = 0; i < _n; i++)
                {
                    largest = Math.Max(largest, Math.Abs(step[i]));
                    promised += step[i] * right[i];
                }

                // A step at rest that finds nothing lower is the end as well.
                bool isAtRest = largest <= StepAtRest || promised <= Math.Max(FallAtRest, ShareAtRest * sum);
                double length = 1, there = double.PositiveInfinity;
                for (int halving = 0; halving <= MostHalvings; halving++, length /= 2)
                {
                    for (int i = 0; i < _n; i++)
                        trial[i] = u[i] + length * step[i];
                    if (Residuals(trial) is double[] at && (there = Sum(trial, at)) <= sum)
                    {
                        residuals = at;
                        break;
                    }

                    there = double.PositiveInfinity;
                }

                if (double.IsFinite(there))
                {
                    trial.CopyTo(u, 0);
                    sum = there;
                }

                if (isAtRest || (!double.IsFinite(there) && promised <= FallInNoise))
                    return Linearise(u) && _solver.Factor(_normal) ? Describe(u, residuals, iteration) : Failed(BenchFitStatus.PredictionFailed, iteration);
                if (!double.IsFinite(there))
                    return Failed(BenchFitStatus.NotConverged, iteration);
            }

            return Failed(BenchFitStatus.NotConverged, MostIterations);
        }

        private double[] FactorsAt(double[] u) => [.. u.Select((x, i) => Math.Exp(x * factors[i].RelativeDeviation))];

        // Reading less prediction in deviations of the reading; null when the prediction is no number.
        private double[]? Residuals(double[] u)
        {
            double[] predictions = predict(FactorsAt(u));
            if (predictions.Length != _m)
                throw new InvalidOperationException($"The prediction has {predictions.Length} values for {_m} readings.");
            double[] residuals = new double[_m];
            for (int k = 0; k < _m; k++)
            {
                residuals[k] = (readings[k].Value - predictions[k]) / readings[k].Deviation;
                if (!double.IsFinite(residuals[k]))
                    return null;
            }

            return residuals;
        }

        // Derivatives of the weighted predictions, and 1 + JᵀJ.
        private bool Linearise(double[] u)
        {
            double[] moved = [.. u];
            for (int i = 0; i < _n; i++)
            {
                double difference = Difference / factors[i].RelativeDeviation;
                moved[i] = u[i] + difference;
                double[]? ahead = Residuals(moved);
                moved[i] = u[i] - difference;
                double[]? behind = Residuals(moved);
                moved[i] = u[i];
                if (ahead is null || behind is null)
                    return false;
                for (int k = 0; k < _m; k++)
                    _jacobian[k * _n + i] = (behind[k] - ahead[k]) / (2 * difference);
            }

            for (int i = 0; i < _n; i++)
            {
                for (int j = 0; j < _n; j++)
                {
                    double sum = i == j ? 1 : 0;
                    for (int k = 0; k < _m; k++)
                        sum += _jacobian[k * _n + i] * _jacobian[k * _n + j];
                    _normal[i * _n + j] = sum;
                }
            }

            return true;
        }

        private static double Sum(double[] u, double[] residuals) => u.Sum(x => x * x) + residuals.Sum(r => r * r);

        private BenchFitResult Failed(BenchFitStatus status, int iterations)
        {
            double[] covariance = new double[_n * _n];
            for (int i = 0; i < _n; i++)
                covariance[i * _n + i] = factors[i].RelativeDeviation * factors[i].RelativeDeviation;
            return new()
            {
                Status = status,
                Factors = [.. factors.Select(_ => 1.0)],
                LogDeviations = [.. factors.Select(f => f.RelativeDeviation)],
                LogCovariance = covariance,
                Iterations = iterations,
            };
        }

        private BenchFitResult Describe(double[] u, double[] residuals, int iterations)
        {
            double[] covariance = new double[_n * _n], unit = new double[_n], column = new double[_n];
            for (int j = 0; j < _n; j++)
            {
                Array.Clear(unit);
                unit[j] = 1;
                _solver.Solve(unit, column);
                for (int i = 0; i < _n; i++)
                    covariance[i * _n + j] = column[i] * factors[i].RelativeDeviation * factors[j].RelativeDeviation;
            }

            BenchDirection[] directions = [.. Directions(covariance)];
            Evd<double> principal = Matrix<double>.Build.Dense(_n, _n, (i, j) => covariance[i * _n + j] / (factors[i].RelativeDeviation * factors[j].RelativeDeviation)).Evd(Symmetricity.Symmetric);
            int weakest = principal.EigenValues.Real().MaximumIndex();
            int[] outliers = [.. Enumerable.Range(0, _m).Where(k => Math.Abs(residuals[k]) > OutlierResidual)];
            return new()
            {
                Status = BenchFitStatus.Converged,
                Factors = FactorsAt(u),
                LogDeviations = [.. Enumerable.Range(0, _n).Select(i => Math.Sqrt(covariance[i * _n + i]))],
                LogCovariance = covariance,
                Predictions = [.. residuals.Select((r, k) => readings[k].Value - r * readings[k].Deviation)],
                Residuals = residuals,
                Outliers = outliers,
                ChiSquare = residuals.Sum(r => r * r),
                PriorShift = u.Sum(x => x * x),
                Directions = directions,
                WeakestDirection = [.. principal.EigenVectors.Column(weakest)],
                WeakestDoubtKept = Math.Sqrt(principal.EigenValues[weakest].Real),
                Remarks = [.. Remarks(directions, outliers, residuals)],
                Iterations = iterations,
            };
        }

        private IEnumerable<BenchDirection> Directions(double[] covariance)
        {
            for (int i = 0; i < _n; i++)
            {
                double before = factors[i].RelativeDeviation;
                yield return Direction(factors[i].Name, covariance[i * _n + i], before * before);
            }

            for (int i = 0; i < _n; i++)
            {
                for (int j = i + 1; j < _n; j++)
                {
                    double one = factors[i].RelativeDeviation, other = factors[j].RelativeDeviation;
                    double after = covariance[i * _n + i] - covariance[i * _n + j] - covariance[j * _n + i] + covariance[j * _n + j];
                    yield return Direction($"{factors[i].Name} against {factors[j].Name}", after, one * one + other * other);
                }
            }
        }

        private static BenchDirection Direction(string name, double after, double before)
        {
            double kept = Math.Sqrt(Math.Max(after, 0) / before);
            return new(name, kept, kept <= DoubtThatCounts);
        }

        private IEnumerable<string> Remarks(BenchDirection[] directions, int[] outliers, double[] residuals)
        {
            int at = _n;
            for (int i = 0; i < _n; i++)
            {
                for (int j = i + 1; j < _n; j++, at++)
                {
                    if (!directions[at].IsTold)
                        yield return $"These readings cannot tell {factors[i].Name} from {factors[j].Name}: {directions[at].DoubtKept:P0} of the doubt between them is left. Load other places, or twist the blade as well.";
                }
            }

            if (_n == 1 && !directions[0].IsTold)
                yield return $"These readings say little about the {factors[0].Name}: {directions[0].DoubtKept:P0} of the doubt is left. Load more, or read finer.";
            double expected = _m + ScatterOfChance * Math.Sqrt(2.0 * _m);
            if (residuals.Sum(r => r * r) > expected)
                yield return "The readings lie farther from the prediction than their deviations allow: the deviations are too small, something moved besides the blade, or these factors are not what is wrong. The ranges stated are then too narrow.";
            foreach (int k in outliers)
                yield return $"{readings[k].Name ?? $"Reading {k + 1}"} lies {Math.Abs(residuals[k]):0.0} of its standard deviations from the prediction: read it again, or look what moved besides the blade.";
        }
    }
}
