using Finwright.Page.Compare;
using Finwright.Workshop.Comparing;

namespace Finwright.Page.Tests.Compare;

public sealed class ComparisonTests : IDisposable
{
    private readonly Workbench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public async Task Shape_inputs_and_bench_are_compared_at_once_and_the_rest_can_be_stopped()
    {
        _bench.Desk.Change(store => store.Shelf.Revise(store.Shelf.Find("Plain")!.Id, new(Deeper(), null, "deeper", "test")));
        using Comparison comparison = new(_bench.Desk);
        comparison.Open("Plain@1", "Plain@2");
        Assert.True(await Until(() => comparison.Summary is not null || comparison.Refusal is not null));
        Assert.Null(comparison.Refusal);
        DesignChange input = Assert.Single(comparison.Summary!.Inputs);
        Assert.Equal("$.shape.outline.span_mm", input.Path);
        ComparedRow span = Assert.Single(ComparedRow.Of(comparison.First!.Results, comparison.Second!.Results), row => row.Line.Key == "shape.span");
        Assert.Equal(20, span.Change!.Value, 6);
        Assert.False(span.IsSame);
        Assert.True(await Until(() => comparison.Work is not null));
        comparison.Stop();
        Assert.True(comparison.IsStopped);
        Assert.False(comparison.IsComplete);
        Assert.Contains(ResultGroup.Water, comparison.Summary.NotCompared);
    }

    [Fact]
    public async Task What_is_not_on_the_shelf_is_said()
    {
        using Comparison comparison = new(_bench.Desk);
        comparison.Open("Plain", "Nothing");
        Assert.True(await Until(() => comparison.Refusal is not null));
        Assert.Contains("Nothing", comparison.Refusal!.Value.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Results_that_are_kept_are_not_worked_out_again()
    {
        _bench.Desk.Change(store => store.Shelf.Revise(store.Shelf.Find("Plain")!.Id, new(Deeper(), null, "deeper", "test")));
        _bench.Desk.Change(store =>
        {
            foreach (int number in (int[])[1, 2])
                Predictions.Keep(store, store.Shelf.Get(new("Plain", number)), _bench.Desk.ProgramVersion, Results(number));
        });
        using Comparison comparison = new(_bench.Desk);
        comparison.Open("Plain@1", "Plain@2");
        Assert.True(await Until(() => comparison.IsComplete));
        ComparedRow[] rows = [.. ComparedRow.Of(comparison.First!.Results, comparison.Second!.Results)];
        Assert.Equal(DifferenceWeight.Clear, rows[0].Weight);
        Assert.Equal(DifferenceWeight.Within, rows[1].Weight);
        Assert.Equal(DifferenceWeight.NotKnown, rows[2].Weight);
        Assert.True(rows[3].IsSame);
    }

    private static FinResults Results(int number) => new()
    {
        Name = "Plain",
        DesignSha256 = "",
        Groups = [ResultGroup.Water],
        Lines =
        [
            Line("water.a", number, 0.2),
            Line("water.b", number, 0.8),
            new("water.c", ResultGroup.Water, "c", number, null, "N", null, null, 0),
            new("water.d", ResultGroup.Water, "d", 5, null, "N", null, null, 0),
        ],
    };

    private static ResultLine Line(string key, double value, double off) => new(key, ResultGroup.Water, key, value, null, "N", value - off, value + off, 1);

    private Finwright.Design.FinDesign Deeper() => _bench.Design with { Shape = _bench.Design.Shape with { Outline = _bench.Design.Shape.Outline with { SpanMm = 320 } } };

    private static async Task<bool> Until(Func<bool> holds)
    {
        using CancellationTokenSource end = new(TimeSpan.FromMinutes(1));
        while (!holds() && !end.IsCancellationRequested)
            await Task.Delay(20, TestContext.Current.CancellationToken);
        return holds();
    }
}
