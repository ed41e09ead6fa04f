using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Storing;

/// <summary>A change is whole or not at all, and keeps what it was given or says why not.</summary>
public sealed class ChangeTests
{
    [Fact]
    public void A_part_that_fails_is_undone_alone_when_whoever_changes_goes_on()
    {
        using TemporaryStore place = new();
        using (WorkshopStore store = place.Open())
        {
            store.Together(() =>
            {
                store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
                Assert.Throws<StoreException>(() => store.Together(() =>
                {
                    store.Outings.Add(new() { SailedOn = new(2027, 5, 2) }, null);
                    store.Outings.Delete(999);
                }));
                store.Outings.Add(new() { SailedOn = new(2027, 5, 3) }, null);
            });
        }

        using WorkshopStore again = place.Open();
        Assert.Equal([new DateOnly(2027, 5, 3), new(2027, 5, 1)], again.Outings.List().Select(outing => outing.SailedOn));
    }

    [Fact]
    public void A_change_that_another_fault_ends_is_undone()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        Assert.Throws<FormatException>(() => store.Together(() =>
        {
            store.Outings.Add(new() { SailedOn = new(2027, 5, 1) }, null);
            throw new FormatException();
        }));
        Assert.Empty(store.Outings.List());
        store.Outings.Add(new() { SailedOn = new(2027, 5, 2) }, null);
        Assert.Single(store.Outings.List());
    }

    [Theory]
    [InlineData(double.NaN, "")]
    [InlineData(double.PositiveInfinity, "")]
    [InlineData(1, "a\0b")]
    public void What_would_not_come_back_as_it_went_in_is_refused(double quantity, string note)
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        StoreException problem = Assert.Throws<StoreException>(() =>
            store.Stock.Add(new() { Kind = StockKind.Rod, Name = "rod", Quantity = quantity, Price = quantity, Unit = StockUnit.Millimetres, Note = note }));
        Assert.Equal(StoreProblem.Wrong, problem.Problem);
        Assert.Empty(store.Stock.List());
    }

    [Fact]
    public void What_breaks_a_rule_of_the_tables_is_refused_in_words()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        StoreException grip = Assert.Throws<StoreException>(() => store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Grip = 9 }, null));
        Assert.Equal((StoreProblem.Wrong, true), (grip.Problem, grip.Message.Contains("grip", StringComparison.Ordinal)));
        StoreException build = Assert.Throws<StoreException>(() => store.Outings.Add(new() { SailedOn = new(2027, 5, 1), BuildId = 77 }, null));
        Assert.Equal((StoreProblem.Wrong, true), (build.Problem, build.Message.Contains("not in the store", StringComparison.Ordinal)));
        Assert.Null(store.Refusal);
        Assert.Empty(store.Outings.List());
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \t ")]
    [InlineData("Fin’s “best” – 21 cm\n\r\nnext line")]
    [InlineData("😀 e\u0301 é \uFFFF")]
    public void Texts_come_back_as_they_went_in(string note)
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        long id = store.Outings.Add(new() { SailedOn = new(1, 1, 1), Note = note, Place = note }, null).Id;
        Assert.Equal((note, note, new DateOnly(1, 1, 1)), (store.Outings.Get(id).Note, store.Outings.Get(id).Place, store.Outings.Get(id).SailedOn));
    }
}
