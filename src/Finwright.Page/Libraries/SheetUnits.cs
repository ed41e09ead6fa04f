using Finwright.Page.Fields;

namespace Finwright.Page.Libraries;

/// <summary>Names and units of the numbers of data sheets, for the reader.</summary>
public static class SheetUnits
{
    // Longer endings first.
    private static readonly (string Ending, string Unit)[] Endings =
    [
        ("_kg_per_m3", "kg/m³"), ("_j_per_kg_k", "J/(kg K)"), ("_w_per_m_k", "W/(m K)"), ("_j_per_mol", "J/mol"), ("_j_per_g", "J/g"), ("_per_s", "1/s"),
        ("_parts_per_100", "parts"), ("_celsius", "°C"), ("_percent", "%"), ("_minutes", "min"), ("_pa_s", "Pa s"), ("_gpa", "GPa"), ("_mpa", "MPa"), ("_g", "g"),
    ];

    /// <summary>Name in English and unit of a field.</summary>
    /// <param name="key">The field.</param>
    public static (string Label, string Unit) Of(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        switch (key)
        {
            // Two fields would share a name.
            case "pot_life_celsius":
                return ("Pot life at", "°C");
            // No newtons: the exponent n.
            case "order_n":
                return ("Order n", "");
        }

        foreach ((string ending, string unit) in Endings)
        {
            if (key.EndsWith(ending, StringComparison.Ordinal))
                return (FieldAt.LabelOf(key[..^ending.Length]), unit);
        }

        return (FieldAt.LabelOf(key), "");
    }
}
