using System.Text;
using Finwright.Design.Tables;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Exchange.Tables;

/// <summary>The stock as a table in CSV: what was bought, not what was used of it.</summary>
public static class StockCsv
{
    private const string Kind = "kind", Name = "name", Batch = "batch", Material = "material", Quantity = "quantity", Unit = "unit", Price = "price", Currency = "currency";
    private const string BoughtOn = "bought_on", OpenedOn = "opened_on", UseBefore = "use_before", Note = "note";
    private const int LongestName = 120;

    // A tonne, or a cubic metre, or a million pieces: more is a mistake of the unit.
    private const double Largest = 1e6, Dearest = 1e9;

    private static readonly IReadOnlyDictionary<string, StockKind> Kinds = TableForm.Words<StockKind>();

    private static readonly IReadOnlyDictionary<string, StockUnit> Units = TableForm.Words<StockUnit>();

    private static readonly CsvRules Rules = new(
        "items in stock", "item", [Kind, Name, Batch, Material, Quantity, Unit, Price, Currency, BoughtOn, OpenedOn, UseBefore, Note], [Kind, Name, Quantity, Unit], [Kind, Name, Batch, Quantity, Unit])
    {
        LargestFile = 4 << 20,
        MostRows = 5000,
        LongestCell = TableForm.LongestText,
        NeededRemedy = "Add it: an item needs its kind, its name, how much of it there is and in what that is counted.",
    };

    /// <summary>Names of the columns.</summary>
    public static IReadOnlyList<string> Columns => Rules.Columns;

    /// <summary>Writes the stock, by kind and name.</summary>
    /// <param name="store">The store.</param>
    /// <returns>The table's text.</returns>
    public static string Write(WorkshopStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        StringBuilder text = new(CsvText.Line(Columns));
        foreach (StockItem own in store.Stock.List())
        {
            text.Append(CsvText.Line(
                TableForm.WordOf(own.Kind),
                CsvText.Words(own.Name),
                CsvText.Words(own.Batch),
                CsvText.Words(own.Material),
                CsvText.Number(own.Quantity),
                TableForm.WordOf(own.Unit),
                CsvText.Number(own.Price),
                CsvText.Words(own.Currency),
                CsvText.Day(own.BoughtOn),
                CsvText.Day(own.OpenedOn),
                CsvText.Day(own.UseBefore),
                CsvText.Words(own.Note)));
        }

        return text.ToString();
    }

    /// <summary>Takes items in, all of them or none; one that is there already, with the same content, is not doubled.</summary>
    /// <param name="stream">The table.</param>
    /// <param name="store">The store.</param>
    /// <returns>How many came in.</returns>
    /// <exception cref="ExchangeException">Something is wrong in the table, or an item is there with other content.</exception>
    /// <exception cref="StoreException">The store cannot be changed.</exception>
    public static TableTaken Read(Stream stream, WorkshopStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        CsvTable table = CsvTable.Read(stream, Rules);
        return store.Connection.Change(() =>
        {
            Dictionary<string, StockItem> there = store.Stock.List().ToDictionary(Key, own => own with { Id = 0, Used = 0 }, StringComparer.OrdinalIgnoreCase);
            HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
            List<(int Line, StockItem Own)> rows = TableForm.Rows(table, row => Checked(row, there, seen));
            TableForm.Refuse(table.Findings);
            StockItem[] fresh = [.. rows.Select(row => row.Own).Where(own => !there.ContainsKey(Key(own)))];
            foreach (StockItem own in fresh)
                store.Stock.Add(own);
            return new TableTaken(fresh.Length, rows.Count - fresh.Length);
        });
    }

    private static StockItem Checked(CsvRow row, Dictionary<string, StockItem> there, HashSet<string> seen)
    {
        StockItem own = Item(row);
        if (own.Name.Length > LongestName)
            row.Say(Name, "too-long", $"has {own.Name.Length} characters; {LongestName} are the most", "Shorten it.");
        if (own.Name.Length > 0 && !seen.Add(Key(own)))
            row.Say(Name, "item-twice", $"is \"{own.Label}\", which stands in the table twice", "Give each purchase its own batch, or take one line away.");
        else if (there.TryGetValue(Key(own), out StockItem? same) && same != own)
            row.Say(Name, "item-differs", $"is \"{own.Label}\", which is in stock already with other content", "Give the batch of the new one, or change the one that is there.");
        return own;
    }

    private static StockItem Item(CsvRow row) => new()
    {
        Kind = row.NeededWord(Kind, Kinds, "kind of thing"),
        Name = row.NeededText(Name),
        Batch = row.Text(Batch),
        Material = row.Text(Material),
        Quantity = row.NeededNumber(Quantity, 0, Largest),
        Unit = row.NeededWord(Unit, Units, "unit"),
        Price = row.Number(Price, 0, Dearest),
        Currency = row.Text(Currency),
        BoughtOn = row.Day(BoughtOn),
        OpenedOn = row.Day(OpenedOn),
        UseBefore = row.Day(UseBefore),
        Note = row.Text(Note),
    };

    private static string Key(StockItem own) => $"{own.Name}\n{own.Batch}";
}
