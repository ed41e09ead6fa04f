using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Making.Motion;

namespace Finwright.Page.Making;

/// <summary>A motion file read back and held against the plate that it should print.</summary>
/// <param name="Reading">What it does; without a summary when it could not be read.</param>
/// <param name="Plate">The plate, and how the file stands to it; null when it could not be read.</param>
/// <param name="Options">How it was read.</param>
internal sealed record MotionCheck(MotionReading Reading, MotionOfPlate? Plate, MotionOptions Options)
{
    /// <summary>The usual line that stops a printer.</summary>
    public const string UsualStop = "M0";

    /// <summary>Stops that the file lacks, or has at another layer.</summary>
    public IReadOnlyList<StopCheck> Lacking => Plate is null ? [] : [.. Plate.Stops.Where(stop => stop.State is not StopState.Present)];

    /// <summary>Whether size, layers and plastic are those of the plan.</summary>
    public bool Fits => Plate is not null && Plate.Comparison.Findings.All(finding => finding.Severity is Severity.Note);

    /// <summary>Everything found, worst first.</summary>
    public IReadOnlyList<Finding> Findings => [.. Reading.Findings.Concat(Plate?.Comparison.Findings ?? []).OrderByDescending(finding => finding.Severity)];

    /// <summary>Reads and compares.</summary>
    /// <param name="file">The file.</param>
    /// <param name="design">The design, for the printer's acceleration.</param>
    /// <param name="printed">Its print.</param>
    /// <param name="plate">Number of the plate; null for the one whose size comes nearest.</param>
    /// <param name="stopLine">The line with which this printer stops.</param>
    /// <param name="cancellation">Stops it.</param>
    public static MotionCheck Of(string file, FinDesign design, FinPrinted printed, int? plate, string stopLine, CancellationToken cancellation)
    {
        MotionOptions usual = new();
        MotionOptions options = usual with { Acceleration = design.Print.Machine.AccelerationMmPerS2 / 1e3, StopLines = [stopLine] };
        MotionReading reading = MotionFile.ReadFile(file, options, cancellation);
        return new(reading, reading.Summary is { } motion ? MotionOfPlate.Find(motion, printed, plate) : null, options);
    }

    /// <summary>Writes a copy with the stops that the file lacks, proved to be the same otherwise.</summary>
    /// <param name="file">The file.</param>
    /// <param name="copy">The copy.</param>
    /// <param name="stopLine">The line with which this printer stops.</param>
    /// <param name="cancellation">Stops it.</param>
    public StopInsertion Insert(string file, string copy, string stopLine, CancellationToken cancellation) =>
        MotionStops.Insert(file, copy, Plate!.Needed, stopLine, Options, cancellation);
}
