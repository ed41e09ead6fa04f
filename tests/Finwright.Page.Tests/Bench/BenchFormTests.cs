using AngleSharp.Dom;
using Bunit;
using Finwright.Page.Bench;
using Finwright.Workshop.Bench;

namespace Finwright.Page.Tests.Bench;

public sealed class BenchFormTests
{
    // The bench is worked out meanwhile, on a machine that may be busy.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public void A_reading_typed_shows_how_it_stands_to_the_prediction_and_is_kept()
    {
        using WorkshopDesk desk = new();
        IRenderedComponent<BenchForm> form = desk.Show<BenchForm>(parameters => parameters.Add(own => own.Build, desk.Build));
        form.WaitForAssertion(() => Assert.True(Row(form, 2).TextContent.Contains("mm (", StringComparison.Ordinal), Row(form, 2).TextContent), Patience);
        Assert.Contains("at most", Row(form, 2).TextContent, StringComparison.Ordinal);

        form.Find("input[name=row2-loaded]").Change("250");
        form.WaitForAssertion(() => Assert.Contains("do not sail it", Row(form, 2).TextContent, StringComparison.Ordinal), Patience);

        form.Find("form").Submit();
        form.WaitForAssertion(() => Assert.Contains("Kept: 1 readings", form.Markup, StringComparison.Ordinal), Patience);
        BenchSession session = Assert.Single(desk.Desk.Ask(store => store.Bench.List(desk.Build.Id)));
        Assert.Equal(250, Assert.Single(session.Readings).DeflectionMm!.Value.Value);
    }

    [Fact]
    public void A_wrong_reading_is_said_beside_its_box_and_nothing_is_kept()
    {
        using WorkshopDesk desk = new();
        IRenderedComponent<BenchForm> form = desk.Show<BenchForm>(parameters => parameters.Add(own => own.Build, desk.Build));
        form.WaitForElement("input[name=row1-loaded]", Patience).Change("much");
        form.WaitForElement("input[name=row1-loaded][aria-invalid=true]", Patience);
        form.Find("form").Submit();
        Assert.Equal("much", form.Find("input[name=row1-loaded]").GetAttribute("value"));
        Assert.Empty(desk.Desk.Ask(store => store.Bench.List(desk.Build.Id)));
    }

    private static IElement Row(IRenderedComponent<BenchForm> form, int index) => form.FindAll(".readings tbody tr")[index];
}
