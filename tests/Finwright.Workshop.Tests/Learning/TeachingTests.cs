using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Reviewing;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Learning;

public sealed class TeachingTests : IDisposable
{
    private const double Wall = 0.9, Core = 0.88;

    private readonly WorkshopOfTests _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void A_build_that_is_softer_moves_the_prediction_of_the_next_to_the_truth_and_narrows_it()
    {
        Build teacher = _shop.Build("teacher", _shop.First, _shop.Grey, _shop.Resin), next = _shop.Build("next", _shop.Second, _shop.Grey, _shop.Resin), other = _shop.Build("other", _shop.Second, _shop.Nylon, _shop.Resin);
        _shop.Measure(teacher, _shop.Readings(WorkshopOfTests.Design, Wall, Core));
        // What the next fin would truly show.
        BenchSession truth = _shop.Measure(next, _shop.Readings(WorkshopOfTests.Shorter, Wall, Core));
        _shop.Measure(other, truth.Readings);
        (BuildReview before, BuildReview otherBefore) = (Review(next), Review(other));
        IReadOnlyList<Calibration> kept = Teach(teacher).Keep(_shop.Store);
        Assert.All(kept, own => Assert.InRange(own.Quantity is LearnedQuantity.WallStiffness ? Wall : Core, own.Low, own.High));
        (BuildReview after, BuildReview otherAfter) = (Review(next), Review(other));
        foreach ((ReadingReview was, ReadingReview now) in before.Readings.Zip(after.Readings).Where(pair => pair.First.Quantity is BenchQuantity.Deflection))
        {
            Assert.True(Math.Abs(now.Against.Predicted!.Value - now.Against.Measured!.Value) < 0.25 * Math.Abs(was.Against.Predicted!.Value - was.Against.Measured!.Value), $"{was.Against.Predicted} -> {now.Against.Predicted}, {now.Against.Measured} was read");
            Assert.True(Width(now.Against) < Width(was.Against));
            Assert.Equal(ReviewState.Within, now.Against.State);
        }

        Assert.Equal([LearnedQuantity.WallStiffness, LearnedQuantity.CoreStiffness], after.Used.Ratios.Select(ratio => ratio.Quantity));
        // Another material is not touched, and the teacher's own review does not use what it taught.
        Assert.Equal(otherBefore.Readings, otherAfter.Readings);
        Assert.Empty(otherAfter.Used.Ratios);
        Assert.Empty(Review(teacher).Used.Ratios);

        static double Width(ReviewLine line) => (line.High!.Value - line.Low!.Value) / line.Predicted!.Value;
    }

    [Fact]
    public void What_a_design_already_holds_is_left_out_of_the_fit()
    {
        Build plain = _shop.Build("plain", _shop.First, _shop.Grey, _shop.Resin);
        FinDesign measured = WorkshopOfTests.Design with { Materials = WorkshopOfTests.Design.Materials with { WallFactor = 1.2, WallFactorDeviationPercent = 2 } };
        Build factored = _shop.Build("factored", _shop.Store.Shelf.Revise(_shop.First.DesignId, new(measured, null, "", "test")), _shop.Grey, _shop.Resin);
        foreach (Build build in (Build[])[plain, factored])
            _shop.Measure(build, _shop.Readings(WorkshopOfTests.Design, Wall, Core));
        Assert.Equal(Teach(plain).Calibrations.Select(own => own.Factor), Teach(factored).Calibrations.Select(own => own.Factor));
    }

    [Fact]
    public void Readings_under_two_holds_are_both_learned_from()
    {
        Build build = _shop.Build("both", _shop.First, _shop.Grey, _shop.Resin);
        long clamped = _shop.Measure(build, _shop.Readings(WorkshopOfTests.Design, Wall, Core)).Id, joint = _shop.Measure(build, _shop.Readings(WorkshopOfTests.Design, Wall, Core), RootHold.Joint).Id;
        Assert.All(Teach(build).Calibrations, own => Assert.Equal([clamped, joint], own.Sessions));
    }

    [Fact]
    public void What_was_measured_while_it_was_made_teaches_ratios_with_the_doubt_of_measuring()
    {
        Build build = _shop.Store.Builds.Change(_shop.Build("made", _shop.First, _shop.Grey, _shop.Resin) with { PlasticGrams = 220, MassGrams = 470, PrintHours = 15, ResinMl = 400 });
        Dictionary<LearnedQuantity, Calibration> taught = Teach(build, WorkshopOfTests.Predicted()).Calibrations.ToDictionary(own => own.Quantity);
        Assert.Equal(1.1, taught[LearnedQuantity.Plastic].Factor, 1e-12);
        Assert.Equal(1.25, taught[LearnedQuantity.PrintTime].Factor, 1e-12);
        // By weight: 470 − 220 − 40 of 220; what ran beside does not count.
        Assert.Equal(210.0 / 220, taught[LearnedQuantity.Resin].Factor, 1e-12);
        Assert.Equal(Math.Exp(MeasuringDoubt.Plastic(220) / 220), taught[LearnedQuantity.Plastic].High / taught[LearnedQuantity.Plastic].Factor, 1e-12);
        Assert.Equal((build.FilamentId, null), (taught[LearnedQuantity.Plastic].FilamentId, taught[LearnedQuantity.Plastic].ResinId));
        Assert.Equal((null, null), (taught[LearnedQuantity.PrintTime].FilamentId, taught[LearnedQuantity.PrintTime].ResinId));
        Assert.Equal((build.FilamentId, build.ResinId), (taught[LearnedQuantity.Resin].FilamentId, taught[LearnedQuantity.Resin].ResinId));
    }

