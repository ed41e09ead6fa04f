using Finwright.Assessment.Figures;
using Finwright.Assessment.Loaded;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Tests.Figures;
using Finwright.Geometry.Outlines;
using Finwright.Strength.Margins;
using Finwright.Water.Sailing;
using OxyPlot;

namespace Finwright.Assessment.Tests.Packing;

public sealed class LoadedFiguresTests
{
    private static readonly string[] All = ["deflection.svg", "twist.svg", "stress.svg", "bench.svg", "frequencies.svg"];

    [Fact]
    public void Of_a_loaded_fin_draws_all_five_with_every_name_on_the_sheet()
    {
        (string File, string What, Figure Figure)[] figures = Draw(FinToDraw.Loaded);
        Assert.Equal(All, figures.Select(figure => figure.File), StringComparer.Ordinal);
        Assert.All(figures, figure =>
        {
            DrawnFigure drawn = new(figure.Figure);
            Assert.Empty(drawn.Outside());
            Assert.StartsWith("test fin: ", drawn.Title, StringComparison.Ordinal);
            Assert.EndsWith(".", drawn.Words, StringComparison.Ordinal);
            Assert.DoesNotContain("NaN", System.Text.Encoding.UTF8.GetString(figure.Figure.ToSvg()), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Of_the_same_fin_gives_the_same_bytes() =>
        Assert.All(Draw(FinToDraw.Loaded).Zip(Draw(FinToDraw.Loaded)), pair => Assert.True(pair.First.Figure.ToSvg().AsSpan().SequenceEqual(pair.Second.Figure.ToSvg()), pair.First.File));

    [Fact]
    public void A_long_name_stays_on_the_sheet() =>
        Assert.All(LoadedFigures.Of(new string('m', 70), FinToDraw.Loaded, FinToDraw.Bench, FinToDraw.Vibration), figure => Assert.Empty(new DrawnFigure(figure.Figure).Outside()));

    [Fact]
    public void A_load_case_that_did_not_settle_is_left_out_and_said_to_be()
    {
        DrawnFigure whole = Figure("deflection.svg", FinToDraw.Loaded), less = Figure("deflection.svg", With(FinToDraw.Loaded, LoadCaseKind.Cruise, LoadedStatus.NotSettled));
        Assert.Contains(whole.Texts, text => text.StartsWith("cruise", StringComparison.Ordinal));
        Assert.DoesNotContain(less.Texts, text => text.StartsWith("cruise", StringComparison.Ordinal));
        Assert.Contains("Left out, since load and shape did not settle: cruise.", less.Texts, StringComparer.Ordinal);
        DrawnFigure twist = Figure("twist.svg", With(FinToDraw.Loaded, LoadCaseKind.TopSpeed, LoadedStatus.NotSettled));
        Assert.DoesNotContain(twist.Texts, text => text.StartsWith("top speed", StringComparison.Ordinal));
        Assert.Contains(twist.Texts, text => text.StartsWith("Left out", StringComparison.Ordinal) && text.Contains("top speed", StringComparison.Ordinal));
        Assert.DoesNotContain(Draw(With(FinToDraw.Loaded, LoadCaseKind.Overload, LoadedStatus.NotSettled)), figure => figure.File is "stress.svg");
    }

    [Fact]
    public void A_load_that_the_fin_does_not_carry_is_drawn_and_said_to_be_too_much()
    {
        FinLoaded loaded = With(FinToDraw.Loaded, LoadCaseKind.Overload, LoadedStatus.NotCarried);
        Assert.Contains(Figure("stress.svg", loaded).Texts, text => text.Contains("before it stalls", StringComparison.Ordinal));
        Assert.Contains(Figure("deflection.svg", loaded).Texts, text => text.StartsWith("gust or landing", StringComparison.Ordinal));
        Assert.DoesNotContain(Figure("twist.svg", loaded).Texts, text => text.StartsWith("gust or landing", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_is_drawn_when_there_is_nothing_to_show()
    {
        Assert.Empty(LoadedFigures.Of("fin", null, null, null));
        Assert.Empty(LoadedFigures.Of("fin", new() { Problem = "No." }, new() { Problem = "No." }, new() { Problem = "No." }));
        FinLoaded none = FinToDraw.Loaded with { Cases = [.. FinToDraw.Loaded.Cases.Select(own => own with { Status = LoadedStatus.NotSolved })] };
        Assert.Equal(["frequencies.svg"], LoadedFigures.Of("fin", none, null, FinToDraw.Vibration).Select(figure => figure.File), StringComparer.Ordinal);
    }

    [Fact]
    public void The_bench_weight_is_dashed_and_ends_where_the_bench_says()
    {
        DrawnFigure with = Figure("deflection.svg", FinToDraw.Loaded), without = new(LoadedFigures.Of("test fin", FinToDraw.Loaded, null, null).First().Figure);
        Assert.True(with.Dashed > without.Dashed);
        double tip = 1e3 * FinToDraw.Bench.Prediction!.AtTip.MidChord.Value;
        Assert.Contains(with.Texts, text => text.EndsWith(tip < 10 ? $"kg on the bench, {tip:0.0} mm" : $"kg on the bench, {tip:0} mm", StringComparison.Ordinal));
    }

    [Fact]
    public void The_tenth_of_the_depth_is_spoken_of_when_it_is_passed_and_only_then()
    {
        // The test fin bends farther than that in a gust; its bench weight alone does not reach it.
        Assert.True(FinToDraw.Loaded[LoadCaseKind.Overload]!.Plate.DeflectionShare > 0.1);
        Assert.True(FinToDraw.Bench.Prediction!.DeflectionShare < 0.1);
        Assert.Contains("a tenth of the depth", Figure("deflection.svg", FinToDraw.Loaded).Texts, StringComparer.Ordinal);
        Assert.Contains("the true fin bends less than drawn", Figure("deflection.svg", FinToDraw.Loaded).Words, StringComparison.Ordinal);
        DrawnFigure bench = new(LoadedFigures.Of("test fin", FinToDraw.Loaded with { Cases = [] }, FinToDraw.Bench, null).First().Figure);
        Assert.DoesNotContain("a tenth of the depth", bench.Texts, StringComparer.Ordinal);
    }

    [Fact]
    public void The_stress_map_covers_the_planform_and_its_highest_band_holds_the_worst_place()
    {
        CaseLoaded overload = FinToDraw.Loaded[LoadCaseKind.Overload]!;
        FieldGrid use = LoadedFigures.WallUse(FinToDraw.Loaded.Structure!, overload.Plate);
        // Straight lines between some hundred rows: a few parts in ten thousand.
        double area = 1e6 * Planform.Of(FinToDraw.Blade.SplineOutline).Area;
        Assert.Equal(area, Math.Abs(Polygons.Area(FieldGrid.Joined(use.RegionFrom(0)))), 1e-3 * area);
        StressPeak worst = overload.Peaks.Where(peak => peak.Part is StressedPart.WallAcrossLayers or StressedPart.WallAlongLayers).MinBy(peak => peak.Reserve)!;
        double greatest = 100 / worst.Reserve;
        // The map's grid holds the places at which walls are judged, and looks between them: never lower, hardly higher.
        Assert.InRange(use.Greatest, greatest * (1 - 1e-9), 1.05 * greatest);
        IReadOnlyList<double> levels = StressFigure.Levels(greatest);
        IReadOnlyList<DataPoint> highest = FieldGrid.Joined(use.RegionFrom(levels[^1]));
        Assert.True(Polygons.Holds(highest, new(1e3 * worst.X, 1e3 * worst.Y)));
        double[] areas = [.. levels.Select(level => Math.Abs(Polygons.Area(FieldGrid.Joined(use.RegionFrom(level)))))];
        Assert.Equal(areas.OrderDescending(), areas);
    }

    [Fact]
    public void The_stress_map_is_drawn_at_true_proportions()
    {
        DrawnFigure drawn = Figure("stress.svg", FinToDraw.Loaded);
        IReadOnlyList<DataPoint> outline = drawn.Areas[0];
        FieldGrid use = LoadedFigures.WallUse(FinToDraw.Loaded.Structure!, FinToDraw.Loaded[LoadCaseKind.Overload]!.Plate);
        IReadOnlyList<DataPoint> blade = use.RegionFrom(0)[0];
        // Points are written to four digits after the point, on several hundred: far below a thousandth.
        Assert.Equal(Width(blade) / Depth(blade), Width(outline) / Depth(outline), 1e-3);
        Assert.True(outline.MinBy(point => point.Y).Y < outline.MaxBy(point => point.Y).Y);
        // Tip down: the deepest point of the fin is the lowest of the sheet, where the outline is narrow.
        Assert.True(drawn.Areas[0].Count(point => point.Y > outline.Max(other => other.Y) - 1) < drawn.Areas[0].Count(point => point.Y < outline.Min(other => other.Y) + 1));
    }

    [Theory]
    [InlineData(42, 10, 5)]
    [InlineData(70.5, 10, 8)]
    [InlineData(80, 10, 8)]
    [InlineData(80.1, 20, 5)]
    [InlineData(250, 50, 5)]
    [InlineData(3, 0.5, 6)]
    [InlineData(5000, 1000, 5)]
    public void Levels_are_few_and_round_and_the_highest_lies_below_the_worst(double worst, double step, int count)
    {
        IReadOnlyList<double> levels = StressFigure.Levels(worst);
        Assert.Equal(count, levels.Count);
        Assert.Equal(step, levels[1], 1e-12);
        Assert.True(levels[^1] < worst);
    }

    [Fact]
    public void Frequencies_within_the_eddies_are_said_to_hum()
    {
        DrawnFigure meets = new(FrequencyFigure.Draw("fin", [80, 90, 95], [30, 35, 50], (32, 60))), misses = new(FrequencyFigure.Draw("fin", [80], [], null));
        Assert.Contains("may hum", meets.Words, StringComparison.Ordinal);
        Assert.Contains("meet 2", meets.Words, StringComparison.Ordinal);
        Assert.Empty(meets.Outside());
        Assert.DoesNotContain("eddies", misses.Words, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("in water", misses.Texts, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(new[] { 1.0, 1, 1 })]
    [InlineData(new[] { 0.0, 5, 10 })]
    [InlineData(new[] { 9.0, 9.5, 10 })]
    public void Spread_names_keep_their_order_and_do_not_overlap(double[] wanted)
    {
        double[] widths = [3, 2, 4], middles = OverDepthFigure.Spread(wanted, widths, 0, 10);
        Assert.True(middles[0] - 1.5 >= 0 && middles[2] + 2 <= 10);
        Assert.True(middles[1] - middles[0] >= 2.5 - 1e-12 && middles[2] - middles[1] >= 3 - 1e-12);
    }

    private static double Width(IReadOnlyList<DataPoint> line) => line.Max(point => point.X) - line.Min(point => point.X);

    private static double Depth(IReadOnlyList<DataPoint> line) => line.Max(point => point.Y) - line.Min(point => point.Y);

    private static (string File, string What, Figure Figure)[] Draw(FinLoaded loaded) => [.. LoadedFigures.Of("test fin", loaded, FinToDraw.Bench, FinToDraw.Vibration)];

    private static DrawnFigure Figure(string file, FinLoaded loaded) => new(Draw(loaded).Single(figure => string.Equals(figure.File, file, StringComparison.Ordinal)).Figure);

    private static FinLoaded With(FinLoaded loaded, LoadCaseKind kind, LoadedStatus status) =>
        loaded with { Cases = [.. loaded.Cases.Select(own => own.Load.Kind == kind ? own with { Status = status } : own)] };
}
