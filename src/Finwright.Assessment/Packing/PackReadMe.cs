using System.Text;
using Finwright.Design;
using Finwright.Making.Quantities;

namespace Finwright.Assessment.Packing;

/// <summary>Writes <c>read-me-first.txt</c>: what each file is, in what order to use them, what to take care of.</summary>
internal static class PackReadMe
{
    /// <summary>The text, in lines of at most 80 characters. An answer that was not worked out is null; then the step is told in general words.</summary>
    public static string Text(FinDesign design, FinSummary summary, PrintSummary? print, PourSummary? pour, CureSummary? cure, PlanSummary? takes)
    {
        StringBuilder text = new();
        PlanformSummary planform = summary.Planform!;
        Say($"{summary.Name}");
        Say($"{planform.SpanMm:0.#} mm deep, {planform.AreaCm2:0.#} cm2, {summary.Parts.Count} parts on {summary.Plates} {(summary.Plates == 1 ? "plate" : "plates")}.");
        if (summary.Files.Any(file => string.Equals(file.File, "build-sheet.pdf", StringComparison.Ordinal)))
            Say("Print build-sheet.pdf and templates.pdf at 100 % and take them to the bench: they hold all of this, with boxes to tick.");
        Head("The files");
        foreach (FileSummary file in summary.Files)
            Item(file.File, file.What);
        Head("To buy and cut");
        if (summary.Hardware.Count == 0)
            Say("Nothing.");
        foreach (HardwareSummary item in summary.Hardware)
            Wrap("  ", item.Words, 6);
        Head("In this order");
        if (design.Base.Gauge)
            Step("Print plate 1, the gauge, and try it in the box of the board. It must need a firm push. If not, correct the allowances of the base in the design file and make the pack again.");
        foreach (string step in MakingSteps.Print(design, print))
            Step(step);
        Step("Let the parts cool on the bed. Try every nut, rod and dowel dry. Roughen rods and bonding faces, wipe them, bond the parts.");
        foreach (string step in MakingSteps.Pour(design, pour).Concat(MakingSteps.Cure(design, cure)))
            Step(step);
        Step($"Sand after the full cure only. Leave the trailing edge a small square flat. {Cautions.Dust} {Cautions.Edges}");
        Step($"Prove it: clamp the base, hang {design.Prove.MassKg} kg at {design.Prove.AtSpanPercent} % of the span, and look and listen for cracks, away from your feet. Then try it in shallow water near the shore. {Cautions.Proof}");
        if (takes is { CostOfFin: not null })
        {
            Head("What it takes");
            Say(takes.Sentence);
        }

        Head("Take care");
        Say("What the fin does in the water is an estimate: water.json says how sure each number is.");
        Say("Strength is an estimate too: strength.json says how sure each number is, and flaws in print and pour are not in it. Test the fin on land before you sail it (bench.json says what the test should show); only your own test shows that it carries you.");
        Say("Epoxy: gloves, eye cover, fresh air. A full cup of mixed resin can overheat and smoke; mix little, spread it out. The data sheets of your resin and filament, and the law of your place, go before this page.");
        Say("Volumes are of the whole part: plastic, infill and resin together.");
        return text.ToString();

        void Head(string title) => text.Append('\n').Append(title).Append('\n');
        void Say(string line) => Wrap("", line, 0);
        void Item(string first, string rest) => Wrap("  ", $"{first}: {rest}", 4);
        void Step(string line) => Wrap("  - ", line, 4);

        void Wrap(string first, string line, int indent) => text.Append(first).Append(Wrapping.Wrap(line, 80, indent, first.Length)).Append('\n');
    }
}
