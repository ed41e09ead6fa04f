using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Making.Motion;

namespace Finwright.Assessment.Packing;

/// <summary>
/// What a motion file does, as <c>finwright motion --json</c> gives it. Field names are these properties in lower case with underscores; each carries its unit.
/// </summary>
public sealed record MotionAnswer
{
    /// <summary>Says what the file is.</summary>
    public string Kind { get; init; } = "finwright-motion";

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; init; } = 1;

    /// <summary>Name and version of the program.</summary>
    public required string MadeBy { get; init; }

    /// <summary>The answer in plain words.</summary>
    public required string Sentence { get; init; }

    /// <summary>Lines in the file.</summary>
    public long? Lines { get; init; }

    /// <summary>Layers of the part.</summary>
    public int? Layers { get; init; }

    /// <summary>Height of the last one.</summary>
    public double? HeightMm { get; init; }

    /// <summary>Plastic laid in the part, priming lines and skirts left out.</summary>
    public double? PartCm3 { get; init; }

    /// <summary>All plastic that leaves the nozzle.</summary>
    public double? PlasticCm3 { get; init; }

    /// <summary>Plastic of priming lines and skirts; null when there are none, or when the file does not let them be told.</summary>
    public double? ApartCm3 { get; init; }

    /// <summary>Box round the middles of the lines of the part.</summary>
    public BoxSummary? Box { get; init; }

    /// <summary>Length of paths that lay plastic.</summary>
    public double? LaidM { get; init; }

    /// <summary>Length of all other moves.</summary>
    public double? TravelM { get; init; }

    /// <summary>Time by the feed rates alone.</summary>
    public double? LeastHours { get; init; }

    /// <summary>Time with acceleration; heating not in it.</summary>
    public double? Hours { get; init; }

    /// <summary>Greatest flow of plastic.</summary>
    public double? GreatestFlowMm3PerS { get; init; }

    /// <summary>Line on which it is asked for.</summary>
    public long? GreatestFlowLine { get; init; }

    /// <summary>Paths that rise all the time.</summary>
    public IReadOnlyList<SpiralSummary> Spirals { get; init; } = [];

    /// <summary>How often each word stands in the file.</summary>
    public IReadOnlyDictionary<string, long> Words { get; init; } = new Dictionary<string, long>(StringComparer.Ordinal);

    /// <summary>Lines that stop the printer.</summary>
    public IReadOnlyList<MotionStopSummary> Stops { get; init; } = [];

    /// <summary>The plate of the design that the file was held against; null without a design.</summary>
    public MotionPlateSummary? Plate { get; init; }

    /// <summary>The copy with stops; null when none was asked for.</summary>
    public InsertedStopsSummary? Inserted { get; init; }

    /// <summary>Everything found, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Sums up.</summary>
    /// <param name="motion">The file; null when it could not be read.</param>
    /// <param name="plate">What it was held against; null without a design.</param>
    /// <param name="insertion">The copy with stops and its name; null when none was asked for.</param>
    /// <param name="findings">Everything found.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static MotionAnswer Of(MotionSummary? motion, MotionOfPlate? plate, (StopInsertion Done, string File)? insertion, IReadOnlyList<Design.Finding> findings, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(findings);
        MotionAnswer answer = new()
        {
            MadeBy = $"Finwright {programVersion}",
            Sentence = "The motion file could not be read.",
            Findings = [.. findings.OrderByDescending(finding => finding.Severity).Select(FindingSummary.Of)],
        };
        if (motion is null)
            return answer;
        double height = Math.Max(motion.Layers.Count > 0 ? motion.Layers[^1].Height : 0, motion.Spirals.Select(spiral => spiral.To).DefaultIfEmpty(0).Max());
        return answer with
        {
            Sentence = Said(motion, height, plate),
            Lines = motion.Lines,
            Layers = motion.Layers.Count,
            HeightMm = Rounded.Mm(height),
            PartCm3 = Rounded.Cm3(motion.PartVolume),
            PlasticCm3 = Rounded.Cm3(motion.PlasticVolume),
            ApartCm3 = motion.Apart is { } apart ? Rounded.Cm3(apart.Volume) : null,
            Box = motion.PartBox is { } box ? BoxSummary.Of(box) : null,
            LaidM = Rounded.Digits(motion.LaidLength),
            TravelM = Rounded.Digits(motion.TravelLength),
            LeastHours = Rounded.Digits(motion.LeastTime / 3600),
            Hours = Rounded.Digits(motion.Time / 3600),
            GreatestFlowMm3PerS = Rounded.Digits(1e9 * motion.GreatestFlow),
            GreatestFlowLine = motion.GreatestFlowLine,
            Spirals = [.. motion.Spirals.Select(spiral => new SpiralSummary(Rounded.Mm(spiral.From), Rounded.Mm(spiral.To), Rounded.Cm3(spiral.Volume)))],
            Words = motion.Words,
            Stops = [.. motion.Stops.Select(stop => new MotionStopSummary(stop.Line, stop.Word, Rounded.Mm(stop.After), stop.Before is double before ? Rounded.Mm(before) : null))],
            Plate = plate is null ? null : MotionPlateSummary.Of(plate),
            Inserted = insertion is { } done ? InsertedStopsSummary.Of(done.Done, done.File) : null,
        };
    }

    private static string Said(MotionSummary motion, double height, MotionOfPlate? plate)
    {
        string what = $"{motion.Layers.Count} layers up to {1e3 * height:0.00} mm, {1e6 * (motion.PartVolume + motion.StandingVolume):0.0} cm³ of plastic in the part, {motion.Time / 3600:0.0} h (at least {motion.LeastTime / 3600:0.0}), {(motion.Stops.Count == 1 ? "one stop" : $"{motion.Stops.Count} stops")}.";
        if (plate is null)
            return what;
        int missing = plate.Stops.Count(stop => stop.State != StopState.Present);
        string stops = plate.Stops.Count == 0 ? "needs no stops" : missing == 0 ? "has every stop it needs" : $"lacks {missing} of {plate.Stops.Count} stops";
        return $"{what} Held against plate {plate.Plate.Number} it {stops}{(plate.Comparison.Findings.Any(finding => finding.Severity != Design.Severity.Note) ? ", and differs from the plan" : " and fits the plan")}.";
    }
}

