using Finwright.Design;
using Finwright.Geometry;
using Finwright.Making.Layers;

namespace Finwright.Making.Printing;

/// <summary>An item put in at a stop.</summary>
/// <param name="Name">The item.</param>
/// <param name="Clearance">Room between the item's top and the layer laid next, metres; negative when the nozzle would strike it.</param>
public sealed record StopEntry(string Name, double Clearance);

/// <summary>A pause of the print.</summary>
/// <param name="LayerNumber">The layer before which the print pauses, from 1.</param>
/// <param name="Height">Height of the layers laid so far, metres: the nozzle stands there or a lift above.</param>
/// <param name="Items">What is put in.</param>
public sealed record PrintStop(int LayerNumber, double Height, IReadOnlyList<StopEntry> Items);

/// <summary>All pauses of one part.</summary>
/// <param name="Stops">From the bed up.</param>
/// <param name="NotNeeded">Items whose pocket stays open to the top: they are put in afterwards.</param>
/// <param name="NotPossible">Items that no stop gets in.</param>
public sealed record StopPlan(IReadOnlyList<PrintStop> Stops, IReadOnlyList<string> NotNeeded, IReadOnlyList<string> NotPossible);

/// <summary>Finds the layers before which a print pauses so that nuts can be put in.</summary>
/// <remarks>
/// The print pauses before the first layer that closes the pocket: that covers its middle, or whose opening there is narrower than the item, as
/// where a bolt's bore goes on above its nut. A pocket of six sides or a round one whose axis lies closes slowly; the item then goes in no later than at its widest place and may
/// stick out. The item lies on the top of the last layer that covers the middle under it.
/// </remarks>
public static class PrintStops
{
    /// <summary>An item should lie at least this far under the next layer, metres: 0.1 to 0.2 mm (common practice, no source).</summary>
    public const double LeastClearance = 0.1e-3;

    /// <summary>Openings narrower than the item by no more than this still take it, metres: circles are polygons, meshes are rounded.</summary>
    private const double Rounding = 10e-6;

    /// <summary>Plans the pauses.</summary>
    /// <param name="part">The part in layers.</param>
    /// <param name="items">What is put in; pockets that open to a side or through a wide bore need no stop and are left out by the caller.</param>
    /// <param name="findings">Receives what was found.</param>
    public static StopPlan Plan(PartLayers part, IReadOnlyList<StopItem> items, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(items);
        ArgumentNullException.ThrowIfNull(findings);
        SortedDictionary<int, List<StopEntry>> stops = [];
        List<string> notNeeded = [], notPossible = [];
        foreach (StopItem item in items)
        {
            PocketShape shape = new(item.Pocket, part.ToLayers);
            (int floor, int closing) = Span(part, item, shape);
            if (floor < 0)
            {
                notPossible.Add(item.Name);
                findings.Add(NeverOpen(part, item, shape));
            }
            else if (closing >= part.Layers.Count)
            {
                notNeeded.Add(item.Name);
            }
            else
            {
                double clearance = part.Layers[closing].Bottom - (part.Layers[floor].Bottom + item.Height);
                if (!stops.TryGetValue(closing, out List<StopEntry>? entries))
                    stops.Add(closing, entries = []);
                entries.Add(new(item.Name, clearance));
                if (clearance < LeastClearance - Rounding)
                    findings.Add(Proud(part, item, shape, closing, clearance));
            }
        }

        return new([.. stops.Select(stop => new PrintStop(stop.Key + 1, part.Layers[stop.Key].Bottom, stop.Value))], notNeeded, notPossible);
    }

    /// <summary>First layer in which the pocket is open, and first above it in which the item gets in no more; −1 when it never gets in.</summary>
    private static (int Floor, int Closing) Span(PartLayers part, StopItem item, PocketShape shape)
    {
        int floor = -1;
        bool goesIn = false;
        for (int i = 0; i < part.Layers.Count; i++)
        {
            Layer layer = part.Layers[i];
            if (layer.Middle < shape.Bottom)
                continue;
            double opening = Opening(layer, shape);
            if (floor < 0 && opening > 0)
                floor = i;
            bool wide = opening >= item.Width - Rounding;
            if (goesIn && !wide)
                return (floor, i);
            goesIn |= wide;
            if (!goesIn && layer.Bottom > shape.Top)
                break;
        }

        return goesIn ? (floor, part.Layers.Count) : (-1, -1);
    }

    /// <summary>How wide a layer is open at the middle of a pocket, metres: 0 where it covers it, infinite beside the part.</summary>
    private static double Opening(Layer layer, PocketShape shape)
    {
        Point3 middle = shape.At(layer.Middle);
        Point2 at = new(middle.X, middle.Y);
        if (RingAreas.Contains(layer.Outline, at))
            return 0;
        double least = double.PositiveInfinity;
        foreach (Point3 across in shape.Across)
            least = Math.Min(least, RingAreas.Clear(layer.Outline, at, new(across.X, across.Y)) + RingAreas.Clear(layer.Outline, at, new(-across.X, -across.Y)));
        return least;
    }

    private static Finding NeverOpen(PartLayers part, StopItem item, PocketShape shape) => new(
        "stop-never-open", Severity.Error, item.Path,
        $"{item.Name}: no layer of the {part.Name} leaves its pocket open wide enough to put it in; it is {Mm(item.Width)} wide, the pocket {Mm(shape.GreatestOpening())} at most.",
        "Turn the part on the bed so that the pocket opens upward, or let it open to a side.")
    { Value = Mm(shape.GreatestOpening()), Limit = Mm(item.Width) };

    private static Finding Proud(PartLayers part, StopItem item, PocketShape shape, int closing, double clearance)
    {
        string what = clearance < 0
            ? $"it sticks out {Mm(-clearance)} above the layers at layer {closing + 1} of the {part.Name}, the last at which it goes in: the nozzle strikes it."
            : $"it lies only {Mm(clearance)} under layer {closing + 1} of the {part.Name}: a nut at the upper end of its tolerance is struck by the nozzle.";
        string remedy = shape.AxisStands
            ? $"Raise the pocket allowance by {Mm(LeastClearance - clearance)}; or say how the part lies (parts.blade_attitude, parts.base_attitude), so that the way in for the nut is cut on its upper side."
            : "Say in the design how the part lies (parts.blade_attitude, parts.base_attitude), so that the way in for the nut is cut on its upper side; or use a square nut, or turn the part on the bed so that the bolt stands up.";
        return new("stop-item-proud", clearance < 0 ? Severity.Error : Severity.Caution, item.Path, $"{item.Name}: {what}", remedy) { Value = Mm(clearance), Limit = Mm(LeastClearance) };
    }

    private static string Mm(double metres) => $"{1000 * metres:0.00} mm";
}
