using Finwright.Design;

namespace Finwright.Geometry.Parts;

/// <summary>One part to print.</summary>
/// <param name="Name">Name for files and papers, for example "blade 1 of 3".</param>
/// <param name="Mesh">Closed mesh, design axes, metres.</param>
/// <param name="Volume">Enclosed volume, m³.</param>
/// <param name="PieceCount">Separate pieces; 1 for a sound part.</param>
/// <param name="SealedVoidCount">Voids with no way out; 0 for a sound part.</param>
/// <param name="Laid">How it lies on the printer.</param>
public sealed record PrintPart(string Name, TriangleMesh Mesh, double Volume, int PieceCount, int SealedVoidCount, LaidPart Laid)
{
    /// <summary>Whether it is the fit gauge, which is printed first and is no part of the fin.</summary>
    public bool IsGauge { get; init; }

    /// <summary>Ways it could rest on the bed, whatever the design asks for.</summary>
    public IReadOnlyList<Resting> Ways { get; init; } = [];

    /// <summary>From design axes to the part's own bed axes: z up, the part in the corner of x, y, z ≥ 0.</summary>
    public Placement PrintPlacement => Laid.Placement;

    /// <summary>Standing or lying.</summary>
    public PrintAttitude Attitude => Laid.Attitude;

    /// <summary>Size on the bed: left to right, front to back, height; metres.</summary>
    public Point3 Size => Laid.Size;
}

/// <summary>A part on a plate.</summary>
/// <param name="Part">The part.</param>
/// <param name="Placement">From design axes to the bed: origin at its front left corner, x to the right, y to the rear, z up; metres.</param>
public sealed record PlatedPart(PrintPart Part, Placement Placement);

/// <summary>Parts printed together on one bed.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Parts">The parts.</param>
public sealed record Plate(int Number, IReadOnlyList<PlatedPart> Parts)
{
    /// <summary>
    /// Lays parts that fit the printer on as few plates as practical, each plate's group in the middle of the bed. The gauge has
    /// the first plate to itself: it is tried in the box before anything long is printed.
    /// </summary>
    /// <param name="parts">The parts; one that does not fit goes on no plate.</param>
    /// <param name="room">The printer's room.</param>
    /// <param name="gap">Least gap between two parts, metres.</param>
    public static IReadOnlyList<Plate> Arrange(IReadOnlyList<PrintPart> parts, PrintRoom room, double gap)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(room);
        PrintPart[] fitting = [.. parts.Where(p => p.Laid.Fits)];
        IEnumerable<Plate> plates = [.. Pack([.. fitting.Where(p => p.IsGauge)], room, gap), .. Pack([.. fitting.Where(p => !p.IsGauge)], room, gap)];
        return [.. plates.Select((plate, index) => plate with { Number = index + 1 })];
    }

    private static IEnumerable<Plate> Pack(PrintPart[] fitting, PrintRoom room, double gap)
    {
        if (fitting.Length == 0)
            return [];
        IReadOnlyList<PackedPlace?> places = PlatePacker.Pack([.. fitting.Select(p => new Point2(p.Size.X, p.Size.Y))], room.Width, room.Depth, gap);
        return
            from entry in fitting.Zip(places, (part, place) => (Part: part, Place: place))
            where entry.Place is not null
            group (entry.Part, Place: entry.Place.GetValueOrDefault()) by entry.Place.GetValueOrDefault().Plate into plate
            orderby plate.Key
            select Centred(plate.Key + 1, [.. plate], room);
    }

    private static Plate Centred(int number, IReadOnlyList<(PrintPart Part, PackedPlace Place)> entries, PrintRoom room)
    {
        double usedX = entries.Max(e => e.Place.X + (e.Place.Turned ? e.Part.Size.Y : e.Part.Size.X));
        double usedY = entries.Max(e => e.Place.Y + (e.Place.Turned ? e.Part.Size.X : e.Part.Size.Y));
        // Rounding may make a just fitting group a hair wider than the room.
        double left = room.Edge + Math.Max(0, room.Width - usedX) / 2, front = room.Edge + Math.Max(0, room.Depth - usedY) / 2;
        return new(number, [.. entries.Select(e => new PlatedPart(e.Part, OnBed(e.Part, e.Place, new(left + e.Place.X, front + e.Place.Y, 0))))]);
    }

    private static Placement OnBed(PrintPart part, PackedPlace place, Point3 corner)
    {
        // A quarter turn counter-clockwise brings the part to x ≤ 0; its former y size brings it back.
        Placement quarter = new(new(0, 1, 0), new(-1, 0, 0), new(0, 0, 1), new(part.Size.Y, 0, 0));
        return part.PrintPlacement.Then(place.Turned ? quarter : Placement.Identity).Then(Placement.Shift(corner));
    }
}
