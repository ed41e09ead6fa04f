using Finwright.Design;
using Finwright.Numerics;
using Finwright.Page.Bench;
using Finwright.Papers;
using Finwright.Strength.Files;

namespace Finwright.Page.Tests.Bench;

public sealed class ReadingRowTests
{
    private static readonly HungWeight Weight = new(15, 120, ChordPlace.MidChord);

    [Fact]
    public void What_moved_is_loaded_less_before()
    {
        ReadingRow row = Row("2.0", "11,4");
        BenchReadingLine line = row.Line(Weight, 1)!;
        Assert.Equal(9.4, line.DeflectionMm!.Value.Value, 1e-9);
        Assert.Equal((15, 120, 300), (line.MassKg, line.AtMm, line.ReadAtMm));
        Assert.Null(line.TwistDegrees);
    }

    [Fact]
    public void A_turn_is_kept_as_a_twist()
    {
        ReadingRow row = new(MadeFin.Reader(PaperLanguage.English, PaperUnits.Metric), 300, null);
        row.Form[ReadingRow.Loaded] = "0.8";
        BenchReadingLine line = row.Line(Weight, 1)!;
        Assert.Equal(0.8, line.TwistDegrees!.Value.Value, 1e-9);
        Assert.Null(line.DeflectionMm);
    }

    // Range 8 to 11 mm; a reading of about 10 mm may be off by 0.4 mm at two standard deviations.
    [Theory]
    [InlineData("9.4", ReadingState.Fits)]
    [InlineData("11.02", ReadingState.Fits)]
    [InlineData("12.5", ReadingState.Weaker)]
    [InlineData("6", ReadingState.Stiffer)]
    [InlineData("", ReadingState.Open)]
    public void Beyond_the_range_it_is_weaker_and_below_it_stiffer(string loaded, ReadingState expected)
    {
        ReadingRow row = Row("", loaded);
        row.Line(Weight, 1);
        row.Predicted = new Ranged(9.5e-3, 8e-3, 11e-3);
        Assert.Equal(expected, row.State);
    }

    [Theory]
    [InlineData("0.2", false)]
    [InlineData("1.1", true)]
    public void What_stays_after_the_weight_is_off_is_told(string after, bool expected)
    {
        ReadingRow row = Row("0", "9.4");
        row.Form[ReadingRow.After] = after;
        row.Line(Weight, 1);
        Assert.Equal(expected, row.DidNotComeBack);
    }

    [Fact]
    public void A_word_in_place_of_a_number_is_refused_and_stays()
    {
        ReadingRow row = Row("", "nine");
        Assert.Null(row.Line(Weight, 1));
        Assert.NotNull(row.Form.WrongAt(ReadingRow.Loaded));
        Assert.Equal("nine", row.Form[ReadingRow.Loaded]);
        Assert.Equal(ReadingState.Open, row.State);
    }

    private static ReadingRow Row(string before, string loaded)
    {
        ReadingRow row = new(MadeFin.Reader(PaperLanguage.English, PaperUnits.Metric), 300, ChordPlace.MidChord);
        row.Form[ReadingRow.Before] = before;
        row.Form[ReadingRow.Loaded] = loaded;
        return row;
    }
}
