using Bunit;
using Finwright.Page.Editing;
using Finwright.Page.Hosting;
using Finwright.Page.Settings;
using Finwright.Page.Shelf;
using Finwright.Page.Starting;
using Finwright.Page.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Finwright.Page.Tests.Shelf;

public sealed class ShelfPageTests : IDisposable
{
    private readonly Workbench _bench = new();
    private readonly BunitContext _browser = new();
    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-shelf-").FullName;

    public ShelfPageTests()
    {
        PageSettings settings = new() { StorePath = Path.Combine(_folder, "w.finstore"), MadeBy = "Finwright in trial" };
        _browser.JSInterop.Mode = JSRuntimeMode.Loose;
        _browser.Services.AddSingleton(settings).AddSingleton(_bench.Desk).AddSingleton(TimeProvider.System).AddSingleton(_bench.Open).AddSingleton<ReaderSettings>().AddSingleton<PartBook>().AddScoped<Reader>();
    }

    public void Dispose()
    {
        _browser.Dispose();
        _bench.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void An_empty_shelf_says_what_to_do_first()
    {
        _bench.Desk.Change(store => store.Shelf.Delete(store.Shelf.Find("Plain")!.Id));
        IRenderedComponent<ShelfPage> page = _browser.Render<ShelfPage>();
        Assert.Contains("Nothing stands on the shelf yet", page.Markup, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll("a[href='/start']"));
        Assert.NotEmpty(page.FindAll("a[href='/tour']"));
    }

    [Fact]
    public void A_name_from_anyone_is_text()
    {
        const string name = "<img src=x onerror=alert(1)>";
        _bench.Desk.Change(store => store.Shelf.Rename(store.Shelf.Find("Plain")!.Id, name));
        IRenderedComponent<ShelfPage> page = _browser.Render<ShelfPage>();
        Assert.Equal(name, page.Find(".tile h2").TextContent);
        Assert.DoesNotContain("onerror=alert(1)>", page.Find(".tile h2").InnerHtml, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tab_follows_what_another_changed()
    {
        IRenderedComponent<ShelfPage> page = _browser.Render<ShelfPage>();
        _bench.Desk.Change(store => store.Shelf.Rename(store.Shelf.Find("Plain")!.Id, "Renamed elsewhere"));
        page.WaitForAssertion(() => Assert.Equal("Renamed elsewhere", page.Find(".tile h2").TextContent));
    }

    [Fact]
    public void A_revision_is_taken_up_and_the_step_taken_back()
    {
        DesignSession session = _bench.Session();
        session.Set("$.shape.outline.span_mm", System.Text.Json.Nodes.JsonValue.Create(320.0), "span");
        session.KeepAsRevision("deeper");
        IRenderedComponent<RevisionsPage> page = _browser.Render<RevisionsPage>(parameters => parameters.Add(own => own.Name, "Plain"));
        Assert.Equal(2, page.FindAll(".revision").Count);
        page.FindAll(".revision")[1].QuerySelectorAll("button").First(button => button.TextContent == "take up").Click();
        Assert.Equal(300, session.Now.Design.Shape.Outline.SpanMm);
        page.FindAll("button").First(button => button.TextContent == "undo").Click();
        Assert.Equal(320, session.Now.Design.Shape.Outline.SpanMm);
        page.FindAll(".revision")[1].QuerySelectorAll("button").First(button => button.TextContent == "as latest again").Click();
        Assert.Equal(3, session.Base.Number);
        Assert.Equal("As Plain@1 again.", session.Base.Note);
        Assert.Equal(3, page.FindAll(".revision").Count);
    }
}
