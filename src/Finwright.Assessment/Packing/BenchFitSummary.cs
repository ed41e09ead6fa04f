using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Strength.Calibration;
using Finwright.Strength.Files;
using Finwright.Strength.Plates;

namespace Finwright.Assessment.Packing;

/// <summary>
/// What the bench taught, as <c>finwright bench fit --json</c> gives it. Field names are these properties in camel case; each carries its unit. Factors are measured stiffness over computed.
/// </summary>
public sealed record BenchFitSummary() : DesignAnswer("finwright-bench-fit")
{
    // A shift farther than this many standard deviations of before is outside the range of before.
    private const double UsualShift = 2;

    // The plate itself is no better against solid elements than about this; a factor is not known better than the model that it corrects.
    private const double LeastPercent = 0.5;

    /// <summary>Why there is no answer, and what to do; null when there is one.</summary>
    public string? Problem { get; init; }

    /// <summary>How the root is taken to have been held.</summary>
    public RootHold? RootHold { get; init; }

    /// <summary>The factors; empty when there is a problem.</summary>
    public IReadOnlyList<FactorSummary> Factors { get; init; } = [];

    /// <summary>Covariance of the factors' logarithms, one row a factor, in the order of <see cref="Factors"/>.</summary>
    public IReadOnlyList<IReadOnlyList<double>> LogCovariance { get; init; } = [];

    /// <summary>Sum of the squared residuals; about the number of readings when all is well.</summary>
    public double? ChiSquare { get; init; }

    /// <summary>Every number that was read, in the order of the file.</summary>
    public IReadOnlyList<ReadingSummary> Readings { get; init; } = [];

    /// <summary>What the readings leave open, and which look wrong.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>What is assumed, and what to take care of.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>The file into which the design was saved with the factors; null when it was not.</summary>
    public string? SavedAs { get; init; }

    /// <summary>Everything found about the design, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Learns from readings, and sums up.</summary>
    /// <param name="result">The design, worked out at least to its structure.</param>
    /// <param name="lines">Readings, none beyond the tip.</param>
    /// <param name="programVersion">Version of the program.</param>
    public static BenchFitSummary Of(AssessmentResult result, IReadOnlyList<BenchReadingLine> lines, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(lines);
        BenchFitSummary head = new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Design?.Name,
            DesignSha256 = result.DesignHash,
            Sentence = "Nothing could be worked out yet.",
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
        if (result is not { Design: { } design, Blade: { } blade, Built: { } built })
            return head;
        if (built.Structure is not { } structure)
            return head with { Problem = built.Problem, Sentence = $"Nothing was learned. {built.Problem}" };
        (BenchReadingLine Line, BenchMeasurement Read)[] read = [.. lines.SelectMany(line => line.Measurements(blade.Span).Select(own => (line, own)))];
        BenchCalibrationResult learned = BenchCalibration.Solve(structure, [.. read.Select(one => one.Read)]);
        string? problem = learned.Fit switch
        {
            null => "The ranges of walls and core are nothing, so there is nothing to learn. Give the materials a range (range_percent), or take the factors' deviations out of the design.",
            { Status: BenchFitStatus.NotConverged } => "The fit did not come to rest. Look for a reading with a wrong sign, unit or place.",
            { Status: BenchFitStatus.PredictionFailed } => "The bent blade could not be worked out for these factors. Look for a reading with a wrong sign, unit or place.",
            _ => null,
        };
        if (problem is not null)
            return head with { Problem = problem, Sentence = $"Nothing was learned. {problem}", RootHold = design.Base.RootHold };
        BenchFitResult fit = learned.Fit!;
        return head with
        {
            Sentence = SentenceOf(read.Length, learned),
            RootHold = design.Base.RootHold,
            Factors = [.. learned.Factors.Select(FactorSummary.Of)],
            LogCovariance = [.. learned.Factors.Select((_, i) => learned.Factors.Select((_, j) => Rounded.Digits(fit.LogCovariance[i * learned.Factors.Count + j])).ToArray())],
            ChiSquare = Rounded.Digits(fit.ChiSquare),
            Readings = [.. read.Select((one, k) => ReadingSummary.Of(one.Line, one.Read, learned.Before[k], fit, k))],
            Remarks = [.. RemarksOf(read.Select(one => one.Line), blade.Span, fit, learned)],
            Notes = NotesOf(design, learned),
        };
    }

    /// <summary>The design with the learned factors of walls and core, and how far they may be off.</summary>
    /// <param name="design">The design that was compared with.</param>
    public FinDesign Into(FinDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        Materials materials = design.Materials;
        foreach (FactorSummary own in Factors)
        {
            (double factor, double percent) = (Math.Round(own.Factor, 4), Math.Max(LeastPercent, Math.Round(own.DeviationPercent, 2)));
            materials = own.Part switch
            {
                StiffnessPart.Walls => materials with { WallFactor = factor, WallFactorDeviationPercent = percent },
                StiffnessPart.Core => materials with { CoreFactor = factor, CoreFactorDeviationPercent = percent },
                _ => materials,
            };
        }

        return design with { Materials = materials };
    }

    private static string SentenceOf(int count, BenchCalibrationResult learned)
    {
        string factors = string.Join("; ", learned.Factors.Select(own => $"{BenchCalibration.NameOf(own.Part)} {own.After.Value:0.00} ({own.After.Low:0.00} to {own.After.High:0.00})"));
        return $"{count} reading{(count == 1 ? "" : "s")}. Measured stiffness over computed: {factors}.";
    }

