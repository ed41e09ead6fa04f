using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>By how much everything is drawn larger or smaller, so that a printer that does not print to scale prints it in true size.</summary>
/// <param name="Across">Factor across the page.</param>
/// <param name="Down">Factor down the page.</param>
public sealed record PrinterScale(double Across, double Down)
{
    /// <summary>The shortest reading of a 100 mm ruler that is taken, metres; anything beyond is a slip or a setting of the printer.</summary>
    public const double Shortest = 90e-3;

    /// <summary>The longest reading that is taken, metres.</summary>
    public const double Longest = 110e-3;

    // Below this nothing shows on 500 mm.
    private const double Unseen = 1e-6;

    /// <summary>Whether nothing is changed.</summary>
    public bool IsTrue => Math.Abs(Across - 1) < Unseen && Math.Abs(Down - 1) < Unseen;

    /// <summary>The same printer for a page that is turned: what lies across a landscape page runs down the paper in the printer.</summary>
    public PrinterScale Turned => new(Down, Across);

    /// <summary>The scale that puts right what the rulers of an earlier print measured.</summary>
    /// <param name="rulers">What they measured.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reading lies outside <see cref="Shortest"/> to <see cref="Longest"/>.</exception>
    public static PrinterScale Of(RulerReading rulers)
    {
        ArgumentNullException.ThrowIfNull(rulers);
        return new(Factor(rulers.Across, nameof(rulers.Across)), Factor(rulers.Down, nameof(rulers.Down)));

        static double Factor(double measured, string name) => measured >= Shortest && measured <= Longest
            ? RulerReading.Meant / measured
            : throw new ArgumentOutOfRangeException(name, measured, $"A ruler of 100 mm measures {1e3 * measured:0.##} mm; {1e3 * Shortest:0} to {1e3 * Longest:0} mm can be put right.");
    }

    /// <summary>A place as it is drawn.</summary>
    public Point2 Apply(Point2 p) => new(Across * p.X, Down * p.Y);

    /// <summary>A drawing as it is drawn; words keep their size.</summary>
    public Drawing Apply(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        if (IsTrue)
            return drawing;
        Drawing scaled = new();
        foreach (DrawnItem item in drawing.Items)
            scaled.Add(item switch
            {
                DrawnStroke stroke => stroke with { Points = [.. stroke.Points.Select(Apply)] },
                DrawnArea area => area with { Rings = [.. area.Rings.Select(ring => (IReadOnlyList<Point2>)[.. ring.Select(Apply)])] },
                DrawnText text => text with { At = Apply(text.At) },
                _ => throw new ArgumentException($"A {item.GetType().Name} cannot be scaled.", nameof(drawing)),
            });
        return scaled;
    }
}
