using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Stock;

namespace Finwright.Workshop.Season;

/// <summary>What the invented workshop bought.</summary>
internal static class SeasonStock
{
    /// <summary>The first spool.</summary>
    public static readonly ItemLabel Grey = new("grey PETG", "K14");

    /// <summary>The second spool, of another batch.</summary>
    public static readonly ItemLabel Black = new("black PETG", "M02");

    /// <summary>The first can of resin.</summary>
    public static readonly ItemLabel EarlyResin = new("slow laminating resin", "R3");

    /// <summary>The second can.</summary>
    public static readonly ItemLabel LateResin = new("slow laminating resin", "R5");

    /// <summary>All of it.</summary>
    public static readonly IReadOnlyList<BundledItem> Items =
    [
        new(StockKind.Filament, Grey.Name, Grey.Batch, "petg-printed", 2000, StockUnit.Grams, 41, "EUR", new(2027, 2, 27), new(2027, 3, 13), null, "Dried before each print."),
        new(StockKind.Filament, Black.Name, Black.Batch, "petg-printed", 2000, StockUnit.Grams, 38.5, "EUR", new(2027, 4, 20), new(2027, 4, 25), null, ""),
        new(StockKind.Resin, EarlyResin.Name, EarlyResin.Batch, "laminating-slow", 1500, StockUnit.Millilitres, 46, "EUR", new(2027, 3, 1), new(2027, 3, 20), new(2028, 3, 1), "Resin and hardener together."),
        new(StockKind.Resin, LateResin.Name, LateResin.Batch, "laminating-slow", 1500, StockUnit.Millilitres, 47.5, "EUR", new(2027, 4, 28), new(2027, 5, 8), new(2028, 4, 28), ""),
        new(StockKind.Rod, "carbon rod 6 mm", "", "", 3000, StockUnit.Millimetres, 24, "EUR", new(2027, 2, 27), null, null, ""),
    ];
}
