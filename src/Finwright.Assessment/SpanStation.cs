using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;

namespace Finwright.Assessment;

/// <summary>The blade at one depth. Metres and radians.</summary>
/// <param name="Depth">Below the hull.</param>
/// <param name="LeadingEdge">Leading edge, aft of the root quarter chord.</param>
/// <param name="Chord">Chord.</param>
/// <param name="ThicknessRatio">Greatest thickness over chord.</param>
/// <param name="Twist">Twist about the quarter chord, positive nose to starboard.</param>
/// <param name="LeadingEdgeSweep">Leading edge from straight down, positive aft.</param>
public sealed record SpanStation(double Depth, double LeadingEdge, double Chord, double ThicknessRatio, double Twist, double LeadingEdgeSweep)
{
    private const int Stations = 11;

    /// <summary>Greatest thickness, metres; a rounded tip is thinner at its very end.</summary>
    public double Thickness => ThicknessRatio * Chord;

    /// <summary>The blade at every tenth of its span, root first.</summary>
    public static IReadOnlyList<SpanStation> Along(BladeShape blade, Planform planform)
    {
        ArgumentNullException.ThrowIfNull(blade);
        ArgumentNullException.ThrowIfNull(planform);
        return [.. Enumerable.Range(0, Stations).Select(i => At(blade, planform, blade.Span * i / (Stations - 1)))];
    }

    private static SpanStation At(BladeShape blade, Planform planform, double depth) =>
        new(depth, blade.Outline.LeadingEdge(depth), blade.Outline.Chord(depth), blade.ThicknessRatio(depth), blade.Twist(depth), planform.LeadingEdgeSweep(depth));
}
