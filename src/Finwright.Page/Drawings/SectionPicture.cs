using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Papers.Views;

namespace Finwright.Page.Drawings;

/// <summary>A rod in a section.</summary>
/// <param name="At">Its middle, mm.</param>
/// <param name="Across">Its least width, metres: its diameter, bore allowance included.</param>
public sealed record RodMark(Point2 At, double Across)
{
    /// <summary>Marks in groups that share a label, because they stand too close for one each.</summary>
    /// <param name="marks">The marks.</param>
    /// <param name="least">Distance along the chord that two labels need, mm.</param>
    public static IEnumerable<RodMark[]> Together(IEnumerable<RodMark> marks, double least)
    {
        List<RodMark> group = [];
        foreach (RodMark mark in marks.OrderBy(mark => mark.At.X))
        {
            if (group.Count > 0 && mark.At.X - group[^1].At.X > least)
            {
                yield return [.. group];
                group.Clear();
            }

            group.Add(mark);
        }

        if (group.Count > 0)
            yield return [.. group];
    }
}

/// <summary>A section of the blade by material as lines of a drawing: nose to the left, port side up, mm aft of the leading edge.</summary>
public sealed record SectionPicture
{
    private SectionPicture()
    {
    }

    /// <summary>The skin.</summary>
    public required string Skin { get; init; }

    /// <summary>The walls: the skin with the core taken out.</summary>
    public required string Walls { get; init; }

    /// <summary>The filled core.</summary>
    public required string Core { get; init; }

    /// <summary>Rods of carbon or steel.</summary>
    public required string Rods { get; init; }

    /// <summary>Bores, pockets and cavities.</summary>
    public required string Bores { get; init; }

    /// <summary>The slot for the strip.</summary>
    public required string Slot { get; init; }

    /// <summary>Where the rods are.</summary>
    public required IReadOnlyList<RodMark> Marks { get; init; }

    /// <summary>Depth below the hull, metres.</summary>
    public required double Depth { get; init; }

    /// <summary>Chord, metres.</summary>
    public required double Chord { get; init; }

    /// <summary>Greatest thickness, metres.</summary>
    public required double Thickness { get; init; }

    /// <summary>Place of the greatest thickness, mm aft of the leading edge, and its lower and upper point.</summary>
    public required (double X, double Low, double High) Thickest { get; init; }

    /// <summary>Thickness of the trailing edge, metres.</summary>
    public required double Edge { get; init; }

    /// <summary>Twist, radians, positive nose to starboard.</summary>
    public required double Twist { get; init; }

    /// <summary>Camber over chord.</summary>
    public required double Camber { get; init; }

    /// <summary>Cuts a fin.</summary>
    /// <param name="shape">A result with a blade.</param>
    /// <param name="station">Share of the span.</param>
    /// <param name="placed">What is bored into it; null when that is not known.</param>
    /// <returns>The section; null where the blade has closed.</returns>
    public static SectionPicture? Of(AssessmentResult shape, double station, PlacedHardware? placed)
    {
        ArgumentNullException.ThrowIfNull(shape);
        // Where the tip has run out there is nothing left to cut.
        const double last = 0.985, leastChord = 2e-3;
        if (shape is not { Blade: { } blade, Design: { } design })
            return null;
        double depth = Math.Min(station, last) * blade.Span;
        if (blade.Outline.Chord(depth) < leastChord)
            return null;
        SectionCut cut = SectionCut.Of(design, blade, placed?.Features ?? [], depth, placed?.Slot);
        (double x, double low, double high) = WhereThickest(blade, depth);
        return new()
        {
            Skin = SvgNumber.Path(cut.Skin),
            Walls = SvgNumber.Path(cut.Skin) + SvgNumber.Paths(cut.Core),
            Core = SvgNumber.Paths(cut.Core),
            Rods = SvgNumber.Paths(cut.Rods),
            Bores = SvgNumber.Paths(cut.Bores.Concat(cut.Pockets)),
            Slot = SvgNumber.Paths(cut.Slot),
            Marks = [.. cut.Rods.Select(ring => new RodMark(1e3 / ring.Count * ring.Aggregate((sum, p) => sum + p), ring.Max(p => p.Y) - ring.Min(p => p.Y)))],
            Depth = depth,
            Chord = cut.Chord,
            Thickness = blade.ThicknessRatio(depth) * cut.Chord,
            Thickest = (x, low, high),
            Edge = blade.EdgeThickness(depth),
            Twist = blade.Twist(depth),
            Camber = blade.Camber(depth),
        };
    }

    /// <summary>The skin alone, for a fin beside: at the same share of its own span.</summary>
    public static string Ghost(AssessmentResult shape, double station)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return Of(shape, station, placed: null)?.Skin ?? "";
    }

    private static (double X, double Low, double High) WhereThickest(Blade blade, double depth)
    {
        const int steps = 120;
        double leading = blade.Outline.LeadingEdge(depth);
        (double Most, Point3 Starboard, Point3 Port) best = (-1, default, default);
        for (int i = 1; i < steps; i++)
        {
            double u = 0.5 * i / steps;
            Point3 starboard = blade.Skin(depth, u), port = blade.Skin(depth, 1 - u);
            if ((starboard - port).Length > best.Most)
                best = ((starboard - port).Length, starboard, port);
        }

        return (1e3 * (best.Starboard.X - leading), -1e3 * best.Starboard.Z, -1e3 * best.Port.Z);
    }
}
