using Finwright.Numerics;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Bench;

/// <summary>Predicts measurements of the bench for any stiffness factors: weights that hang on an equally open joint share one factorised plate.</summary>
public sealed class BenchPredictor
{
    private readonly PlateModel _plate;
    private readonly Held[] _held;
    private readonly int _count;

    /// <summary>Prepares the prediction of measurements on a fin.</summary>
    /// <param name="structure">The fin, with what is known of it before.</param>
    /// <param name="measurements">What is read where, under what weight.</param>
    /// <exception cref="ArgumentException">A weight or a reading lies outside the blade.</exception>
    public BenchPredictor(FinStructure structure, IReadOnlyList<BenchMeasurement> measurements)
        : this((structure ?? throw new ArgumentNullException(nameof(structure))).Plate, structure.Root.StiffnessShare, measurements)
    {
    }

    /// <summary>The same for a plate of its own, for example a coarser one.</summary>
    /// <param name="plate">The blade on a closed joint, with what is known of it before.</param>
    /// <param name="rootShare">Stiffness of the root at a bending moment (N·m about x at the hull plane) over that of the closed joint.</param>
    /// <param name="measurements">What is read where, under what weight.</param>
    /// <exception cref="ArgumentException">A weight or a reading lies outside the blade.</exception>
    public BenchPredictor(PlateModel plate, Func<double, double> rootShare, IReadOnlyList<BenchMeasurement> measurements)
    {
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentNullException.ThrowIfNull(rootShare);
        ArgumentNullException.ThrowIfNull(measurements);
        foreach (BenchMeasurement own in measurements)
        {
            Require.Positive(own.Load.Mass, nameof(measurements));
            Require.Between(own.Load.Depth, 0, plate.Fin.Span, nameof(measurements));
            Require.Between(own.Load.ChordShare, 0, 1, nameof(measurements));
            Require.Between(own.ReadDepth, 0, plate.Fin.Span, nameof(measurements));
            Require.Between(own.ReadShare, 0, 1, nameof(measurements));
        }

        (_plate, _count) = (plate, measurements.Count);
        Dictionary<double, double> shares = measurements.Select(own => Moment(own.Load)).Distinct().ToDictionary(moment => moment, rootShare);
        _held =
        [
            .. measurements.Select((own, index) => (Own: own, Index: index)).GroupBy(one => shares[Moment(one.Own.Load)]).Select(one => new Held(
                one.Key,
                [.. one.GroupBy(each => each.Own.Load).Select(each => new Hung(each.Key, [.. each.Select(read => (read.Index, read.Own))]))])),
        ];
    }

    /// <summary>Whether the root gives, so that a factor on its stiffness means something.</summary>
    public bool RootGives => _plate.Fin.Root.Springs is not null;

    /// <summary>Predicts every measurement.</summary>
    /// <param name="change">Factors on what is known before.</param>
    /// <returns>Metres or radians, in the order of the measurements; null when a plate could not be solved.</returns>
    public double[]? Predict(StiffnessFactors change)
    {
        ArgumentNullException.ThrowIfNull(change);
        StiffnessFactors own = _plate.Factors;
        double[] predictions = new double[_count];
        foreach (Held held in _held)
        {
            PlateModel plate = _plate.With(new(own.Wall * change.Wall, own.Core * change.Core, own.Rod * change.Rod, own.Root * change.Root * held.RootShare));
            foreach (Hung hung in held.Loads)
            {
                PlateSolution bent = plate.Solve([BenchTest.At(plate.Fin, hung.Load.Depth, hung.Load.ChordShare, hung.Load.Force)]);
                if (bent.Status is not PlateStatus.Solved)
                    return null;
                foreach ((int index, BenchMeasurement read) in hung.Reads)
                    predictions[index] = Read(bent, plate.Fin, read);
            }
        }

        return predictions;
    }

    private static double Moment(BenchLoad load) => load.Force * load.Depth;

    private static double Read(PlateSolution bent, PlateFin fin, BenchMeasurement read)
    {
        if (read.Quantity is BenchQuantity.Twist)
            return SectionBend.At(bent, fin, read.ReadDepth).Twist;
        double leading = fin.LeadingEdge(read.ReadDepth);
        return bent.Deflection(leading + read.ReadShare * (fin.TrailingEdge(read.ReadDepth) - leading), read.ReadDepth);
    }

    private sealed record Held(double RootShare, Hung[] Loads);

    private sealed record Hung(BenchLoad Load, (int Index, BenchMeasurement Read)[] Reads);
}
