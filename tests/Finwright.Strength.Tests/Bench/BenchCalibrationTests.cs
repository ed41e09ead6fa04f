using System.Globalization;
using System.Text;
using Finwright.Numerics;
using Finwright.Strength.Bench;
using Finwright.Strength.Calibration;
using Finwright.Strength.Files;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Tests.Bench;

/// <summary>From a design file and a file of readings to factors.</summary>
public sealed class BenchCalibrationTests(DemoOnBench demo) : IClassFixture<DemoOnBench>
{
    // Four weights on the demo's blade, each read at three or four places; the deviations are what the last column adds.
    private const string Places = """
        mass_kg,at_mm,at_chord,read_at_mm,read_chord,what
        12,190,leading-edge,195,leading-edge,deflection
        12,190,leading-edge,195,trailing-edge,deflection
        12,190,leading-edge,150,mid-chord,twist
        12,190,trailing-edge,195,trailing-edge,deflection
        12,190,trailing-edge,120,mid-chord,deflection
        12,190,trailing-edge,150,mid-chord,twist
        25,100,mid-chord,195,mid-chord,deflection
        25,100,mid-chord,100,trailing-edge,deflection
        25,60,trailing-edge,120,trailing-edge,deflection
        """;

    private const double NoiseMm = 0.04, NoiseDegrees = 0.05;

    [Fact]
    public void Solve_readings_with_known_factors_and_noise_are_recovered_as_often_as_the_stated_range_says()
    {
        // The range is ± 2 deviations: 95.45 of 100 when the deviations are right. Truth drawn from what is known before, noise from the readings' deviations. A coarse plate: it is its own truth.
        const int Trials = 300;
        FinMaterials materials = demo.Clamped.Materials;
        PlateModel plate = PlateModel.Create(demo.Clamped.Plate.Fin, new() { ChordElements = 3, SpanElements = 4 });
        int walls = 0, core = 0;
        double scatter = 0;
        for (int seed = 0; seed < Trials; seed++)
        {
            Random random = new(seed);
            double[] truth = [Math.Exp(materials.WallFactor.RelativeDeviation * Normal(random)), Math.Exp(materials.CoreFactor.RelativeDeviation * Normal(random))];
            BenchMeasurement[] measurements = Readings(plate, new(truth[0], truth[1]), random);
            BenchCalibrationResult learned = BenchCalibration.Solve(new(plate, _ => 1, measurements), materials.WallFactor, materials.CoreFactor, measurements);
            Assert.Equal(BenchFitStatus.Converged, learned.Fit!.Status);
            walls += Holds(learned.Factors[0].After, truth[0]);
            core += Holds(learned.Factors[1].After, truth[1]);
            scatter += learned.Factors.Zip(truth, (own, true_) => Math.Pow(Math.Log(own.After.Value / true_) / own.Deviation, 2)).Sum() / (2 * Trials);
        }

        // Three standard deviations of a count of 300: 1.2 % each.
        Assert.InRange(walls, 0.9185 * Trials, 0.9905 * Trials);
        Assert.InRange(core, 0.9185 * Trials, 0.9905 * Trials);
        // Mean square of the errors in their stated deviations: 1, give or take three times the scatter of the mean of 300 (0.08) when both factors err together. Ranges stated too wide would show here.
        Assert.InRange(scatter, 0.75, 1.25);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Solve_exact_readings_on_the_design_s_own_plate_give_the_factors_back(bool rootGives)
    {
        FinStructure structure = rootGives ? demo.Jointed : demo.Clamped;
        StiffnessFactors truth = new(1.12, 0.9, 1, rootGives ? 1.4 : 1);
        BenchMeasurement[] places = [.. Parse(Places, 1e-6, 1e-6).SelectMany(line => line.Measurements(structure.Plate.Fin.Span))];
        double[] exact = new BenchPredictor(structure, places).Predict(truth)!;
        BenchMeasurement[] readings = [.. places.Select((own, i) => own with { Value = exact[i], Deviation = 1e-9 })];
        BenchCalibrationResult learned = BenchCalibration.Solve(structure, readings);
        Assert.Equal(BenchFitStatus.Converged, learned.Fit!.Status);
        // Deviations of a nanometre beside a plate solved to a billionth of its deflection.
        Assert.Equal(truth.Wall, learned.Factors[0].After.Value, 2e-3);
        Assert.Equal(truth.Core, learned.Factors[1].After.Value, 2e-3);
        Assert.Equal(rootGives ? 3 : 2, learned.Factors.Count);
        if (rootGives)
            Assert.Equal(truth.Root, learned.Factors[2].After.Value, 2e-3);
    }

    [Fact]
    public void Predict_agrees_with_the_prediction_of_a_bench_test()
    {
        // A second path to the same numbers.
        BenchLoad load = new(15, 0.09, 0.5);
        BenchPrediction expected = BenchTest.Predict(demo.Jointed, load);
        double[] own = new BenchPredictor(demo.Jointed,
        [
            new(load, 0.09, 0, BenchQuantity.Deflection, 0, 1, ""),
            new(load, 0.09, 1, BenchQuantity.Deflection, 0, 1, ""),
            new(load, demo.Jointed.Plate.Fin.Span, 0.5, BenchQuantity.Twist, 0, 1, ""),
        ]).Predict(StiffnessFactors.One)!;
        Assert.Equal(expected.AtLoad.LeadingEdge.Value, own[0], 1e-12);
        Assert.Equal(expected.AtLoad.TrailingEdge.Value, own[1], 1e-12);
        Assert.Equal(expected.AtTip.Twist.Value, own[2], 1e-12);
    }

    [Fact]
    public void Solve_a_root_that_gives_is_a_third_unknown_that_few_readings_cannot_tell()
    {
        BenchReadingLine[] lines = [.. Parse("mass_kg,at_mm,at_chord,read_at_mm,read_chord,what\n12,190,mid-chord,190,mid-chord,deflection", 9, 0)];
        BenchCalibrationResult learned = BenchCalibration.Solve(demo.Jointed, [.. lines.SelectMany(line => line.Measurements(demo.Jointed.Plate.Fin.Span))]);
        Assert.Equal([StiffnessPart.Walls, StiffnessPart.Core, StiffnessPart.Root], learned.Factors.Select(own => own.Part));
        Assert.Contains(learned.Fit!.Remarks, remark => remark.Contains("cannot tell walls from core", StringComparison.Ordinal));
        Assert.All(learned.Factors, own => Assert.InRange(own.DoubtKept, 0, 1));
    }

    [Fact]
    public void Solve_names_the_reading_that_looks_wrong()
    {
        PlateModel plate = PlateModel.Create(demo.Clamped.Plate.Fin, new() { ChordElements = 3, SpanElements = 4 });
        BenchMeasurement[] readings = Readings(plate, StiffnessFactors.One, new(3));
        // Ten deviations off on one that others hold in place.
        readings[7] = readings[7] with { Value = readings[7].Value + 0.4e-3 };
        BenchCalibrationResult learned = BenchCalibration.Solve(new(plate, _ => 1, readings), demo.Clamped.Materials.WallFactor, demo.Clamped.Materials.CoreFactor, readings);
        Assert.Equal([7], learned.Fit!.Outliers);
        Assert.Contains(learned.Fit.Remarks, remark => remark.StartsWith("The deflection on line 9 lies ", StringComparison.Ordinal));
    }

    [Fact]
    public void Solve_a_factor_without_a_range_is_left_alone()
    {
        PlateModel plate = PlateModel.Create(demo.Clamped.Plate.Fin, new() { ChordElements = 3, SpanElements = 4 });
        BenchMeasurement[] readings = Readings(plate, new(1, 0.9), new(1));
        BenchCalibrationResult learned = BenchCalibration.Solve(new(plate, _ => 1, readings), Ranged.Exact(1), demo.Clamped.Materials.CoreFactor, readings);
        Assert.Equal([StiffnessPart.Walls], learned.Exact);
        Assert.Equal([StiffnessPart.Core], learned.Factors.Select(own => own.Part));
        Assert.Null(BenchCalibration.Solve(new(plate, _ => 1, readings), Ranged.Exact(1), Ranged.Exact(1), readings).Fit);
    }

    [Fact]
    public void A_measurement_outside_the_blade_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new BenchPredictor(demo.Clamped, [new(new(15, 0.3, 0.5), 0.1, 0.5, BenchQuantity.Deflection, 1e-3, 1e-4, "")]));

