using System.Text;
using Finwright.Making.Motion;

namespace Finwright.Making.Tests.Motion;

/// <summary>Motion files written by hand.</summary>
internal static class MotionText
{
    /// <summary>Section of a filament of 1.75 mm, m².</summary>
    public const double Filament = Math.PI / 4 * 1.75e-3 * 1.75e-3;

    public static MotionReading Read(string text, MotionOptions? options = null)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(text));
        return MotionFile.Read(stream, options);
    }

    public static MotionSummary Summary(string text, MotionOptions? options = null)
    {
        MotionReading reading = Read(text, options);
        Assert.True(reading.Summary is not null, reading.Findings.Count > 0 ? reading.Findings[0].Message : "no summary");
        return reading.Summary;
    }

    public static string Lines(params string[] lines) => string.Join('\n', lines) + "\n";

    /// <summary>A square of the given side at a height, four sides with 1 mm of filament each, relative extrusion.</summary>
    public static string Square(double z, double side = 40, double corner = 50) =>
        FormattableString.Invariant($"G1 Z{z:0.###} F600\nG0 X{corner} Y{corner} F6000\nG1 X{corner + side} E1 F1200\nG1 Y{corner + side} E1\nG1 X{corner} E1\nG1 Y{corner} E1\n");
}
