using Finwright.Assessment;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Comparing;

public sealed class PredictionsTests : IDisposable
{
    private const string Version = "1.2.3";

    private static readonly FinResults Results = ResultDifferenceTests.Results(new ResultLine("shape.area", ResultGroup.Shape, "area", 285, null, "cm²", null, null, 1));

    private readonly TemporaryStore _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Of_gives_what_is_kept_without_working_it_out()
    {
        using WorkshopStore store = _folder.Open();
        Revision revision = store.Shelf.Add("Sample", SampleFins.Entry(), []);
        Predictions.Keep(store, revision, Version, Results);
        using Assessor assessor = new();
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.Equal(Results.Lines, Predictions.Of(store, revision, assessor, Version, cancellation: stopped.Token).Lines);
    }

    [Fact]
    public void Another_version_and_text_that_is_none_are_worked_out_anew()
    {
        using WorkshopStore store = _folder.Open();
        Revision revision = store.Shelf.Add("Sample", SampleFins.Entry(), []);
        Assert.Null(Predictions.Kept(store, revision, Version));
        Predictions.Keep(store, revision, Version, Results);
        Assert.NotNull(Predictions.Kept(store, revision, Version));
        Assert.Null(Predictions.Kept(store, revision, "1.2.4"));
        store.Shelf.KeepPrediction(revision.Id, store.Shelf.Prediction(revision.Id)!.MadeBy, "{}");
        Assert.Null(Predictions.Kept(store, revision, Version));
        // Working it out begins, and is stopped; nothing is kept then.
        using Assessor assessor = new();
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Predictions.Of(store, revision, assessor, Version, cancellation: stopped.Token));
        Assert.Equal("{}", store.Shelf.Prediction(revision.Id)!.Results);
    }

    [Fact]
    public void A_store_that_is_not_there_keeps_nothing_and_does_not_mind()
    {
        using (WorkshopStore store = _folder.Open())
            store.Shelf.Add("Sample", SampleFins.Entry(), []);
        using WorkshopStore none = WorkshopStore.Open(_folder.File + ".none", create: false);
        using WorkshopStore one = _folder.Open();
        Predictions.Keep(none, one.Shelf.Get(new("Sample", null)), Version, Results);
        Assert.False(File.Exists(_folder.File + ".none"));
    }
}
