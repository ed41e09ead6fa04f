namespace Finwright.Making.Quantities;

/// <summary>What things cost, in one currency.</summary>
public sealed record PriceList
{
    /// <summary>The currency, as it is shown.</summary>
    public required string Currency { get; init; }

    /// <summary>Filament, per kg.</summary>
    public required double Filament { get; init; }

    /// <summary>Filament on a spool, kg.</summary>
    public required double Spool { get; init; }

    /// <summary>Resin with hardener, per kg.</summary>
    public required double Resin { get; init; }

    /// <summary>Resin with hardener in a pack, kg.</summary>
    public required double ResinPack { get; init; }

    /// <summary>Carbon rod, per metre.</summary>
    public required double CarbonRod { get; init; }

    /// <summary>Threaded rod, per metre.</summary>
    public required double ThreadedRod { get; init; }

    /// <summary>Dowel rod, per metre.</summary>
    public required double Dowel { get; init; }

    /// <summary>One bolt, pin or screw.</summary>
    public required double Bolt { get; init; }

    /// <summary>One nut.</summary>
    public required double Nut { get; init; }

    /// <summary>Sheet for strip and lids of one fin.</summary>
    public required double Sheet { get; init; }

    /// <summary>Cups, syringes, gloves, abrasives, lacquer for one fin.</summary>
    public required double Sundries { get; init; }

    /// <summary>Electricity, per joule.</summary>
    public required double Energy { get; init; }

    /// <summary>What the printer draws, W.</summary>
    public required double PrinterPower { get; init; }
}
