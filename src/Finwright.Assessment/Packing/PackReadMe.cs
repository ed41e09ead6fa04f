using System.Text;
using Finwright.Design;

namespace Finwright.Assessment.Packing;

/// <summary>Writes <c>read-me-first.txt</c>: what each file is, in what order to use them, what to take care of.</summary>
internal static class PackReadMe
{
    /// <summary>The text, in lines of at most 80 characters.</summary>
    public static string Text(FinDesign design, FinSummary summary)
    {
        StringBuilder text = new();
        PlanformSummary planform = summary.Planform!;
        Say($"{summary.Name}");
        Say($"{planform.SpanMm:0.#} mm deep, {planform.AreaCm2:0.#} cm2, {summary.Parts.Count} parts on {summary.Plates} {(summary.Plates == 1 ? "plate" : "plates")}.");
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
        Step($"Print the {(design.Base.Gauge ? "other plates" : "plates")}: {design.Print.Filament}, layers of {design.Print.LayerMm} mm, {design.Print.Walls} lines of {design.Print.LineWidthMm} mm in each wall, gyroid infill of {design.Print.InfillPercent} %. The parts lie as they should be printed. Pause where a nut must go in before the layers close over it.");
        Step("Try every nut, rod and dowel dry. Roughen rods and bonding faces, wipe them, bond the parts.");
        Step("Seal, drill the ports at the dimples, pour the resin in small portions, and let each lose its heat before the next.");
        Step("Sand after the full cure only. Leave the trailing edge a small square flat.");
        Step($"Prove it: clamp the base, hang {design.Prove.MassKg} kg at {design.Prove.AtSpanPercent} % of the span, and look and listen for cracks, away from your feet. Then try it in shallow water near the shore.");
        Head("Take care");
        Say("What the fin does in the water is an estimate: water.json says how sure each number is.");
        Say("Strength is an estimate too: strength.json says how sure each number is, and flaws in print and pour are not in it. Test the fin on land before you sail it (bench.json says what the test should show); only your own test shows that it carries you.");
        Say("Epoxy: gloves, eye cover, fresh air. A full cup of mixed resin can overheat and smoke; mix little, spread it out. Keep the print below about 65 degrees Celsius, or it softens.");
        Say("Dust: mask (P2 or P3) and wet sanding. Edges are sharp: keep fingers and swimmers in mind.");
        Say("Volumes are of the whole part: plastic, infill and resin together.");
        return text.ToString();

        void Head(string title) => text.Append('\n').Append(title).Append('\n');
        void Say(string line) => Wrap("", line, 0);
        void Item(string first, string rest) => Wrap("  ", $"{first}: {rest}", 4);
        void Step(string line) => Wrap("  - ", line, 4);

        void Wrap(string first, string line, int indent) => text.Append(first).Append(Wrapping.Wrap(line, 80, indent, first.Length)).Append('\n');
    }
}
