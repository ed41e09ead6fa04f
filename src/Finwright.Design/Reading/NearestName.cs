namespace Finwright.Design.Reading;

/// <summary>Finds the known name that a mistyped one most likely means.</summary>
public static class NearestName
{
    private const int LongestCompared = 64;

    /// <summary>
    /// The nearest candidate: one that has all words of the name ("span" for "span_mm"), else the one with the fewest letters to change.
    /// Null when none is near: more than a third of the letters would have to change.
    /// </summary>
    /// <param name="name">What was written.</param>
    /// <param name="candidates">What is known; of equally near ones the first wins.</param>
    public static string? Among(string name, IEnumerable<string> candidates)
    {
        if (name.Length is 0 or > LongestCompared)
            return null;

        string[] words = WordsOf(name);
        string[] known = [.. candidates];
        string? nearest = known.FirstOrDefault(candidate => words.Length > 0 && !words.Except(WordsOf(candidate), StringComparer.Ordinal).Any());
        if (nearest is not null)
            return nearest;

        int least = Math.Max(2, name.Length / 3) + 1;
        foreach (string candidate in known)
        {
            int distance = Distance(name.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance < least && distance < candidate.Length)
                (nearest, least) = (candidate, distance);
        }

        return nearest;
    }

    private static string[] WordsOf(string name) =>
        name.ToLowerInvariant().Split(['_', '-', ' '], StringSplitOptions.RemoveEmptyEntries);

    // Letters to insert, drop or change (Levenshtein, 1966, "Binary codes capable of correcting deletions, insertions, and reversals").
    private static int Distance(string a, string b)
    {
        int[] above = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 0; i < a.Length; i++)
        {
            int diagonal = above[0];
            above[0] = i + 1;
            for (int j = 0; j < b.Length; j++)
            {
                int change = diagonal + (a[i] == b[j] ? 0 : 1);
                diagonal = above[j + 1];
                above[j + 1] = Math.Min(change, Math.Min(above[j], above[j + 1]) + 1);
            }
        }

        return above[b.Length];
    }
}
