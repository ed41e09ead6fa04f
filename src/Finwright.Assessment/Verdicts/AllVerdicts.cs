using Finwright.Assessment.Made;

namespace Finwright.Assessment.Verdicts;

/// <summary>Everything a fin is held against, from water to cure.</summary>
public static class AllVerdicts
{
    /// <summary>All verdicts, worst first; those alike in the order of the work.</summary>
    /// <param name="result">The fin.</param>
    public static IReadOnlyList<Verdict> Of(AssessmentResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        MakingResult made = MakingResult.Of(result);
        return [.. result.Verdicts.Concat(result.StrengthVerdicts).Concat(made.PrintVerdicts).Concat(made.PourVerdicts).Concat(made.CureVerdicts).OrderBy(verdict => verdict.State)];
    }
}
