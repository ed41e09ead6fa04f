namespace Finwright.Design.Checks;

/// <summary>Tip, strip and flange: numbers that must fit one another.</summary>
internal static class BladeChecks
{
    public static IEnumerable<Finding> Of(Shape shape)
    {
        if (shape.Tip == TipStyle.Flat && shape.TipRoundingMm is not null)
            yield return new("not-used", Severity.Caution, "$.shape.tip_rounding_mm", "\"tip_rounding_mm\" changes nothing here: the tip is flat.", "Take it out, or set \"tip\" to \"rounded\".");

        if (shape.Strip is Strip strip && strip.FromPercent >= strip.ToPercent)
        {
            yield return new("strip-ends-before-start", Severity.Error, "$.shape.strip.to_percent", $"The slot ends at {Quantity.Text(strip.ToPercent, "%")} of the span, not below its start at {Quantity.Text(strip.FromPercent, "%")}.", "Let the slot end nearer the tip than it begins.")
            {
                Value = Quantity.Text(strip.ToPercent, "%"),
                Limit = Quantity.Text(strip.FromPercent, "%"),
            };
        }

        if (shape.Flange is Flange flange && flange.FilletMm > flange.OverhangMm)
        {
            yield return new("fillet-over-flange", Severity.Error, "$.shape.flange.fillet_mm", $"The fillet's radius is {Quantity.Text(flange.FilletMm, "mm")}, but the flange stands out only {Quantity.Text(flange.OverhangMm, "mm")}; the fillet would run past its rim.", $"Give the fillet at most {Quantity.Text(flange.OverhangMm, "mm")}, or the flange more overhang.")
            {
                Value = Quantity.Text(flange.FilletMm, "mm"),
                Limit = Quantity.Text(flange.OverhangMm, "mm"),
            };
        }
    }
}
