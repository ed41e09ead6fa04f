using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.Bench;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;
using Finwright.Strength.Tests.FromDesign;

namespace Finwright.Strength.Tests.Bench;

public sealed class BenchTestTests
{
    private static readonly BenchLoad Load = new(15, 0.13, 0.5);
    private static readonly FinStructure Clamped = BuiltFin.Of(BuiltFin.Plain);

    [Fact]
    public void Predict_of_twice_the_mass_on_a_clamped_fin_is_twice_the_deflection_and_half_the_reserve()
    {
        BenchPrediction once = BenchTest.Predict(Clamped, Load), twice = BenchTest.Predict(Clamped, Load with { Mass = 30 });
        Assert.Equal(2 * once.AtTip.MidChord.Value, twice.AtTip.MidChord.Value, 1e-9);
        Assert.Equal(2 * once.AtLoad.Twist.Value, twice.AtLoad.Twist.Value, 1e-9);
        Assert.Equal(once.FirstCrack!.Reserve / 2, twice.FirstCrack!.Reserve, 1e-9 * once.FirstCrack.Reserve);
        Assert.Equal(once.PushStiffness.Value, twice.PushStiffness.Value, 1e-6 * once.PushStiffness.Value);
        Assert.Equal(15 * 9.80665 * 0.13, once.RootMoment, 1e-9);
    }

    [Fact]
    public void Predict_of_a_weight_farther_aft_turns_the_trailing_edge_farther()
    {
        BenchPrediction front = BenchTest.Predict(Clamped, Load with { ChordShare = 0 }), aft = BenchTest.Predict(Clamped, Load with { ChordShare = 1 });
        Assert.True(aft.AtLoad.Twist.Value > front.AtLoad.Twist.Value);
        Assert.True(aft.AtLoad.TrailingEdge.Value > aft.AtLoad.LeadingEdge.Value);
    }

    [Fact]
    public void Predict_gives_ranges_that_hold_the_value_and_grow_with_the_materials()
    {
        FinStructure With(double percent) => BuiltFin.Of(BuiltFin.Plain with { Materials = new() { Printed = new() { ModulusGpa = 2, RangePercent = percent }, Resin = new() { ModulusGpa = 2.8, RangePercent = percent } } });
        double Width(double percent)
        {
            BenchPrediction own = BenchTest.Predict(With(percent), Load);
            foreach (Ranged value in (Ranged[])[own.AtLoad.LeadingEdge, own.AtLoad.MidChord, own.AtLoad.TrailingEdge, own.AtLoad.Twist, own.AtTip.MidChord, own.AtTip.Twist, own.PushStiffness])
                Assert.True(value.Low < value.Value && value.Value < value.High);
            return (own.AtTip.MidChord.High - own.AtTip.MidChord.Low) / own.AtTip.MidChord.Value;
        }

        double none = Width(0), usual = Width(10), wide = Width(30);
        // Without doubt about materials: two deviations to each side of 0.1 mm in a root of 15.6 mm, cubed; the infill's share on top.
        Assert.InRange(none, 4 * 3 * 0.1 / 15.6, 1.1 * 4 * 3 * 0.1 / 15.6);
        Assert.True(none < usual && usual < wide);
        Assert.InRange(wide, 0.2, 0.8);
    }

    [Theory]
    [InlineData(RootHold.Clamped)]
    [InlineData(RootHold.Elastic)]
    public void Readings_at_the_places_of_a_prediction_have_its_values_and_ranges(RootHold hold)
    {
        // Where the joint never opens, the root is as stiff under any weight, and both ways must agree.
        FinStructure fin = BuiltFin.Of(BuiltFin.Plain with { Base = BuiltFin.Plain.Base with { RootHold = hold } });
        double span = fin.Plate.Fin.Span;
        BenchPrediction prediction = BenchTest.Predict(fin, Load);
        IReadOnlyList<Ranged> readings = BenchTest.Readings(fin,
        [
            new(Load, Load.Depth, 0, BenchQuantity.Deflection, 1, 1, "a"), new(Load, span, 0.5, BenchQuantity.Deflection, 1, 1, "b"),
            new(Load, span, 1, BenchQuantity.Deflection, 1, 1, "c"), new(Load, span, 0, BenchQuantity.Twist, 1, 1, "d"),
        ])!;
        Ranged[] expected = [prediction.AtLoad.LeadingEdge, prediction.AtTip.MidChord, prediction.AtTip.TrailingEdge, prediction.AtTip.Twist];
        foreach ((Ranged wanted, Ranged read) in expected.Zip(readings))
        {
            double accuracy = 1e-6 * (Math.Abs(wanted.Value) + wanted.High - wanted.Low);
            Assert.Equal(wanted.Value, read.Value, accuracy);
            Assert.Equal(wanted.Low, read.Low, accuracy);
            Assert.Equal(wanted.High, read.High, accuracy);
        }
    }

