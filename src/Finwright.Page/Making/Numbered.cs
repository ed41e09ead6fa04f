using System.Text.RegularExpressions;
using Finwright.Page.Words;

namespace Finwright.Page.Making;

/// <summary>Sentences that come with their numbers in them, such as steps of a schedule: found in the list of texts with the numbers taken out.</summary>
internal static partial class Numbered
{
    /// <summary>The sentence in the reader's language.</summary>
    /// <param name="reader">Whoever reads it.</param>
    /// <param name="english">The sentence, "print plate 2 of 3".</param>
    public static string Say(this Reader reader, string english)
    {
        List<object?> numbers = [];
        string bare = Number().Replace(english, match =>
        {
            numbers.Add(match.Value);
            return $"{{{numbers.Count - 1}}}";
        });
        return numbers.Count == 0 || reader[bare] == bare ? reader[english] : reader[bare, [.. numbers]];
    }

    [GeneratedRegex(@"\d+([.,]\d+)?", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Number();
}