    [Fact]
    public void Resin_that_was_only_poured_is_told_from_what_stands_in_the_reservoirs()
    {
        Build build = _shop.Store.Builds.Change(_shop.Build("poured", _shop.First, _shop.Grey, _shop.Resin) with { ResinMl = 220 });
        Calibration resin = Assert.Single(Teach(build, WorkshopOfTests.Predicted()).Calibrations);
        // 30 ml in the reservoirs; 200 ml of pores.
        Assert.Equal(190.0 / 200, resin.Factor, 1e-12);
        Assert.True(Math.Log(resin.High / resin.Factor) > MeasuringDoubt.Resin(220) / 190);
    }

    [Fact]
    public void Parts_add_up_when_every_one_was_weighed()
    {
        Build build = _shop.Build("parts", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Store.Builds.Keep(build.Id, new BuildPart("blade", null, null, 160, null, ""));
        Assert.DoesNotContain(Teach(build, WorkshopOfTests.Predicted()).Calibrations, own => own.Quantity is LearnedQuantity.Plastic);
        _shop.Store.Builds.Keep(build.Id, new BuildPart("base", null, null, 50, null, ""));
        Assert.Equal(210.0 / 200, Assert.Single(Teach(build, WorkshopOfTests.Predicted()).Calibrations).Factor, 1e-12);
    }

    [Fact]
    public void A_number_that_cannot_be_teaches_nothing_and_is_told()
    {
        Build build = _shop.Store.Builds.Change(_shop.Build("wrong", _shop.First, _shop.Grey, _shop.Resin) with { PlasticGrams = 22 });
        Teaching teaching = Teach(build, WorkshopOfTests.Predicted());
        Assert.Empty(teaching.Calibrations);
        Assert.Contains(teaching.NotTaught, text => text.Contains("too far off", StringComparison.Ordinal));
        Assert.Equal(StoreProblem.Wrong, Assert.Throws<StoreException>(() => teaching.Keep(_shop.Store)).Problem);
    }

    [Fact]
    public void A_build_of_no_known_batch_teaches_only_what_holds_for_any()
    {
        Build build = _shop.Store.Builds.Change(_shop.Build("nameless", _shop.First, null, null) with { PlasticGrams = 210, PrintHours = 13 });
        Teaching teaching = Teach(build, WorkshopOfTests.Predicted());
        Assert.Equal([LearnedQuantity.PrintTime], teaching.Calibrations.Select(own => own.Quantity));
        Assert.Contains(teaching.NotTaught, text => text.Contains("of which filament", StringComparison.Ordinal));
    }

    [Fact]
    public void What_readings_say_of_walls_and_core_is_told_even_where_no_batch_is_known()
    {
        Build build = _shop.Build("nameless", _shop.First, null, null);
        BenchSession session = _shop.Measure(build, _shop.Readings(WorkshopOfTests.Design, Wall, Core));
        Teaching teaching = Teach(build);
        Assert.Empty(teaching.Calibrations);
        FinDesign learned = teaching.Bench!.Into(WorkshopOfTests.Design);
        Assert.Equal(Wall, learned.Materials.WallFactor, 0.05);
        _shop.Store.Bench.DeleteWithTeachings(_shop.Store, session);
        Assert.Null(Teach(build).Bench);
    }

    [Fact]
    public void Deleted_readings_take_along_what_they_taught_and_nothing_else()
    {
        Build build = _shop.Store.Builds.Change(_shop.Build("forgetful", _shop.First, _shop.Grey, _shop.Resin) with { PlasticGrams = 210 });
        BenchSession session = _shop.Measure(build, _shop.Readings(WorkshopOfTests.Design, Wall, Core));
        Teach(build, WorkshopOfTests.Predicted()).Keep(_shop.Store);
        Assert.Equal([LearnedQuantity.WallStiffness, LearnedQuantity.CoreStiffness], _shop.Store.Bench.DeleteWithTeachings(_shop.Store, session).Select(own => own.Quantity));
        Assert.Equal(LearnedQuantity.Plastic, Assert.Single(_shop.Store.Calibrations.List(build.Id)).Quantity);
    }

    [Fact]
    public void Learning_again_takes_the_place_of_before()
    {
        Build build = _shop.Store.Builds.Change(_shop.Build("again", _shop.First, _shop.Grey, _shop.Resin) with { PlasticGrams = 210 });
        Teach(build, WorkshopOfTests.Predicted()).Keep(_shop.Store);
        build = _shop.Store.Builds.Change(build with { PlasticGrams = 220 });
        Teach(build, WorkshopOfTests.Predicted()).Keep(_shop.Store);
        Assert.Equal(1.1, Assert.Single(_shop.Store.Calibrations.List(build.Id)).Factor, 1e-12);
        Assert.Single(_shop.Store.Bin.List(), item => item.Kind is BinKind.Calibration);
    }

    private Teaching Teach(Build build, FinResults? predicted = null) =>
        Teaching.Of(_shop.Store, build, predicted ?? ResultsOfNothing, _shop.Assessor, WorkshopOfTests.Version, DateTimeOffset.UnixEpoch);

    private BuildReview Review(Build build) => BuildReview.Of(_shop.Store, build, ResultsOfNothing, _shop.Assessor);

    private static FinResults ResultsOfNothing => new() { Name = "Fairway", DesignSha256 = "", Groups = [], Lines = [] };
}
