using System.Text;
using CsCheck;

namespace Finwright.Design.Tests;

/// <summary>Whatever stands in part settings: settings or findings, never an exception.</summary>
public sealed class PartSettingsHostileTests
{
    private const string Valid = """
        {
          "format": 1, "name": "block",
          "print": { "walls": 3, "solid_layers": 5, "infill_percent": 15, "layer_mm": 0.2 },
          "pour": { "system": { "name": "laminating-slow" }, "room_celsius": 20, "cooling": "still-air" },
          "ports": [ { "x_mm": 30, "y_mm": 0, "z_mm": 5 }, { "x_mm": 30, "y_mm": 0, "z_mm": 95 } ],
          "prices": { "filament_per_kg": 20, "resin_per_kg": 25 }
        }
        """;

    private static readonly string[] Marks =
        ["{", "}", "[", "]", ",", ":", "\"", "\"name\"", "\"print\"", "\"pour\"", "\"ports\"", "\"x_mm\"", "null", "1e400", "-", "//", "/*", "*/", "\\", "\n", "\uFEFF", "NaN", "3"];

    [Fact]
    public void Random_bytes_are_answered() =>
        Gen.Byte.Array[0, 400].Hold(bytes => Answered(bytes), iter: 300);

    [Fact]
    public void Random_signs_are_answered() =>
        Gen.Int[0, Marks.Length - 1].Array[0, 60].Hold(picks => Answered(Encoding.UTF8.GetBytes(string.Concat(picks.Select(p => Marks[p])))), iter: 2000);

    [Fact]
    public void Settings_with_values_replaced_taken_out_renamed_or_added_are_answered() =>
        JsonChange.Gen(Valid).Hold(text => Answered(Encoding.UTF8.GetBytes(text)), iter: 1000);

    [Fact]
    public void Settings_with_a_few_bytes_changed_are_answered()
    {
        byte[] valid = Encoding.UTF8.GetBytes(Valid);
        Assert.NotNull(Answered(valid).Settings);
        Gen.Select(Gen.Int[0, valid.Length - 1].Array[1, 5], Gen.Byte.Array[5]).Hold((places, values) =>
        {
            byte[] changed = [.. valid];
            for (int i = 0; i < places.Length; i++)
                changed[places[i]] = values[i];
            Answered(changed);
        }, iter: 1000);
    }

    private static PartSettingsReading Answered(byte[] bytes)
    {
        PartSettingsReading reading = PartSettingsReader.Read(bytes);
        Assert.True(reading.Settings is not null || reading.HasErrors);
        Assert.All(reading.Findings, finding => Assert.True(finding.Message.Length > 0 && finding.Remedy.Length > 0 && finding.Message.Length < 1000));
        return reading;
    }
}
