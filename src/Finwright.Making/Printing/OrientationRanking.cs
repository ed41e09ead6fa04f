using Finwright.Geometry;
using Finwright.Geometry.Parts;
using Finwright.Making.Layers;
using Finwright.Numerics;

namespace Finwright.Making.Printing;

/// <summary>How the layers lie to the bending stress at the root.</summary>
public enum LayersToLoad
{
    /// <summary>The stress runs in the layers: within 30 degrees of them.</summary>
    Along,

    /// <summary>Between both.</summary>
    Slanting,

    /// <summary>The stress pulls layers apart: within 30 degrees of their normal.</summary>
    Across,
}

/// <summary>One way to print a part, with what speaks for and against it.</summary>
/// <param name="Rank">From 1, the best.</param>
/// <param name="Way">The way it rests.</param>
/// <param name="Laid">How it lies on the bed.</param>
/// <param name="Overhang">Area that faces down more steeply than prints without support, the bed's own face not counted, m².</param>
/// <param name="Contact">Area on the bed, m².</param>
/// <param name="LoadAngle">Angle between the normal of the layers and the bending stress at the root, radians, 0 to π/2; 0 pulls layers apart.</param>
/// <param name="Load">The same in words.</param>
/// <param name="Seconds">Rough time by volume, skin and number of layers, s: good for comparing ways, not for planning a day.</param>
/// <param name="Reason">Why it stands where it stands.</param>
public sealed record RankedWay(int Rank, Resting Way, LaidPart Laid, double Overhang, double Contact, double LoadAngle, LayersToLoad Load, double Seconds, string Reason)
{
    /// <summary>Height as printed, metres.</summary>
    public double Height => Laid.Size.Z;
}

/// <summary>Ranks the ways a part may rest on the bed.</summary>
/// <remarks>
/// The rule, in this order: what fits the printer; layers along the load before slanting before across (layers hold 50 to 80 % of what the plastic
/// does along them, from memory); less overhang, counted in whole square centimetres; less time.
/// </remarks>
public static class OrientationRanking
{
    /// <summary>Overhang that prints without support, from upright, radians: 50 degrees (common practice, no source).</summary>
    public const double OverhangLimit = 50 * Math.PI / 180;

    private const double ThirtyDegrees = Math.PI / 6, SquareCentimetre = 1e-4;

    /// <summary>Ranks the ways.</summary>
    /// <param name="mesh">Closed, outward-facing mesh, design axes, metres.</param>
    /// <param name="ways">At least one way to rest.</param>
    /// <param name="room">The printer's room.</param>
    /// <param name="bendingStress">Direction of the bending stress at the root, design axes; for a blade its span.</param>
    /// <param name="settings">How it is printed.</param>
    /// <param name="printer">The printer.</param>
    /// <param name="overhangLimit">Overhang that prints without support, from upright, radians.</param>
    public static IReadOnlyList<RankedWay> Rank(
        TriangleMesh mesh, IReadOnlyList<Resting> ways, PrintRoom room, Point3 bendingStress, PrintSettings settings, PrinterModel printer, double overhangLimit = OverhangLimit)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(ways);
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(printer);
        Require.Positive(bendingStress.Length);
        Require.Between(overhangLimit, 0, Math.PI / 2);
        if (ways.Count == 0)
            throw new ArgumentException("A part rests in at least one way.", nameof(ways));
        IReadOnlyList<Point3> points = mesh.Points();
        RankedWay[] ranked = [.. ways.Select(way => Look(mesh, points, way, room, bendingStress, settings, printer, overhangLimit))];
        // A stable sort: of ways that are alike the one named first stays first.
        ranked = [.. ranked.OrderBy(w => w.Laid.Fits ? 0 : 1).ThenBy(w => w.Laid.Fits ? 0 : w.Laid.Fill).ThenBy(w => w.Load).ThenBy(w => Math.Round(w.Overhang / SquareCentimetre)).ThenBy(w => w.Seconds)];
        for (int i = 0; i < ranked.Length; i++)
            ranked[i] = ranked[i] with { Rank = i + 1, Reason = Reason(ranked, i) };
        return ranked;
    }

    private static RankedWay Look(
        TriangleMesh mesh, IReadOnlyList<Point3> points, Resting way, PrintRoom room, Point3 stress, PrintSettings settings, PrinterModel printer, double limit)
    {
        LaidPart laid = LaidPart.Lay(points, [way], room);
        double onBed = settings.LayerHeight / 2, steepest = Math.Sin(limit), overhang = 0, contact = 0;
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
        {
            Point3 a = laid.Placement.Apply(points[corners[i]]), b = laid.Placement.Apply(points[corners[i + 1]]), c = laid.Placement.Apply(points[corners[i + 2]]);
            Point3 twice = (b - a).Cross(c - a);
            double area = twice.Length / 2, down = -twice.Z / 2;
            if (!(down > 0))
                continue;
            if (a.Z < onBed && b.Z < onBed && c.Z < onBed)
                contact += down;
            else if (down > steepest * area)
                overhang += area;
        }

        Point3 up = -1 * way.Down;
        double angle = Math.Acos(Math.Min(1, Math.Abs(up.Dot(stress)) / (up.Length * stress.Length)));
        LayersToLoad load = angle < ThirtyDegrees ? LayersToLoad.Across : angle < 2 * ThirtyDegrees ? LayersToLoad.Slanting : LayersToLoad.Along;
        return new(0, way, laid, overhang, contact, angle, load, Time(mesh, laid.Size.Z, settings, printer), "");
    }

    /// <summary>Skin by its walls, the rest by its infill, at the lines' usual pace; each layer its change.</summary>
    private static double Time(TriangleMesh mesh, double height, PrintSettings settings, PrinterModel printer)
    {
        double volume = mesh.Volume(), skin = Math.Min(volume, mesh.Area() * settings.WallThickness);
        double plastic = skin + settings.InfillShare * (volume - skin);
        double flow = Math.Min(printer.FlowLimit, printer.InnerWallSpeed * settings.LineWidth * settings.LayerHeight);
        double layers = Math.Ceiling(height / settings.LayerHeight);
        return printer.StartTime + Math.Max(plastic / flow, layers * printer.LeastLayerTime) + layers * printer.LayerChange;
    }

    private static string Reason(RankedWay[] ranked, int index)
    {
        RankedWay way = ranked[index];
        string load = way.Load switch
        {
            LayersToLoad.Along => "the layers run along the bending at the root",
            LayersToLoad.Slanting => "the layers slant to the bending at the root",
            _ => "bending at the root pulls the layers apart, where they hold least",
        };
        string facts = $"{load}; {way.Overhang / SquareCentimetre:0} cm² overhang; {1000 * way.Height:0} mm high, about {way.Seconds / 3600:0.0} h";
        if (!way.Laid.Fits)
            return $"Does not fit: {way.Laid.Fill:0.00} times the room there is. Otherwise {facts}.";
        if (index == 0)
            return $"Fits; {facts}.";
        RankedWay before = ranked[index - 1];
        string because = way.Load != before.Load ? "of how the layers lie to the load"
            : Math.Round(way.Overhang / SquareCentimetre) > Math.Round(before.Overhang / SquareCentimetre) ? "it overhangs more"
            : way.Seconds > before.Seconds ? "it takes longer" : "it was named later and is no better";
        return $"Fits; comes after the one before because {because}: {facts}.";
    }
}
