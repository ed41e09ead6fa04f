using Bunit;
using Finwright.Page.Hosting;
using Finwright.Page.Parts;
using Finwright.Page.Settings;
using Finwright.Page.Words;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Finwright.Page.Tests.Hosting;

public sealed class GuardedTests : IDisposable
{
    private readonly Workbench _bench = new();
    private readonly BunitContext _page = new();

    public GuardedTests()
    {
        PageSettings settings = new() { StorePath = ReaderFolders.NewStorePath(), MadeBy = "Finwright in trial" };
        _page.Services.AddSingleton(new Reader(new ReaderSettings(settings), _bench.Desk, TimeProvider.System));
        _page.Services.AddSingleton(_bench.Desk);
    }

    public void Dispose()
    {
        _page.Dispose();
        _bench.Dispose();
    }

    [Fact]
    public void A_part_that_breaks_leaves_its_neighbour_standing_and_can_be_tried_again()
    {
        Brittle.Breaks = true;
        IRenderedComponent<Guarded> broken = _page.Render<Guarded>(own => own.AddChildContent<Brittle>()), whole = _page.Render<Guarded>(own => own.AddChildContent("<p>whole</p>"));
        Assert.Contains("one of the numbers is missing", broken.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        whole.MarkupMatches("<p>whole</p>");
        Brittle.Breaks = false;
        broken.Find("button").Click();
        broken.MarkupMatches("<p>drawn</p>");
    }

    [Fact]
    public void While_the_store_takes_changes_nothing_is_said() => _page.Render<StoreNotice>().MarkupMatches("");

    private sealed class Brittle : ComponentBase
    {
        public static bool Breaks { get; set; }

        protected override void BuildRenderTree(Microsoft.AspNetCore.Components.Rendering.RenderTreeBuilder builder)
        {
            if (Breaks)
                throw new InvalidOperationException("one of the numbers is missing");
            builder.AddMarkupContent(0, "<p>drawn</p>");
        }
    }
}
