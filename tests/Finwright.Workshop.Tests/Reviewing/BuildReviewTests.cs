using Finwright.Strength.Files;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Reviewing;

namespace Finwright.Workshop.Tests.Reviewing;

public sealed class BuildReviewTests : IDisposable
{
    private readonly WorkshopOfTests _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void A_build_as_predicted_says_that_nothing_was_off_and_names_what_was_not_measured()
    {
        BuildReview review = Review(build => build with { PlasticGrams = 202, ResinMl = 228, MassGrams = 463, PrintHours = 12.5, PeakCelsius = 44, Cost = 31, Currency = "EUR" });
        Assert.Equal("Nothing was off beyond what the ranges allow: 7 measurements.", review.Sentence);
        Assert.Empty(review.Remarks);
        Assert.Equal(["deflection and twist on the bench"], review.NotMeasured);
        Assert.All(review.Lines, line => Assert.Equal(ReviewState.Within, line.State));
        Assert.Equal(202.0 / 200, Line(review, ResultKeys.Plastic).Ratio!.Value, 1e-12);
    }

    [Fact]
    public void A_build_of_which_nothing_was_measured_says_so()
    {
        BuildReview review = Review(build => build);
        Assert.Equal("Nothing was measured yet.", review.Sentence);
        Assert.Equal(7, review.NotMeasured.Count);
        Assert.Empty(review.Remarks);
    }

