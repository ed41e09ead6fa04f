using Bunit;
using Finwright.Page.Stock;
using Finwright.Papers;
using Finwright.Workshop.Stock;

namespace Finwright.Page.Tests.Stock;

public sealed class StockPageTests
{
    [Fact]
    public void A_further_item_is_kept_once_nothing_is_wrong_with_it()
    {
        using WorkshopDesk desk = new();
        IRenderedComponent<StockPage> page = desk.Show<StockPage>();
        page.Find("button.main").Click();
        page.Find("select[name=kind]").Change(StockKind.Resin.ToString());
        page.Find("input[name=name]").Change("slow resin");
        page.Find("input[name=quantity]").Change("a can");
        page.Find("form").Submit();
        Assert.Contains("is not a number", page.Find("form [role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal("slow resin", page.Find("input[name=name]").GetAttribute("value"));

        page.Find("input[name=quantity]").Change("750");
        page.Find("form").Submit();
        StockItem kept = desk.Desk.Ask(store => store.Stock.Get("slow resin"));
        Assert.Equal((StockKind.Resin, StockUnit.Millilitres, 750), (kept.Kind, kept.Unit, kept.Quantity));
        Assert.Empty(page.FindAll("form"));
    }

    [Fact]
    public void What_is_used_goes_down_and_little_is_told_by_word_and_mark()
    {
        using WorkshopDesk desk = new();
        IRenderedComponent<StockPage> page = desk.Show<StockPage>();
        page.Find("button[aria-label='Use of grey PETG']").Click();
        page.Find("input[name=quantity]").Change("900");
        page.Find("form").Submit();
        Assert.Equal(100, desk.Desk.Ask(store => store.Stock.Get(desk.Filament.Id).Left));
        Assert.Contains("◐ little is left", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_deleted_item_can_be_had_back()
    {
        using WorkshopDesk desk = new(PaperLanguage.German);
        IRenderedComponent<StockPage> page = desk.Show<StockPage>();
        page.Find("button[aria-label='grey PETG löschen']").Click();
        Assert.Empty(desk.Desk.Ask(store => store.Stock.List()));
        page.FindAll("button").Single(button => button.TextContent == "zurückholen").Click();
        Assert.Single(desk.Desk.Ask(store => store.Stock.List()));
    }
}
