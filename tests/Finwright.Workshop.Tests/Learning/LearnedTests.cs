using Finwright.Design;
using Finwright.Strength.FromDesign;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;

namespace Finwright.Workshop.Tests.Learning;

public sealed class LearnedTests : IDisposable
{
    private readonly WorkshopOfTests _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void For_one_build_gives_its_factor_and_a_range_for_another_fin()
    {
        Build one = _shop.Build("one", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Calibrate(one, LearnedQuantity.Plastic, 1.05, 0.02);
        LearnedRatio learned = Learned.For(_shop.Store, _shop.Grey, _shop.Resin)[LearnedQuantity.Plastic]!;
        Assert.Equal(1.05, learned.Factor, 1e-12);
        // Its own doubt, and twice the spread between fins of one batch, 1 %: its own away from the mean, and the other fin's.
        Assert.Equal(Math.Sqrt(0.02 * 0.02 + 2 * 0.01 * 0.01), learned.Deviation, 1e-12);
        Assert.True(learned.IsSameBatch);
        Assert.Equal([one.Id], learned.From.Select(own => own.BuildId!.Value));
    }

    [Fact]
    public void For_two_builds_weighs_them_by_what_is_known_of_each()
    {
        _shop.Calibrate(_shop.Build("one", _shop.First, _shop.Grey, _shop.Resin), LearnedQuantity.Plastic, 1.02, 0.01);
        _shop.Calibrate(_shop.Build("two", _shop.First, _shop.Grey, _shop.Resin), LearnedQuantity.Plastic, 1.04, 0.03);
        LearnedRatio learned = Learned.For(_shop.Store, _shop.Grey, _shop.Resin)[LearnedQuantity.Plastic]!;
        // They differ by less than their doubt: the spread is that of a batch, 1 %.
        double w1 = 1 / (0.01 * 0.01 + 1e-4), w2 = 1 / (0.03 * 0.03 + 1e-4);
        Assert.Equal(Math.Exp((w1 * Math.Log(1.02) + w2 * Math.Log(1.04)) / (w1 + w2)), learned.Factor, 1e-12);
        Assert.Equal(Math.Sqrt(1 / (w1 + w2) + 1e-4), learned.Deviation, 1e-12);
    }

    [Fact]
    public void For_builds_that_differ_by_more_than_their_doubt_widens_the_range()
    {
        _shop.Calibrate(_shop.Build("one", _shop.First, _shop.Grey, _shop.Resin), LearnedQuantity.Plastic, 0.9, 0.005);
        _shop.Calibrate(_shop.Build("two", _shop.First, _shop.Grey, _shop.Resin), LearnedQuantity.Plastic, 1.1, 0.005);
        LearnedRatio learned = Learned.For(_shop.Store, _shop.Grey, _shop.Resin)[LearnedQuantity.Plastic]!;
        // Two equal weights: the method of moments gives (d²/2 − s²) for a difference d of the logarithms.
        double difference = Math.Log(1.1 / 0.9), between = difference * difference / 2 - 0.005 * 0.005;
        Assert.Equal(Math.Sqrt(0.9 * 1.1), learned.Factor, 1e-9);
        Assert.Equal(Math.Sqrt((0.005 * 0.005 + between) / 2 + between), learned.Deviation, 1e-9);
    }

    [Fact]
    public void For_stiffness_the_doubt_that_all_readings_share_stays()
    {
        foreach (string name in (string[])["one", "two", "three"])
        {
            Build build = _shop.Build(name, _shop.First, _shop.Grey, _shop.Resin);
            _shop.Calibrate(build, LearnedQuantity.WallStiffness, 0.9, 0.07, _shop.Measure(build, [new(1, 10, 100, ChordPlace.MidChord, 100, ChordPlace.MidChord, new(3, 0.1), null, "")]).Id);
        }

        LearnedRatio learned = Learned.For(_shop.Store, _shop.Grey, _shop.Resin)[LearnedQuantity.WallStiffness]!;
        Assert.Equal(0.9, learned.Factor, 1e-12);
        Assert.Equal(Math.Sqrt(0.07 * 0.07 + 0.03 * 0.03 / 3 + 0.03 * 0.03), learned.Deviation, 1e-12);
    }

    [Fact]
    public void For_another_batch_of_the_material_is_wider_for_another_material_and_none_is_nothing()
    {
        Build build = _shop.Build("one", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Calibrate(build, LearnedQuantity.Plastic, 1.05, 0.02);
        _shop.Calibrate(build, LearnedQuantity.Resin, 0.95, 0.02);
        _shop.Calibrate(build, LearnedQuantity.PrintTime, 1.2, 0.02);
        Learned same = Learned.For(_shop.Store, _shop.Grey, _shop.Resin), like = Learned.For(_shop.Store, _shop.OtherBatch, _shop.Resin), other = Learned.For(_shop.Store, _shop.Nylon, _shop.Resin), unknown = Learned.For(_shop.Store, null, null);
        Assert.Equal(3, same.Ratios.Count);
        Assert.Equal(3, like.Ratios.Count);
        Assert.False(like[LearnedQuantity.Plastic]!.IsSameBatch);
        Assert.True(like[LearnedQuantity.Plastic]!.Deviation > same[LearnedQuantity.Plastic]!.Deviation);
        Assert.True(like[LearnedQuantity.Resin]!.Deviation > same[LearnedQuantity.Resin]!.Deviation);
        // Time is the printer's, whatever it prints.
        Assert.Equal([LearnedQuantity.PrintTime], other.Ratios.Select(ratio => ratio.Quantity));
        Assert.Equal([LearnedQuantity.PrintTime], unknown.Ratios.Select(ratio => ratio.Quantity));
        // Once the very batch has taught, others of its material do not count.
        _shop.Calibrate(_shop.Build("two", _shop.First, _shop.OtherBatch, _shop.Resin), LearnedQuantity.Plastic, 0.9, 0.02);
        Assert.Equal(0.9, Learned.For(_shop.Store, _shop.OtherBatch, _shop.Resin)[LearnedQuantity.Plastic]!.Factor, 1e-12);
        Assert.Equal(1.05, Learned.For(_shop.Store, _shop.Grey, _shop.Resin)[LearnedQuantity.Plastic]!.Factor, 1e-12);
    }

    [Fact]
    public void For_leaves_out_the_build_itself_deleted_builds_and_stiffness_without_its_readings()
    {
        Build one = _shop.Build("one", _shop.First, _shop.Grey, _shop.Resin), two = _shop.Build("two", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Calibrate(one, LearnedQuantity.Plastic, 1.05, 0.02);
        long session = _shop.Measure(two, [new(1, 10, 100, ChordPlace.MidChord, 100, ChordPlace.MidChord, new(3, 0.1), null, "")]).Id;
        _shop.Calibrate(two, LearnedQuantity.WallStiffness, 0.9, 0.05, session);
        Assert.Null(Learned.For(_shop.Store, _shop.Grey, _shop.Resin, except: one.Id)[LearnedQuantity.Plastic]);
        Assert.NotNull(Learned.For(_shop.Store, _shop.Grey, _shop.Resin, except: one.Id)[LearnedQuantity.WallStiffness]);
        _shop.Store.Bench.Delete(session);
        Assert.Null(Learned.For(_shop.Store, _shop.Grey, _shop.Resin)[LearnedQuantity.WallStiffness]);
        _shop.Store.Bench.Restore(session);
        Assert.NotNull(Learned.For(_shop.Store, _shop.Grey, _shop.Resin)[LearnedQuantity.WallStiffness]);
        _shop.Store.Builds.Delete(one.Id);
        Assert.Null(Learned.For(_shop.Store, _shop.Grey, _shop.Resin)[LearnedQuantity.Plastic]);
    }

    [Fact]
    public void Into_a_design_puts_factors_never_less_sure_than_the_material_by_itself()
    {
        Assert.Same(WorkshopOfTests.Design, Learned.Nothing.Into(WorkshopOfTests.Design));
        Build build = _shop.Build("one", _shop.First, _shop.Grey, _shop.Resin);
        long session = _shop.Measure(build, [new(1, 10, 100, ChordPlace.MidChord, 100, ChordPlace.MidChord, new(3, 0.1), null, "")]).Id;
        _shop.Calibrate(build, LearnedQuantity.WallStiffness, 0.9, 0.02, session);
        _shop.Calibrate(build, LearnedQuantity.CoreStiffness, 0.8, 2, session);
        Materials learned = Learned.For(_shop.Store, _shop.Grey, _shop.Resin).Into(WorkshopOfTests.Design).Materials;
        Assert.Equal((0.9, 0.8), (learned.WallFactor, learned.CoreFactor));
        Assert.Equal(100 * Math.Sqrt(0.02 * 0.02 + 2 * 0.03 * 0.03), learned.WallFactorDeviationPercent!.Value, 0.01);
        double material = MaterialsFromDesign.Of(WorkshopOfTests.Design, [])!.CoreFactor.RelativeDeviation;
        Assert.Equal(100 * material, learned.CoreFactorDeviationPercent!.Value, 0.01);
        Assert.Empty(DesignValidation.Check(WorkshopOfTests.Design with { Materials = learned }));
    }

    [Fact]
    public void Into_results_scales_what_it_multiplies_and_the_mass_of_all()
    {
        Build build = _shop.Build("one", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Calibrate(build, LearnedQuantity.Plastic, 1.1, 0.005);
        FinResults before = WorkshopOfTests.Predicted(), after = Learned.For(_shop.Store, _shop.Grey, _shop.Resin).Into(before);
        Assert.Equal(1.1 * 200, after[ResultKeys.Plastic]!.Value!.Value, 1e-9);
        Assert.Equal(1.1 * 150, after[ResultKeys.PlasticOf("blade")]!.Value!.Value, 1e-9);
        Assert.Equal(before[ResultKeys.ResinPoured], after[ResultKeys.ResinPoured]);
        Assert.Equal(220 + 220 + 40, after[ResultKeys.FinMass]!.Value!.Value, 1e-9);
        // 4 % before; two deviations of the learned factor are less.
        double share = Math.Exp(2 * Math.Sqrt(0.005 * 0.005 + 2 * 0.01 * 0.01)) - 1;
        Assert.Equal(220 * (1 + share), after[ResultKeys.Plastic]!.High!.Value, 1e-9);
        Assert.Equal(before[ResultKeys.Cost], after[ResultKeys.Cost]);
    }

    [Fact]
    public void Into_results_of_a_doubtful_factor_keeps_the_narrower_range()
    {
        _shop.Calibrate(_shop.Build("one", _shop.First, _shop.Grey, _shop.Resin), LearnedQuantity.Plastic, 1.1, 0.3);
        ResultLine after = Learned.For(_shop.Store, _shop.Grey, _shop.Resin).Into(WorkshopOfTests.Predicted())[ResultKeys.Plastic]!;
        Assert.Equal(1.04 * 220, after.High!.Value, 1e-9);
        Assert.Equal(0.96 * 220, after.Low!.Value, 1e-9);
    }
}
