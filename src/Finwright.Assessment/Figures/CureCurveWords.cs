using System.Globalization;

namespace Finwright.Assessment.Figures;

/// <summary>What the figure of a cure says, and in which degrees.</summary>
public sealed record CureCurveWords
{
    private const double Kelvin = 273.15;

    /// <summary>English, °C, decimal point.</summary>
    public static CureCurveWords English { get; } = new();

    /// <summary>How numbers are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;

    /// <summary>From kelvin to the degrees that are shown.</summary>
    public Func<double, double> Degrees { get; init; } = kelvin => kelvin - Kelvin;

    /// <summary>Unit of the degrees that are shown.</summary>
    public string Unit { get; init; } = "°C";

    /// <summary>Name of the axis of time.</summary>
    public string Time { get; init; } = "time, h";

    /// <summary>Name of the axis of temperature, without its unit.</summary>
    public string Temperature { get; init; } = "temperature";

    /// <summary>What the range is, and when time begins.</summary>
    public string Range { get; init; } = "Range: rate from half to twice, cooling 30 % more or less. Hours after the first pour.";

    /// <summary>The line at which the walls soften; takes the temperature with its unit.</summary>
    public Func<string, string> Soften { get; init; } = limit => $"the walls soften at {limit}";

    /// <summary>Air or water around the part.</summary>
    public string Surroundings { get; init; } = "surroundings";

    /// <summary>Resin at the slow, well cooled end.</summary>
    public string Slow { get; init; } = "resin, slow";

    /// <summary>Resin at the fast, badly cooled end.</summary>
    public string Fast { get; init; } = "resin, fast";

    /// <summary>Outer face of the walls.</summary>
    public string WallOutside { get; init; } = "wall outside";

    /// <summary>Inner face of the walls.</summary>
    public string WallInside { get; init; } = "wall inside";

    /// <summary>The hottest resin.</summary>
    public string Hottest { get; init; } = "hottest resin";

    /// <summary>When the part is taken out of the bath.</summary>
    public string OutOfBath { get; init; } = "out of the bath";

    /// <summary>When it can be handled.</summary>
    public string Handled { get; init; } = "can be handled";

    /// <summary>All of it in a sentence; takes peak, when, least and greatest peak, and the temperature at which the walls soften.</summary>
    public Func<string, string, string, string, string, string> Sentence { get; init; } = (peak, hours, least, greatest, soft) =>
        $"The hottest resin peaks at {peak} after {hours} h, within {least} to {greatest}; the walls soften at {soft}.";

    /// <summary>Something that happens at a time, in a sentence.</summary>
    public Func<string, string, string> Happens { get; init; } = (what, hours) => $"{char.ToUpperInvariant(what[0])}{what[1..]} after {hours} h.";

    /// <summary>A number in the reader's writing.</summary>
    internal string Number(double value, string format) => value.ToString(format, Culture);

    /// <summary>A temperature with its unit, K.</summary>
    internal string Warmth(double kelvin, string format) => $"{Number(Degrees(kelvin), format)} {Unit}";
}