    // Through the file of readings, with noise of the stated deviation.
    private static BenchMeasurement[] Readings(PlateModel plate, StiffnessFactors truth, Random random)
    {
        BenchMeasurement[] places = [.. Parse(Places, 1, 1).SelectMany(line => line.Measurements(plate.Fin.Span))];
        double[] exact = new BenchPredictor(plate, _ => 1, places).Predict(truth)!;
        string[] rows = Places.Split('\n');
        StringBuilder csv = new("mass_kg,at_mm,at_chord,read_at_mm,read_chord,deflection_mm,deflection_deviation_mm,twist_degrees,twist_deviation_degrees\n");
        for (int i = 0; i < exact.Length; i++)
        {
            string head = rows[i + 1][..rows[i + 1].LastIndexOf(',')];
            csv.Append(places[i].Quantity is BenchQuantity.Deflection
                ? string.Create(CultureInfo.InvariantCulture, $"{head},{1e3 * exact[i] + NoiseMm * Normal(random):R},{NoiseMm},,\n")
                : string.Create(CultureInfo.InvariantCulture, $"{head},,,{double.RadiansToDegrees(exact[i]) + NoiseDegrees * Normal(random):R},{NoiseDegrees}\n"));
        }

        BenchReadingsContent content = BenchReadings.Read(Encoding.UTF8.GetBytes(csv.ToString()));
        Assert.Empty(content.Findings);
        return [.. content.Lines.SelectMany(line => line.Measurements(plate.Fin.Span))];
    }

    private static IReadOnlyList<BenchReadingLine> Parse(string places, double mm, double degrees)
    {
        IEnumerable<string> rows = places.Split('\n').Skip(1).Select(row => row
            .Replace(",deflection", string.Create(CultureInfo.InvariantCulture, $",{mm},"), StringComparison.Ordinal)
            .Replace(",twist", string.Create(CultureInfo.InvariantCulture, $",,{degrees}"), StringComparison.Ordinal));
        BenchReadingsContent content = BenchReadings.Read(Encoding.UTF8.GetBytes("mass_kg,at_mm,at_chord,read_at_mm,read_chord,deflection_mm,twist_degrees\n" + string.Join('\n', rows)));
        Assert.Empty(content.Findings);
        return content.Lines;
    }

    private static int Holds(Ranged range, double truth) => truth >= range.Low && truth <= range.High ? 1 : 0;

    // Box and Muller, 1958.
    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
