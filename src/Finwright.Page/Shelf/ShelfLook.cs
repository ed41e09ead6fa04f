using Finwright.Page.Works;

namespace Finwright.Page.Shelf;

/// <summary>In which order the shelf stands.</summary>
public enum ShelfOrder
{
    /// <summary>The one that was changed last first.</summary>
    Changed,

    /// <summary>By name.</summary>
    Name,

    /// <summary>Those with failing verdicts first; those never worked out last.</summary>
    Verdict,
}

/// <summary>What the shelf shows.</summary>
/// <param name="Items">The designs, in order.</param>
/// <param name="Tags">Every tag on the shelf, with how many designs have it.</param>
/// <param name="All">How many designs there are.</param>
public sealed record ShelfLook(IReadOnlyList<ShelfItem> Items, IReadOnlyList<(string Tag, int Count)> Tags, int All)
{
    /// <summary>Looks along the shelf.</summary>
    /// <param name="desk">The store.</param>
    /// <param name="search">Words that name, tags or a note must hold.</param>
    /// <param name="tag">A tag that all must have; empty for any.</param>
    /// <param name="order">The order.</param>
    public static ShelfLook Of(Desk desk, string search, string tag, ShelfOrder order)
    {
        ArgumentNullException.ThrowIfNull(desk);
        return desk.Ask(store =>
        {
            IReadOnlyList<Workshop.Shelf.ShelvedDesign> all = store.Shelf.List();
            (string, int)[] tags =
            [
                .. all.SelectMany(design => design.Tags).GroupBy(own => own, StringComparer.OrdinalIgnoreCase)
                    .Select(group => (group.First(), group.Count())).OrderBy(own => own.Item1, StringComparer.CurrentCultureIgnoreCase),
            ];
            IEnumerable<ShelfItem> items = (string.IsNullOrWhiteSpace(search) ? all : store.Shelf.List(search))
                .Where(design => tag.Length == 0 || design.Tags.Contains(tag, StringComparer.OrdinalIgnoreCase))
                .Select(design => ShelfItem.Of(store, design, desk.ProgramVersion));
            return new ShelfLook([.. Ordered(items, order)], tags, all.Count);
        });
    }

    // The list comes by name, and the sort is stable.
    private static IEnumerable<ShelfItem> Ordered(IEnumerable<ShelfItem> items, ShelfOrder order) => order switch
    {
        ShelfOrder.Changed => items.OrderByDescending(item => item.ChangedAt),
        ShelfOrder.Verdict => items.OrderBy(item => item.Verdicts is null).ThenByDescending(item => item.Verdicts?.Fails).ThenByDescending(item => item.Verdicts?.Tight),
        _ => items,
    };
}
