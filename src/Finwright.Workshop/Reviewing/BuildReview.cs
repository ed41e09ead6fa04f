using Finwright.Assessment;
using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Strength.Files;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Reviewing;

/// <summary>A build held against its prediction, and which assumption was off.</summary>
/// <remarks>What other builds taught of its batches goes into the prediction; what it taught itself does not, or it would be held against itself.</remarks>
public sealed record BuildReview
{
    /// <summary>The build.</summary>
    public required Build Build { get; init; }

    /// <summary>What was weighed, timed and paid: predicted and measured.</summary>
    public required IReadOnlyList<ReviewLine> Lines { get; init; }

    /// <summary>Readings of the bench, one by one.</summary>
    public required IReadOnlyList<ReadingReview> Readings { get; init; }

    /// <summary>Why readings have no prediction; null when they have one, or there are none.</summary>
    public string? BenchProblem { get; init; }

    /// <summary>Mean of read over predicted, of deflections; null where readings are missing or too small to tell.</summary>
    public required double? MeanDeflectionRatio { get; init; }

    /// <summary>The same of twist.</summary>
    public required double? MeanTwistRatio { get; init; }

    /// <summary>Which assumption was off, in words with numbers; empty when none was.</summary>
    public required IReadOnlyList<ReviewRemark> Remarks { get; init; }

    /// <summary>Names of what was not measured.</summary>
    public required IReadOnlyList<string> NotMeasured { get; init; }

    /// <summary>What other builds taught that went into the prediction.</summary>
    public required Learned Used { get; init; }

    /// <summary>The answer in a sentence or two.</summary>
    public string Sentence
    {
        get
        {
            ReviewState[] all = [.. Lines.Select(line => line.State), .. Readings.Select(reading => reading.Against.State)];
            int off = all.Count(state => state is ReviewState.Below or ReviewState.Above), compared = off + all.Count(state => state is ReviewState.Within);
            return compared == 0 ? (Array.Exists(all, state => state is ReviewState.NotPredicted) ? "What was measured has no prediction to be held against." : "Nothing was measured yet.")
                : off == 0 && Remarks.Count == 0 ? $"Nothing was off beyond what the ranges allow: {Counted(compared)}."
                : off == 0 ? $"Each by itself lies within its range: {Counted(compared)}. Together they say more."
                : $"{off} of {Counted(compared)} {(off == 1 ? "lies" : "lie")} outside the range.";

            static string Counted(int count) => count == 1 ? "1 measurement" : $"{count} measurements";
        }
    }

