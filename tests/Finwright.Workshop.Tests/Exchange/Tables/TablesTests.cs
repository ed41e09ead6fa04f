using System.Text;
using CsCheck;
using Finwright.Design;
using Finwright.Strength.Files;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Tables;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.Exchange.Tables;

public sealed class TablesTests
{
    private static readonly Gen<string> Words = Gen.String[Gen.Char["ab =+-@'\"#;,\t\r\né風"], 0, 12];

    private static readonly Gen<double?> Number = Gen.Double[0, 20].Nullable();

    private static readonly Gen<DateOnly> Day = Gen.Int[0, 400].Select(days => new DateOnly(2027, 1, 1).AddDays(days));

    private static readonly Gen<Outing> AnyOuting = Gen.Select(Day, Words, Number, Number, Words, Number).Select(Gen.Select(Words, Words, Gen.Int[1, 5].Nullable(), Gen.Int[0, 9].Nullable(), Words)).Select((one, two) => new Outing
    {
        SailedOn = one.Item1,
        Place = one.Item2,
        WindLowKnots = one.Item3,
        WindHighKnots = one.Item4,
        Sail = one.Item5,
        SailM2 = one.Item6,
        Board = two.Item1,
        Rider = two.Item2,
        Grip = two.Item3,
        SpinOuts = two.Item4,
        Speed = two.Item3,
        Feel = two.Item3,
        Note = two.Item5,
    });

    private static readonly Gen<StockItem> AnyItem = Gen.Select(Gen.Enum<StockKind>(), Words, Words, Number, Gen.Enum<StockUnit>()).Select(Gen.Select(Number, Words, Day.Nullable(), Words)).Select((one, two) => new StockItem
    {
        Kind = one.Item1,
        Name = "x" + one.Item2,
        Batch = one.Item3,
        Material = one.Item3,
        Quantity = one.Item4 ?? 0,
        Unit = one.Item5,
        Price = two.Item1,
        Currency = two.Item2,
        BoughtOn = two.Item3,
        OpenedOn = two.Item3,
        UseBefore = two.Item3,
        Note = two.Item4,
    });

    [Fact]
    public void Outings_and_stock_written_are_read_back_the_same_and_nothing_twice() =>
        Gen.Select(AnyOuting.Array[1, 6], AnyItem.Array[1, 6]).Hold((outings, items) =>
        {
            using TemporaryStore one = new(), two = new();
            using WorkshopStore from = one.Open(), to = two.Open();
            foreach (WorkshopStore store in (WorkshopStore[])[from, to])
                store.Together(() => store.Builds.Add(new() { RevisionId = store.Shelf.Add("Fin", SampleFins.Entry(), []).Id, Name = "=the one" }));
            from.Together(() =>
            {
                foreach (Outing own in outings)
                    from.Outings.Add(own with { BuildId = own.SpinOuts is null ? null : from.Builds.List()[0].Id }, null);
                // The same outing twice is two outings.
                from.Outings.Add(outings[0] with { BuildId = null }, null);
                from.Outings.Add(outings[0] with { BuildId = null }, null);
                foreach (StockItem own in items.DistinctBy(own => $"{own.Name}\n{own.Batch}", StringComparer.OrdinalIgnoreCase))
                    from.Stock.Add(own);
            });
            string trips = OutingsCsv.Write(from), stock = StockCsv.Write(from);
            Assert.Equal(new TableTaken(outings.Length + 2, 0), OutingsCsv.Read(Stream(trips), to));
            Assert.Equal(0, StockCsv.Read(Stream(stock), to).Known);
            Assert.Equal(trips, OutingsCsv.Write(to));
            Assert.Equal(stock, StockCsv.Write(to));
            Assert.Equal(new TableTaken(0, outings.Length + 2), OutingsCsv.Read(Stream(trips), to));
            Assert.Equal(0, StockCsv.Read(Stream(stock), to).Added);
            Assert.Equal(trips, OutingsCsv.Write(to));
        }, iter: 25, threads: 2);

