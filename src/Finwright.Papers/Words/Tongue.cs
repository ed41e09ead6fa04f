using Finwright.Assessment.Verdicts;
using Finwright.Numerics;

namespace Finwright.Papers.Words;

/// <summary>How papers speak: the words of a language, numbers and units as the reader wants them. Everything comes in SI.</summary>
public sealed class Tongue
{
    /// <summary>The tongue of a reader.</summary>
    /// <param name="settings">What the reader wants.</param>
    public Tongue(PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Words = PaperWords.Of(settings.Language);
    }

    /// <summary>The words.</summary>
    public PaperWords Words { get; }

    /// <summary>A bare number.</summary>
    public string Number(double value, int decimals) => throw new NotImplementedException();

    /// <summary>A length: "12.3 mm" or "0.484 in". Metres.</summary>
    /// <param name="metres">Length.</param>
    /// <param name="decimals">Decimals of a millimetre; an inch shows one more or two, so that as much is seen.</param>
    public string Length(double metres, int decimals = 1) => throw new NotImplementedException();

    /// <summary>A length without its unit, for drawings and columns that name the unit once.</summary>
    public string BareLength(double metres, int decimals = 1) => throw new NotImplementedException();

    /// <summary>The unit of lengths: "mm" or "in".</summary>
    public string LengthUnit => throw new NotImplementedException();

    /// <summary>An area: "482.9 cm²" or "74.8 in²". m².</summary>
    public string Area(double squareMetres) => throw new NotImplementedException();

    /// <summary>A mass on kitchen scales, always grams. kg.</summary>
    public string Grams(double kilograms, int decimals = 0) => throw new NotImplementedException();

    /// <summary>A mass that is carried: "15 kg" or "33.1 lb". kg.</summary>
    public string Mass(double kilograms, int decimals = 1) => throw new NotImplementedException();

    /// <summary>A volume in a cup or a syringe, always millilitres. m³.</summary>
    public string Millilitres(double cubicMetres, int decimals = 0) => throw new NotImplementedException();

    /// <summary>A temperature: "26 °C" or "79 °F". K.</summary>
    public string Temperature(double kelvin, int decimals = 0) => throw new NotImplementedException();

    /// <summary>A force: "340 N" or "76 lbf". N.</summary>
    public string Force(double newtons, int decimals = 0) => throw new NotImplementedException();

    /// <summary>A speed: "10 m/s" or "19.4 kn". m/s.</summary>
    public string Speed(double metresPerSecond) => throw new NotImplementedException();

    /// <summary>A time: "40 min", "12.5 h" or "8.3 days" by its length. s.</summary>
    public string Duration(double seconds) => throw new NotImplementedException();

    /// <summary>An angle: "14.0°". rad.</summary>
    public string Angle(double radians, int decimals = 1) => throw new NotImplementedException();

    /// <summary>A share: "95 %".</summary>
    public string Percent(double share, int decimals = 0) => throw new NotImplementedException();

    /// <summary>Money: "38.60 EUR".</summary>
    public string Money(double amount, string currency) => throw new NotImplementedException();

    /// <summary>A value with its range: "26 °C (23 to 28)".</summary>
    /// <param name="range">Value and ends.</param>
    /// <param name="show">How one of them is shown, with its unit.</param>
    public string Range(Ranged range, Func<double, string> show) => throw new NotImplementedException();

    /// <summary>A number of a verdict in the reader's units.</summary>
    public string Quantity(Quantity quantity) => throw new NotImplementedException();

    /// <summary>Value, spread and limit of a verdict in a few words; empty without a value.</summary>
    public string Numbers(Verdict verdict) => throw new NotImplementedException();

    /// <summary>The date as the language writes it: "27 November 2026".</summary>
    public string Date(DateOnly date) => throw new NotImplementedException();

    /// <summary>Things one after the other: "a, b and c".</summary>
    public string List(IReadOnlyList<string> things) => throw new NotImplementedException();
}
