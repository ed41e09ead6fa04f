using System.Globalization;
using Finwright.Assessment.Verdicts;
using Finwright.Numerics;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Words;

public sealed class TongueTests
{
    private static readonly double[] Values = [0, 0.004, 0.05, -0.04, 0.5, 1, -1.25, 9.995, 12.3456, -273.15, 340, 1234.5678, 98765.4321];

    /// <summary>Exact sizes of the units, in SI.</summary>
    /// <remarks>
    /// Inch 25.4 mm and pound 0.45359237 kg: international yard and pound agreement, 1959, as in NIST SP 811 (2008), appendix B.8; there too
    /// pound-force 4.4482216152605 N. Knot: 1852 m in an hour, BIPM, The International System of Units, 9th edition, table 8.
    /// </remarks>
    [Fact]
    public void Units_other_than_SI_have_their_exact_sizes()
    {
        Tongue inch = Tongues.EnglishInch;
        Assert.Equal("1.000 in", inch.Length(25.4e-3));
        Assert.Equal("39.3701 in", inch.Length(1, 2));
        Assert.Equal("1.0 in²", inch.Area(0.0254 * 0.0254));
        Assert.Equal("1.00000000 lb", inch.Mass(0.45359237, 8));
        Assert.Equal("1.000000000000 lbf", inch.Force(4.4482216152605, 12));
        Assert.Equal("1 kn", inch.Speed(1852.0 / 3600));
        Assert.Equal("32.0 °F", inch.Temperature(273.15, 1));
        Assert.Equal("212.0 °F", inch.Temperature(373.15, 1));
        Assert.Equal("−40 °F", inch.Temperature(233.15));
        Assert.Equal("9 °F", inch.TemperatureDifference(5));
        // 1 lbf·in = 4.4482216152605 N x 0.0254 m (NIST SP 811, appendix B.8: 0.1129848 N·m).
        Assert.Equal("1.00000 lbf·in", inch.Quantity(new(0.1129848, "N·m", 5)));
    }

    [Theory]
    [InlineData(PaperLanguage.English, DecimalMark.OfLanguage, '.')]
    [InlineData(PaperLanguage.English, DecimalMark.Comma, ',')]
    [InlineData(PaperLanguage.German, DecimalMark.OfLanguage, ',')]
    [InlineData(PaperLanguage.German, DecimalMark.Point, '.')]
    public void Numbers_read_back_as_what_was_written(PaperLanguage language, DecimalMark decimals, char mark)
    {
        Tongue tongue = Tongues.Of(language, PaperUnits.Metric, decimals);
        foreach (double value in Values)
        {
            for (int digits = 0; digits <= 4; digits++)
            {
                string text = tongue.Number(value, digits);
                Assert.Equal(digits, text.Contains(mark, StringComparison.Ordinal) ? text.Length - text.IndexOf(mark, StringComparison.Ordinal) - 1 : 0);
                Assert.InRange(Read(text, mark), value - Half(digits), value + Half(digits));
            }
        }
    }

    [Fact]
    public void Lengths_in_inches_show_as_much_as_those_in_millimetres()
    {
        foreach (double value in Values)
        {
            for (int digits = 0; digits <= 2; digits++)
            {
                double metric = 1e-3 * Read(Tongues.German.BareLength(1e-3 * value, digits), ','), inch = 25.4e-3 * Read(Tongues.GermanInch.BareLength(1e-3 * value, digits), ',');
                Assert.InRange(metric, 1e-3 * (value - Half(digits)), 1e-3 * (value + Half(digits)));
                // Two decimals more: a last place of 0.254 of the millimetre's, so the inch is never coarser.
                Assert.InRange(inch, 1e-3 * (value - Half(digits)), 1e-3 * (value + Half(digits)));
            }
        }
    }

