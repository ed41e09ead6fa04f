namespace Finwright.Geometry.FromDesign;

/// <summary>Kind of bought or cut hardware.</summary>
public enum HardwareKind
{
    /// <summary>Bolt from the deck of the board; its length is the part inside the fin, to which the board's own thickness is added.</summary>
    BoxBolt,

    /// <summary>Nut.</summary>
    Nut,

    /// <summary>Threaded rod, cut to length.</summary>
    ThreadedRod,

    /// <summary>Carbon rod, cut to length.</summary>
    CarbonRod,

    /// <summary>Cross pin of a long slot.</summary>
    CrossPin,

    /// <summary>Plate screw of a long slot; its length is the part inside the tab.</summary>
    PlateScrew,

    /// <summary>Strip of thin sheet.</summary>
    StripSheet,

    /// <summary>Lid of a cavity.</summary>
    Lid,

    /// <summary>Dowel rod across a cut, cut to length.</summary>
    Dowel,
}

/// <summary>One line of the cut list.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Size">Size in words, for example "M6 hexagon nut".</param>
/// <param name="Length">Length to cut or to buy, metres; 0 when the size says it all.</param>
/// <param name="Count">How many.</param>
/// <param name="Place">Where it goes.</param>
public sealed record HardwareItem(HardwareKind Kind, string Size, double Length, int Count, string Place);
