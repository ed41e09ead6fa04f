using Finwright.Assessment.Verdicts;
using Finwright.Water.Sailing;

namespace Finwright.Papers.Words;

/// <summary>What verdicts and cautions say.</summary>
public abstract class VerdictWords
{
    /// <summary>How a fin stands, in a word: "holds", "tight", "fails", "not known".</summary>
    public abstract string State(VerdictState state);

    /// <summary>When a load case is: "at cruise", "in a gust or landing".</summary>
    public abstract string InCase(LoadCaseKind kind);

    /// <summary>What was checked, in a few words.</summary>
    public abstract string Checked(Verdict verdict);

    /// <summary>Why it matters, in a sentence.</summary>
    public abstract string Why(Verdict verdict);

    /// <summary>What to change; empty when nothing need be changed.</summary>
    public abstract string Change(Verdict verdict);

    /// <summary>A unit of a verdict's numbers, for example "% of the pores".</summary>
    public abstract string Unit(string unit);

    /// <summary>A caution, one of <see cref="Making.Quantities.Cautions"/>.</summary>
    public abstract string Caution(string caution);
}
