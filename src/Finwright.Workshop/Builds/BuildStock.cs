using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Builds;

/// <summary>What a build takes from the stock, and what that cost.</summary>
public static class BuildStock
{
    /// <summary>What these uses say of themselves; uses entered by hand say something else.</summary>
    private const string Said = "as the build says";

    /// <summary>Brings the stock in line with what a build says of its plastic and resin, in place of what it said before.</summary>
    /// <param name="store">The store.</param>
    /// <param name="build">The build, as it is kept.</param>
    /// <remarks>Resin counted in grams is not touched: a volume says its mass only with a density that nobody gave.</remarks>
    public static void Take(WorkshopStore store, Build build)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(build);
        store.Together(() =>
        {
            store.Stock.Forget(build.Id, Said);
            // Parts say more exactly than the build of which spool they are; what is left of the build's plastic is of its own.
            BuildPart[] parts = [.. store.Builds.Parts(build.Id).Where(part => part.PlasticGrams > 0)];
            foreach (BuildPart part in parts)
                Use(part.FilamentId ?? build.FilamentId, part.PlasticGrams, StockUnit.Grams, part.PrintedOn ?? build.MadeOn);
            Use(build.FilamentId, build.PlasticGrams - parts.Sum(part => part.PlasticGrams ?? 0), StockUnit.Grams, build.MadeOn);
            Use(build.ResinId, build.ResinMl, StockUnit.Millilitres, build.MadeOn);
        });

        void Use(long? item, double? quantity, StockUnit unit, DateOnly? day)
        {
            if (item is long id && quantity is double taken and > 0 && store.Stock.Get(id).Unit == unit)
                store.Stock.Use(new(0, id, build.Id, taken, day, Said));
        }
    }

    /// <summary>What a build took from the stock, at the price that was paid for it.</summary>
    /// <param name="store">The store.</param>
    /// <param name="build">The build.</param>
    /// <returns>The cost and its currency; null when nothing was taken, something has no price, or prices are in several currencies.</returns>
    public static (double Cost, string Currency)? CostOf(WorkshopStore store, Build build)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(build);
        (StockUse Use, StockItem Item)[] taken = [.. store.Stock.Uses(build: build.Id).Select(use => (use, store.Stock.Get(use.ItemId)))];
        if (taken.Length == 0 || Array.Exists(taken, pair => pair.Item.Price is null || !(pair.Item.Quantity > 0) || pair.Item.Currency != taken[0].Item.Currency))
            return null;
        return (taken.Sum(pair => pair.Use.Quantity / pair.Item.Quantity * pair.Item.Price!.Value), taken[0].Item.Currency);
    }
}
