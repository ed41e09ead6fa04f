using Finwright.Page.Outings;
using Finwright.Papers;
using Finwright.Workshop.Outings;

namespace Finwright.Page.Tests.Outings;

public sealed class OutingFormTests
{
    private static readonly DateOnly Today = new(2027, 5, 2);

    [Fact]
    public void A_kept_outing_comes_back_unchanged_through_its_form()
    {
        Outing outing = new() { Id = 3, SailedOn = Today, Place = "east banks", WindLowKnots = 15, WindHighKnots = 20.5, SailM2 = 6.4, Grip = 4, SpinOuts = 0, BuildId = 9, Build = "Plain one", Note = "flat water" };
        Assert.Equal(outing, new OutingForm(MadeFin.Reader(PaperLanguage.German, PaperUnits.Metric), outing, Today).ToKeep());
    }

    [Fact]
    public void One_number_is_a_steady_wind()
    {
        OutingForm form = new(MadeFin.Reader(PaperLanguage.English, PaperUnits.Metric), null, Today);
        form.Form[OutingForm.Day] = "2027-05-01";
        form.Form[OutingForm.WindHigh] = "18";
        Outing outing = form.ToKeep()!;
        Assert.Equal((18, 18), (outing.WindLowKnots, outing.WindHighKnots));
    }

    [Theory]
    [InlineData(OutingForm.WindHigh, "12")]
    [InlineData(OutingForm.Grip, "6")]
    [InlineData(OutingForm.Grip, "2.5")]
    [InlineData(OutingForm.Day, "2027-05-03")]
    [InlineData(OutingForm.Day, "")]
    public void What_cannot_be_is_said_at_its_field(string field, string text)
    {
        OutingForm form = new(MadeFin.Reader(PaperLanguage.English, PaperUnits.Metric), null, Today);
        form.Form[OutingForm.Day] = "2027-05-01";
        form.Form[OutingForm.WindLow] = "15";
        form.Form[OutingForm.WindHigh] = "20";
        form.Form[field] = text;
        Assert.Null(form.ToKeep());
        Assert.NotNull(form.Form.WrongAt(field));
    }
}
