using System.Globalization;

namespace Finwright.Design.Checks;

/// <summary>Numbers with their units, as messages show them.</summary>
internal static class Quantity
{
    /// <summary>Digits that a message shows; more would not help a maker.</summary>
    private const string Format = "0.####";

    /// <summary>A number and its unit, for example "12.5 mm".</summary>
    public static string Text(double value, string unit = "")
    {
        // Shown in full when rounding would make it look like another number, such as a limit missed by a hair.
        string rounded = value.ToString(Format, CultureInfo.InvariantCulture);
        bool isFaithful = Math.Abs(value) < 1e9 && double.Parse(rounded, CultureInfo.InvariantCulture).Equals(value);
        string number = isFaithful ? rounded : value.ToString("R", CultureInfo.InvariantCulture);
        return unit switch
        {
            "" => number,
            "°" => $"{number} degrees",
            _ => $"{number} {unit}",
        };
    }
}
