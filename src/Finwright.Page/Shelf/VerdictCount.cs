using Finwright.Assessment.Verdicts;
using Finwright.Workshop.Comparing;

namespace Finwright.Page.Shelf;

/// <summary>How many verdicts of a fin stand how.</summary>
/// <param name="Fails">That fail.</param>
/// <param name="Tight">That are tight.</param>
/// <param name="NotKnown">That are not known.</param>
/// <param name="Holds">That hold.</param>
public sealed record VerdictCount(int Fails, int Tight, int NotKnown, int Holds)
{
    /// <summary>The worst of them.</summary>
    public VerdictState Worst => Fails > 0 ? VerdictState.Fails : Tight > 0 ? VerdictState.Tight : NotKnown > 0 ? VerdictState.NotKnown : VerdictState.Holds;

    /// <summary>Counts the verdicts among results.</summary>
    /// <param name="results">The results.</param>
    /// <returns>The count; null when the results hold no verdict.</returns>
    public static VerdictCount? Of(FinResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        ResultLine[] verdicts = [.. results.Lines.Where(line => line.Group is ResultGroup.Verdicts)];
        return verdicts.Length == 0 ? null : new(Count(VerdictState.Fails), Count(VerdictState.Tight), Count(VerdictState.NotKnown), Count(VerdictState.Holds));

        int Count(VerdictState state) => verdicts.Count(line => string.Equals(line.Word, StateWords.Word(state), StringComparison.Ordinal));
    }
}
