using System.Globalization;

namespace Finwright.Design.Checks;

/// <summary>Numbers with their units, as messages show them.</summary>
internal static class Quantity
{
    /// <summary>A number and its unit, for example "12.5 mm".</summary>
    public static string Text(double value, string unit = "")
    {
        // In full: rounding could make it look like another number, such as a limit missed by a hair.
        string number = value.ToString("R", CultureInfo.InvariantCulture);
        return unit switch
        {
            "" => number,
            "°" => $"{number} degrees",
            _ => $"{number} {unit}",
        };
    }
}
