using Finwright.Papers;
using Finwright.Papers.Words;

namespace Finwright.Page.Words;

/// <summary>Units of the design file as the reader wants them: the one place where the page's forms convert.</summary>
public static class FieldUnits
{
    private static readonly Dictionary<string, UnitScale> Inches = new(StringComparer.Ordinal)
    {
        ["mm"] = new("in", 1e-3 / UnitScale.Inch, MoreDecimals: 2),
        ["cm²"] = new("in²", 1e-4 / (UnitScale.Inch * UnitScale.Inch), MoreDecimals: 1),
        ["m/s"] = new("kn", 1 / UnitScale.Knot),
        ["°C"] = new("°F", UnitScale.Fahrenheit, UnitScale.FahrenheitZero),
        ["kg"] = new("lb", 1 / UnitScale.Pound),
        ["N"] = new("lbf", 1 / UnitScale.PoundForce),
    };

    /// <summary>How a field's unit is shown.</summary>
    /// <param name="unit">The unit in the design file; empty for none.</param>
    /// <param name="units">What the reader wants.</param>
    public static UnitScale Of(string unit, PaperUnits units) => units is PaperUnits.Inch && Inches.TryGetValue(unit, out UnitScale scale) ? scale : new(unit, 1);

    /// <summary>A number of the design file as it is shown; rounded so that the conversion leaves no tail.</summary>
    public static double Shown(double value, UnitScale scale) => scale.Factor == 1 && scale.Zero == 0 ? value : Math.Round(scale.Factor * value + scale.Zero, 6);

    /// <summary>A number that was typed, as the design file has it.</summary>
    public static double Kept(double shown, UnitScale scale) => scale.Factor == 1 && scale.Zero == 0 ? shown : Math.Round((shown - scale.Zero) / scale.Factor, 6);
}