    [Fact]
    public void Rounded_zero_has_no_sign_and_less_than_zero_a_true_minus()
    {
        Assert.Equal("0.0", Tongues.English.Number(-0.04, 1));
        Assert.Equal("0", Tongues.English.Number(-0.0, 0));
        Assert.Equal("−1,3", Tongues.German.Number(-1.26, 1));
        Assert.Equal("0 °C", Tongues.English.Temperature(273.1));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void What_is_not_finite_is_refused(double value)
    {
        Tongue tongue = Tongues.English;
        Func<string>[] all =
        [
            () => tongue.Number(value, 1), () => tongue.Brief(value), () => tongue.Length(value), () => tongue.BareLength(value), () => tongue.Area(value), () => tongue.Grams(value),
            () => tongue.Mass(value), () => tongue.Millilitres(value), () => tongue.Temperature(value), () => tongue.TemperatureDifference(value), () => tongue.Force(value),
            () => tongue.Speed(value), () => tongue.Duration(value), () => tongue.Angle(value), () => tongue.Percent(value), () => tongue.Money(value, "EUR"),
            () => tongue.Range(new(1, 0, value), each => tongue.Length(each)), () => tongue.Quantity(new(value, "mm", 1)),
        ];
        Assert.All(all, show => Assert.ThrowsAny<ArgumentException>(show));
    }

    [Fact]
    public void Kitchen_scales_and_syringes_stay_metric()
    {
        Assert.Equal("38 g", Tongues.EnglishInch.Grams(0.038));
        Assert.Equal("12,5 ml", Tongues.GermanInch.Millilitres(12.5e-6, 1));
    }

    [Theory]
    [InlineData(90, "1.5 min")]
    [InlineData(40 * 60, "40 min")]
    [InlineData(89 * 60, "89 min")]
    [InlineData(90 * 60, "1.5 h")]
    [InlineData(12.5 * 3600, "12.5 h")]
    [InlineData(24 * 3600, "24 h")]
    [InlineData(8.3 * 86400, "8.3 days")]
    public void Times_are_told_by_their_length(double seconds, string expected) => Assert.Equal(expected, Tongues.English.Duration(seconds));

    [Fact]
    public void Ranges_say_a_shared_unit_once()
    {
        Tongue english = Tongues.English, german = Tongues.German;
        Assert.Equal("26 °C (23 to 28)", english.Range(new(299.15, 296.15, 301.15), kelvin => english.Temperature(kelvin)));
        Assert.Equal("26 °C (23 bis 28)", german.Range(new(299.15, 296.15, 301.15), kelvin => german.Temperature(kelvin)));
        Assert.Equal("2 h (80 min to 3 h)", english.Range(new(7200, 4800, 10800), english.Duration));
        Assert.Equal("−3 °C (−5 to 1)", english.Range(new(270.15, 268.15, 274.15), kelvin => english.Temperature(kelvin)));
        Assert.Equal("5.0 mm", english.Range(Ranged.Exact(0.005), metres => english.Length(metres)));
        Assert.Equal("5,0° (4,0 bis 6,5)", german.Range(new(double.DegreesToRadians(5), double.DegreesToRadians(4), double.DegreesToRadians(6.5)), angle => german.Angle(angle)));
    }

    [Fact]
    public void Dates_and_lists_follow_the_language()
    {
        Assert.Equal("27 November 2026", Tongues.English.Date(new(2026, 11, 27)));
        Assert.Equal("1. März 2027", Tongues.German.Date(new(2027, 3, 1)));
        Assert.Equal("", Tongues.English.List([]));
        Assert.Equal("a", Tongues.English.List(["a"]));
        Assert.Equal("a and b", Tongues.English.List(["a", "b"]));
        Assert.Equal("a, b und c", Tongues.German.List(["a", "b", "c"]));
        Assert.Equal("38,60 EUR", Tongues.German.Money(38.6, "EUR"));
    }

    [Fact]
    public void A_spread_of_temperatures_is_a_difference()
    {
        Verdict verdict = Verdict(new(60, "°C", 0), new(75, "°C", 0), new(5, "°C", 0), above: false);
        Assert.Equal("60 ± 5 °C, limit 75", Tongues.English.Numbers(verdict));
        Assert.Equal("140 ± 9 °F, limit 167", Tongues.EnglishInch.Numbers(verdict));
        Assert.Equal("60 ± 5 °C, Grenze 75", Tongues.German.Numbers(verdict));
    }

    [Fact]
    public void Numbers_of_a_verdict_tell_value_spread_and_limit()
    {
        Assert.Equal("0,72 ± 0,11 der Abrissgrenze, Grenze 0,85", Tongues.German.Numbers(Verdict(new(0.72, "of stall", 2), new(0.85, "of stall", 2), new(0.108, "of stall", 2), above: false)));
        Assert.Equal("0.0118 in, limit at least 0.0118 in", Tongues.EnglishInch.Numbers(Verdict(new(0.3, "mm", 2), new(0.3, "mm", 2), null, above: true)));
        Assert.Equal("3,5 % der Poren, Grenze 3,0 %", Tongues.German.Numbers(Verdict(new(3.5, "% of the pores", 1), new(3, "% of the pores", 1), null, above: false)));
        Assert.Equal("", Tongues.German.Numbers(Verdict(null, null, null, above: false)));
    }

    [Fact]
    public void Unknown_units_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Tongues.English.Quantity(new(1, "furlongs", 0)));
        Assert.Throws<ArgumentException>(() => Tongues.German.Words.Verdicts.Unit("furlongs"));
    }

    private static Verdict Verdict(Quantity? value, Quantity? limit, Quantity? spread, bool above) => new()
    {
        Code = "softening",
        Checked = "",
        State = VerdictState.Tight,
        Value = value,
        Limit = limit,
        Uncertainty = spread,
        MustStayAbove = above,
        Certainty = Certainty.Judgement,
        HowSure = "",
        Found = "",
        Why = "",
    };

    // Half of the last place, with room for the rounding of binary numbers.
    private static double Half(int decimals) => 0.5 * Math.Pow(10, -decimals) + 1e-9;

    private static double Read(string text, char mark) =>
        double.Parse(text.Replace(Tongue.Minus, '-').Replace(mark, '.'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
