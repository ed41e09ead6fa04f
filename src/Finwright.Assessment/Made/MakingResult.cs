using Finwright.Assessment.Verdicts;
using Finwright.Design;

namespace Finwright.Assessment.Made;

/// <summary>What was worked out about printing, pouring and curing, of a fin or of a part that came as a mesh; null where the work did not come.</summary>
public sealed record MakingResult
{
    /// <summary>Name of fin or part; null when the input could not be read.</summary>
    public required string? Name { get; init; }

    /// <summary>Hash of the design's content; empty for a part that came as a mesh.</summary>
    public string DesignHash { get; init; } = "";

    /// <summary>What was found, worst first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Whether the input itself is wrong.</summary>
    public bool InputIsWrong { get; init; }

    /// <summary>How it is to be poured; null when the input could not be read.</summary>
    public Pour? Pour { get; init; }

    /// <summary>What plastic and resin cost.</summary>
    public Prices Prices { get; init; } = new();

    /// <summary>The print.</summary>
    public FinPrinted? Printed { get; init; }

    /// <summary>The pour.</summary>
    public FinPoured? Poured { get; init; }

    /// <summary>The cure.</summary>
    public FinCured? Cured { get; init; }

    /// <summary>The motion file from which pores were taken; null when they are as planned.</summary>
    public MotionPores? Motion { get; init; }

    /// <summary>What it takes, costs, and how long.</summary>
    public FinPlan? Plan { get; init; }

    /// <summary>Verdicts on the print, worst first.</summary>
    public IReadOnlyList<Verdict> PrintVerdicts => Printed is null ? [] : Verdicts.PrintVerdicts.Of(Printed);

    /// <summary>Verdicts on the pour, worst first.</summary>
    public IReadOnlyList<Verdict> PourVerdicts => Poured is null ? [] : Verdicts.PourVerdicts.Of(Poured);

    /// <summary>Verdicts on the cure, worst first.</summary>
    public IReadOnlyList<Verdict> CureVerdicts => Cured is null ? [] : Verdicts.CureVerdicts.Of(Cured);

    /// <summary>Whether anything says that it cannot be made as described.</summary>
    public bool HasErrors => Findings.Any(finding => finding.IsError);

    /// <summary>The same of a fin that was worked out.</summary>
    /// <param name="result">The fin.</param>
    public static MakingResult Of(AssessmentResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return new()
        {
            Name = result.Design?.Name,
            DesignHash = result.DesignHash,
            Findings = result.Findings,
            InputIsWrong = result.InputIsWrong,
            Pour = result.Design?.Pour,
            Prices = result.Design?.Prices ?? new(),
            Printed = result.Printed,
            Poured = result.Poured,
            Cured = result.Cured,
            Plan = result.Plan,
        };
    }
}
