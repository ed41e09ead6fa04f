using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Reviewing;

/// <summary>
/// A build held against its prediction, as <c>finwright built show --json</c> gives it. Field names are these properties in lower case with underscores; numbers of a line are in its unit.
/// </summary>
public sealed record ReviewSummary
{
    /// <summary>Says what the file is.</summary>
    public string Kind { get; init; } = "finwright-build-review";

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; init; } = 1;

    /// <summary>Name and version of the program.</summary>
    public required string MadeBy { get; init; }

    /// <summary>Name of the build.</summary>
    public required string Build { get; init; }

    /// <summary>The revision that it was made of.</summary>
    public required string Revision { get; init; }

    /// <summary>When it was finished; null while it is not.</summary>
    public required DateOnly? MadeOn { get; init; }

    /// <summary>Its filament; empty when it is not known.</summary>
    public required string Filament { get; init; }

    /// <summary>Its resin; empty when it is not known.</summary>
    public required string Resin { get; init; }

    /// <summary>What was taken from the stock for it, at the price that was paid; null when nothing was, or a price is missing.</summary>
    public required double? TakenFromStock { get; init; }

    /// <summary>Currency of that; empty when there is none.</summary>
    public required string StockCurrency { get; init; }

    /// <summary>What went wrong, in the maker's words.</summary>
    public required string Problems { get; init; }

    /// <summary>The answer in plain words.</summary>
    public required string Sentence { get; init; }

    /// <summary>What was weighed, timed and paid.</summary>
    public required IReadOnlyList<ReviewedSummary> Lines { get; init; }

    /// <summary>Readings of the bench.</summary>
    public required IReadOnlyList<ReviewedReadingSummary> Readings { get; init; }

    /// <summary>Why readings have no prediction; null when they have one.</summary>
    public required string? BenchProblem { get; init; }

    /// <summary>Mean of read over predicted, of deflections; null where there is none to tell.</summary>
    public required double? MeanDeflectionRatio { get; init; }

    /// <summary>The same of twist.</summary>
    public required double? MeanTwistRatio { get; init; }

    /// <summary>Which assumption was off.</summary>
    public required IReadOnlyList<ReviewRemark> Remarks { get; init; }

    /// <summary>What was not measured.</summary>
    public required IReadOnlyList<string> NotMeasured { get; init; }

    /// <summary>What other builds taught that went into the prediction.</summary>
    public required IReadOnlyList<LearnedSummary> Used { get; init; }

    /// <summary>What this build taught; it goes into the predictions of others.</summary>
    public required IReadOnlyList<CalibrationSummary> Taught { get; init; }

    /// <summary>Sums a review up.</summary>
    /// <param name="store">The store.</param>
    /// <param name="review">The review.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static ReviewSummary Of(WorkshopStore store, BuildReview review, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(review);
        (double Cost, string Currency)? taken = BuildStock.CostOf(store, review.Build);
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Build = review.Build.Name,
            Revision = review.Build.Revision,
            MadeOn = review.Build.MadeOn,
            Filament = review.Build.FilamentId is long filament ? store.Stock.Get(filament).Label : "",
            Resin = review.Build.ResinId is long resin ? store.Stock.Get(resin).Label : "",
            TakenFromStock = Digits(taken?.Cost),
            StockCurrency = taken?.Currency ?? "",
            Problems = review.Build.Problems,
            Sentence = review.Sentence,
            Lines = [.. review.Lines.Select(ReviewedSummary.Of)],
            Readings = [.. review.Readings.Select(ReviewedReadingSummary.Of)],
            BenchProblem = review.BenchProblem,
            MeanDeflectionRatio = Digits(review.MeanDeflectionRatio),
            MeanTwistRatio = Digits(review.MeanTwistRatio),
            Remarks = review.Remarks,
            NotMeasured = review.NotMeasured,
            Used = [.. review.Used.Ratios.Select(ratio => LearnedSummary.Of(store, ratio))],
            Taught = [.. store.Calibrations.List(review.Build.Id).Select(CalibrationSummary.Of)],
        };
    }

    internal static double? Digits(double? value) => value is double number ? Rounded.Digits(number) : null;
}