    [Fact]
    public void Outings_are_read_as_spreadsheets_of_most_of_europe_save_them()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        Assert.Equal(new TableTaken(1, 0), OutingsCsv.Read(Stream("\uFEFFsailed_on;place;sail_m2;grip\r\n2027-05-01;\"the estuary; west\";7,8;4\r\n;;;\r\n"), store));
        Outing own = Assert.Single(store.Outings.List());
        Assert.Equal(("the estuary; west", 7.8, 4), (own.Place, own.SailM2, own.Grip));
    }

    [Theory]
    [InlineData("sailed_on,place\n2027-05-01,a\n2027-13-01,b\n,c\n", 3, "not-a-day", 4, "missing-day")]
    [InlineData("sailed_on,grip,build\n2027-05-01,6,\n2027-05-02,4,nobody's\n", 2, "out-of-range", 3, "no-such-build")]
    [InlineData("sailed_on,wind_low_knots,grip\n2027-05-01,15 kn,\n2027-05-02,,4.5\n", 2, "not-a-number", 3, "not-whole")]
    [InlineData("place,colour\na,b\n", 1, "unknown-column", 1, "column-missing")]
    public void A_bad_line_keeps_all_outings_out_and_every_bad_line_is_told(string text, int first, string firstCode, int second, string secondCode)
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        ExchangeException refusal = Assert.Throws<ExchangeException>(() => OutingsCsv.Read(Stream(text), store));
        Assert.Equal([(first, firstCode), (second, secondCode)], refusal.Findings.Select(own => (own.Line ?? 0, own.Code)));
        Assert.Empty(store.Outings.List());
    }

    [Theory]
    [InlineData("kind,name,quantity,unit\nfilament,a,1,grams\nuranium,b,1,grams\n", 3, "unknown-word")]
    [InlineData("kind,name,quantity,unit\nfilament,a,1,grams\nresin,A,1,grams\n", 3, "item-twice")]
    [InlineData("kind,name,quantity,unit\nfilament,there,2,grams\n", 2, "item-differs")]
    [InlineData("kind,name,quantity,unit\nfilament,,2,grams\n", 2, "missing-text")]
    [InlineData("kind,name,quantity,unit\nfilament,a,,grams\n", 2, "missing-number")]
    [InlineData("kind,name,quantity,unit\nfilament,a,-1,grams\n", 2, "out-of-range")]
    public void A_bad_line_keeps_the_whole_stock_out(string text, int line, string code)
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        store.Stock.Add(new() { Kind = StockKind.Filament, Name = "there", Quantity = 1, Unit = StockUnit.Grams });
        ExchangeException refusal = Assert.Throws<ExchangeException>(() => StockCsv.Read(Stream(text), store));
        Assert.Equal((line, code), (refusal.Findings[0].Line, refusal.Findings[0].Code));
        Assert.Single(store.Stock.List());
    }

    [Fact]
    public void Readings_of_several_days_are_written_under_their_days_and_read_back_the_same()
    {
        using TemporaryStore place = new();
        using WorkshopStore store = place.Open();
        Revision revision = store.Shelf.Add("Fin", SampleFins.Entry(), []);
        Build first = store.Builds.Add(new() { RevisionId = revision.Id, Name = "one" }), second = store.Builds.Add(new() { RevisionId = revision.Id, Name = "two" });
        BenchReadingLine line = new(1, 10, 190, ChordPlace.MidChord, 180, ChordPlace.TrailingEdge, new(8.2, 0.2), null, "=dial");
        store.Bench.Add(new(0, first.Id, new(2027, 4, 9), RootHold.Clamped, "in the vice", [line]));
        store.Bench.Add(new(0, first.Id, new(2027, 4, 10), RootHold.Clamped, "", [line with { Line = 1, MassKg = 12.5 }]));
        string text = ReadingsCsv.Write(store, first);
        Assert.Contains("# 2027-04-09, root clamped, in the vice\n", text, StringComparison.Ordinal);
        Assert.Equal(ExchangeKind.Readings, ExchangeFile.KindOf(Stream(text)));
        DateOnly day = new(2027, 4, 11);
        Assert.Equal(new TableTaken(2, 0), ReadingsCsv.Read(Stream(text), store, second, day, RootHold.Clamped, 0.3));
        Assert.Equal(new TableTaken(0, 2), ReadingsCsv.Read(Stream(text), store, second, day, RootHold.Clamped, 0.3));
        Assert.Equal([line, line with { Line = 2, MassKg = 12.5 }], Assert.Single(store.Bench.List(second.Id)).Readings);
        Assert.Equal("beyond-tip", Assert.Throws<ExchangeException>(() => ReadingsCsv.Read(Stream(text), store, second, day, RootHold.Clamped, 0.1)).Findings[0].Code);
        Assert.Throws<ExchangeException>(() => ReadingsCsv.Write(store, store.Builds.Add(new() { RevisionId = revision.Id, Name = "three" })));
    }

    [Theory]
    [InlineData("# mine\n\nmass_kg,at_mm,at_chord,deflection_mm\n", ExchangeKind.Readings)]
    [InlineData("\uFEFFSailed_on;Place;colour\n", ExchangeKind.Outings)]
    [InlineData("kind\tname\tquantity\tunit\n", ExchangeKind.Stock)]
    [InlineData(" { \"name\": 1 }", ExchangeKind.Design)]
    [InlineData("a,b,c\n", ExchangeKind.Unknown)]
    [InlineData("note\n", ExchangeKind.Unknown)]
    [InlineData("", ExchangeKind.Unknown)]
    public void A_file_is_known_by_what_it_holds(string text, ExchangeKind kind) => Assert.Equal(kind, ExchangeFile.KindOf(Stream(text)));

    private static MemoryStream Stream(string text) => new(Encoding.UTF8.GetBytes(text));
}
