using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Parts;

/// <summary>A dimple that marks where a port is drilled.</summary>
/// <param name="Name">Part and place, for example "blade 2 front".</param>
/// <param name="Centre">Middle of the dimple on the skin, design axes, metres.</param>
/// <param name="Outward">Unit vector along z, away from the fin.</param>
/// <param name="Diameter">Diameter, metres.</param>
/// <param name="Depth">Depth below the skin at the centre, metres.</param>
public sealed record PortDimple(string Name, Point3 Centre, Point3 Outward, double Diameter, double Depth)
{
    private const double Beyond = 5e-3;

    /// <summary>Middle of the dimple's floor.</summary>
    public Point3 Floor => Centre - Depth * Outward;

    /// <summary>The dimple as a cutting tool.</summary>
    public SolidExpression Tool() => Tools.Bore(Diameter, Floor, Centre + Beyond * Outward);
}

/// <summary>A search for the place of one dimple.</summary>
/// <param name="Dimple">The dimple; null when there is no room.</param>
/// <param name="ThickestFound">Greatest solid thickness found under a dimple of this size where it was looked for, metres; 0 when none was whole.</param>
public readonly record struct PortSearch(PortDimple? Dimple, double ThickestFound);

/// <summary>Places port dimples where the skin is whole and thick enough under them.</summary>
/// <param name="body">The whole body before dimples.</param>
/// <param name="toStarboard">Side they are made on.</param>
/// <param name="diameter">Diameter, metres.</param>
/// <param name="depth">Depth, metres.</param>
/// <param name="wall">Thickness of one printed wall, metres: two of them must be left under the floor, one beside the rim.</param>
public sealed class PortPlacer(MeshProbe body, bool toStarboard, double diameter, double depth, double wall)
{
    private const int Spokes = 12;

    // A port must end in pores: room for a few lines of infill and the resin between them, metres (judgement).
    private const double LeastCore = 3e-3;

    /// <summary>Solid thickness that a dimple needs at its place, metres: between both walls there must be pores to open, and walls left under its floor.</summary>
    public double NeededThickness => Math.Max(depth, LeastCore) + 2 * wall;

    /// <summary>Looks for a place among candidates, nearest to the wish first.</summary>
    /// <param name="name">Name of the dimple.</param>
    /// <param name="places">Places in the x–y plane, best first, metres.</param>
    /// <param name="keepClear">Bores that the body does not have yet; the dimple stays a wall away.</param>
    public PortSearch Find(string name, IEnumerable<Point2> places, IReadOnlyList<Dowel> keepClear)
    {
        ArgumentNullException.ThrowIfNull(places);
        ArgumentNullException.ThrowIfNull(keepClear);
        double thickest = 0;
        foreach (Point2 place in places)
        {
            if (SkinAt(place) is not { } skin)
                continue;
            PortDimple dimple = new(name, new(place.X, place.Y, skin.Z), new(0, 0, toStarboard ? 1 : -1), diameter, depth);
            double thickness = ThicknessUnder(dimple);
            thickest = Math.Max(thickest, thickness);
            if (thickness >= NeededThickness && keepClear.All(d => IsClear(dimple, d)))
                return new(dimple, thickest);
        }

        return new(null, thickest);
    }

    // Outermost surface and the next one under it, on the chosen side.
    private (double Z, double Next)? SkinAt(Point2 place)
    {
        IReadOnlyList<double> z = body.Crossings(place.X, place.Y);
        if (z.Count < 2 || z.Count % 2 != 0)
            return null;
        return toStarboard ? (z[0], z[1]) : (z[^1], z[^2]);
    }

    /// <summary>Least solid thickness from the skin's level at the centre down, over the dimple and a wall round it; 0 where the rim would be open.</summary>
    private double ThicknessUnder(PortDimple dimple)
    {
        double sign = dimple.Outward.Z, least = double.PositiveInfinity;
        foreach (double radius in (ReadOnlySpan<double>)[0, diameter / 4, diameter / 2, diameter / 2 + wall])
        {
            for (int spoke = 0; spoke < (radius > 0 ? Spokes : 1); spoke++)
            {
                (double sin, double cos) = Math.SinCos(2 * Math.PI * spoke / Spokes);
                Point2 place = new(dimple.Centre.X + radius * cos, dimple.Centre.Y + radius * sin);
                if (SkinAt(place) is not { } skin)
                    return 0;
                // A rim that lies lower than the floor would leave the dimple open to the side.
                if (radius <= diameter / 2 && sign * (skin.Z - dimple.Floor.Z) <= 0)
                    return 0;
                least = Math.Min(least, sign * (dimple.Centre.Z - skin.Next));
            }
        }

        return least;
    }

    private bool IsClear(PortDimple dimple, Dowel dowel) =>
        SegmentDistance.ToSegment(dimple.Centre, dimple.Floor, dowel.From, dowel.To) >= dimple.Diameter / 2 + dowel.BoreDiameter / 2 + wall;
}
