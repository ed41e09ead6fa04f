using Finwright.Page.Builds;
using Finwright.Workshop.Builds;

namespace Finwright.Page.Tests.Builds;

public sealed class BuildFormTests
{
    private static readonly DateOnly Today = new(2027, 5, 2);

    [Fact]
    public void A_kept_build_comes_back_unchanged_through_its_form()
    {
        using WorkshopDesk desk = new();
        Build build = desk.Desk.Change(store => store.Builds.Change(desk.Build with { MassGrams = 412.5, PeakCelsius = 41, MadeOn = Today, Problems = "a bubble", PlasticGrams = 180, Cost = 31.25, Currency = "EUR" }));
        Assert.Equal(build, new BuildForm(desk.Reader, build, Today).ToKeep());
    }

    [Fact]
    public void A_wrong_number_is_said_at_its_field_and_the_rest_stays()
    {
        using WorkshopDesk desk = new();
        BuildForm form = new(desk.Reader, desk.Build, Today);
        form.Form[BuildForm.Mass] = "heavy";
        form.Form[BuildForm.Note] = "first of the year";
        Assert.Null(form.ToKeep());
        Assert.NotNull(form.Form.WrongAt(BuildForm.Mass));
        Assert.Null(form.Form.WrongAt(BuildForm.Note));
        Assert.Equal("first of the year", form.Form[BuildForm.Note]);
    }

    [Fact]
    public void A_proposed_name_is_one_that_no_build_has()
    {
        using WorkshopDesk desk = new();
        (string first, string second) = desk.Desk.Change(store =>
        {
            string free = BuildForm.FreeName(store, "Plain");
            store.Builds.Add(new() { Name = free, RevisionId = desk.Build.RevisionId });
            return (free, BuildForm.FreeName(store, "Plain"));
        });
        Assert.Equal(("Plain 1", "Plain 2"), (first, second));
    }
}
