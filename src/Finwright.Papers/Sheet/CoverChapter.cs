using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Making.Quantities;
using Finwright.Papers.Views;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>The first page: what it is, whether to build it, what to take care of.</summary>
internal static class CoverChapter
{
    // Of the picture: what is left on the page when the safety box and what goes with it stand there too, but no larger or smaller than this.
    private const double MostHeight = 0.15, LeastHeight = 0.06;

    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        paper.Flow.Title(paper.Design.Name, Sentence(paper));
        int failing = paper.Verdicts.Count(verdict => verdict.State == VerdictState.Fails);
        if (failing > 0)
            paper.Flow.Box(words.Failing(failing), [words.FailingWhat]);
        VerdictWords care = tongue.Words.Verdicts;
        string[] safety = [care.Caution(Cautions.Skin), care.Caution(Cautions.Runaway), care.Caution(Cautions.Dust), care.Caution(Cautions.Edges), care.Caution(Cautions.Proof), words.SheetsFirst, words.Estimates];
        int cautions = paper.Result.Findings.Count(finding => finding.Severity == Severity.Caution);
        List<string> notes = [words.Beside(tongue.Length(RulerReading.Meant, 0))];
        if (cautions > 0)
            notes.Add(words.CautionsFound(cautions));
        double height = Math.Clamp(paper.Flow.RoomAbove(words.Safety, safety, notes), LeastHeight, MostHeight);
        paper.Flow.Picture(FinViews.Cover(paper.Result, tongue, paper.Flow.Width, height), "");
        paper.Flow.Box(words.Safety, safety);
        foreach (string note in notes)
            paper.Flow.Text(note);
        Heed(paper);
        Holding(paper);
    }

    private static string Sentence(SheetPaper paper)
    {
        (SheetWords words, Tongue tongue) = (paper.Words, paper.Tongue);
        string made = words.CoverSentence(
            tongue.Length(paper.Result.Planform!.Span, 0), tongue.Area(paper.Result.Planform.Area),
            words.Parts(paper.Result.Parts?.Parts.Count(part => !part.IsGauge) ?? 1), words.Plates(paper.Result.Parts?.Plates.Count ?? 1));
        return paper.Result.Plan is { } plan
            ? $"{made} {words.CoverPlan(tongue.Duration(plan.Schedule.Elapsed), tongue.Duration(plan.Schedule.HandsOn), tongue.Money(plan.Bill.Used, plan.Bill.Currency))}"
            : made;
    }

    private static void Heed(SheetPaper paper)
    {
        if (!paper.Heeded.Any())
        {
            if (paper.Verdicts.Count > 0)
                paper.Flow.Text(paper.Words.AllHold);
            return;
        }

        paper.Flow.Head(paper.Words.ToHeed);
        foreach (Verdict verdict in paper.Heeded)
        {
            paper.Tell(verdict);
            if (verdict.State == VerdictState.Fails)
                paper.Flow.Text(paper.Tongue.Words.Verdicts.Why(verdict), quiet: true);
        }
    }

    private static void Holding(SheetPaper paper)
    {
        Verdict[] holding = [.. paper.Verdicts.Where(verdict => verdict.State == VerdictState.Holds)];
        if (holding.Length == 0)
            return;
        paper.Flow.Head(paper.Words.Holding);
        paper.Flow.Table(
            [new(paper.Words.CheckColumn, 6), new(paper.Words.ValueColumn, 2, IsNumber: true), new(paper.Words.LimitColumn, 2.6, IsNumber: true)],
            [.. holding.Select(verdict => (IReadOnlyList<string>)[paper.Tongue.Words.Verdicts.Checked(verdict), verdict.Value is { } value ? paper.Tongue.Quantity(value) : "", Limit(paper, verdict)])]);
    }

    private static string Limit(SheetPaper paper, Verdict verdict)
    {
        if (verdict.Limit is not { } limit)
            return "";
        string shown = paper.Tongue.Quantity(limit);
        return verdict.MustStayAbove ? paper.Words.AtLeast(shown) : paper.Words.AtMost(shown);
    }
}