/// <summary>A box.</summary>
/// <param name="FromMm">Lowest corner: x, y, z.</param>
/// <param name="ToMm">Highest corner: x, y, z.</param>
public sealed record BoxSummary(IReadOnlyList<double> FromMm, IReadOnlyList<double> ToMm)
{
    internal static BoxSummary Of(Bounds box) => new(
        [Rounded.Mm(box.Minimum.X), Rounded.Mm(box.Minimum.Y), Rounded.Mm(box.Minimum.Z)], [Rounded.Mm(box.Maximum.X), Rounded.Mm(box.Maximum.Y), Rounded.Mm(box.Maximum.Z)]);
}

/// <summary>A path that rises all the time.</summary>
/// <param name="FromMm">Height at its beginning.</param>
/// <param name="ToMm">Height at its end.</param>
/// <param name="PlasticCm3">Plastic laid along it.</param>
public sealed record SpiralSummary(double FromMm, double ToMm, double PlasticCm3);

/// <summary>A line that stops the printer.</summary>
/// <param name="Line">Its number.</param>
/// <param name="Word">Its word.</param>
/// <param name="AfterMm">Height laid last before it.</param>
/// <param name="BeforeMm">Height laid next after it; null when nothing is.</param>
public sealed record MotionStopSummary(long Line, string Word, double AfterMm, double? BeforeMm);

/// <summary>A file held against a plate.</summary>
/// <param name="Number">Number of the plate.</param>
/// <param name="Parts">Names of its parts.</param>
/// <param name="SizeMm">Size that the file prints.</param>
/// <param name="PlannedSizeMm">Size of the plate's parts together.</param>
/// <param name="Layers">Layers that the file prints.</param>
/// <param name="PlannedLayers">Layers planned.</param>
/// <param name="PlasticCm3">Plastic that the file lays in the parts.</param>
/// <param name="PlannedPlasticCm3">Plastic planned.</param>
/// <param name="Stops">The stops it needs, and how the file stands to them.</param>
public sealed record MotionPlateSummary(
    int Number, IReadOnlyList<string> Parts, IReadOnlyList<double> SizeMm, IReadOnlyList<double> PlannedSizeMm, int Layers, int PlannedLayers, double PlasticCm3, double PlannedPlasticCm3, IReadOnlyList<NeededStopSummary> Stops)
{
    internal static MotionPlateSummary Of(MotionOfPlate held) => new(
        held.Plate.Number, [.. held.Plate.Parts.Select(part => part.Part.Name)], Size(held.Comparison.Size), Size(held.Plate.Size), held.Comparison.Layers, held.Plate.Parts.Max(part => part.Layers.Layers.Count),
        Rounded.Cm3(held.Comparison.Plastic), Rounded.Cm3(held.Plate.Time.Volume),
        [.. held.Stops.Select(stop => new NeededStopSummary(Rounded.Mm(stop.Needed.Height), stop.Needed.What, stop.State, stop.Reason))]);

    private static double[] Size(Point3 size) => [Rounded.Mm(size.X), Rounded.Mm(size.Y), Rounded.Mm(size.Z)];
}

/// <summary>A stop that is needed.</summary>
/// <param name="AtHeightMm">Height of the layers laid before it.</param>
/// <param name="Items">What is put in.</param>
/// <param name="State">How the file stands to it.</param>
/// <param name="Reason">In words.</param>
public sealed record NeededStopSummary(double AtHeightMm, string Items, StopState State, string Reason);

/// <summary>A copy with stops.</summary>
/// <param name="File">Its name.</param>
/// <param name="Written">Whether it was written.</param>
/// <param name="Stops">What was put in.</param>
/// <param name="Proof">What was proved of it; null when nothing had to be put in.</param>
public sealed record InsertedStopsSummary(string File, bool Written, IReadOnlyList<InsertedStopSummary> Stops, StopProof? Proof)
{
    internal static InsertedStopsSummary Of(StopInsertion insertion, string file) => new(
        file, insertion.Proof?.Holds ?? false, [.. insertion.Inserted.Select(stop => new InsertedStopSummary(stop.Line, Rounded.Mm(stop.Needed.Height), stop.Needed.What))], insertion.Proof);
}

/// <summary>A stop that was put in.</summary>
/// <param name="Line">Number of its line in the copy.</param>
/// <param name="AtHeightMm">Height of the layers laid before it.</param>
/// <param name="Items">What is put in.</param>
public sealed record InsertedStopSummary(long Line, double AtHeightMm, string Items);
