using System.Globalization;
using System.Text;
using Finwright.Design;
using Finwright.Making.Files;
using Finwright.Making.Resins;
using Finwright.Workshop.Library;

namespace Finwright.Page.Libraries;

/// <summary>A cup of resin with a thermometer in it, as it is typed or brought in, and what it told.</summary>
public sealed class CupReadings
{
    /// <summary>Mass of the mix, g, as it is typed.</summary>
    public string MassGrams { get; set; } = "100";

    /// <summary>Temperature of the room, °C.</summary>
    public string RoomCelsius { get; set; } = "20";

    /// <summary>Inner diameter of the cup, mm.</summary>
    public string DiameterMm { get; set; } = "70";

    /// <summary>Rows of minutes and degrees.</summary>
    public string Rows { get; set; } = "";

    /// <summary>The resin to start from.</summary>
    public ResinSystem From { get; set; } = ResinLibrary.Get("laminating-slow");

    /// <summary>The readings; null, with everything that is wrong, when they cannot be used.</summary>
    public CupTestReading Read() => CupTestFile.Read(Encoding.UTF8.GetBytes(Text()));

    /// <summary>Everything in the form of a cup-test file.</summary>
    public string Text()
    {
        // A decimal comma is typed in half of Europe: with it, cells are parted by semicolons, as the file has it.
        StringBuilder text = new();
        text.Append("mass_g;").AppendLine(MassGrams.Trim()).Append("room_celsius;").AppendLine(RoomCelsius.Trim()).Append("cup_diameter_mm;").AppendLine(DiameterMm.Trim());
        foreach (string row in Rows.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0))
        {
            string[] cells = row.Split([';', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (cells.Length < 2)
                cells = row.Contains(", ", StringComparison.Ordinal) ? row.Split(", ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) : row.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            text.AppendLine(string.Join(';', cells));
        }

        return text.ToString();
    }

    /// <summary>Takes the numbers of a cup-test file.</summary>
    /// <param name="utf8">Its bytes.</param>
    /// <returns>Everything that is wrong with it; then nothing was taken.</returns>
    public IReadOnlyList<Finding> Take(ReadOnlySpan<byte> utf8)
    {
        CupTestReading reading = CupTestFile.Read(utf8);
        if (reading.Test is not { } test)
            return reading.Findings;
        (MassGrams, RoomCelsius, DiameterMm) = (Number(test.Mass * 1e3), Number(test.RoomTemperature - 273.15), Number(test.CupDiameter * 1e3));
        Rows = string.Join('\n', test.Readings.Select(own => $"{Number(own.Seconds / 60)}; {Number(own.Temperature - 273.15)}"));
        return [];
    }

    /// <summary>The resin that a cup told of, to be kept.</summary>
    /// <param name="fit">What the cup told.</param>
    /// <param name="name">What it is to be called.</param>
    /// <param name="remark">What to know when using it.</param>
    public static KeptResin Kept(CupFitResult fit, string name, string remark)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return new(fit.Resin with { Name = LibraryShelf.SlugOf(name), Title = name, Remark = remark });
    }

    private static string Number(double value) => Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture);
}
