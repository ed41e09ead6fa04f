using System.IO.Compression;
using System.Text.Json;
using Finwright.Design;
using Finwright.Page.Making;
using Finwright.Page.Works;
using Finwright.Papers;

namespace Finwright.Page.Tests.Making;

public sealed class HandoutsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-handouts-").FullName;
    private readonly WorkFloor _floor = new(TimeProvider.System);
    private readonly Handouts _handouts;
    private readonly PaperSettings _papers = new() { Date = new(2027, 1, 1), ProgramVersion = "" };

    public HandoutsTests() => _handouts = new(_floor, new() { StorePath = Path.Combine(_folder, "store"), MadeBy = "Finwright 1.2.3" }, TimeProvider.System);

    private string FilesFolder => Path.Combine(_folder, "page", "files");

    public void Dispose()
    {
        _handouts.Dispose();
        _floor.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public async Task Parts_are_made_in_the_background_and_gone_when_thrown_away()
    {
        Handout asked = _handouts.Ask(7, SmallFin.Design, HandoutKind.Parts, _papers);
        Handout ready = await Until(asked.Key, HandoutState.Ready);
        Assert.Equal("Small-fin-parts.zip", ready.FileName);
        using (ZipArchive archive = await ZipFile.OpenReadAsync(ready.Path!, TestContext.Current.CancellationToken))
        {
            Assert.Equal(ready.Files.Select(file => file.Path), archive.Entries.Select(entry => entry.FullName));
            Assert.Contains("blade.step", archive.Entries.Select(entry => entry.FullName));
            Assert.Contains("plate-1.3mf", archive.Entries.Select(entry => entry.FullName));
            Assert.All(archive.Entries, entry => Assert.True(entry.Length > 100));
        }

        Assert.Equal(ready.Key, Assert.Single(_handouts.Of(7)).Key);
        Assert.Empty(_handouts.Of(8));
        _handouts.Drop(ready.Key);
        Assert.Null(_handouts.Find(ready.Key));
        Assert.Empty(Directory.EnumerateFiles(FilesFolder));
    }

    [Fact]
    public async Task A_design_that_cannot_be_made_is_refused_with_the_reason()
    {
        FinDesign impossible = SmallFin.Design with { Shape = SmallFin.Design.Shape with { Outline = SmallFin.Design.Shape.Outline with { SpanMm = 5000 } } };
        Handout refused = await Until(_handouts.Ask(7, impossible, HandoutKind.Pack, _papers).Key, HandoutState.Refused);
        Assert.Contains(refused.Findings, finding => finding.IsError && finding.Path == "$.shape.outline.span_mm");
        Assert.Null(refused.Path);
    }

    [Fact]
    [Trait("Pace", "long")]
    public void The_pack_holds_what_its_own_list_says()
    {
        IReadOnlyList<Assessment.Packing.PackFile> files = FinFiles.Of(HandoutKind.Pack, SmallFin.Made, _papers with { ProgramVersion = "1.2.3" }, "1.2.3", TestContext.Current.CancellationToken);
        using JsonDocument list = JsonDocument.Parse(files.Single(file => file.Path == "summary.json").Content);
        Assert.Equal(
            list.RootElement.GetProperty("files").EnumerateArray().Select(file => file.GetProperty("file").GetString()!).Order(StringComparer.Ordinal),
            files.Select(file => file.Path).Order(StringComparer.Ordinal));
        Assert.Equal("Finwright 1.2.3", list.RootElement.GetProperty("made_by").GetString());
        Assert.Contains("build-sheet.pdf", files.Select(file => file.Path));
        Assert.Contains("plan.json", files.Select(file => file.Path));
    }

    [Fact]
    public void What_is_old_makes_room()
    {
        string[] keys = [.. Enumerable.Range(0, Handouts.MostKept + 2).Select(i =>
        {
            string path = _handouts.NewPath(".stops");
            File.WriteAllText(path, "M0");
            return _handouts.Offer(1, path, $"copy-{i}.gcode").Key;
        })];
        Assert.Equal(Handouts.MostKept, keys.Count(key => _handouts.Find(key) is not null));
        Assert.Equal(Handouts.MostKept, Directory.EnumerateFiles(FilesFolder).Count());
        Assert.Null(_handouts.Find("../../store"));
    }

    private async Task<Handout> Until(string key, HandoutState state)
    {
        using CancellationTokenSource patience = new(TimeSpan.FromMinutes(4));
        while (_handouts.Find(key)!.State != state && !patience.IsCancellationRequested)
            await Task.Delay(50, TestContext.Current.CancellationToken);
        Assert.Equal(state, _handouts.Find(key)!.State);
        return _handouts.Find(key)!;
    }
}
