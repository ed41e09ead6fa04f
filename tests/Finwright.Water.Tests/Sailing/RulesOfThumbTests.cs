using Finwright.Numerics;
using Finwright.Water.Sailing;

namespace Finwright.Water.Tests.Sailing;

public sealed class RulesOfThumbTests
{
    private static readonly SailingBrief Usual = SailingBalanceTests.Usual;

    [Theory]
    [InlineData(0.2999, BandPosition.Below)]
    [InlineData(0.3, BandPosition.Within)]
    [InlineData(0.4, BandPosition.Within)]
    [InlineData(0.4001, BandPosition.Above)]
    public void A_band_holds_its_ends(double value, BandPosition position) =>
        Assert.Equal(position, new RuleOfThumb("length", FinMeasure.Span, 0.3, 0.4, value, Certainty.CommonPractice, "").Position);

    [Fact]
    public void Length_for_a_light_rider_falls_by_a_millimetre_a_kilogramme_and_never_below_nothing()
    {
        // 0.55 · 0.3 m less 50 mm; at 0.05 m of width less than nothing would be left.
        RuleOfThumb byMass = RulesOfThumb.For(Usual with { BoardWidth = 0.3, RiderMass = 30 }, 0.02, 0.2)[3], none = RulesOfThumb.For(Usual with { BoardWidth = 0.05, RiderMass = 30 }, 0.02, 0.2)[3];
        Assert.Equal(0.9 * 0.115, byMass.Low, 1e-12);
        Assert.Equal(1.1 * 0.115, byMass.High, 1e-12);
        Assert.Equal((0.0, 0.0), (none.Low, none.High));
    }

    [Theory]
    [InlineData(0, 0.3)]
    [InlineData(-0.01, 0.3)]
    [InlineData(double.NaN, 0.3)]
    [InlineData(0.03, 0)]
    [InlineData(0.03, double.NaN)]
    public void A_fin_without_area_or_span_is_refused(double area, double span) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RulesOfThumb.For(Usual, area, span));

    [Fact]
    public void A_brief_that_no_board_has_is_refused()
    {
        Assert.Throws<ArgumentNullException>(() => RulesOfThumb.For(null!, 0.03, 0.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => RulesOfThumb.For(Usual with { BoardWidth = 0 }, 0.03, 0.3));
    }
}