    /// <summary>Holds a build against its prediction.</summary>
    /// <param name="store">The store.</param>
    /// <param name="build">The build.</param>
    /// <param name="predicted">Results of its revision without calibrations (<see cref="Predictions"/>); what is missing is told as not predicted.</param>
    /// <param name="assessor">Works out what the bench should show: seconds.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static BuildReview Of(WorkshopStore store, Build build, FinResults predicted, Assessor assessor, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(predicted);
        ArgumentNullException.ThrowIfNull(assessor);
        Learned used = Learned.For(store, build.FilamentId, build.ResinId, except: build.Id);
        FinResults expected = used.Into(predicted);
        IReadOnlyList<BuildPart> parts = store.Builds.Parts(build.Id);
        DesignReading reading = store.Shelf.Read(build.RevisionId);
        IReadOnlyList<BenchSession> sessions = store.Bench.List(build.Id);
        (IReadOnlyList<ReadingReview> readings, string? problem) = reading is { HasErrors: false, Design: { } design }
            ? Bench(used.Into(design), sessions, assessor, cancellation)
            : ([], sessions.Count > 0 ? $"The design {build.Revision} cannot be worked out." : null);
        IReadOnlyList<ReviewLine> lines = LinesOf(build, parts, expected, reading.Design);
        return new()
        {
            Build = build,
            Lines = lines,
            Readings = readings,
            BenchProblem = problem,
            MeanDeflectionRatio = ReviewRules.MeanRatio(readings, BenchQuantity.Deflection),
            MeanTwistRatio = ReviewRules.MeanRatio(readings, BenchQuantity.Twist),
            Remarks = ReviewRules.Of(build, reading.Design, lines, readings),
            NotMeasured = [.. lines.Where(line => line.State is ReviewState.NotMeasured).Select(line => line.Name), .. sessions.Count == 0 ? (string[])["deflection and twist on the bench"] : []],
            Used = used,
        };
    }

    private static List<ReviewLine> LinesOf(Build build, IReadOnlyList<BuildPart> parts, FinResults expected, FinDesign? design)
    {
        Measured measured = Measured.Of(build, parts, expected);
        List<ReviewLine> lines =
        [
            ReviewLine.Of(ResultKeys.FinMass, "mass of the finished fin", "g", 0, expected[ResultKeys.FinMass], measured.MassGrams, MeasuringDoubt.Mass),
            ReviewLine.Of(ResultKeys.Plastic, "plastic", "g", 0, expected[ResultKeys.Plastic], measured.PlasticGrams, MeasuringDoubt.Plastic),
            ReviewLine.Of(ResultKeys.ResinPoured, "resin poured", "ml", 0, expected[ResultKeys.ResinPoured], measured.ResinMl, MeasuringDoubt.Resin),
        ];
        // What is in the fin follows from three weights, whatever ran beside it.
        if (measured is { MassGrams: double fin, PlasticGrams: double plastic } && expected[ResultKeys.ResinMass] is { } resin && expected[ResultKeys.HardwareMass] is { Value: double hardware })
        {
            double doubt = Math.Sqrt(Square(MeasuringDoubt.Mass(fin)) + Square(MeasuringDoubt.Plastic(plastic)) + Square(EmbeddedMass.Spread * hardware) + Square(0.01 * fin));
            lines.Add(ReviewLine.Of(ResultKeys.ResinMass, "resin in the fin, weighed", "g", 0, resin, fin - plastic - hardware, _ => doubt));
        }

        lines.Add(ReviewLine.Of(ResultKeys.PrintTime, "time on the printer", "h", 1, expected[ResultKeys.PrintTime], measured.PrintHours, MeasuringDoubt.Time));
        lines.Add(ReviewLine.Of(ResultKeys.Peak, "peak temperature", "°C", 0, expected[ResultKeys.Peak], measured.PeakCelsius, _ => MeasuringDoubt.Temperature));
        ReviewLine cost = ReviewLine.Of(ResultKeys.Cost, "cost", build.Currency, 2, expected[ResultKeys.Cost], measured.Cost, _ => 0);
        // Prices are what the design says; a tenth is what any shop differs by (judgement).
        if (cost.Predicted is double price)
            cost = cost with { Low = 0.9 * price, High = 1.1 * price };
        // Euros are not held against pounds.
        if (build.Currency.Length > 0 && design is not null && !string.Equals(build.Currency, design.Prices.Currency, StringComparison.OrdinalIgnoreCase))
            cost = cost with { Predicted = null, Low = null, High = null, Unit = build.Currency };
        lines.Add(cost);
        foreach (BuildPart part in parts)
        {
            if (part.PlasticGrams is not null)
                lines.Add(ReviewLine.Of(ResultKeys.PlasticOf(part.Part), $"plastic of the {part.Part}", "g", 1, expected[ResultKeys.PlasticOf(part.Part)], part.PlasticGrams, MeasuringDoubt.Plastic));
            if (part.PrintHours is not null)
                lines.Add(ReviewLine.Of(ResultKeys.TimeOf(part.Part), $"time of the {part.Part}", "h", 1, expected[ResultKeys.TimeOf(part.Part)], part.PrintHours, MeasuringDoubt.Time));
        }

        return lines;
    }

    private static (IReadOnlyList<ReadingReview> Readings, string? Problem) Bench(FinDesign design, IReadOnlyList<BenchSession> sessions, Assessor assessor, CancellationToken cancellation)
    {
        List<ReadingReview> readings = [];
        string? problem = null;
        foreach (BenchSession session in sessions)
        {
            AssessmentResult result = assessor.Assess(design with { Base = design.Base with { RootHold = session.RootHold } }, AssessmentDepth.Structure, cancellation: cancellation);
            if (result is not { Blade: { } blade, Built.Structure: { } structure })
            {
                problem = result.Built?.Problem ?? result.Findings.FirstOrDefault(finding => finding.IsError)?.Message ?? "The structure could not be worked out.";
                continue;
            }

            (BenchReadingLine Line, BenchMeasurement Own)[] read = [.. session.Readings.SelectMany(line => line.Measurements(blade.Span).Select(own => (line, own)))];
            if (BenchTest.Readings(structure, [.. read.Select(one => one.Own)]) is { } predicted)
                readings.AddRange(read.Zip(predicted, (one, range) => ReadingReview.Of(session, one.Line, one.Own, range, blade.Span)));
            else
                problem = "The bent blade could not be worked out.";
        }

        return (readings, problem);
    }

    private static double Square(double value) => value * value;
}
