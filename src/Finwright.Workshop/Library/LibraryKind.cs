namespace Finwright.Workshop.Library;

/// <summary>What kind of thing the library keeps.</summary>
public enum LibraryKind
{
    /// <summary>A fin box.</summary>
    Box,

    /// <summary>A printer with its speeds and allowances.</summary>
    Printer,

    /// <summary>What something is made of: filament, cast resin, rods, metal, sheet.</summary>
    Material,

    /// <summary>How a resin cures, thickens and weighs.</summary>
    Resin,

    /// <summary>Rods, bolts and nuts that are used together.</summary>
    Hardware,

    /// <summary>A board.</summary>
    Board,

    /// <summary>A sail.</summary>
    Sail,

    /// <summary>A rider.</summary>
    Rider,

    /// <summary>A place to sail.</summary>
    Spot,
}
