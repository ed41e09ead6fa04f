using Finwright.Assessment.Verdicts;
using Finwright.Page.Editing;

namespace Finwright.Page.Parts;

/// <summary>The verdicts of an open design, those that compare with another fin held against the one that the reader put beside it.</summary>
internal static class BesideVerdicts
{
    private const string Compared = "centre-of-effort";

    /// <summary>All verdicts, worst first.</summary>
    /// <param name="now">What is known of the design.</param>
    /// <param name="view">What stands beside it.</param>
    public static IReadOnlyList<StandingVerdict> Of(Standing now, SheetView view)
    {
        IReadOnlyList<StandingVerdict> all = now.Verdicts;
        if (view.Beside is not { Sailing.Afloat: { } other } beside || now.Sailing is not { Design: { } design, Afloat: { } afloat })
            return all;
        Verdict? against = WaterVerdicts.Of(design, afloat, other, beside.Label).FirstOrDefault(verdict => verdict.Code == Compared);
        return against is null ? all : [.. all.Select(standing => standing.Verdict.Code == Compared ? standing with { Verdict = against } : standing).OrderBy(standing => standing.Verdict.State)];
    }
}
