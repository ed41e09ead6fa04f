using Finwright.Design;
using Finwright.Workshop.Drafts;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Drafts;

public sealed class DraftTableTests : IDisposable
{
    private readonly TemporaryStore _place = new();
    private readonly WorkshopStore _store;
    private readonly Revision _first;

    public DraftTableTests()
    {
        _store = _place.Open();
        _first = _store.Shelf.Add("Fairway", SampleFins.Entry("Fairway"), []);
        _store.Drafts.Begin(_first.DesignId, _first.Id, Text(0));
    }

    public void Dispose()
    {
        _store.Dispose();
        _place.Dispose();
    }

    [Fact]
    public void Steps_and_place_among_them_are_there_when_the_store_is_opened_again()
    {
        for (int step = 1; step <= 5; step++)
            _store.Drafts.Keep(_first.DesignId, new(step, $"step {step}", "$.prove.mass_kg", Text(step)));
        _store.Drafts.Move(_first.DesignId, 2);
        using WorkshopStore again = _place.Open();
        Draft draft = again.Drafts.Find(_first.DesignId)!;
        Assert.Equal((2, 5, _first.Id), (draft.Position, draft.Steps, draft.BaseId));
        Assert.Equal(17, again.Drafts.Read(_first.DesignId)!.Design!.Prove.MassKg);
        Assert.Equal(new DraftStep(4, "step 4", "$.prove.mass_kg", Text(4)), again.Drafts.Step(_first.DesignId, 4));
    }

    [Fact]
    public void A_step_in_the_middle_drops_those_after_it()
    {
        for (int step = 1; step <= 5; step++)
            _store.Drafts.Keep(_first.DesignId, new(step, "", "", Text(step)));
        Draft draft = _store.Drafts.Keep(_first.DesignId, new(3, "other", "", Text(9)));
        Assert.Equal((3, 3), (draft.Position, draft.Steps));
        Assert.Throws<StoreException>(() => _store.Drafts.Step(_first.DesignId, 4));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void A_step_that_does_not_follow_is_refused_and_nothing_changes(int number)
    {
        Assert.Throws<StoreException>(() => _store.Drafts.Keep(_first.DesignId, new(number, "", "", Text(1))));
        Assert.Equal(0, _store.Drafts.Find(_first.DesignId)!.Steps);
        Assert.Throws<StoreException>(() => _store.Drafts.Move(_first.DesignId, 1));
    }

    [Fact]
    public void A_draft_of_which_a_step_was_lost_is_not_read()
    {
        using (var database = _place.Database())
        {
            using var command = database.CreateCommand();
            command.CommandText = "DELETE FROM draft_step";
            Assert.Equal(1, command.ExecuteNonQuery());
        }

        Assert.NotNull(_store.Drafts.Find(_first.DesignId));
        Assert.Null(_store.Drafts.Read(_first.DesignId));
    }

    private static string Text(int step) => DesignWriter.Write(SampleFins.Design("Fairway", 15 + step));
}
