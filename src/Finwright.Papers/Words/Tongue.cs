using System.Globalization;
using Finwright.Assessment.Verdicts;
using Finwright.Numerics;

namespace Finwright.Papers.Words;

/// <summary>How papers speak: the words of a language, numbers and units as the reader wants them. Everything comes in SI.</summary>
/// <remarks>No number that is not finite is ever shown: every member refuses one with an <see cref="ArgumentException"/>.</remarks>
public sealed class Tongue
{
    /// <summary>The minus sign, as wide as a plus; a hyphen is easily overlooked.</summary>
    public const char Minus = '\u2212';

    private const double Minute = 60, Hour = 3600, Day = 86400;

    // Up to here a time is told in minutes, and up to there in hours.
    private const double LongestInMinutes = 90 * Minute, LongestInHours = 72 * Hour;

    // Below this many minutes a tenth of a minute counts.
    private const double FewMinutes = 10;

    private readonly bool _inch, _comma;

    /// <summary>The tongue of a reader.</summary>
    /// <param name="settings">What the reader wants.</param>
    public Tongue(PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Words = PaperWords.Of(settings.Language);
        Units = settings.Units;
        _inch = settings.Units is PaperUnits.Inch;
        _comma = settings.Decimals switch
        {
            DecimalMark.Point => false,
            DecimalMark.Comma => true,
            _ => Words.Numbers.HasDecimalComma,
        };
    }

    /// <summary>The words.</summary>
    public PaperWords Words { get; }

    /// <summary>The units.</summary>
    public PaperUnits Units { get; }

    /// <summary>The unit of lengths: "mm" or "in".</summary>
    public string LengthUnit => _inch ? "in" : "mm";

    /// <summary>A bare number; one that rounds to zero has no sign.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals, 0 to 15.</param>
    /// <exception cref="ArgumentException">It is not finite.</exception>
    public string Number(double value, int decimals)
    {
        if (!double.IsFinite(value))
            throw new ArgumentException("A number on paper must be finite.", nameof(value));
        // Adding zero takes the sign off a zero.
        string number = (Math.Round(value, decimals) + 0.0).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Marked(number);
    }

    /// <summary>A number with one decimal, or none when that would be a zero.</summary>
    public string Brief(double value) => Number(value, Math.Abs(Math.Round(value, 1) - Math.Round(value)) > 0.05 ? 1 : 0);

    /// <summary>A length: "12.3 mm" or "0.484 in". Metres.</summary>
    /// <param name="metres">Length.</param>
    /// <param name="decimals">Decimals of a millimetre; an inch shows two more, so that as much is seen.</param>
    public string Length(double metres, int decimals = 1) => $"{BareLength(metres, decimals)} {LengthUnit}";

    /// <summary>A length without its unit, for drawings and columns that name the unit once. Metres.</summary>
    /// <param name="metres">Length.</param>
    /// <param name="decimals">Decimals of a millimetre; an inch shows two more, so that as much is seen.</param>
    public string BareLength(double metres, int decimals = 1) => _inch ? Number(metres / UnitScale.Inch, decimals + 2) : Number(1e3 * metres, decimals);

    /// <summary>An area: "482.9 cm²" or "74.8 in²". m².</summary>
    public string Area(double squareMetres) => _inch
        ? $"{Number(squareMetres / (UnitScale.Inch * UnitScale.Inch), 1)} in²"
        : $"{Number(1e4 * squareMetres, 1)} cm²";

    /// <summary>A mass on kitchen scales, always grams. kg.</summary>
    public string Grams(double kilograms, int decimals = 0) => $"{Number(1e3 * kilograms, decimals)} g";

    /// <summary>A mass that is carried: "15.0 kg" or "33.1 lb". kg.</summary>
    public string Mass(double kilograms, int decimals = 1) => _inch
        ? $"{Number(kilograms / UnitScale.Pound, decimals)} lb"
        : $"{Number(kilograms, decimals)} kg";

    /// <summary>A volume in a cup or a syringe, always millilitres. m³.</summary>
    public string Millilitres(double cubicMetres, int decimals = 0) => $"{Number(1e6 * cubicMetres, decimals)} ml";

    /// <summary>A temperature: "26 °C" or "79 °F". K.</summary>
    public string Temperature(double kelvin, int decimals = 0)
    {
        double celsius = kelvin - UnitScale.CelsiusZero;
        return _inch ? $"{Number(UnitScale.Fahrenheit * celsius + UnitScale.FahrenheitZero, decimals)} °F" : $"{Number(celsius, decimals)} °C";
    }

    /// <summary>By how much a temperature differs from another: "5 K" or "9 °F". K.</summary>
    public string TemperatureDifference(double kelvin, int decimals = 0) => _inch
        ? $"{Number(UnitScale.Fahrenheit * kelvin, decimals)} °F"
        : $"{Number(kelvin, decimals)} K";

    /// <summary>A force: "340 N" or "76 lbf". N.</summary>
    public string Force(double newtons, int decimals = 0) => _inch
        ? $"{Number(newtons / UnitScale.PoundForce, decimals)} lbf"
        : $"{Number(newtons, decimals)} N";

