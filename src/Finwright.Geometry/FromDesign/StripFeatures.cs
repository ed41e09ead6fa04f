using Finwright.Design;
using Finwright.Geometry.Features;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>The slot for the strip along the trailing edge.</summary>
internal static class StripFeatures
{
    public static void Place(FeaturePlan plan)
    {
        if (plan.Design.Shape.Strip is not { } strip)
            return;
        if (strip.ToPercent <= strip.FromPercent)
        {
            plan.Report(
                "strip-ends-before-start", Severity.Error, "$.shape.strip.to_percent",
                FormattableString.Invariant($"The strip's slot would end at {strip.ToPercent:0.##} % of the span and begin at {strip.FromPercent:0.##} %."),
                "Let it end further down than it begins.");
            return;
        }

        double width = (strip.SheetMm + strip.AllowanceMm) * 1e-3, depth = strip.SlotDepthMm * 1e-3, span = plan.Blade.Span;
        StripSlot slot = new(plan.Blade, width, depth, strip.FromPercent / 100 * span, strip.ToPercent / 100 * span);
        if (slot.IsFolded)
        {
            plan.Report(
                "slot-too-curved", Severity.Error, "$.shape.strip.slot_depth_mm",
                $"The trailing edge curves more tightly than a slot of {Mm(depth)} can follow.",
                "Make the slot shallower, or begin or end it where the edge is straighter.");
            return;
        }

        plan.Slot = slot;
        Judge(plan, slot);
        plan.Add(new HardwareItem(
            HardwareKind.StripSheet, $"{Mm(strip.SheetMm * 1e-3)} sheet, {Mm(depth + strip.OverhangMm * 1e-3)} wide", slot.EdgeLength, 1, "slot in the trailing edge"));
    }

    private static void Judge(FeaturePlan plan, StripSlot slot)
    {
        double line = plan.Line;
        if (JudgeWall(slot.Mouth.Wall, line) is { } atMouth)
        {
            double needed = slot.Width + 2 * line;
            plan.Report(
                "slot-wall-thin", atMouth, "$.shape.trailing_edge_mm",
                $"At its mouth the strip's slot of {Mm(slot.Width)} leaves {Mm(slot.Mouth.Wall)} on each side at {Whereabouts(slot.Mouth.Place)}; one printed line is {Mm(line)}.",
                $"Make the trailing edge {Mm(needed)} thick or more, or take thinner sheet.",
                Mm(slot.Mouth.Wall), Mm(line));
        }

        // Only what is thinner than the mouth is news.
        if (slot.Thinnest.Wall < slot.Mouth.Wall - Hair && JudgeWall(slot.Thinnest.Wall, line) is { } inside)
            plan.Report(
                slot.Thinnest.Wall <= 0 ? "slot-outside-skin" : "slot-wall-thin", inside, "$.shape.strip.slot_depth_mm",
                slot.Thinnest.Wall <= 0
                    ? $"The strip's slot breaks out of the blade at {Whereabouts(slot.Thinnest.Place)}."
                    : $"Inside, the strip's slot leaves {Mm(slot.Thinnest.Wall)} on each side at {Whereabouts(slot.Thinnest.Place)}; one printed line is {Mm(line)}.",
                "Begin or end the slot where the blade is thicker, or make it shallower.",
                Mm(slot.Thinnest.Wall), Mm(line));
    }
}
