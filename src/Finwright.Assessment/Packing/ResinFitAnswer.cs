using System.Text.Json.Serialization;
using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Assessment.Packing;

/// <summary>
/// What a cup or a data sheet told of a resin, as <c>finwright resins fit --json</c> gives it. Field names are these properties in lower case with underscores; each carries its unit.
/// </summary>
public sealed record ResinFitAnswer
{
    /// <summary>Says what the file is.</summary>
    public string Kind { get; init; } = "finwright-resin-fit";

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; init; } = 1;

    /// <summary>Name and version of the program.</summary>
    public required string MadeBy { get; init; }

    /// <summary>The answer in plain words.</summary>
    public required string Sentence { get; init; }

    /// <summary>The resin it started from.</summary>
    public required string From { get; init; }

    /// <summary>How the fit ended.</summary>
    public required string Status { get; init; }

    /// <summary>Rate over that of the resin it started from.</summary>
    public required RangeSummary RateFactor { get; init; }

    /// <summary>Heat of reaction.</summary>
    public required RangeSummary HeatOfReactionJPerG { get; init; }

    /// <summary>How the cup sheds heat; null for a data sheet.</summary>
    public RangeSummary? CupCoefficientWPerM2K { get; init; }

    /// <summary>Added to both activation energies; null for a cup.</summary>
    public double? ActivationChangeJPerMol { get; init; }

    /// <summary>Root of the mean square of what is left between readings and fit; null for a data sheet.</summary>
    public double? RootMeanSquareKelvin { get; init; }

    /// <summary>Readings beside the fit.</summary>
    public IReadOnlyList<ResinFitReading> Readings { get; init; } = [];

    /// <summary>What cannot be told, or rests on what.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>The file it was saved as; null when it was not.</summary>
    public string? SavedAs { get; init; }

    /// <summary>The resin that was found; null when nothing was.</summary>
    [JsonIgnore]
    public ResinSystem? Found { get; init; }

    /// <summary>Sums up a cup.</summary>
    public static ResinFitAnswer Of(ResinSystem from, CupFitResult fit, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(fit);
        bool found = fit.Status is CupFitStatus.Fitted;
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Sentence = found
                ? $"The cup cures {fit.RateFactor.Value:0.00} times as fast as {from.Name} (range {fit.RateFactor.Low:0.00} to {fit.RateFactor.High:0.00}); the fit misses the readings by {fit.RootMeanSquare:0.0} K."
                : fit.Status == CupFitStatus.HardlyWarm ? "The cup hardly warmed, so that its rate is not told; use a larger cup, or a warmer start." : "Nothing could be learned from these readings.",
            From = from.Name,
            Status = Words(fit.Status),
            RateFactor = RangeSummary.Of(fit.RateFactor, 1),
            HeatOfReactionJPerG = RangeSummary.Of(fit.HeatOfReaction, 1e-3),
            CupCoefficientWPerM2K = RangeSummary.Of(fit.Coefficient, 1),
            RootMeanSquareKelvin = Rounded.Digits(fit.RootMeanSquare),
            Readings = [.. fit.Residuals.Select(own => new ResinFitReading(Rounded.Digits(own.Seconds / 60), CureSlabSummary.Celsius(own.Measured), CureSlabSummary.Celsius(own.Computed)))],
            Remarks = fit.Remarks,
            Found = found ? fit.Resin : null,
        };
    }

    /// <summary>Sums up a data sheet.</summary>
    public static ResinFitAnswer Of(ResinSystem from, SheetFitResult fit, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(fit);
        bool found = fit.Status == SheetFitStatus.Fitted;
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Sentence = found
                ? $"By its data sheet it cures {fit.RateFactor.Value:0.00} times as fast as {from.Name} at {CureSlabSummary.Celsius(fit.AtTemperature):0} °C (range {fit.RateFactor.Low:0.00} to {fit.RateFactor.High:0.00})."
                : "Nothing could be learned from these statements.",
            From = from.Name,
            Status = Words(fit.Status),
            RateFactor = RangeSummary.Of(fit.RateFactor, 1),
            HeatOfReactionJPerG = RangeSummary.Of(Ranged.Exact(fit.HeatOfReaction), 1e-3),
            ActivationChangeJPerMol = Rounded.Digits(fit.ActivationChange),
            Remarks = fit.Remarks,
            Found = found ? fit.Resin : null,
        };
    }

    private static string Words<T>(T status)
        where T : struct, Enum => System.Text.Json.JsonNamingPolicy.KebabCaseLower.ConvertName(status.ToString());
}

/// <summary>A reading beside the fit.</summary>
/// <param name="Minutes">When.</param>
/// <param name="MeasuredCelsius">Read.</param>
/// <param name="FittedCelsius">By the fit.</param>
public sealed record ResinFitReading(double Minutes, double MeasuredCelsius, double FittedCelsius);
