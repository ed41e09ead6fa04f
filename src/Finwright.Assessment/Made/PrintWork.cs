using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;
using Finwright.Making.FromDesign;
using Finwright.Making.Layers;
using Finwright.Making.Printing;

namespace Finwright.Assessment.Made;

/// <summary>Plans the print of every part.</summary>
internal static class PrintWork
{
    // A blade bends along its span; for a part that came as a mesh the longest side is taken for it.
    private static readonly Point3 AlongSpan = new(0, 1, 0);

    /// <summary>Plans the print.</summary>
    /// <param name="print">The design's print.</param>
    /// <param name="parts">The parts; at least one.</param>
    /// <param name="beds">Which parts share a bed; none: each has its own.</param>
    /// <param name="kernel">Slices.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="cancellation">Stops it.</param>
    public static FinPrinted Of(Print print, IReadOnlyList<PartToMake> parts, IReadOnlyList<Plate> beds, ISolidKernel kernel, ICollection<Finding> findings, IProgress<double>? progress, CancellationToken cancellation)
    {
        PrintSettings settings = PrintFromDesign.Settings(print);
        PrinterModel printer = PrinterFromDesign.Of(print.Machine);
        PrintRoom room = RoomFromDesign.Of(print);
        List<PartPrinted> printed = [];
        foreach ((int index, PartToMake part) in parts.Index())
        {
            PartLayers layers = LayerSlicer.Slice(part.Name, part.Mesh, part.ToBed, settings, kernel, cancellation);
            PrintEstimate time = PrintTime.Of(layers, printer);
            IReadOnlyList<RankedWay> ways = OrientationRanking.Rank(part.Mesh, part.Ways, room, Stress(part), settings, printer, double.DegreesToRadians(print.OverhangLimitDegrees));
            printed.Add(new()
            {
                Part = part,
                Layers = layers,
                Time = time,
                StopPlan = PrintStops.Plan(layers, [.. part.Pockets.Select(pocket => StopItem.Of(pocket, layers.ToLayers, print.PocketAllowanceMm / 1e3))], findings),
                Orientations = ways,
                AsLaid = AsLaid(part, ways),
                Advice = PrintAdvice.Of(layers),
            });
            progress?.Report((index + 1.0) / parts.Count);
        }

        return new(printed, [.. beds.Count == 0 ? Alone(printed) : beds.Select(bed => Together(bed, printed, printer))]);
    }

    private static Point3 Stress(PartToMake part)
    {
        if (!part.IsImported)
            return AlongSpan;
        Point3 size = part.Mesh.Bounds().Size;
        return size.X >= size.Y && size.X >= size.Z ? new(1, 0, 0) : size.Y >= size.Z ? AlongSpan : new(0, 0, 1);
    }

    /// <summary>The way whose down is the bed's, as the part really lies.</summary>
    private static RankedWay AsLaid(PartToMake part, IReadOnlyList<RankedWay> ways)
    {
        Point3 down = part.ToBed.RigidInverse().Turn(new(0, 0, -1));
        return ways.MaxBy(way => way.Way.Down.Dot(down))!;
    }

    private static IEnumerable<PlatePrinted> Alone(IReadOnlyList<PartPrinted> printed) =>
        printed.Select((part, index) => new PlatePrinted(index + 1, [part], part.Time, part.Stops, part.Layers.Size));

    private static PlatePrinted Together(Plate bed, IReadOnlyList<PartPrinted> printed, PrinterModel printer)
    {
        PartPrinted[] own = [.. bed.Parts.Select(placed => printed.First(part => string.Equals(part.Part.Name, placed.Part.Name, StringComparison.Ordinal)))];
        Point3[] corners = [.. bed.Parts.SelectMany(placed => placed.Part.Mesh.Points().Select(placed.Placement.Apply))];
        Point3 size = new(corners.Max(p => p.X) - corners.Min(p => p.X), corners.Max(p => p.Y) - corners.Min(p => p.Y), corners.Max(p => p.Z) - corners.Min(p => p.Z));
        PrintStop[] stops =
        [
            .. own.SelectMany(part => part.Stops)
                .GroupBy(stop => stop.LayerNumber)
                .OrderBy(group => group.Key)
                .Select(group => new PrintStop(group.Key, group.First().Height, [.. group.SelectMany(stop => stop.Items)])),
        ];
        return new(bed.Number, own, PrintTime.Of([.. own.Select(part => part.Layers)], printer), stops, size);
    }
}
