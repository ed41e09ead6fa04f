using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Papers.Pages;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>The sheet in the making: the fin, the words, and the page on which chapters write one after the other.</summary>
internal sealed class SheetPaper
{
    private readonly List<Verdict> _untold;
    private int _chapter;

    /// <summary>A sheet with nothing on it.</summary>
    /// <param name="result">A fin that can be made.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="flow">Where it is written.</param>
    public SheetPaper(AssessmentResult result, Tongue tongue, PageFlow flow)
    {
        (Result, Tongue, Flow) = (result, tongue, flow);
        Design = result.Design!;
        Verdicts = AllVerdicts.Of(result);
        _untold = [.. Heeded];
    }

    /// <summary>The fin.</summary>
    public AssessmentResult Result { get; }

    /// <summary>Its design.</summary>
    public FinDesign Design { get; }

    /// <summary>How the sheet speaks.</summary>
    public Tongue Tongue { get; }

    /// <summary>What the sheet says.</summary>
    public SheetWords Words => Tongue.Words.Sheet;

    /// <summary>Where it is written.</summary>
    public PageFlow Flow { get; }

    /// <summary>All verdicts, worst first.</summary>
    public IReadOnlyList<Verdict> Verdicts { get; }

    /// <summary>Those that do not hold.</summary>
    public IEnumerable<Verdict> Heeded => Verdicts.Where(verdict => verdict.State != VerdictState.Holds);

    /// <summary>Boxes to tick so far: one for each step, and those of tables.</summary>
    public int Ticks { get; private set; }

    /// <summary>Begins the next chapter.</summary>
    public void Chapter(string name, string sentence) => Flow.Chapter(++_chapter, name, sentence);

    /// <summary>Writes a step.</summary>
    /// <param name="step">What to do and why.</param>
    /// <param name="cautions">What to take care of, in the words of <see cref="Making.Quantities.Cautions"/>.</param>
    public void Step(StepWords step, params string[] cautions) => Step(step, cautions, keepsNext: false);

    /// <summary>Writes a step to which the picture or table below it belongs: both stay on one page.</summary>
    /// <param name="step">What to do and why.</param>
    /// <param name="cautions">What to take care of, in the words of <see cref="Making.Quantities.Cautions"/>.</param>
    public void StepAbove(StepWords step, params string[] cautions) => Step(step, cautions, keepsNext: true);

    /// <summary>An entry of a table that becomes a box to tick.</summary>
    public string Tick()
    {
        Ticks++;
        return PageFlow.TickEntry;
    }

    /// <summary>Writes the verdicts that do not hold and were not told at an earlier step.</summary>
    /// <param name="belongs">Whether a verdict belongs to this step.</param>
    public void Judge(Func<Verdict, bool> belongs)
    {
        foreach (Verdict verdict in _untold.Where(belongs).ToArray())
        {
            _untold.Remove(verdict);
            Tell(verdict);
        }
    }

    /// <summary>Whether a verdict that does not hold is still to be told.</summary>
    public bool HasUntold => _untold.Count > 0;

    /// <summary>Writes a verdict.</summary>
    public void Tell(Verdict verdict)
    {
        VerdictWords words = Tongue.Words.Verdicts;
        Flow.Verdict(verdict.State, words.State(verdict.State), words.Checked(verdict), Tongue.Numbers(verdict), words.Change(verdict));
    }

    /// <summary>Name of a part.</summary>
    public string Part(string name) => Tongue.Words.Names.Part(name);

    /// <summary>How a part is held.</summary>
    public string Held(PartPoured part, Making.Pores.PourAttitude attitude) => Tongue.Words.Names.Attitude(part.Held(attitude));

    /// <summary>A length in millimetres whatever the reader's units: programs of printers know no other.</summary>
    public string Millimetres(double metres, int decimals) => $"{Tongue.Number(1e3 * metres, decimals)} mm";

    /// <summary>Something bought, with length and count.</summary>
    public string Counted(HardwareItem item)
    {
        string size = Tongue.Words.Names.Size(item, Tongue);
        return item.Length > 0 ? $"{item.Count} × {size}, {Tongue.Length(item.Length)}" : $"{item.Count} × {size}";
    }

    /// <summary>Everything of a kind to buy or cut.</summary>
    public IReadOnlyList<HardwareItem> Bought(HardwareKind kind) => [.. Result.Hardware.Where(item => item.Kind == kind)];

    private void Step(StepWords step, string[] cautions, bool keepsNext)
    {
        Ticks++;
        Flow.Step(step.Text, step.Reason, [.. cautions.Select(Tongue.Words.Verdicts.Caution)], keepsNext);
    }
}
