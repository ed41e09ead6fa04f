using Finwright.Making.Layers;
using Finwright.Making.Motion;

namespace Finwright.Assessment.Made;

/// <summary>A motion file held against the plate that it should print.</summary>
/// <param name="Plate">The plate.</param>
/// <param name="Comparison">Size, layers and plastic side by side.</param>
/// <param name="Needed">The stops that the plate needs.</param>
/// <param name="Stops">How the file stands to them.</param>
public sealed record MotionOfPlate(PlatePrinted Plate, MotionComparison Comparison, IReadOnlyList<NeededStop> Needed, IReadOnlyList<StopCheck> Stops)
{
    // Overlap of lines, corners and the share of infill: what prepares a file may lay that much more or less than planned (judgement).
    private const double PlasticSpread = 0.12;

    /// <summary>Finds the plate that a file prints, and compares.</summary>
    /// <param name="motion">The file.</param>
    /// <param name="printed">The print.</param>
    /// <param name="number">The plate, when it is told; else the one whose size comes nearest.</param>
    /// <returns>Null when there is no such plate.</returns>
    public static MotionOfPlate? Find(MotionSummary motion, FinPrinted printed, int? number)
    {
        ArgumentNullException.ThrowIfNull(motion);
        ArgumentNullException.ThrowIfNull(printed);
        PlatePrinted? plate = number is int told ? printed.Plates.FirstOrDefault(own => own.Number == told) : printed.Plates.MinBy(own => Distance(motion, own));
        if (plate is null)
            return null;
        NeededStop[] needed = [.. plate.Stops.Select(stop => new NeededStop(stop.Height, string.Join(", ", stop.Items.Select(item => item.Name))))];
        return new(plate, MotionAgainstPart.Compare(motion, Plan(plate)), needed, MotionStops.Compare(motion, needed));
    }

    private static PlannedPart Plan(PlatePrinted plate)
    {
        PrintSettings settings = plate.Parts[0].Layers.Settings;
        double plastic = plate.Time.Volume;
        return new()
        {
            Size = plate.Size,
            LineWidth = settings.LineWidth,
            LayerHeight = settings.LayerHeight,
            Layers = plate.Parts.Max(part => part.Layers.Layers.Count),
            Plastic = new(plastic, (1 - PlasticSpread) * plastic, (1 + PlasticSpread) * plastic),
        };
    }

    /// <summary>How far the sizes differ, the sides in either order, metres.</summary>
    private static double Distance(MotionSummary motion, PlatePrinted plate)
    {
        if (motion.UpperBox is not { } box)
            return double.PositiveInfinity;
        double x = box.Size.X, y = box.Size.Y;
        return Math.Min(Math.Abs(x - plate.Size.X) + Math.Abs(y - plate.Size.Y), Math.Abs(x - plate.Size.Y) + Math.Abs(y - plate.Size.X)) + Math.Abs(box.Maximum.Z - plate.Size.Z);
    }
}
