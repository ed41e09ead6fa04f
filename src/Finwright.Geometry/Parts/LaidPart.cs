using Finwright.Design;

namespace Finwright.Geometry.Parts;

/// <summary>One way a part may rest on the bed.</summary>
/// <param name="Attitude">Standing or lying.</param>
/// <param name="Down">Unit vector, design axes, that points into the bed.</param>
public readonly record struct Resting(PrintAttitude Attitude, Point3 Down)
{
    /// <summary>Turns design axes into bed axes: <see cref="Down"/> becomes −z; the fin's x axis stays level, or its y axis where x itself points down.</summary>
    public Placement Turn => Placement.Along(default, -1 * Down, Math.Abs(Down.X) > 0.9 * Down.Length ? new Point3(0, 1, 0) : new(1, 0, 0)).RigidInverse();
}

/// <summary>A part laid on the bed, or the best try when it does not fit.</summary>
/// <param name="Attitude">Standing or lying.</param>
/// <param name="Placement">From design axes to the part's own bed axes: z up, the part in the corner of x, y, z ≥ 0.</param>
/// <param name="Size">Size in bed axes, metres.</param>
/// <param name="Fill">Largest of the three sizes over the room there is; 1 is just full.</param>
/// <param name="Fits">Whether the part fits.</param>
public sealed record LaidPart(PrintAttitude Attitude, Placement Placement, Point3 Size, double Fill, bool Fits)
{
    /// <summary>Lays a part on the bed the first way that fits, turned about the vertical as little as can be.</summary>
    /// <param name="points">Corners of the part, design axes, metres; at least one.</param>
    /// <param name="ways">Ways the part may rest, best first; at least one.</param>
    /// <param name="room">The printer's room.</param>
    /// <returns>The first way that fits; when none does, the one that is least too large.</returns>
    public static LaidPart Lay(IReadOnlyList<Point3> points, IReadOnlyList<Resting> ways, PrintRoom room)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(ways);
        ArgumentNullException.ThrowIfNull(room);
        LaidPart? best = null;
        foreach (Resting way in ways)
        {
            LaidPart laid = Lay(points, way, room);
            if (laid.Fits)
                return laid;
            if (best is null || laid.Fill < best.Fill)
                best = laid;
        }

        return best ?? throw new ArgumentException("A part rests in at least one way.", nameof(ways));
    }

    private static LaidPart Lay(IReadOnlyList<Point3> points, Resting way, PrintRoom room)
    {
        Placement turn = way.Turn;
        Point3[] turned = [.. points.Select(turn.Apply)];
        double low = turned.Min(p => p.Z), height = turned.Max(p => p.Z) - low;
        Point2[] hull = FootprintFit.Hull(turned.Select(p => new Point2(p.X, p.Y)));
        FootprintFit fit = FootprintFit.Find(hull, room.Width, room.Depth);
        Placement about = Placement.Rotation(new(0, 0, 1), fit.Angle);
        Point3[] corners = [.. hull.Select(p => about.Apply(new(p.X, p.Y, 0)))];
        Point3 shift = new(-corners.Min(p => p.X), -corners.Min(p => p.Y), -low);
        return new(
            way.Attitude, turn.Then(about).Then(Placement.Shift(shift)), new(fit.SizeX, fit.SizeY, height),
            Math.Max(fit.Fill, height / room.Height), fit.Fits && height <= room.Height);
    }
}
