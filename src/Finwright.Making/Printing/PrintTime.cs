using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Numerics;

namespace Finwright.Making.Printing;

/// <summary>What one layer takes.</summary>
/// <param name="Seconds">Time, the change to this layer included, s.</param>
/// <param name="OuterWall">Length of the outermost wall lines, metres.</param>
/// <param name="InnerWalls">Length of the other wall lines, metres.</param>
/// <param name="Solid">Length of solid lines inside the walls, metres.</param>
/// <param name="Infill">Length of gyroid lines, metres.</param>
/// <param name="IsHeldBack">Whether it would be done sooner than a layer may.</param>
public readonly record struct LayerTime(double Seconds, double OuterWall, double InnerWalls, double Solid, double Infill, bool IsHeldBack);

/// <summary>What a print takes.</summary>
public sealed record PrintEstimate
{
    /// <summary>Time from switching on to the last line, s, with its range.</summary>
    public required Ranged Seconds { get; init; }

    /// <summary>Plastic in walls, m³.</summary>
    public required double WallVolume { get; init; }

    /// <summary>Plastic in solid layers inside the walls, m³.</summary>
    public required double SolidVolume { get; init; }

    /// <summary>Plastic in the gyroid, m³.</summary>
    public required double InfillVolume { get; init; }

    /// <summary>Mass of the plastic, kg; brim, purge and skirt not among it.</summary>
    public required double Mass { get; init; }

    /// <summary>Layer by layer, from the bed up.</summary>
    public required IReadOnlyList<LayerTime> Layers { get; init; }

    /// <summary>All plastic, m³.</summary>
    public double Volume => WallVolume + SolidVolume + InfillVolume;
}

/// <summary>Estimates how long a print takes and how much plastic it lays, before there is a motion file.</summary>
/// <remarks>
/// <para>Lines are as long as their area over their width. Each kind has its speed, held down by the flow that the nozzle can melt. At the ends
/// of a stretch the nozzle stands still and speeds up evenly: a stretch of length s takes s/v + v/a, or 2 √(s/a) when it is too short to
/// reach v. Stretches of walls run from one sharp corner to the next; those of solid lines across the part (mean chord π A / P of a convex area,
/// Crofton); the gyroid's also, but it sways, and no faster than its bends allow.</para>
/// <para>Plastic of the gyroid is its share of the core. How share and size of the gyroid's cells go together is not needed here.</para>
/// <para>Not modelled: corners taken at speed, retraction, cooling pauses, wiping. Hence the range, which is our judgement.</para>
/// </remarks>
public static class PrintTime
{
    /// <summary>The time may be this share shorter: corners are taken at some speed.</summary>
    private const double Shorter = 0.15;

    /// <summary>The time may be this share longer: retraction, wiping, slower overhangs and small rings.</summary>
    private const double Longer = 0.25;

    /// <summary>A turn sharper than this is a corner, radians: 30 degrees (judgement).</summary>
    private const double SharpTurn = Math.PI / 6;

    /// <summary>Radius of a gyroid line's bends over the distance of its lines (judgement: waves about as long as two distances and half as high).</summary>
    private const double BendOverSpacing = 0.4;

    /// <summary>Estimates the print of one part.</summary>
    public static PrintEstimate Of(PartLayers part, PrinterModel printer) => Of([part], printer);

    /// <summary>Estimates the print of parts that stand on one plate and grow together, layer by layer.</summary>
    /// <param name="parts">At least one part; all of the same layer height.</param>
    /// <param name="printer">The printer.</param>
    public static PrintEstimate Of(IReadOnlyList<PartLayers> parts, PrinterModel printer)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(printer);
        Check(printer);
        if (parts.Count == 0)
            throw new ArgumentException("A plate holds at least one part.", nameof(parts));
        double height = parts[0].Settings.LayerHeight;
        if (parts.Any(part => Math.Abs(part.Settings.LayerHeight - height) > 1e-9))
            throw new ArgumentException("Parts on one plate have the same layer height.", nameof(parts));

        LayerTime[] layers = new LayerTime[parts.Max(part => part.Layers.Count)];
        double seconds = printer.StartTime;
        for (int i = 0; i < layers.Length; i++)
        {
            double lines = 0, outer = 0, inner = 0, solid = 0, infill = 0;
            foreach (PartLayers part in parts)
            {
                if (i >= part.Layers.Count)
                    continue;
                LayerTime one = Laid(part.Layers[i], part.Settings, printer, i == 0);
                (lines, outer, inner, solid, infill) = (lines + one.Seconds, outer + one.OuterWall, inner + one.InnerWalls, solid + one.Solid, infill + one.Infill);
            }

            double taken = Math.Max(lines, printer.LeastLayerTime) + printer.LayerChange;
            layers[i] = new(taken, outer, inner, solid, infill, lines < printer.LeastLayerTime);
            seconds += taken;
        }

