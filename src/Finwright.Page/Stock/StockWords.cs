using Finwright.Page.Words;
using Finwright.Workshop.Stock;

namespace Finwright.Page.Stock;

/// <summary>Words of the stock for the reader.</summary>
internal static class StockWords
{
    // Below this share of what was bought, little is left: judgement.
    private const double Little = 0.15;

    /// <summary>A kind of thing.</summary>
    public static string Kind(Reader reader, StockKind kind) => kind switch
    {
        StockKind.Filament => reader["filament"],
        StockKind.Resin => reader["resin"],
        StockKind.Rod => reader["rod"],
        StockKind.Fastener => reader["bolts, nuts, inserts"],
        StockKind.Strip => reader["strip"],
        StockKind.Other => reader["other"],
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind."),
    };

    /// <summary>In what something is counted.</summary>
    public static string Unit(Reader reader, StockUnit unit) => unit switch
    {
        StockUnit.Grams => "g",
        StockUnit.Millilitres => "ml",
        StockUnit.Millimetres => "mm",
        StockUnit.Pieces => reader["pieces"],
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Unknown unit."),
    };

    /// <summary>A quantity: scales and cups are metric for everyone.</summary>
    public static string Quantity(Reader reader, double quantity, StockUnit unit) => unit is StockUnit.Millimetres
        ? reader.Tongue.Length(1e-3 * quantity, 0)
        : $"{reader.Tongue.Brief(quantity)} {Unit(reader, unit)}";

    /// <summary>What is to be said of what is left: its mark, its class and the words; null when nothing is.</summary>
    public static (string Mark, string Class, string Words)? Left(Reader reader, StockItem item) =>
        item.Left < 0 ? ("✕", "mark-fails", reader["more was used than bought"])
        : item.Left == 0 ? ("✕", "mark-fails", reader["used up"])
        : item.Left < Little * item.Quantity ? ("◐", "mark-tight", reader["little is left"])
        : null;

    /// <summary>In what a kind of thing is usually counted.</summary>
    public static StockUnit UsualUnit(StockKind kind) => kind switch
    {
        StockKind.Filament => StockUnit.Grams,
        StockKind.Resin => StockUnit.Millilitres,
        StockKind.Rod => StockUnit.Millimetres,
        _ => StockUnit.Pieces,
    };
}
