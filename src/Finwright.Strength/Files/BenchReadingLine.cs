using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Strength.FromDesign;

namespace Finwright.Strength.Files;

/// <summary>What came of reading a file of readings.</summary>
/// <param name="Lines">The readings in the order of the file; empty when anything is wrong.</param>
/// <param name="Findings">Everything that is wrong; its places are columns.</param>
public sealed record BenchReadingsContent(IReadOnlyList<BenchReadingLine> Lines, IReadOnlyList<Finding> Findings);

/// <summary>A number read, with its standard deviation in the same unit.</summary>
/// <param name="Value">As read.</param>
/// <param name="Deviation">Standard deviation, above 0.</param>
public readonly record struct ReadValue(double Value, double Deviation);

/// <summary>One line of readings: a hung weight and what was read under it.</summary>
/// <param name="Line">Its line in the file, from 1.</param>
/// <param name="MassKg">Mass of the weight, kg.</param>
/// <param name="AtMm">Where it hangs, from the hull plane, mm.</param>
/// <param name="AtChord">Where it hangs along the chord.</param>
/// <param name="ReadAtMm">Where it was read, from the hull plane, mm.</param>
/// <param name="ReadChord">Where it was read along the chord.</param>
/// <param name="DeflectionMm">Deflection, mm, positive the way the weight pulls; null when none was read.</param>
/// <param name="TwistDegrees">Twist of the section, degrees, positive when the trailing edge goes farther; null when none was read.</param>
/// <param name="Note">The maker's own words.</param>
public sealed record BenchReadingLine(
    int Line, double MassKg, double AtMm, ChordPlace AtChord, double ReadAtMm, ChordPlace ReadChord, ReadValue? DeflectionMm, ReadValue? TwistDegrees, string Note)
{
    // A ruler's worth beyond the tip still means the tip.
    private const double RoundedMm = 0.5;

    /// <summary>The line as measurements in SI.</summary>
    /// <param name="span">Depth of the tip, metres; places beyond it by rounding are taken at it.</param>
    public IEnumerable<BenchMeasurement> Measurements(double span)
    {
        BenchLoad load = new(MassKg, Math.Min(1e-3 * AtMm, span), ChordShare.Of(AtChord));
        double depth = Math.Min(1e-3 * ReadAtMm, span), share = ChordShare.Of(ReadChord);
        if (DeflectionMm is ReadValue deflection)
            yield return new(load, depth, share, BenchQuantity.Deflection, 1e-3 * deflection.Value, 1e-3 * deflection.Deviation, $"The deflection on line {Line}");
        if (TwistDegrees is ReadValue twist)
            yield return new(load, depth, share, BenchQuantity.Twist, double.DegreesToRadians(twist.Value), double.DegreesToRadians(twist.Deviation), $"The twist on line {Line}");
    }

    /// <summary>What of the line lies beyond the tip.</summary>
    /// <param name="span">Depth of the tip, metres.</param>
    public IEnumerable<Finding> Beyond(double span)
    {
        foreach ((string column, double at) in ((string, double)[])[("at_mm", AtMm), ("read_at_mm", ReadAtMm)])
        {
            if (at > 1e3 * span + RoundedMm && !(column == "read_at_mm" && ReadAtMm == AtMm))
                yield return new("beyond-tip", Severity.Error, column, $"{column} {at:0.##} lies beyond the tip, which is {1e3 * span:0.##} mm below the hull.", "Give the distance from the hull plane along the depth of the fin, in millimetres.") { Line = Line };
        }
    }
}