    private static IEnumerable<string> RemarksOf(IEnumerable<BenchReadingLine> lines, double span, BenchFitResult fit, BenchCalibrationResult learned)
    {
        foreach (string remark in fit.Remarks)
            yield return remark;
        foreach (LearnedFactor own in learned.Factors)
        {
            double shift = Math.Log(own.After.Value / own.Before.Value) / own.DeviationBefore;
            if (Math.Abs(shift) > UsualShift)
                yield return $"The factor of the {BenchCalibration.NameOf(own.Part)} lies outside the range of before ({own.Before.Low:0.00} to {own.Before.High:0.00}): look whether walls, infill and hold are what the design says.";
        }

        double farthest = lines.Max(line => Math.Abs(line.DeflectionMm?.Value ?? 0)) / (1e3 * span);
        if (farthest > PlateSolution.LinearShare)
            yield return $"The blade was bent by {100 * farthest:0} % of its span: beyond {100 * PlateSolution.LinearShare:0} % it moves less than this linear answer, and the factors come out too stiff. Hang less weight.";
    }

    private static string[] NotesOf(FinDesign design, BenchCalibrationResult learned)
    {
        List<string> notes =
        [
            "One factor stands for all walls and one for all of the core; an error of the printed thickness goes into them too. They hold for this fin, and for others of the same plastic, resin, printer and settings with more doubt.",
            "Rods are left as their material says: carbon is the best known of all.",
            design.Base.RootHold is Design.RootHold.Clamped
                ? "The root is taken as held rigidly. If it gave way, walls and core come out too soft: give --root as it was held."
                : "The root gives way here; its factor is that of this hold and is not saved with the design.",
        ];
        notes.AddRange(learned.Exact.Select(part => $"Stiffness given without a range is left alone: {BenchCalibration.NameOf(part)}."));
        if (design.Materials is { WallFactorDeviationPercent: not null } or { CoreFactorDeviationPercent: not null })
            notes.Add("The design already holds factors from a bench. Readings that went into them must not be given again: they would count twice.");
        return [.. notes];
    }
}

/// <summary>What was learned of one part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Factor">Measured stiffness over computed.</param>
/// <param name="DeviationPercent">Its standard deviation.</param>
/// <param name="Low">Lower end of the range that holds it in 95 of 100 cases.</param>
/// <param name="High">Upper end.</param>
/// <param name="Before">The factor before the bench.</param>
/// <param name="BeforeLow">Lower end of its range.</param>
/// <param name="BeforeHigh">Upper end.</param>
/// <param name="DoubtLeftPercent">How much of the doubt of before is left.</param>
public sealed record FactorSummary(StiffnessPart Part, double Factor, double DeviationPercent, double Low, double High, double Before, double BeforeLow, double BeforeHigh, double DoubtLeftPercent)
{
    internal static FactorSummary Of(LearnedFactor own) => new(
        own.Part,
        Rounded.Digits(own.After.Value),
        Rounded.Percent(own.Deviation),
        Rounded.Digits(own.After.Low),
        Rounded.Digits(own.After.High),
        Rounded.Digits(own.Before.Value),
        Rounded.Digits(own.Before.Low),
        Rounded.Digits(own.Before.High),
        Rounded.Percent(own.DoubtKept));
}

/// <summary>One number that was read, against its predictions.</summary>
/// <param name="Line">Its line in the file of readings.</param>
/// <param name="MassKg">Mass of the weight.</param>
/// <param name="AtMm">Where it hung, from the hull plane.</param>
/// <param name="AtChord">Where it hung along the chord.</param>
/// <param name="ReadAtMm">Where it was read.</param>
/// <param name="ReadChord">Where along the chord.</param>
/// <param name="Quantity">What was read.</param>
/// <param name="Unit">Unit of the numbers that follow.</param>
/// <param name="Read">As read.</param>
/// <param name="Deviation">Its standard deviation.</param>
/// <param name="Before">Predicted with the factors of before.</param>
/// <param name="After">Predicted with the learned factors.</param>
/// <param name="Residual">Read less predicted after, in standard deviations.</param>
/// <param name="LooksWrong">Whether it lies too far off to be chance.</param>
/// <param name="Note">The maker's own words.</param>
public sealed record ReadingSummary(
    int Line, double MassKg, double AtMm, ChordPlace AtChord, double ReadAtMm, ChordPlace ReadChord, BenchQuantity Quantity, string Unit,
    double Read, double Deviation, double Before, double After, double Residual, bool LooksWrong, string Note)
{
    internal static ReadingSummary Of(BenchReadingLine line, BenchMeasurement own, double before, BenchFitResult fit, int index)
    {
        bool turns = own.Quantity is BenchQuantity.Twist;
        Func<double, double> shown = turns ? Rounded.Degrees : Rounded.Mm;
        return new(
            line.Line,
            Rounded.Digits(line.MassKg),
            Rounded.Digits(line.AtMm),
            line.AtChord,
            Rounded.Digits(line.ReadAtMm),
            line.ReadChord,
            own.Quantity,
            turns ? "degrees" : "mm",
            shown(own.Value),
            shown(own.Deviation),
            shown(before),
            shown(fit.Predictions[index]),
            Rounded.Digits(fit.Residuals[index]),
            fit.Outliers.Contains(index),
            line.Note);
    }
}