    [Fact]
    public void What_has_no_prediction_is_told_as_that()
    {
        Build build = _shop.Store.Builds.Change(_shop.Build("one", _shop.First, null, null) with { PlasticGrams = 202 });
        BuildReview review = BuildReview.Of(_shop.Store, build, ResultDifferenceOfNothing, _shop.Assessor, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(ReviewState.NotPredicted, Line(review, ResultKeys.Plastic).State);
        Assert.Null(Line(review, ResultKeys.Plastic).Ratio);
        Assert.Empty(review.Remarks);
    }

    [Theory]
    // Expected: plastic 192 to 208 g, resin poured 219 to 242 ml and 213 to 227 g in the fin, fin 446 to 474 g, 10.2 to 13.8 h, 40 to 50 °C, 27 to 33 euros.
    [InlineData("plastic-in-place-of-resin", 230.0, null, 455.0)]
    [InlineData("plastic-in-place-of-resin", 170.0, 255.0, null)]
    [InlineData("flow-or-walls", 230.0, 230.0, null)]
    [InlineData("flow-or-walls", 230.0, null, 490.0)]
    [InlineData("plastic-off", 230.0, null, null)]
    [InlineData("resin-more", 200.0, 270.0, null)]
    [InlineData("resin-more", null, 270.0, null)]
    [InlineData("leak-or-overfill", 200.0, 270.0, 460.0)]
    [InlineData("open-share", 200.0, 270.0, 500.0)]
    [InlineData("air-left", 200.0, 190.0, null)]
    [InlineData("air-left", 200.0, 230.0, 425.0)]
    [InlineData("reservoirs", 200.0, 200.0, 460.0)]
    [InlineData("weight-unexplained", 200.0, 230.0, 500.0)]
    [InlineData("mass-off", null, null, 500.0)]
    [InlineData("mass-unexplained", 193.0, null, 444.0)]
    public void Weights_together_tell_which_assumption_was_off(string code, double? plastic, double? resin, double? mass)
    {
        BuildReview review = Review(build => build with { PlasticGrams = plastic, ResinMl = resin, MassGrams = mass });
        Assert.Equal(code, review.Remarks[0].Code);
    }

    [Theory]
    [InlineData(205.0, null, null)]
    [InlineData(205.0, 238.0, null)]
    [InlineData(195.0, 222.0, 450.0)]
    [InlineData(null, 240.0, 470.0)]
    public void Weights_within_their_ranges_tell_of_nothing(double? plastic, double? resin, double? mass) =>
        Assert.Empty(Review(build => build with { PlasticGrams = plastic, ResinMl = resin, MassGrams = mass }).Remarks);

    [Fact]
    public void A_fin_that_is_heavy_by_its_plastic_says_so()
    {
        ReviewRemark mass = Assert.Single(Review(build => build with { PlasticGrams = 230, MassGrams = 490 }).Remarks, remark => remark.Code == "mass-by-plastic");
        Assert.Contains("the plastic alone is 30 g more than expected, which explains it, or part of it", mass.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("printer-model", 15.0, 13.5)]
    [InlineData("printer-model", 9.5, 10.5)]
    public void Time_beyond_the_printer_s_range_is_told(string code, double off, double within)
    {
        Assert.Equal(code, Assert.Single(Review(build => build with { PrintHours = off }).Remarks).Code);
        Assert.Empty(Review(build => build with { PrintHours = within }).Remarks);
    }

    [Fact]
    public void A_hotter_peak_is_the_room_s_when_it_was_warmer_and_else_the_resin_s()
    {
        double room = WorkshopOfTests.Design.Pour.RoomCelsius, bath = WorkshopOfTests.Design.Pour.BathCelsius;
        Assert.Equal("kinetics-or-cooling", Assert.Single(Review(build => build with { PeakCelsius = 62 }).Remarks).Code);
        Assert.Equal("kinetics-or-cooling", Assert.Single(Review(build => build with { PeakCelsius = 62, RoomCelsius = room + 1, BathCelsius = bath - 5 }).Remarks).Code);
        ReviewRemark warm = Assert.Single(Review(build => build with { PeakCelsius = 62, RoomCelsius = room + 7 }).Remarks);
        Assert.Equal("cure-surroundings", warm.Code);
        Assert.Contains($"The room was {room + 7:0} °C, the design says {room:0} °C", warm.Text, StringComparison.Ordinal);
        Assert.Equal("peak-cooler", Assert.Single(Review(build => build with { PeakCelsius = 33 }).Remarks).Code);
        Assert.Empty(Review(build => build with { PeakCelsius = 49 }).Remarks);
    }

    [Fact]
    public void Cost_is_held_against_prices_of_the_same_currency_only()
    {
        Assert.Equal("prices", Assert.Single(Review(build => build with { Cost = 40, Currency = "EUR" }).Remarks).Code);
        Assert.Empty(Review(build => build with { Cost = 32, Currency = "EUR" }).Remarks);
        BuildReview pounds = Review(build => build with { Cost = 40, Currency = "GBP" });
        Assert.Empty(pounds.Remarks);
        Assert.Equal(ReviewState.NotPredicted, Line(pounds, ResultKeys.Cost).State);
    }

    [Fact]
    public void A_part_is_held_against_its_own_prediction()
    {
        BuildReview review = Review(build =>
        {
            _shop.Store.Builds.Keep(build.Id, new BuildPart("blade", null, null, 180, 9, ""));
            return build;
        });
        ReviewLine blade = Line(review, ResultKeys.PlasticOf("blade"));
        Assert.Equal((150, 180, ReviewState.Above), (blade.Predicted, blade.Measured, blade.State));
        Assert.Equal(ReviewState.NotMeasured, Line(review, ResultKeys.Plastic).State);
    }

    [Fact]
    public void Other_builds_of_the_batches_go_into_the_prediction_its_own_teaching_does_not()
    {
        Build other = _shop.Build("other", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Calibrate(other, LearnedQuantity.Plastic, 1.1, 0.01);
        BuildReview review = Review(build =>
        {
            _shop.Calibrate(build, LearnedQuantity.Plastic, 2, 0.001);
            return build with { PlasticGrams = 222 };
        });
        Assert.Equal(220, Line(review, ResultKeys.Plastic).Predicted!.Value, 1e-9);
        Assert.Empty(review.Remarks);
        Assert.Equal(other.Id, Assert.Single(review.Used.Ratios).From[0].BuildId);
    }

    [Fact]
    public void Readings_of_the_fin_as_predicted_are_within_and_say_nothing()
    {
        BuildReview review = Bench((_, value) => value);
        Assert.Equal(24, review.Readings.Count);
        Assert.All(review.Readings, reading => Assert.Equal(ReviewState.Within, reading.Against.State));
        Assert.All(review.Readings.Where(reading => reading.LogRatio is not null), reading => Assert.Equal(1, reading.Against.Ratio!.Value, 1e-9));
        Assert.Empty(review.Remarks);
    }

    [Fact]
    public void Deflections_that_are_all_off_alike_are_stiffness()
    {
        ReviewRemark remark = Bench((_, value) => 1.5 * value).Remarks[0];
        Assert.Equal("stiffness", remark.Code);
        // 1 / 1.5, and its cube root.
        Assert.Contains("33 % softer", remark.Text, StringComparison.Ordinal);
        Assert.Contains("12.6 % thinner", remark.Text, StringComparison.Ordinal);
        Assert.Contains("50 % more than expected", remark.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Deflections_off_near_the_root_alone_are_its_hold()
    {
        double span = SpanMm;
        BuildReview review = Bench((line, value) => line.ReadAtMm < 0.5 * span ? 1.4 * value : value);
        Assert.Contains(review.Remarks, remark => remark.Code == "root-hold" && remark.Text.Contains("gives more", StringComparison.Ordinal));
        Assert.DoesNotContain(Bench((_, value) => 1.03 * value).Remarks, remark => remark.Code == "root-hold");
    }

    [Fact]
    public void One_reading_apart_from_the_others_is_to_be_read_again()
    {
        BuildReview review = Bench((line, value) => line.Line == 6 ? 2 * value : value);
        ReviewRemark remark = Assert.Single(review.Remarks, remark => remark.Code == "reading-apart");
        Assert.Contains("12 kg", remark.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Twist_alone_is_core_or_rods()
    {
        Build build = _shop.Build("twisted", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Measure(build, [.. _shop.Readings(WorkshopOfTests.Design, 1, 1).Select(line => line with { TwistDegrees = line.TwistDegrees!.Value with { Value = 1.6 * line.TwistDegrees.Value.Value } })]);
        BuildReview review = BuildReview.Of(_shop.Store, build, ResultDifferenceOfNothing, _shop.Assessor, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal("twist-only", Assert.Single(review.Remarks).Code);
    }

    [Fact]
    public void A_summary_holds_all_of_it()
    {
        Build other = _shop.Build("other", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Calibrate(other, LearnedQuantity.Plastic, 1.1, 0.01);
        ReviewSummary summary = ReviewSummary.Of(_shop.Store, Review(build => build with { PlasticGrams = 260, MadeOn = new(2026, 5, 1) }), WorkshopOfTests.Version);
        Assert.Equal(("reviewed", "Fairway@1", "grey PETG/B7", "slow epoxy/L1"), (summary.Build, summary.Revision, summary.Filament, summary.Resin));
        Assert.Equal(["other"], Assert.Single(summary.Used).Builds);
        Assert.NotEmpty(summary.Remarks);
        Assert.Equal(ReviewState.Above, summary.Lines.First(line => line.Key == ResultKeys.Plastic).State);
    }

    [Fact]
    public void What_was_measured_of_two_builds_stands_side_by_side_readings_where_they_are_alike()
    {
        Build one = _shop.Store.Builds.Change(_shop.Build("one", _shop.First, null, null) with { PlasticGrams = 200, MassGrams = 460 }), two = _shop.Store.Builds.Change(_shop.Build("two", _shop.First, null, null) with { PlasticGrams = 201, MassGrams = 420 });
        IReadOnlyList<BenchReadingLine> lines = _shop.Readings(WorkshopOfTests.Design, 1, 1);
        _shop.Measure(one, lines);
        _shop.Measure(two, [lines[0] with { DeflectionMm = new(2 * lines[0].DeflectionMm!.Value.Value, 0.03), TwistDegrees = null }, lines[1] with { MassKg = 20 }, lines[2] with { ReadAtMm = 10 }]);
        IReadOnlyList<MeasuredPair> pairs = MeasuredDifference.Of(BuildReview.Of(_shop.Store, one, WorkshopOfTests.Predicted(), _shop.Assessor, cancellation: TestContext.Current.CancellationToken), BuildReview.Of(_shop.Store, two, WorkshopOfTests.Predicted(), _shop.Assessor, cancellation: TestContext.Current.CancellationToken));
        Assert.Equal([("mass of the finished fin", true), ("plastic", false), ("resin in the fin, weighed", true)], pairs.Take(3).Select(pair => (pair.Name, pair.IsBeyondDoubt)));
        MeasuredPair bent = Assert.Single(pairs.Skip(3));
        Assert.Equal(100, bent.Percent!.Value, 1e-9);
        Assert.True(bent.IsBeyondDoubt);
    }

    private static double SpanMm => WorkshopOfTests.Design.Shape.Outline.SpanMm!.Value;

    private static FinResults ResultDifferenceOfNothing => new() { Name = "Fairway", DesignSha256 = "", Groups = [], Lines = [] };

    private static ReviewLine Line(BuildReview review, string key) => review.Lines.First(line => line.Key == key);

    private BuildReview Review(Func<Build, Build> measured)
    {
        if (_shop.Store.Builds.Find("reviewed") is { } earlier)
            _shop.Store.Builds.Delete(earlier.Id);
        Build build = _shop.Store.Builds.Change(measured(_shop.Build("reviewed", _shop.First, _shop.Grey, _shop.Resin)));
        return BuildReview.Of(_shop.Store, build, WorkshopOfTests.Predicted(), _shop.Assessor, cancellation: TestContext.Current.CancellationToken);
    }

    /// <summary>The fin as predicted, its deflections shifted.</summary>
    private BuildReview Bench(Func<BenchReadingLine, double, double> shift)
    {
        Build build = _shop.Build($"bench {_shop.Store.Builds.List().Count}", _shop.First, _shop.Grey, _shop.Resin);
        _shop.Measure(build, _shop.Readings(WorkshopOfTests.Design, 1, 1, shift));
        return BuildReview.Of(_shop.Store, build, ResultDifferenceOfNothing, _shop.Assessor, cancellation: TestContext.Current.CancellationToken);
    }
}
