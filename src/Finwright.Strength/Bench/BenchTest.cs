using Finwright.Numerics;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Margins;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Bench;

/// <summary>Predicts what a bench test shows, with the range that materials, print and root leave open.</summary>
/// <remarks>
/// Each range is worked out by letting wall, core, rods and root, one at a time, be one standard deviation stiffer, and joining the changes as independent; so is an error of the print's thickness. A
/// range is two standard deviations to each side.
/// </remarks>
public static class BenchTest
{
    /// <summary>Where a push tells how stiff a fin is, share of the span (common practice, no source).</summary>
    public const double PushPlace = 0.4;

    // Standard deviation of the root's stiffness: fit of the base and its box are not known (judgement).
    private const double RootDeviation = 0.25;

    // Standard deviation of the printed thickness, metres: 0.1 to 0.2 mm are usual errors (from memory). Stiffness goes with its cube.
    private const double ThicknessDeviation = 0.1e-3;

    private const double Deviations = 2;

    // Sections from root to tip at which the shape is told.
    private const int Stations = 21;

    /// <summary>Predicts a test.</summary>
    /// <param name="structure">The fin.</param>
    /// <param name="load">The weight.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight hangs outside the blade or weighs nothing.</exception>
    public static BenchPrediction Predict(FinStructure structure, BenchLoad load)
    {
        ArgumentNullException.ThrowIfNull(structure);
        PlateFin fin = structure.Plate.Fin;
        Require.Positive(load.Mass);
        Require.Between(load.Depth, 0, fin.Span);
        Require.Between(load.ChordShare, 0, 1);
        double moment = load.Force * load.Depth, pushDepth = PushPlace * fin.Span;
        PlateLoad hung = At(fin, load.Depth, load.ChordShare, load.Force), push = At(fin, pushDepth, 0.5, 1);
        PlateModel plate = structure.PlateUnder(moment);
        PlateSolution solution = plate.Solve([hung]);
        double[] middle = Read(plate, solution);
        double[] variance = new double[middle.Length];
        StiffnessFactors own = structure.Factors;
        FinMaterials materials = structure.Materials;
        foreach (StiffnessFactors other in (StiffnessFactors[])
        [
            own with { Wall = own.Wall * (1 + materials.WallFactor.RelativeDeviation) },
            own with { Core = own.Core * (1 + materials.CoreFactor.RelativeDeviation) },
            own with { Rod = own.Rod * (1 + materials.RodFactor.RelativeDeviation) },
            own with { Root = own.Root * (1 + RootDeviation) },
        ])
        {
            PlateModel varied = structure.PlateUnder(moment, other);
            if (varied == plate)
                continue;
            double[] changed = Read(varied, varied.Solve([hung]));
            for (int i = 0; i < variance.Length; i++)
                variance[i] += (changed[i] - middle[i]) * (changed[i] - middle[i]);
        }

        Ranged[] ranged = WithRange(structure, middle, variance);
        // A stiffness is the turned-over deflection under one newton.
        Ranged yielding = ranged[^1];
        return new()
        {
            Load = load,
            Status = solution.Status,
            AtLoad = new(load.Depth, ranged[0], ranged[1], ranged[2], ranged[3]),
            AtTip = new(fin.Span, ranged[4], ranged[5], ranged[6], ranged[7]),
            Along = [.. Enumerable.Range(0, Stations).Select(i => SectionBend.At(solution, fin, fin.Span * i / (Stations - 1)))],
            PushStiffness = new(1 / yielding.Value, 1 / yielding.High, yielding.Low > 0 ? 1 / yielding.Low : double.MaxValue),
            Peaks = StructureMargins.Of(structure, solution),
            Joint = structure.Root.Under(moment),
            RootMoment = moment,
            DeflectionShare = solution.DeflectionShare,
        };

        double[] Read(PlateModel model, PlateSolution bent) =>
        [
            .. Numbers(SectionBend.At(bent, fin, load.Depth)), .. Numbers(SectionBend.At(bent, fin, fin.Span)), model.Solve([push]).Deflection(push.X, push.Y),
        ];

        static double[] Numbers(SectionBend bend) => [bend.LeadingEdge, bend.MidChord, bend.TrailingEdge, bend.Twist];
    }

    /// <summary>Predicts single readings, each with its range.</summary>
    /// <param name="structure">The fin, held as on the bench.</param>
    /// <param name="measurements">What is read where, under what weight; at least one. What was read does not matter.</param>
    /// <returns>Metres or radians, in the order of the measurements; null when a plate could not be solved.</returns>
    /// <exception cref="ArgumentException">A weight or a reading lies outside the blade.</exception>
    public static IReadOnlyList<Ranged>? Readings(FinStructure structure, IReadOnlyList<BenchMeasurement> measurements)
    {
        ArgumentNullException.ThrowIfNull(structure);
        BenchPredictor predictor = new(structure, measurements);
        FinMaterials materials = structure.Materials;
        if (predictor.Predict(StiffnessFactors.One) is not double[] middle)
            return null;
        double[] variance = new double[middle.Length];
        foreach (StiffnessFactors change in (StiffnessFactors[])
        [
            new(Wall: 1 + materials.WallFactor.RelativeDeviation),
            new(Core: 1 + materials.CoreFactor.RelativeDeviation),
            new(Rod: 1 + materials.RodFactor.RelativeDeviation),
            new(Root: 1 + RootDeviation),
        ])
        {
            if (change == StiffnessFactors.One || predictor.Predict(change) is not double[] changed)
                continue;
            for (int i = 0; i < variance.Length; i++)
                variance[i] += (changed[i] - middle[i]) * (changed[i] - middle[i]);
        }

        return WithRange(structure, middle, variance);
    }

    private static Ranged[] WithRange(FinStructure structure, double[] middle, double[] variance)
    {
        double thickness = 3 * ThicknessDeviation / structure.Sections[0].Thickness;
        Ranged[] ranged = new Ranged[middle.Length];
        for (int i = 0; i < middle.Length; i++)
        {
            double deviation = Math.Sqrt(variance[i] + thickness * thickness * middle[i] * middle[i]);
            ranged[i] = new(middle[i], middle[i] - Deviations * deviation, middle[i] + Deviations * deviation);
        }

        return ranged;
    }

    /// <summary>A force at a depth and share of the chord.</summary>
    internal static PlateLoad At(PlateFin fin, double depth, double share, double force)
    {
        double leading = fin.LeadingEdge(depth);
        return new(leading + share * (fin.TrailingEdge(depth) - leading), depth, force);
    }
}
