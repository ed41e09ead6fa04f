using Finwright.Page.Words;

namespace Finwright.Page.Answers;

/// <summary>A number in a sentence, and what explains it.</summary>
/// <param name="Text">Number and unit as the reader wants them.</param>
/// <param name="About">Key of its explanation; empty for one that needs none.</param>
public readonly record struct ToldValue(string Text, string About = "");

/// <summary>A sentence with numbers that explain themselves.</summary>
/// <param name="English">The sentence in English with places {0}, {1}, …</param>
/// <param name="Values">What goes there.</param>
public sealed record ToldSentence(string English, params IReadOnlyList<ToldValue> Values)
{
    /// <summary>The whole sentence as text.</summary>
    /// <param name="reader">The reader.</param>
    public string In(Reader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        return Values.Count == 0 ? reader[English] : reader[English, [.. Values.Select(value => (object?)value.Text)]];
    }

    /// <summary>The sentence in pieces: words, and between them the numbers.</summary>
    /// <param name="reader">The reader.</param>
    public IEnumerable<(string Words, ToldValue? Value)> Pieces(Reader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        string text = reader[English];
        for (int at = 0; at < text.Length;)
        {
            int open = text.IndexOf('{', at), close = open < 0 ? -1 : text.IndexOf('}', open);
            if (close < 0)
            {
                yield return (text[at..], null);
                yield break;
            }

            yield return (text[at..open], Values[int.Parse(text.AsSpan(open + 1, close - open - 1), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture)]);
            at = close + 1;
        }
    }
}
