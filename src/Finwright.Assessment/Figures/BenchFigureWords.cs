using System.Globalization;

namespace Finwright.Assessment.Figures;

/// <summary>What the figure of the bench test says, and in which lengths.</summary>
public sealed record BenchFigureWords
{
    /// <summary>English, millimetres, decimal point.</summary>
    public static BenchFigureWords English { get; } = new();

    /// <summary>How numbers are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;

    /// <summary>From metres to the lengths that are shown.</summary>
    public Func<double, double> Lengths { get; init; } = metres => 1e3 * metres;

    /// <summary>Unit of the lengths that are shown.</summary>
    public string Unit { get; init; } = "mm";

    /// <summary>Name of the axis along the span, without its unit.</summary>
    public string Depth { get; init; } = "depth below the hull";

    /// <summary>Name of the axis of deflection, without its unit.</summary>
    public string Deflection { get; init; } = "deflection the way the weight pulls";

    /// <summary>Leading edge.</summary>
    public string LeadingEdge { get; init; } = "leading edge";

    /// <summary>Middle of the chord.</summary>
    public string MidChord { get; init; } = "middle of the chord";

    /// <summary>Trailing edge.</summary>
    public string TrailingEdge { get; init; } = "trailing edge";

    /// <summary>Where the weight hangs; takes its mass with its unit.</summary>
    public Func<string, string> Weight { get; init; } = mass => $"{mass} hangs here";

    /// <summary>Mass of the weight with its unit; takes kg.</summary>
    public Func<double, string> Mass { get; init; } = kilograms => kilograms.ToString("0.##", CultureInfo.InvariantCulture) + " kg";

    /// <summary>What the bars are, and what to do with the figure.</summary>
    public string Note { get; init; } = "Lines: predicted. Bars: their range, at the weight and at the tip. Mark what you read.";

    /// <summary>All of it in a sentence; takes deflection of the middle at the tip and its ends, with unit.</summary>
    public Func<string, string, string, string> Sentence { get; init; } = (value, low, high) => $"The middle of the tip should move by {value}, within {low} to {high}.";

    internal string Length(double metres)
    {
        double shown = Lengths(metres);
        return $"{shown.ToString(Math.Abs(shown) < 1 ? "0.00" : "0.0", Culture)} {Unit}";
    }
}
