using Finwright.Assessment.Verdicts;
using Finwright.Page.Words;
using Finwright.Water.Sailing;

namespace Finwright.Page.Sheet;

/// <summary>Names of results for the reader: what and when are said apart, so that each is put into words once.</summary>
public static class ResultNames
{
    /// <summary>The name in the reader's language.</summary>
    /// <param name="reader">The reader.</param>
    /// <param name="name">The name in English, such as "leeway at cruise".</param>
    public static string Of(Reader reader, string name)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentNullException.ThrowIfNull(name);
        foreach (LoadCaseKind kind in Enum.GetValues<LoadCaseKind>())
        {
            string when = CaseWords.When(kind);
            if (name.EndsWith(" " + when, StringComparison.Ordinal))
                return $"{reader[name[..^(when.Length + 1)]]} {reader[when]}";
        }

        return reader[name];
    }
}
