using System.Text.Json;
using Finwright.Design;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Library;
using Finwright.Workshop.RunSheets;
using Finwright.Workshop.Stock;

namespace Finwright.Workshop.Storing;

/// <summary>A column whose texts must have a form that the database does not know of.</summary>
/// <param name="Table">Its table.</param>
/// <param name="Column">Its name.</param>
/// <param name="What">What its texts are.</param>
/// <param name="Makes">Whether a text makes sense.</param>
/// <param name="StandIn">What stands in a rescued store for a text that makes none; null when the row means nothing without it.</param>
internal sealed record TextColumn(string Table, string Column, string What, Func<string, bool> Makes, string? StandIn)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<TextColumn> All { get; } =
    [
        Moment("design", "added_at"), Moment("design", "deleted_at"),
        new("design", "tags", "a list of words", IsListOfTexts, "[]"),
        Moment("revision", "made_at"),
        Moment("prediction", "made_at"),
        new("prediction", "results", "JSON", IsJson, null),
        Word<StockKind>("stock_item", "kind", "other"), Word<StockUnit>("stock_item", "unit", null),
        Day("stock_item", "bought_on"), Day("stock_item", "opened_on"), Day("stock_item", "use_before"), Moment("stock_item", "deleted_at"),
        Day("build", "made_on"), Moment("build", "deleted_at"),
        Day("build_part", "printed_on"),
        Day("stock_use", "used_on"),
        Day("bench_session", "taken_on"), Word<RootHold>("bench_session", "root_hold", null), Moment("bench_session", "deleted_at"),
        Word<ChordPlace>("bench_reading", "at_chord", null), Word<ChordPlace>("bench_reading", "read_chord", null),
        Day("outing", "sailed_on"), Moment("outing", "deleted_at"),
        Moment("draft", "kept_at"),
        Moment("calibration", "made_at"), Word<LearnedQuantity>("calibration", "quantity", null), Moment("calibration", "deleted_at"),
        Word<RunKind>("run_sheet", "kind", null), Moment("run_sheet", "made_at"), new("run_sheet", "plan", "JSON", IsJson, null), Moment("run_entry", "at"),
        Word<LibraryKind>("library_item", "kind", null), Moment("library_item", "made_at"), Moment("library_item", "deleted_at"),
    ];

    private static TextColumn Moment(string table, string column) => new(table, column, "a moment", Reads(text => StoredForm.Moment(text)), "1970-01-01T00:00:00.000Z");

    private static TextColumn Day(string table, string column) => new(table, column, "a day", Reads(text => StoredForm.Day(text)), "1970-01-01");

    private static TextColumn Word<T>(string table, string column, string? standIn)
        where T : struct, Enum => new(table, column, "a word that is known", Reads(text => StoredForm.Word<T>(text)), standIn);

    private static Func<string, bool> Reads<T>(Func<string, T> read) => text =>
    {
        try
        {
            read(text);
            return true;
        }
        catch (InvalidDataException)
        {
            return false;
        }
    };

    private static bool IsListOfTexts(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<string[]>(text) is { } texts && Array.TrueForAll(texts, one => one is not null);
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static bool IsJson(string text)
    {
        try
        {
            JsonDocument.Parse(text).Dispose();
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
