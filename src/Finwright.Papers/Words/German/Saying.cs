using Finwright.Assessment.Verdicts;

namespace Finwright.Papers.Words.German;

/// <summary>What a check says in German.</summary>
/// <param name="Code">Its code; with a slash and the verdict's ground where the whole saying hangs on that.</param>
/// <param name="Checked">What was checked; part and load case follow.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Changes">What to change, by the verdict's ground; the empty ground stands for all that are not listed.</param>
internal sealed record Saying(string Code, string Checked, string Why, IReadOnlyDictionary<string, string> Changes)
{
    /// <summary>A check with one remedy.</summary>
    public Saying(string code, string what, string why, string change)
        : this(code, what, why, [("", change)])
    {
    }

    /// <summary>A check with a remedy for each ground.</summary>
    public Saying(string code, string what, string why, params (string Ground, string Change)[] changes)
        : this(code, what, why, changes.ToDictionary(each => each.Ground, each => each.Change, StringComparer.Ordinal))
    {
    }

    /// <summary>What to change for a verdict.</summary>
    /// <exception cref="ArgumentException">Its ground is not known.</exception>
    public string ChangeOf(Verdict verdict) => Changes.TryGetValue(verdict.Ground, out string? change) || Changes.TryGetValue("", out change)
        ? change
        : throw new ArgumentException($"There is no German change for \"{verdict.Code}\" with the ground \"{verdict.Ground}\".", nameof(verdict));
}
