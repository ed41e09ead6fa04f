using Finwright.Design;
using Finwright.Making.Quantities;

namespace Finwright.Making.FromDesign;

/// <summary>From the prices of the design file to prices of SI amounts.</summary>
public static class PricesFromDesign
{
    private const double JoulesPerKwh = 3.6e6;

    /// <summary>The price list.</summary>
    /// <param name="prices">As the maker gives them.</param>
    public static PriceList Of(Prices prices)
    {
        ArgumentNullException.ThrowIfNull(prices);
        return new()
        {
            Currency = prices.Currency,
            Filament = prices.FilamentPerKg,
            Spool = prices.SpoolKg,
            Resin = prices.ResinPerKg,
            ResinPack = prices.ResinPackKg,
            CarbonRod = prices.CarbonRodPerM,
            ThreadedRod = prices.ThreadedRodPerM,
            Dowel = prices.DowelPerM,
            Bolt = prices.BoltEach,
            Nut = prices.NutEach,
            Sheet = prices.SheetEach,
            Sundries = prices.SundriesEach,
            Energy = prices.EnergyPerKwh / JoulesPerKwh,
            PrinterPower = prices.PrinterWatts,
        };
    }
}
