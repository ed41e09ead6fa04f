namespace Finwright.Design.Fields;

/// <summary>The units that property names carry as their last words.</summary>
internal static class Units
{
    // Longer endings first, so that "MPerS" is not taken for another unit.
    private static readonly (string Ending, string Unit)[] Endings =
    [
        ("GPerCm3", "g/cm³"),
        ("KgPerM3", "kg/m³"),
        ("JPerKgK", "J/(kg K)"),
        ("WPerMK", "W/(m K)"),
        ("Mm3PerS", "mm³/s"),
        ("MmPerS2", "mm/s²"),
        ("MmPerS", "mm/s"),
        ("PerKwh", "a kWh"),
        ("PerKg", "a kg"),
        ("PerM", "a m"),
        ("Each", "each"),
        ("Seconds", "s"),
        ("Minutes", "min"),
        ("Hours", "h"),
        ("Grams", "g"),
        ("Watts", "W"),
        ("Ml", "ml"),
        ("Gpa", "GPa"),
        ("Mpa", "MPa"),
        ("MPerS", "m/s"),
        ("Degrees", "°"),
        ("Percent", "%"),
        ("Celsius", "°C"),
        ("Cm2", "cm²"),
        ("M2", "m²"),
        ("Mm", "mm"),
        ("Kg", "kg"),
        ("ForceN", "N"),
    ];

    /// <summary>The unit a property name carries; empty when it carries none.</summary>
    public static string Of(string propertyName)
    {
        foreach ((string ending, string unit) in Endings)
        {
            if (propertyName.EndsWith(ending, StringComparison.Ordinal))
                return unit;
        }

        return "";
    }
}
