using Bunit;
using Finwright.Page.Builds;
using Finwright.Workshop.Shelf;

namespace Finwright.Page.Tests.Builds;

public sealed class NewBuildTests
{
    [Fact]
    public void A_fin_put_down_as_built_takes_its_plastic_from_the_stock()
    {
        using WorkshopDesk desk = new();
        Revision revision = desk.Desk.Ask(store => store.Shelf.Find(desk.Build.RevisionId)!);
        IRenderedComponent<NewBuild> page = desk.Show<NewBuild>(parameters => parameters.Add(own => own.Base, revision).Add(own => own.Currency, "EUR"));
        page.Find("input[name=name]").Change("Plain two");
        page.Find("select[name=filament]").Change($"{desk.Filament.Id}");
        page.Find("input[name=plastic]").Change("180");
        page.Find("form").Submit();
        Assert.NotNull(desk.Desk.Ask(store => store.Builds.Find("Plain two")));
        Assert.Equal(820, desk.Desk.Ask(store => store.Stock.Get(desk.Filament.Id).Left));
    }

    [Fact]
    public void A_name_that_is_taken_is_said_and_what_was_typed_stays()
    {
        using WorkshopDesk desk = new();
        Revision revision = desk.Desk.Ask(store => store.Shelf.Find(desk.Build.RevisionId)!);
        IRenderedComponent<NewBuild> page = desk.Show<NewBuild>(parameters => parameters.Add(own => own.Base, revision));
        page.Find("input[name=name]").Change("Plain one");
        page.Find("input[name=mass]").Change("412");
        page.Find("form").Submit();
        Assert.Contains(page.FindAll("[role=alert]"), alert => alert.TextContent.Contains("Plain one", StringComparison.Ordinal));
        Assert.Equal("412", page.Find("input[name=mass]").GetAttribute("value"));
        Assert.Single(desk.Desk.Ask(store => store.Builds.List()));
    }
}