        double walls = Sum(parts, (layer, _) => layer.WallArea), solids = Sum(parts, (layer, _) => layer.SolidArea);
        double gyroid = Sum(parts, (layer, settings) => layer.CoreArea * settings.InfillShare);
        return new()
        {
            Seconds = new(seconds, printer.StartTime + (1 - Shorter) * (seconds - printer.StartTime), printer.StartTime + (1 + Longer) * (seconds - printer.StartTime)),
            WallVolume = walls,
            SolidVolume = solids,
            InfillVolume = gyroid,
            Mass = parts.Sum(part => part.Settings.PlasticDensity * part.Layers.Sum(layer => layer.Height * (layer.WallArea + layer.SolidArea + part.Settings.InfillShare * layer.CoreArea))),
            Layers = layers,
        };
    }

    /// <summary>Time of stretches between standing and standing, s.</summary>
    /// <param name="length">Length of all of them, metres.</param>
    /// <param name="stretch">Length of each, metres.</param>
    /// <param name="speed">Greatest speed, m/s.</param>
    /// <param name="acceleration">Acceleration, m/s².</param>
    internal static double Stretches(double length, double stretch, double speed, double acceleration)
    {
        if (length <= 0)
            return 0;
        stretch = Math.Min(stretch, length);
        double each = stretch >= speed * speed / acceleration ? stretch / speed + speed / acceleration : 2 * Math.Sqrt(stretch / acceleration);
        return length / stretch * each;
    }

    private static LayerTime Laid(Layer layer, PrintSettings settings, PrinterModel printer, bool isFirst)
    {
        double width = settings.LineWidth, perimeter = 0, shrinking = 0;
        int corners = 0;
        foreach (IReadOnlyList<Point2> ring in layer.Outline)
        {
            int sharp = 0;
            for (int i = 0; i < ring.Count; i++)
            {
                Point2 into = ring[(i + 1) % ring.Count] - ring[i], on = ring[(i + 2) % ring.Count] - ring[(i + 1) % ring.Count];
                perimeter += into.Length;
                double turn = Math.Atan2(into.Cross(on), into.Dot(on));
                // Drawn in by d, a ring loses 2 d tan(θ/2) at a corner, and gains d |θ| where it bends the other way. A spike loses no more than its sides.
                shrinking += turn > 0 ? 2 * Math.Tan(Math.Min(turn, 0.8 * Math.PI) / 2) : turn;
                if (Math.Abs(turn) > SharpTurn)
                    sharp++;
            }

            // A ring without corners begins and ends somewhere.
            corners += Math.Max(1, sharp);
        }

        double outer = Math.Clamp(perimeter - shrinking * width / 2, 0, layer.WallLength), inner = layer.WallLength - outer;
        double solid = layer.SolidArea / width, infill = settings.InfillShare * layer.CoreArea / width;
        double wallStretch = corners == 0 ? 0 : perimeter / corners;
        double across = perimeter > 0 ? Math.PI * layer.InsideArea / perimeter : 0;
        double most = printer.FlowLimit / (width * layer.Height), slow = isFirst ? printer.FirstLayerFactor : 1;
        double sway = settings.InfillShare > 0 ? Math.Sqrt(printer.Acceleration * BendOverSpacing * width / settings.InfillShare) : double.PositiveInfinity;
        double seconds = Time(outer, wallStretch, printer.OuterWallSpeed) + Time(inner, wallStretch, printer.InnerWallSpeed)
            + Time(solid, across, printer.SolidSpeed) + Time(infill, across, Math.Min(printer.InfillSpeed, sway))
            + printer.TravelShare * (outer + inner + solid + infill) / printer.TravelSpeed;
        return new(seconds, outer, inner, solid, infill, false);

        double Time(double length, double stretch, double speed) =>
            // No stretch is shorter than a line is wide.
            Stretches(length, Math.Max(stretch, width), slow * Math.Min(speed, most), printer.Acceleration);
    }

    private static double Sum(IReadOnlyList<PartLayers> parts, Func<Layer, PrintSettings, double> area)
    {
        double sum = 0;
        foreach (PartLayers part in parts)
            foreach (Layer layer in part.Layers)
                sum += layer.Height * area(layer, part.Settings);
        return sum;
    }

    private static void Check(PrinterModel printer)
    {
        Require.Positive(printer.OuterWallSpeed);
        Require.Positive(printer.InnerWallSpeed);
        Require.Positive(printer.SolidSpeed);
        Require.Positive(printer.InfillSpeed);
        Require.Positive(printer.TravelSpeed);
        Require.Positive(printer.FlowLimit);
        Require.Positive(printer.Acceleration);
        Require.NotNegative(printer.TravelShare);
        Require.NotNegative(printer.LayerChange);
        Require.NotNegative(printer.LeastLayerTime);
        Require.NotNegative(printer.StartTime);
        Require.Positive(printer.FirstLayerFactor);
    }
}