/// <summary>A quantity of a build.</summary>
/// <param name="Key">Key of the result.</param>
/// <param name="Name">Name in plain words.</param>
/// <param name="Unit">Unit of the numbers.</param>
/// <param name="Predicted">Predicted; null when it was not.</param>
/// <param name="Low">Lower end of its range.</param>
/// <param name="High">Upper end.</param>
/// <param name="Measured">Measured; null when it was not.</param>
/// <param name="Doubt">How far the measurement may be off (two standard deviations).</param>
/// <param name="Ratio">Measured over predicted.</param>
/// <param name="State">How it stands.</param>
/// <param name="Decimals">Decimals that the numbers deserve.</param>
public sealed record ReviewedSummary(string Key, string Name, string Unit, double? Predicted, double? Low, double? High, double? Measured, double Doubt, double? Ratio, ReviewState State, int Decimals)
{
    internal static ReviewedSummary Of(ReviewLine line) =>
        new(line.Key, line.Name, line.Unit, Digits(line.Predicted), Digits(line.Low), Digits(line.High), Digits(line.Measured), Rounded.Digits(line.Doubt), Digits(line.Ratio), line.State, line.Decimals);

    private static double? Digits(double? value) => ReviewSummary.Digits(value);
}

/// <summary>A reading of the bench.</summary>
/// <param name="Session">Number of the readings that it belongs to.</param>
/// <param name="TakenOn">The day.</param>
/// <param name="RootHold">How the root was held.</param>
/// <param name="MassKg">The weight.</param>
/// <param name="AtMm">Where it hung, from the hull plane.</param>
/// <param name="AtChord">Where along the chord.</param>
/// <param name="ReadAtMm">Where it was read.</param>
/// <param name="ReadChord">Where along the chord.</param>
/// <param name="Quantity">What was read.</param>
/// <param name="Reading">Predicted and read.</param>
public sealed record ReviewedReadingSummary(long Session, DateOnly TakenOn, RootHold RootHold, double MassKg, double AtMm, ChordPlace AtChord, double ReadAtMm, ChordPlace ReadChord, BenchQuantity Quantity, ReviewedSummary Reading)
{
    internal static ReviewedReadingSummary Of(ReadingReview own) =>
        new(own.Session, own.TakenOn, own.RootHold, own.MassKg, own.AtMm, own.AtChord, own.ReadAtMm, own.ReadChord, own.Quantity, ReviewedSummary.Of(own.Against));
}

/// <summary>What earlier builds taught of one quantity.</summary>
/// <param name="Quantity">What it multiplies.</param>
/// <param name="Factor">The factor.</param>
/// <param name="Low">Lower end of its range.</param>
/// <param name="High">Upper end.</param>
/// <param name="SameBatch">Whether it comes from these very batches.</param>
/// <param name="Calibrations">Numbers of the calibrations.</param>
/// <param name="Builds">The builds that taught it.</param>
public sealed record LearnedSummary(LearnedQuantity Quantity, double Factor, double Low, double High, bool SameBatch, IReadOnlyList<long> Calibrations, IReadOnlyList<string> Builds)
{
    internal static LearnedSummary Of(WorkshopStore store, LearnedRatio ratio) => new(
        ratio.Quantity, Rounded.Digits(ratio.Range.Value), Rounded.Digits(ratio.Range.Low), Rounded.Digits(ratio.Range.High), ratio.IsSameBatch, [.. ratio.From.Select(own => own.Id)],
        [.. ratio.From.Select(own => own.BuildId).OfType<long>().Distinct().Select(build => store.Builds.Get(build).Name)]);
}

/// <summary>A calibration.</summary>
/// <param name="Number">Its number; 0 before it is kept.</param>
/// <param name="Quantity">What it multiplies.</param>
/// <param name="Factor">The factor.</param>
/// <param name="Low">Lower end of its range.</param>
/// <param name="High">Upper end.</param>
/// <param name="Sessions">Numbers of the readings that it came from; none when it came from the build itself.</param>
/// <param name="MadeAt">When it was learned.</param>
/// <param name="MadeBy">The program and its version.</param>
/// <param name="Note">The maker's own words.</param>
public sealed record CalibrationSummary(long Number, LearnedQuantity Quantity, double Factor, double Low, double High, IReadOnlyList<long> Sessions, DateTimeOffset MadeAt, string MadeBy, string Note)
{
    /// <summary>Sums a calibration up.</summary>
    public static CalibrationSummary Of(Calibration own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return new(own.Id, own.Quantity, Rounded.Digits(own.Factor), Rounded.Digits(own.Low), Rounded.Digits(own.High), own.Sessions, own.MadeAt, own.MadeBy, own.Note);
    }
}
