using Finwright.Geometry.FromDesign;
using Finwright.Numerics;

namespace Finwright.Making.Quantities;

/// <summary>One line of the bill.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Amount">How much the fin takes, in the unit.</param>
/// <param name="Unit">Unit of amount and pack: kg, m, pieces, J.</param>
/// <param name="Packs">How many packs, spools, rods or pieces to buy for the first fin.</param>
/// <param name="PackSize">Size of one of those, in the unit.</param>
/// <param name="Used">Cost of what the fin takes.</param>
/// <param name="Bought">Cost of what must be bought for the first fin.</param>
/// <param name="IsPerCopy">Whether another copy takes it again.</param>
public sealed record BillLine(string Item, double Amount, string Unit, int Packs, double PackSize, double Used, double Bought, bool IsPerCopy = true);

/// <summary>What a fin takes and costs.</summary>
/// <param name="Currency">Currency of all costs.</param>
/// <param name="Lines">Line by line.</param>
public sealed record Bill(string Currency, IReadOnlyList<BillLine> Lines)
{
    // Rods come by the metre; a saw takes a little at each cut.
    private const double RodLength = 1, Saw = 2e-3;

    private const string Kilograms = "kg", Metres = "m", Pieces = "pieces", Joules = "J";

    /// <summary>Cost of what the fin takes.</summary>
    public double Used => Lines.Sum(line => line.Used);

    /// <summary>Cost of what must be bought for the first fin when nothing is at hand.</summary>
    public double Bought => Lines.Sum(line => line.Bought);

    /// <summary>Cost of what one more copy takes; the gauge is not printed again.</summary>
    public double SpareCopy => Lines.Where(line => line.IsPerCopy).Sum(line => line.Used);

    /// <summary>Makes the bill.</summary>
    /// <param name="prices">What things cost.</param>
    /// <param name="plastic">Plastic of the fin's parts, kg.</param>
    /// <param name="gaugePlastic">Plastic of the gauge, kg; 0 when there is none.</param>
    /// <param name="resin">Resin mixed, losses included, kg.</param>
    /// <param name="printing">Time the printer runs, s.</param>
    /// <param name="hardware">Everything bought and cut.</param>
    public static Bill Of(PriceList prices, double plastic, double gaugePlastic, double resin, double printing, IReadOnlyList<HardwareItem> hardware)
    {
        ArgumentNullException.ThrowIfNull(prices);
        ArgumentNullException.ThrowIfNull(hardware);
        Require.NotNegative(plastic);
        Require.NotNegative(gaugePlastic);
        Require.NotNegative(resin);
        Require.NotNegative(printing);
        List<BillLine> lines = [];
        int spools = (int)Math.Ceiling((plastic + gaugePlastic) / prices.Spool);
        lines.Add(new("filament", plastic, Kilograms, spools, prices.Spool, plastic * prices.Filament, spools * prices.Spool * prices.Filament));
        if (gaugePlastic > 0)
            lines.Add(new("filament for the gauge", gaugePlastic, Kilograms, 0, prices.Spool, gaugePlastic * prices.Filament, 0, IsPerCopy: false));
        if (resin > 0)
        {
            int packs = (int)Math.Ceiling(resin / prices.ResinPack);
            lines.Add(new("resin with hardener", resin, Kilograms, packs, prices.ResinPack, resin * prices.Resin, packs * prices.ResinPack * prices.Resin));
        }

        lines.AddRange(Rods(hardware, HardwareKind.CarbonRod, prices.CarbonRod));
        lines.AddRange(Rods(hardware, HardwareKind.ThreadedRod, prices.ThreadedRod));
        lines.AddRange(Rods(hardware, HardwareKind.Dowel, prices.Dowel));
        lines.AddRange(Counted(hardware, [HardwareKind.BoxBolt, HardwareKind.CrossPin, HardwareKind.PlateScrew], prices.Bolt));
        lines.AddRange(Counted(hardware, [HardwareKind.Nut], prices.Nut));
        if (hardware.Any(item => item.Kind is HardwareKind.StripSheet or HardwareKind.Lid))
            lines.Add(new("sheet for strip and lids", 1, Pieces, 1, 1, prices.Sheet, prices.Sheet));
        lines.Add(new("cups, syringes, gloves, abrasives, lacquer", 1, Pieces, 1, 1, prices.Sundries, prices.Sundries));
        double energy = printing * prices.PrinterPower;
        lines.Add(new("electricity of the printer", energy, Joules, 0, 0, energy * prices.Energy, energy * prices.Energy));
        return new(prices.Currency, lines);
    }

    /// <summary>How many rods of one metre hold all pieces: the longest first, each into the first rod with room.</summary>
    internal static int RodsFor(IEnumerable<double> pieces)
    {
        List<double> rests = [];
        foreach (double piece in pieces.OrderDescending())
        {
            // A piece as long as a rod needs no cut; a longer one takes several rods' worth, bought as one.
            double taken = Math.Min(piece + Saw, Math.Max(piece, RodLength));
            int at = rests.FindIndex(rest => rest >= taken);
            if (at >= 0)
                rests[at] -= taken;
            else
                rests.AddRange([.. Enumerable.Repeat(0.0, (int)Math.Ceiling(taken / RodLength) - 1), Math.Ceiling(taken / RodLength) * RodLength - taken]);
        }

        return rests.Count;
    }

    private static IEnumerable<BillLine> Rods(IReadOnlyList<HardwareItem> hardware, HardwareKind kind, double price) =>
        from size in BySize(hardware, kind)
        let pieces = size.SelectMany(item => Enumerable.Repeat(item.Length, item.Count)).ToArray()
        let count = RodsFor(pieces)
        select new BillLine(size.Key, pieces.Sum(), Metres, count, RodLength, pieces.Sum() * price, count * RodLength * price);

    private static IEnumerable<BillLine> Counted(IReadOnlyList<HardwareItem> hardware, HardwareKind[] kinds, double price) =>
        from size in BySize(hardware, kinds)
        let count = size.Sum(item => item.Count)
        select new BillLine(size.Key, count, Pieces, count, 1, count * price, count * price);

    private static IEnumerable<IGrouping<string, HardwareItem>> BySize(IReadOnlyList<HardwareItem> hardware, params HardwareKind[] kinds) =>
        hardware.Where(item => kinds.Contains(item.Kind)).GroupBy(item => item.Size, StringComparer.Ordinal);
}
