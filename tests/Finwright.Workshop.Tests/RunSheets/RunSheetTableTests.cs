using Finwright.Workshop.RunSheets;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Tests.RunSheets;

public sealed class RunSheetTableTests : IDisposable
{
    private readonly ManualTime _time = new();
    private readonly WorkshopStore _store;
    private readonly long _design, _other;
    private readonly RunSheet _sheet;

    public RunSheetTableTests()
    {
        _store = WorkshopStore.InMemory(_time);
        _design = _store.Shelf.Add("Fairway", new(SampleFins.Design("Fairway"), null, "", "test"), []).DesignId;
        _other = _store.Shelf.Add("Other", new(SampleFins.Design("Other"), null, "", "test"), []).DesignId;
        _sheet = _store.RunSheets.Add(Sheet());
    }

    public void Dispose() => _store.Dispose();

    [Fact]
    public void Of_two_values_the_later_counts_whichever_comes_first()
    {
        DateTimeOffset early = _time.Now.AddMinutes(-2), late = _time.Now.AddMinutes(-1);
        Assert.Equal(1, _store.RunSheets.Enter(_sheet.Id, [new("s1:tick", "yes", late)]));
        Assert.Equal(0, _store.RunSheets.Enter(_sheet.Id, [new("s1:tick", "", early)]));
        Assert.Equal(new RunEntry("s1:tick", "yes", late), Assert.Single(_store.RunSheets.Entries(_sheet.Id)));
        Assert.Equal(1, _store.RunSheets.Enter(_sheet.Id, [new("s1:tick", "", _time.Now)]));
        Assert.Equal("", Assert.Single(_store.RunSheets.Entries(_sheet.Id)).Value);
    }

    [Fact]
    public void A_clock_that_runs_ahead_does_not_win_for_ever()
    {
        _store.RunSheets.Enter(_sheet.Id, [new("s1:note", "from the future", _time.Now.AddDays(3))]);
        _time.Now = _time.Now.AddSeconds(1);
        _store.RunSheets.Enter(_sheet.Id, [new("s1:note", "now", _time.Now)]);
        Assert.Equal("now", Assert.Single(_store.RunSheets.Entries(_sheet.Id)).Value);
    }

    [Fact]
    public void Too_much_is_refused_and_nothing_of_it_is_kept()
    {
        Assert.Throws<StoreException>(() => _store.RunSheets.Enter(_sheet.Id, [new("s1:note", "kept?", _time.Now), new("s2:note", new string('x', RunSheetTable.LongestValue + 1), _time.Now)]));
        Assert.Throws<StoreException>(() => _store.RunSheets.Enter(_sheet.Id, [.. Enumerable.Range(0, RunSheetTable.MostEntries + 1).Select(i => new RunEntry($"s{i}:tick", "yes", _time.Now))]));
        Assert.Throws<StoreException>(() => _store.RunSheets.Enter(999, []));
        Assert.Empty(_store.RunSheets.Entries(_sheet.Id));
    }

    [Fact]
    public void Readings_come_in_the_order_of_time_without_those_taken_back()
    {
        _store.RunSheets.Enter(_sheet.Id,
        [
            new("reading:00000001", """{"part":"blade","kelvin":303.5,"at":"2027-03-01T09:30:00Z"}""", _time.Now),
            new("reading:00000002", """{"part":"blade","kelvin":298,"at":"2027-03-01T09:00:00Z"}""", _time.Now),
            new("reading:00000003", "", _time.Now),
            new("s1:note", "warm", _time.Now),
        ]);
        Assert.Equal([298, 303.5], _store.RunSheets.Readings(_sheet.Id).Select(reading => reading.Kelvin));
    }

    [Theory]
    [InlineData("")]
    [InlineData("nonsense")]
    [InlineData("""{"part":"","kelvin":300,"at":"2027-03-01T09:00:00Z"}""")]
    [InlineData("""{"part":"blade","kelvin":-5,"at":"2027-03-01T09:00:00Z"}""")]
    public void What_is_no_reading_is_none(string text) => Assert.Null(RunSheetTable.ReadingOf(text));

    [Fact]
    public void A_sheet_belongs_to_a_build_of_its_own_design_only()
    {
        long own = _store.Builds.Add(new() { RevisionId = _store.Shelf.Find("Fairway")!.Latest.Id, Name = "first" }).Id, strange = _store.Builds.Add(new() { RevisionId = _store.Shelf.Find("Other")!.Latest.Id, Name = "second" }).Id;
        Assert.Throws<StoreException>(() => _store.RunSheets.Add(Sheet() with { BuildId = strange }));
        Assert.Throws<StoreException>(() => _store.RunSheets.GiveTo(_sheet.Id, strange));
        Assert.Equal(own, _store.RunSheets.GiveTo(_sheet.Id, own).BuildId);
        Assert.Equal(_sheet.Id, Assert.Single(_store.RunSheets.List(build: own)).Id);
        Assert.Empty(_store.RunSheets.List(design: _other));
    }

    [Fact]
    public void The_list_shows_the_latest_first_and_nothing_of_deleted_designs()
    {
        _time.Now = _time.Now.AddHours(1);
        RunSheet later = _store.RunSheets.Add(Sheet() with { Kind = RunKind.Print });
        Assert.Equal([later.Id, _sheet.Id], _store.RunSheets.List().Select(sheet => sheet.Id));
        Assert.All(_store.RunSheets.List(), sheet => Assert.Empty(sheet.Plan));
        Assert.Equal("""{"steps":[]}""", _store.RunSheets.Get(later.Id).Plan);
        _store.Shelf.Delete(_design);
        Assert.Empty(_store.RunSheets.List());
    }

    private RunSheet Sheet() => new() { DesignId = _design, Kind = RunKind.Pour, Title = "Fairway: pour", MadeBy = "test", Plan = """{"steps":[]}""" };
}