    [Fact]
    public void Predict_of_what_the_bench_showed_has_a_narrower_range()
    {
        FinStructure fitted = BuiltFin.Of(BuiltFin.Plain with { Materials = new() { WallFactorDeviationPercent = 3, CoreFactorDeviationPercent = 3 } });
        BenchPrediction before = BenchTest.Predict(Clamped, Load), after = BenchTest.Predict(fitted, Load);
        Assert.Equal(before.AtTip.MidChord.Value, after.AtTip.MidChord.Value, 1e-12);
        Assert.True(after.AtTip.MidChord.High < before.AtTip.MidChord.High && after.AtTip.MidChord.Low > before.AtTip.MidChord.Low);
    }

    [Fact]
    public void Predict_on_springs_moves_by_at_least_what_the_springs_give()
    {
        FinStructure elastic = BuiltFin.Of(BuiltFin.Plain with { Base = BuiltFin.Plain.Base with { RootHold = RootHold.Elastic } });
        RootHolding root = elastic.Root;
        double force = Load.Force, moment = force * Load.Depth, depth = root.Plan.Depth;
        // By the least complementary energy (Castigliano) springs store least when all give alike: the place of the load moves by M²/K + F²/k over F or more, beside a root that does not give.
        // More, since the root of a plate curves along its chord, which the springs do not hold straight.
        double least = moment * Load.Depth / root.ClosedStiffness + force * depth * depth / root.BoxStiffness;
        PlateFin fin = elastic.Plate.Fin;
        PlateModel hard = PlateModel.Create(fin with { Root = PlateRoot.Elastic(at => fin.Root.Springs!(at) is var own && own.Bending > 0 ? new(1e4 * own.Deflection, 1e4 * own.Bending, 0) : default) });
        double x = (fin.LeadingEdge(Load.Depth) + fin.TrailingEdge(Load.Depth)) / 2;
        double more = BenchTest.Predict(elastic, Load).AtLoad.MidChord.Value - hard.Solve([new(x, Load.Depth, force)]).Deflection(x, Load.Depth);
        Assert.InRange(more, least, 2 * least);
    }

    [Fact]
    public void Predict_of_a_fin_twice_as_large_scales()
    {
        // Lengths twice, forces four times: stresses alike, deflections twice, angles alike. Tolerance 0.5 %: the plate is nowhere taken thinner than 0.2 mm.
        FinDesign twice = BuiltFin.Plain with
        {
            Shape = BuiltFin.Plain.Shape with { Outline = BuiltFin.Plain.Shape.Outline with { SpanMm = 640, RootChordMm = 260 }, TrailingEdgeMm = 2 },
            Print = new() { LineWidthMm = 0.9, LayerMm = 0.4 },
        };
        BenchPrediction small = BenchTest.Predict(Clamped, Load), large = BenchTest.Predict(BuiltFin.Of(twice), new(60, 0.26, 0.5));
        Assert.Equal(2 * small.AtTip.MidChord.Value, large.AtTip.MidChord.Value, 5e-3 * large.AtTip.MidChord.Value);
        Assert.Equal(small.AtTip.Twist.Value, large.AtTip.Twist.Value, 5e-3 * Math.Abs(small.AtTip.Twist.Value));
        Assert.Equal(2 * small.PushStiffness.Value, large.PushStiffness.Value, 1e-2 * large.PushStiffness.Value);
        Assert.Equal(small.FirstCrack!.Reserve, large.FirstCrack!.Reserve, 1e-2 * small.FirstCrack.Reserve);
    }

    [Fact]
    public void Predict_of_the_push_is_the_deflection_of_a_newton_at_two_fifths()
    {
        PlateFin fin = Clamped.Plate.Fin;
        double depth = 0.4 * fin.Span, x = (fin.LeadingEdge(depth) + fin.TrailingEdge(depth)) / 2;
        double yields = Clamped.Plate.Solve([new(x, depth, 1)]).Deflection(x, depth);
        Assert.Equal(1 / yields, BenchTest.Predict(Clamped, Load).PushStiffness.Value, 1e-6 / yields);
    }

    [Theory]
    [InlineData(0, 0.1, 0.5)]
    [InlineData(15, 0.4, 0.5)]
    [InlineData(15, 0.1, 1.2)]
    [InlineData(double.NaN, 0.1, 0.5)]
    public void Predict_of_a_weight_beside_the_blade_is_refused(double mass, double depth, double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchTest.Predict(Clamped, new(mass, depth, share)));
}
