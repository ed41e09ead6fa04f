using Finwright.Page.Fields;
using Finwright.Papers;

namespace Finwright.Page.Tests.Fields;

public sealed class TypedFormTests
{
    [Theory]
    [InlineData("12.5", 12.5)]
    [InlineData(" 12,5 ", 12.5)]
    [InlineData("−3", -3.0)]
    public void A_number_is_read_with_point_or_comma(string text, double expected)
    {
        TypedForm form = new(MadeFin.Reader(PaperLanguage.English, PaperUnits.Metric)) { ["mass"] = text };
        Assert.Equal(expected, form.Number("mass", -10, 20));
        Assert.True(form.IsSound);
    }

    [Theory]
    [InlineData("a lot")]
    [InlineData("1e3")]
    [InlineData("21")]
    [InlineData("1.234,5")]
    public void What_cannot_be_stays_as_it_was_typed_and_is_said_at_its_field(string text)
    {
        TypedForm form = new(MadeFin.Reader(PaperLanguage.English, PaperUnits.Metric)) { ["mass"] = text };
        Assert.Null(form.Number("mass", -10, 20));
        Assert.False(form.IsSound);
        Assert.NotNull(form.WrongAt("mass"));
        Assert.Equal(text, form["mass"]);
        form["mass"] = "3";
        Assert.Null(form.WrongAt("mass"));
    }

    [Fact]
    public void An_inch_reader_types_inches_and_millimetres_are_kept()
    {
        TypedForm form = new(MadeFin.Reader(PaperLanguage.English, PaperUnits.Inch));
        form.Put("at", 254, "mm");
        Assert.Equal("10", form["at"]);
        form["at"] = "5.5";
        Assert.Equal(139.7, form.Number("at", 1, 1000, "mm")!.Value, 1e-6);
    }

    [Fact]
    public void A_day_in_the_future_and_a_needed_field_left_out_are_refused()
    {
        TypedForm form = new(MadeFin.Reader(PaperLanguage.German, PaperUnits.Metric)) { ["day"] = "2027-05-02" };
        Assert.Null(form.Day("day", new DateOnly(2027, 5, 1)));
        Assert.Equal("Dieser Tag liegt in der Zukunft.", form.WrongAt("day"));
        Assert.Equal(new DateOnly(2027, 5, 2), form.Day("day", new DateOnly(2027, 5, 2)));
        Assert.Empty(form.Text("name", 80, isNeeded: true));
        Assert.NotNull(form.WrongAt("name"));
    }
}
