using Finwright.Design;
using Finwright.Page.Bench;
using Finwright.Papers;
using Finwright.Workshop.Bench;

namespace Finwright.Page.Tests.Bench;

public sealed class BenchSheetTests
{
    private static readonly DateOnly Today = new(2027, 5, 2);

    [Fact]
    public void Only_places_that_were_read_are_kept()
    {
        BenchSheet sheet = Sheet();
        sheet.Rows[2].Form[ReadingRow.Loaded] = "9.4";
        BenchSession session = sheet.ToKeep(7, 300)!;
        Assert.Equal((7, Today, RootHold.Joint), (session.BuildId, session.TakenOn, session.RootHold));
        Assert.Equal(9.4, Assert.Single(session.Readings).DeflectionMm!.Value.Value, 1e-9);
    }

    [Fact]
    public void A_sheet_without_a_reading_is_not_kept()
    {
        BenchSheet sheet = Sheet();
        Assert.Null(sheet.ToKeep(7, 300));
        Assert.NotNull(sheet.Problem);
    }

    [Fact]
    public void A_place_beyond_the_tip_is_refused_in_its_row()
    {
        BenchSheet sheet = Sheet();
        sheet.Rows[2].Form[ReadingRow.Loaded] = "9.4";
        sheet.Rows[2].Form[ReadingRow.At] = "310";
        Assert.Null(sheet.ToKeep(7, 300));
        Assert.NotNull(sheet.Rows[2].Form.WrongAt(ReadingRow.At));
        Assert.Equal("9.4", sheet.Rows[2].Form[ReadingRow.Loaded]);
    }

    [Fact]
    public void A_place_read_again_follows_its_first_row_without_a_reading()
    {
        BenchSheet sheet = Sheet();
        sheet.Rows[2].Form[ReadingRow.Loaded] = "9.4";
        sheet.Repeat(sheet.Rows[2]);
        Assert.Equal("300", sheet.Rows[3].Form[ReadingRow.At]);
        Assert.False(sheet.Rows[3].IsRead);
        sheet.Rows[3].Form[ReadingRow.Loaded] = "9.6";
        Assert.Equal(2, sheet.ToKeep(7, 300)!.Readings.Count);
    }

    [Fact]
    public void After_keeping_the_places_stay_and_the_readings_go()
    {
        BenchSheet sheet = Sheet();
        sheet.Rows[2].Form[ReadingRow.Loaded] = "9.4";
        sheet.Clear();
        Assert.All(sheet.Rows, row => Assert.False(row.IsRead));
        Assert.Equal("300", sheet.Rows[2].Form[ReadingRow.At]);
    }

    private static BenchSheet Sheet() => new(MadeFin.Reader(PaperLanguage.English, PaperUnits.Metric), new() { Name = "Plain", Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 120 } } }, 300, Today);
}
