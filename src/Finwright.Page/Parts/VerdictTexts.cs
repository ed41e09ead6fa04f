using Finwright.Assessment.Verdicts;
using Finwright.Numerics;
using Finwright.Page.Words;
using Finwright.Papers;
using Finwright.Papers.Words;

namespace Finwright.Page.Parts;

/// <summary>What a verdict says on the page, in the reader's language and units.</summary>
public static class VerdictTexts
{
    /// <summary>What was checked: "base: reserve of the nuts (in a gust or landing)."</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="reader">The reader.</param>
    public static string Named(Verdict verdict, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        ArgumentNullException.ThrowIfNull(reader);
        string what = reader.Tongue.Words.Verdicts.Checked(verdict);
        // In German part and load case are in the name already; in English some names have them.
        if (reader.Choice.Language is PaperLanguage.English)
        {
            if (verdict.Case is { } load && reader.Tongue.Words.Verdicts.InCase(load) is var when && !what.Contains(when, StringComparison.Ordinal))
                what += $" {when}";
            if (verdict.Part.Length > 0 && !what.Contains(verdict.Part, StringComparison.Ordinal))
                what = $"{verdict.Part}: {what}";
        }

        return string.Concat(char.ToUpperInvariant(what[0]).ToString(), what.AsSpan(1), ".");
    }

    /// <summary>What to change; empty when nothing need be changed.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="reader">The reader.</param>
    public static string Change(Verdict verdict, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        ArgumentNullException.ThrowIfNull(reader);
        if (verdict.State is VerdictState.Holds)
            return "";
        // Elsewhere the fin to compare with is named by an option of a command; here it is put beside.
        return verdict is { Code: "centre-of-effort", Ground: "no-reference" }
            ? reader["Put a fin that you know beside this one."]
            : reader.Tongue.Words.Verdicts.Change(verdict);
    }

    /// <summary>What was found, why it matters, the room that is left, how sure it is: a sentence each.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="reader">The reader.</param>
    public static IReadOnlyList<string> Because(Verdict verdict, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        ArgumentNullException.ThrowIfNull(reader);
        List<string> sentences = [];
        // What was found carries its numbers in words of one language and one system of units.
        bool isNative = reader.Choice is { Language: PaperLanguage.English, Units: PaperUnits.Metric };
        if (isNative)
            sentences.Add(verdict.Found);
        sentences.Add(reader.Tongue.Words.Verdicts.Why(verdict));
        if (Room(verdict, reader) is { } room)
            sentences.Add(room);
        sentences.Add(reader.Choice.Language is PaperLanguage.English ? reader["How sure: {0} {1}", verdict.HowSure, CertaintyOf(verdict, reader)] : reader["How sure: {0}", CertaintyOf(verdict, reader)]);
        return sentences;
    }

    /// <summary>What values and limits stand on, in a sentence.</summary>
    /// <param name="certainty">How sure.</param>
    public static string Of(Certainty certainty) => certainty switch
    {
        Certainty.Published => "The least sure part is from a published source.",
        Certainty.Derived => "It follows from what was given by known mechanics.",
        Certainty.CommonPractice => "The least sure part is common practice, no source.",
        Certainty.FromMemory => "The least sure part is from memory.",
        _ => "The least sure part is judgement.",
    };

    private static string CertaintyOf(Verdict verdict, Reader reader)
    {
        if (verdict.State is VerdictState.NotKnown && verdict.Value is null)
            return reader["There is nothing to go by yet."];
        return reader[Of(verdict.Certainty)];
    }

    private static string? Room(Verdict verdict, Reader reader)
    {
        if (verdict.Margin is not { } margin)
            return null;
        // Room is a difference: a zero of a scale does not count.
        string room = Difference(margin, reader);
        return margin.Value < 0 ? reader["Over the limit by {0}.", room] : reader["Room before the limit: {0}.", room];
    }

    private static string Difference(Quantity margin, Reader reader)
    {
        UnitScale scale = UnitScale.Of(margin.Unit, reader.Choice.Units) with { Zero = 0 };
        Quantity shown = scale.Of(margin with { Value = Math.Abs(margin.Value) });
        string unit = shown.Unit is "°C" ? "K" : reader.Tongue.Words.Verdicts.Unit(shown.Unit);
        return reader.Tongue.Number(shown.Value, shown.Decimals) + (unit is "" or "°" ? unit : " " + unit);
    }
}
