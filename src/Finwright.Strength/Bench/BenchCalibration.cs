using Finwright.Numerics;
using Finwright.Strength.Calibration;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Bench;

/// <summary>What the bench says about the stiffness of walls, core and, where it gives, the root.</summary>
/// <remarks>
/// Before the bench each factor is as doubtful as its material's range; readings then narrow it (<see cref="BenchFit"/>). Rods stay as their material says: their modulus is the best known of all. A root that is
/// not clamped is a third unknown with a wide doubt, so that what it leaves open goes into the ranges of walls and core instead of shifting them; its factor belongs to this hold alone.
/// Limits: those of the plate (small deflections), and one factor each for all walls and all of the core, which also take up an error of the printed thickness.
/// </remarks>
public static class BenchCalibration
{
    /// <summary>Standard deviation of the logarithm of the root's stiffness before the bench: how a base sits in a box, a vice or a block is hardly known (judgement).</summary>
    public const double RootDeviation = 0.5;

    /// <summary>Learns from measurements.</summary>
    /// <param name="structure">The fin as it is known before.</param>
    /// <param name="measurements">At least one.</param>
    /// <exception cref="ArgumentException">There is no measurement, or one lies outside the blade.</exception>
    public static BenchCalibrationResult Solve(FinStructure structure, IReadOnlyList<BenchMeasurement> measurements)
    {
        ArgumentNullException.ThrowIfNull(structure);
        return Solve(new BenchPredictor(structure, measurements), structure.Materials.WallFactor, structure.Materials.CoreFactor, measurements);
    }

    /// <summary>Learns from measurements with a predictor of one's own.</summary>
    /// <param name="predictor">Predictor of these measurements.</param>
    /// <param name="wall">Factor of the walls that the predictor's plate has, with its range.</param>
    /// <param name="core">Factor of the core that it has, with its range.</param>
    /// <param name="measurements">At least one.</param>
    /// <exception cref="ArgumentException">There is no measurement.</exception>
    public static BenchCalibrationResult Solve(BenchPredictor predictor, Ranged wall, Ranged core, IReadOnlyList<BenchMeasurement> measurements)
    {
        ArgumentNullException.ThrowIfNull(predictor);
        ArgumentNullException.ThrowIfNull(measurements);
        List<(StiffnessPart Part, Ranged Known, double Deviation)> parts = [(StiffnessPart.Walls, wall, wall.RelativeDeviation), (StiffnessPart.Core, core, core.RelativeDeviation)];
        if (predictor.RootGives)
            parts.Add((StiffnessPart.Root, new(1, Math.Exp(-2 * RootDeviation), Math.Exp(2 * RootDeviation)), RootDeviation));
        (StiffnessPart Part, Ranged Known, double Deviation)[] open = [.. parts.Where(own => own.Deviation > 0)];
        StiffnessPart[] exact = [.. parts.Except(open).Select(own => own.Part)];
        if (open.Length == 0)
            return new() { Fit = null, Factors = [], Exact = exact, Before = predictor.Predict(StiffnessFactors.One) ?? [] };
        BenchFitResult fit = BenchFit.Solve(
            [.. open.Select(own => new BenchFactor(NameOf(own.Part), own.Deviation))],
            [.. measurements.Select(own => new BenchReading(own.Value, own.Deviation) { Name = own.Name })],
            factors => predictor.Predict(FactorsOf(factors)) ?? [.. measurements.Select(_ => double.NaN)]);
        return new()
        {
            Fit = fit,
            Factors =
            [
                .. open.Select((own, i) => new LearnedFactor(
                    own.Part,
                    own.Known,
                    own.Deviation,
                    new(own.Known.Value * fit.Factors[i], own.Known.Value * fit.Low(i), own.Known.Value * fit.High(i)),
                    fit.LogDeviations[i],
                    fit.Directions.Count > i ? fit.Directions[i].DoubtKept : 1)),
            ],
            Exact = exact,
            Before = predictor.Predict(StiffnessFactors.One) ?? [],
        };

        StiffnessFactors FactorsOf(double[] factors)
        {
            double Of(StiffnessPart part) => Array.FindIndex(open, own => own.Part == part) is int at and >= 0 ? factors[at] : 1;
            return new(Wall: Of(StiffnessPart.Walls), Core: Of(StiffnessPart.Core), Root: Of(StiffnessPart.Root));
        }
    }

    /// <summary>The word for a part.</summary>
    public static string NameOf(StiffnessPart part) => part switch
    {
        StiffnessPart.Walls => "walls",
        StiffnessPart.Core => "core",
        StiffnessPart.Root => "root",
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "Unknown part."),
    };
}

/// <summary>A part whose stiffness the bench can tell.</summary>
public enum StiffnessPart
{
    /// <summary>The printed walls.</summary>
    Walls,

    /// <summary>Print and resin inside the walls.</summary>
    Core,

    /// <summary>How the base is held.</summary>
    Root,
}

/// <summary>What was learned of one part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Before">Its factor before the bench, with its range.</param>
/// <param name="DeviationBefore">Standard deviation of the logarithm of the factor before.</param>
/// <param name="After">Its factor after, with the range that holds it in 95 of 100 cases.</param>
/// <param name="Deviation">Standard deviation of the logarithm of the factor after; for small ones its relative deviation.</param>
/// <param name="DoubtKept">Deviation after over before, 0 to 1.</param>
public sealed record LearnedFactor(StiffnessPart Part, Ranged Before, double DeviationBefore, Ranged After, double Deviation, double DoubtKept);

/// <summary>What was learned on the bench.</summary>
public sealed record BenchCalibrationResult
{
    /// <summary>The fit, its factors relative to those of before; null when every factor is taken as exact and nothing is left to learn.</summary>
    public required BenchFitResult? Fit { get; init; }

    /// <summary>The factors that were open.</summary>
    public required IReadOnlyList<LearnedFactor> Factors { get; init; }

    /// <summary>Parts whose factor has no range, so that it was left alone.</summary>
    public required IReadOnlyList<StiffnessPart> Exact { get; init; }

    /// <summary>Predictions with the factors of before, one a measurement; empty when the plate could not be solved.</summary>
    public required IReadOnlyList<double> Before { get; init; }
}
