namespace Finwright.Page.Help;

/// <summary>One value of the program beside one from outside.</summary>
/// <param name="Area">Part of the program, in English.</param>
/// <param name="Topic">What it belongs to, in English.</param>
/// <param name="Case">The case, with its conditions, in English.</param>
/// <param name="Source">Where the other value is from.</param>
/// <param name="Expected">The other value.</param>
/// <param name="Computed">The program's.</param>
/// <param name="Difference">How far they are apart.</param>
/// <param name="Verdict">The tolerance and its reason, or why it was missed.</param>
public sealed record Comparison(string Area, string Topic, string Case, string Source, string Expected, string Computed, string Difference, string Verdict)
{
    /// <summary>Whether the value lies outside the tolerance.</summary>
    public bool IsMissed => Topic == Evidence.Missed;
}

/// <summary>How well the program agrees with the world: what its tests found, word for word.</summary>
public static class Evidence
{
    internal const string Missed = "Missed";

    /// <summary>Every comparison; in each area the missed ones first.</summary>
    public static IReadOnlyList<Comparison> All { get; } =
    [
        .. DocumentTable.Read("evidence.md")
            .Where(row => row["Verdict"].Length > 0)
            .Select(row => new Comparison(row.Chapter, row.Section, row["Case"], row["Source"], row["Expected"], row["Computed"], row["Difference"], row["Verdict"])),
    ];
}
