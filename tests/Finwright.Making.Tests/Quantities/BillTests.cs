using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Making.FromDesign;
using Finwright.Making.Quantities;

namespace Finwright.Making.Tests.Quantities;

public sealed class BillTests
{
    private static readonly PriceList PriceList = PricesFromDesign.Of(new Prices
    {
        FilamentPerKg = 20,
        SpoolKg = 1,
        ResinPerKg = 30,
        ResinPackKg = 0.5,
        CarbonRodPerM = 4,
        NutEach = 0.5,
        BoltEach = 2,
        SundriesEach = 5,
        EnergyPerKwh = 0.25,
        PrinterWatts = 100,
    });

    [Fact]
    public void Of_counts_what_is_used_and_what_must_be_bought()
    {
        HardwareItem[] hardware =
        [
            new(HardwareKind.CarbonRod, "4 mm carbon rod", 0.3, 2, "blade"),
            new(HardwareKind.Nut, "M6 hexagon nut", 0, 2, "base"),
            new(HardwareKind.Nut, "M6 hexagon nut", 0, 1, "blade"),
        ];
        // By hand: 0.25 kg · 20 + 0.01 kg · 20 + 0.6 kg · 30 + 0.6 m · 4 + 3 · 0.5 + 5 + 10 h · 0.1 kW · 0.25
        Bill bill = Bill.Of(PriceList, 0.25, 0.01, 0.6, 36_000, hardware);
        Assert.Equal(5 + 0.2 + 18 + 2.4 + 1.5 + 5 + 0.25, bill.Used, 9);
        // One spool, two packs of 0.5 kg, one rod of a metre, three nuts, sundries, electricity.
        Assert.Equal(20 + 30 + 4 + 1.5 + 5 + 0.25, bill.Bought, 9);
        // Another copy needs no gauge.
        Assert.Equal(bill.Used - 0.2, bill.SpareCopy, 9);
        BillLine nuts = Assert.Single(bill.Lines, line => line.Item == "M6 hexagon nut");
        Assert.Equal((3, 3.0), (nuts.Packs, nuts.Amount));
    }

    [Fact]
    public void Of_prices_each_kind_of_hardware()
    {
        HardwareItem[] hardware =
        [
            new(HardwareKind.ThreadedRod, "M6 rod", 0.2, 2, "base"),
            new(HardwareKind.Dowel, "3 mm dowel", 0.03, 4, "blade"),
            new(HardwareKind.BoxBolt, "M6 bolt", 0.05, 2, "base"),
            new(HardwareKind.CrossPin, "3 mm pin", 0.02, 1, "base"),
            new(HardwareKind.StripSheet, "sheet", 0.2, 1, "strip"),
        ];
        PriceList prices = PriceList with { ThreadedRod = 3, Dowel = 2, Sheet = 7 };
        Bill bill = Bill.Of(prices, 1.5, 0, 0, 0, hardware);
        // 1.5 kg · 20, 0.4 m · 3, 0.12 m · 2, two bolts and a pin at 2, the sheet at 7, sundries at 5.
        Assert.Equal(30 + 1.2 + 0.24 + 6 + 7 + 5, bill.Used, 9);
        // Two spools, a metre of each rod; the rest as used.
        Assert.Equal(40 + 3 + 2 + 6 + 7 + 5, bill.Bought, 9);
        Assert.DoesNotContain(bill.Lines, line => line.Item.Contains("resin", StringComparison.Ordinal) || line.Item.Contains("gauge", StringComparison.Ordinal));
        Assert.DoesNotContain(Bill.Of(prices, 1.5, 0, 0, 0, []).Lines, line => line.Item.Contains("sheet", StringComparison.Ordinal));
        // Spools of 0.75 kg: two for a kilogram. Two pieces of 0.6 m: 1.2 m are used, two rods bought.
        Bill small = Bill.Of(prices with { Spool = 0.75 }, 1, 0, 0, 0, [new(HardwareKind.CarbonRod, "4 mm carbon rod", 0.6, 2, "blade")]);
        Assert.Equal((2, 0.75, 20, 30), (small.Lines[0].Packs, small.Lines[0].PackSize, small.Lines[0].Used, small.Lines[0].Bought));
        Assert.Equal((1.2, 2, 4.8, 8), (small.Lines[1].Amount, small.Lines[1].Packs, Math.Round(small.Lines[1].Used, 9), small.Lines[1].Bought));
        // A spool that is just used up is one spool, and a gauge may need the next.
        Assert.Equal(1, Bill.Of(prices, 1, 0, 0, 0, []).Lines[0].Packs);
        Assert.Equal(2, Bill.Of(prices, 1, 0.01, 0, 0, []).Lines[0].Packs);
    }

    [Theory]
    // A metre less the saw's 2 mm for each piece.
    [InlineData(new[] { 0.3, 0.3, 0.3 }, 1)]
    [InlineData(new[] { 0.5, 0.5 }, 2)]
    [InlineData(new[] { 0.498, 0.498 }, 1)]
    [InlineData(new[] { 1.0 }, 1)]
    [InlineData(new[] { 0.6, 0.6, 0.3, 0.3 }, 2)]
    [InlineData(new double[0], 0)]
    [InlineData(new[] { 1.2 }, 2)]
    // What was cut from a rod is not there for the next piece; what is left of a second one is.
    [InlineData(new[] { 0.5, 0.3, 0.3 }, 2)]
    [InlineData(new[] { 2.3, 0.6 }, 3)]
    [InlineData(new[] { 2.3, 0.8 }, 4)]
    public void RodsFor_packs_the_pieces_into_metres(double[] pieces, int rods) => Assert.Equal(rods, Bill.RodsFor(pieces));

    [Fact]
    public void Of_refuses_amounts_that_are_no_numbers()
    {
        for (int bad = 0; bad < 4; bad++)
        {
            double[] amounts = [0.1, 0.1, 0.1, 0.1];
            amounts[bad] = bad % 2 == 0 ? double.NaN : -1;
            Assert.Throws<ArgumentOutOfRangeException>(() => Bill.Of(PriceList, amounts[0], amounts[1], amounts[2], amounts[3], []));
        }
    }
}
