using Finwright.Design;
using Finwright.Page.Help;
using Finwright.Page.Hosting;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Tests.Help;

public sealed class TourDesignTests
{
    [Fact]
    public void The_tour_puts_one_demo_on_the_shelf_and_finds_it_the_next_time()
    {
        using Workbench bench = new();
        string text = DesignWriter.Write(bench.Design with { Name = "Wide delta" });
        PageSettings settings = new() { StorePath = "none", MadeBy = "test", Demos = new Dictionary<string, string>(StringComparer.Ordinal) { ["upright"] = DesignWriter.Write(bench.Design), ["delta"] = text } };
        TourDesign tour = new(bench.Desk, settings);
        Assert.Equal("Wide delta (tour)", tour.Find());
        Assert.Equal("Wide delta (tour)", tour.Find());
        Assert.Equal(2, bench.Desk.Ask(store => store.Shelf.List()).Count);
    }

    [Fact]
    public void Without_a_demo_the_tour_says_so()
    {
        using Workbench bench = new();
        Assert.Throws<StoreException>(() => new TourDesign(bench.Desk, new() { StorePath = "none", MadeBy = "test" }).Find());
    }
}
