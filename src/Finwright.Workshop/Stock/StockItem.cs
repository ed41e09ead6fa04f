namespace Finwright.Workshop.Stock;

/// <summary>What kind of thing is in stock.</summary>
public enum StockKind
{
    /// <summary>Filament, by mass.</summary>
    Filament,

    /// <summary>Resin with its hardener, by volume or mass.</summary>
    Resin,

    /// <summary>Rods, by length.</summary>
    Rod,

    /// <summary>Bolts, nuts and inserts, by number.</summary>
    Fastener,

    /// <summary>Sheet for the trailing edge.</summary>
    Strip,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>In what a quantity is counted.</summary>
public enum StockUnit
{
    /// <summary>Grams.</summary>
    Grams,

    /// <summary>Millilitres.</summary>
    Millilitres,

    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Pieces.</summary>
    Pieces,
}

/// <summary>One purchase of something: a spool, a can, a bag.</summary>
public sealed record StockItem
{
    /// <summary>Its number; 0 before it is kept.</summary>
    public long Id { get; init; }

    /// <summary>What kind.</summary>
    public required StockKind Kind { get; init; }

    /// <summary>What it is called, for example <c>grey PETG</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Batch or lot, as it stands on the label; tells two purchases of the same thing apart.</summary>
    public string Batch { get; init; } = "";

    /// <summary>The material of the library that it is; empty when it is none of them.</summary>
    public string Material { get; init; } = "";

    /// <summary>How much was bought.</summary>
    public required double Quantity { get; init; }

    /// <summary>In what it is counted.</summary>
    public required StockUnit Unit { get; init; }

    /// <summary>What it cost; null when it is not known.</summary>
    public double? Price { get; init; }

    /// <summary>In which currency.</summary>
    public string Currency { get; init; } = "";

    /// <summary>When it was bought.</summary>
    public DateOnly? BoughtOn { get; init; }

    /// <summary>When it was opened.</summary>
    public DateOnly? OpenedOn { get; init; }

    /// <summary>Until when it is good.</summary>
    public DateOnly? UseBefore { get; init; }

    /// <summary>The maker's own words.</summary>
    public string Note { get; init; } = "";

    /// <summary>How much of it was used; counted from the uses.</summary>
    public double Used { get; init; }

    /// <summary>How much is left; below 0 when more was used than bought.</summary>
    public double Left => Quantity - Used;

    /// <summary>How a person names it: <c>grey PETG/B7</c>.</summary>
    public string Label => Batch.Length == 0 ? Name : $"{Name}/{Batch}";
}

/// <summary>Something taken from the stock.</summary>
/// <param name="Id">Its number; 0 before it is kept.</param>
/// <param name="ItemId">What it was taken from.</param>
/// <param name="BuildId">For which build; null for none.</param>
/// <param name="Quantity">How much, in the item's unit; negative when it was put back.</param>
/// <param name="UsedOn">When.</param>
/// <param name="Note">The maker's own words.</param>
public sealed record StockUse(long Id, long ItemId, long? BuildId, double Quantity, DateOnly? UsedOn, string Note);
