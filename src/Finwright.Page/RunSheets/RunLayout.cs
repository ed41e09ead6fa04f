using Finwright.Assessment;
using Finwright.Assessment.Verdicts;
using Finwright.Page.Words;
using Finwright.Papers;
using Finwright.Workshop.RunSheets;

namespace Finwright.Page.RunSheets;

/// <summary>Lays a run sheet out from a fin that was worked out.</summary>
public static class RunLayout
{
    /// <summary>The plan.</summary>
    /// <param name="kind">Print or pour.</param>
    /// <param name="result">The fin, worked out as far as its cure.</param>
    /// <param name="origin">Which design and revision, in words.</param>
    /// <param name="reader">In whose words, units and numbers.</param>
    /// <returns>The plan; null when there is nothing to print or pour.</returns>
    public static RunPlan? Of(RunKind kind, AssessmentResult result, string origin, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(reader);
        RunText text = new(reader);
        IReadOnlyList<RunChapter>? chapters = (kind, result) switch
        {
            (RunKind.Print, { Design: not null, Printed: { Parts.Count: > 0 } printed }) => PrintRun.Of(result, printed, text),
            (RunKind.Pour, { Design: not null, Parts: not null, Poured: { Parts.Count: > 0 } poured }) => PourRun.Of(result, poured, text),
            _ => null,
        };
        if (chapters is null)
            return null;
        return new()
        {
            Language = reader.Letters,
            Fahrenheit = reader.Choice.Units is PaperUnits.Inch,
            Origin = origin,
            Failing = [.. Judged(kind, result).Where(verdict => verdict.State is VerdictState.Fails).Select(verdict => Said(verdict, reader))],
            Danger = kind is RunKind.Pour ? PourRun.Danger(result, text) : null,
            Chapters = chapters,
        };
    }

    private static IEnumerable<Verdict> Judged(RunKind kind, AssessmentResult result)
    {
        Assessment.Made.MakingResult made = Assessment.Made.MakingResult.Of(result);
        return kind is RunKind.Print ? made.PrintVerdicts : made.PourVerdicts.Concat(made.CureVerdicts);
    }

    private static string Said(Verdict verdict, Reader reader)
    {
        Papers.Words.VerdictWords words = reader.Tongue.Words.Verdicts;
        string part = verdict.Part.Length > 0 ? $"{reader.Tongue.Words.Names.Part(verdict.Part)}: " : "";
        return $"{part}{words.Checked(verdict)}: {reader.Tongue.Numbers(verdict)}. {words.Change(verdict)}".Trim();
    }
}