    /// <summary>A speed: "10 m/s" or "19.4 kn". m/s.</summary>
    public string Speed(double metresPerSecond) => _inch
        ? $"{Brief(metresPerSecond / UnitScale.Knot)} kn"
        : $"{Brief(metresPerSecond)} m/s";

    /// <summary>A time: "40 min", "12.5 h" or "8.3 days" by its length. s.</summary>
    public string Duration(double seconds) => Math.Abs(seconds) switch
    {
        < FewMinutes * Minute => $"{Brief(seconds / Minute)} min",
        < LongestInMinutes => $"{Number(seconds / Minute, 0)} min",
        < LongestInHours => $"{Brief(seconds / Hour)} h",
        _ => $"{Brief(seconds / Day)} {Words.Numbers.Days}",
    };

    /// <summary>An angle: "14.0°". rad.</summary>
    public string Angle(double radians, int decimals = 1) => $"{Number(double.RadiansToDegrees(radians), decimals)}°";

    /// <summary>A scale as drawings tell it: "1:2.5" or "4:1".</summary>
    /// <param name="scale">Length on paper over true length; positive.</param>
    public string Ratio(double scale) => scale >= 1 ? $"{Brief(scale)}:1" : $"1:{Brief(1 / scale)}";

    /// <summary>A share: "95 %".</summary>
    public string Percent(double share, int decimals = 0) => $"{Number(100 * share, decimals)} %";

    /// <summary>Money: "38.60 EUR".</summary>
    public string Money(double amount, string currency) => $"{Number(amount, 2)} {currency}";

    /// <summary>A value with its range: "26 °C (23 to 28)"; the value alone when the range does not show.</summary>
    /// <param name="range">Value and ends.</param>
    /// <param name="show">How one of them is shown, with its unit.</param>
    public string Range(Ranged range, Func<double, string> show)
    {
        ArgumentNullException.ThrowIfNull(show);
        string value = show(range.Value), first = show(range.Low), last = show(range.High);
        if (value == first && value == last)
            return value;
        // A unit that all share is said once.
        (int ofValue, int ofFirst, int ofLast) = (NumberLength(value), NumberLength(first), NumberLength(last));
        bool same = value[ofValue..] == first[ofFirst..] && value[ofValue..] == last[ofLast..];
        return $"{value} ({(same ? Words.Numbers.Range(first[..ofFirst], last[..ofLast]) : Words.Numbers.Range(first, last))})";
    }

    /// <summary>A number of a verdict in the reader's units.</summary>
    /// <exception cref="ArgumentException">Its unit is not known.</exception>
    public string Quantity(Quantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        Quantity shown = UnitScale.Of(quantity.Unit, Units).Of(quantity);
        return Number(shown.Value, shown.Decimals) + After(shown.Unit);
    }

    /// <summary>Value, spread and limit of a verdict in a few words; empty without a value.</summary>
    /// <exception cref="ArgumentException">A unit of the verdict is not known.</exception>
    public string Numbers(Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        if (verdict.Value is not { } value)
            return "";
        UnitScale scale = UnitScale.Of(value.Unit, Units);
        Quantity shown = scale.Of(value);
        string own = Number(shown.Value, shown.Decimals);
        if (verdict.Uncertainty is { } off)
        {
            // A spread is a difference: zeros of scales do not count. One that would show as nothing is left out.
            Quantity spread = (UnitScale.Of(off.Unit, Units) with { Zero = 0 }).Of(off);
            if (Math.Round(spread.Value, spread.Decimals) > 0)
                own += $" ± {Number(spread.Value, spread.Decimals)}";
        }

        own += After(shown.Unit);
        if (verdict.Limit is not { } limit)
            return own;
        Quantity last = UnitScale.Of(limit.Unit, Units).Of(limit);
        return $"{own}, {Words.Numbers.Limit(Number(last.Value, last.Decimals) + AfterLimit(last.Unit), verdict.MustStayAbove)}";
    }

    /// <summary>The date as the language writes it: "27 November 2026".</summary>
    public string Date(DateOnly date) => Words.Numbers.Day(date);

    /// <summary>Things one after the other: "a, b and c".</summary>
    public string List(IReadOnlyList<string> things)
    {
        ArgumentNullException.ThrowIfNull(things);
        return things.Count switch
        {
            0 => "",
            1 => things[0],
            _ => Words.Numbers.Both(string.Join(", ", things.SkipLast(1)), things[^1]),
        };
    }

    /// <summary>A number that is written already, with a point, as the reader wants it.</summary>
    internal string Marked(string number)
    {
        string signed = number.Replace('-', Minus);
        return _comma ? signed.Replace('.', ',') : signed;
    }

    // A degree stands close to its number.
    private string After(string unit) => unit is "" or "°" ? unit : " " + Words.Verdicts.Unit(unit);

    // Behind a limit a unit of many words need not be said again.
    private static string AfterLimit(string unit) => unit switch
    {
        "°" => unit,
        "mm" or "in" => " " + unit,
        _ when unit.StartsWith('%') => " %",
        _ => "",
    };

    private static int NumberLength(string text)
    {
        int length = 0;
        while (length < text.Length && (char.IsAsciiDigit(text[length]) || text[length] is Minus or '.' or ','))
            length++;
        return length;
    }
}
