using Finwright.Assessment.Verdicts;

namespace Finwright.Papers.Words;

/// <summary>From one unit to another: times a factor, then plus a zero.</summary>
/// <param name="Unit">Unit that it leads to.</param>
/// <param name="Factor">Size of the first unit in the other.</param>
/// <param name="Zero">Where the first unit's zero lies in the other; differences have none.</param>
/// <param name="MoreDecimals">Decimals more than the first unit showed, so that as much is seen.</param>
public readonly record struct UnitScale(string Unit, double Factor, double Zero = 0, int MoreDecimals = 0)
{
    // Exact. Inch and pound: international yard and pound agreement, 1959 (NIST SP 811, 2008, appendix B.8). Nautical mile: 1852 m
    // (BIPM, The International System of Units, 9th edition, table 8). Standard gravity: 3rd CGPM, 1901; with the pound it makes the pound-force.
    internal const double StandardGravity = 9.80665;

    /// <summary>An inch, m.</summary>
    public const double Inch = 25.4e-3;

    /// <summary>A pound, kg.</summary>
    public const double Pound = 0.45359237;

    /// <summary>A pound-force, N.</summary>
    public const double PoundForce = Pound * StandardGravity;

    /// <summary>A knot, m/s.</summary>
    public const double Knot = 1852.0 / 3600;

    /// <summary>Degrees Fahrenheit in a degree Celsius, and where the zero of Celsius lies on that scale.</summary>
    public const double Fahrenheit = 1.8, FahrenheitZero = 32;

    internal const double CelsiusZero = 273.15;

    // Units of verdicts as the house writes them, and what stands for each where inches are wanted.
    private static readonly Dictionary<string, UnitScale> Inches = new(StringComparer.Ordinal)
    {
        ["mm"] = new("in", 1e-3 / Inch, MoreDecimals: 2),
        ["cm²"] = new("in²", 1e-4 / (Inch * Inch), MoreDecimals: 1),
        ["m/s"] = new("kn", 1 / Knot),
        ["°C"] = new("°F", Fahrenheit, FahrenheitZero),
        ["K for 5 %"] = new("°F for 5 %", Fahrenheit),
        ["N·m"] = new("lbf·in", 1 / (PoundForce * Inch)),
    };

    // Units that are the same for everyone.
    private static readonly HashSet<string> Common = new(StringComparer.Ordinal)
    {
        "", "°", "%", "h", "of stall", "root chords", "of a cup's working time",
        "% of the pores", "% of places in the pattern", "% of the core", "% of the chord", "% of the drop to boiling",
    };

    /// <summary>Every unit that verdicts may have.</summary>
    public static IEnumerable<string> OfVerdicts => [.. Inches.Keys, .. Common];

    /// <summary>Every unit that papers may show with a verdict.</summary>
    public static IEnumerable<string> Shown => [.. OfVerdicts, .. Inches.Values.Select(scale => scale.Unit)];

    /// <summary>How a verdict's unit is shown.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="units">What the reader wants.</param>
    /// <exception cref="ArgumentException">The unit is not known.</exception>
    public static UnitScale Of(string unit, PaperUnits units)
    {
        bool differs = Inches.TryGetValue(unit, out UnitScale inches);
        if (!differs && !Common.Contains(unit))
            throw new ArgumentException($"\"{unit}\" is not a unit of verdicts.", nameof(unit));
        return differs && units is PaperUnits.Inch ? inches : new(unit, 1);
    }

    /// <summary>A number in the other unit.</summary>
    public Quantity Of(Quantity own) => new(Factor * own.Value + Zero, Unit, own.Decimals + MoreDecimals);
}
