using Finwright.Design.Reading;

namespace Finwright.Design.Checks;

/// <summary>A part number that can be engraved, and cuts in order within the blade.</summary>
internal static class PartsChecks
{
    public static IEnumerable<Finding> Of(FinDesign design)
    {
        Parts parts = design.Parts;
        if (!parts.Number.All(c => char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c) || c is '-' or '.' or ' ') || parts.Number != parts.Number.Trim())
            yield return new("part-number", Severity.Error, "$.parts.number", $"\"{JsonPath.Shown(parts.Number)}\" cannot be engraved.", "Use capitals A to Z, digits, dash, dot, and spaces between them.") { Value = JsonPath.Shown(parts.Number) };

        double? span = OutlineChecks.SpanMm(design.Shape.Outline)?.SpanMm;
        for (int i = 0; i < parts.Cuts.Count; i++)
        {
            double here = parts.Cuts[i].AtDepthMm;
            string path = $"$.parts.cuts[{i}].at_depth_mm";
            if (i > 0 && here <= parts.Cuts[i - 1].AtDepthMm)
            {
                yield return new("cuts-out-of-order", Severity.Error, path, $"The cut at {Quantity.Text(here, "mm")} does not lie below the one before it, at {Quantity.Text(parts.Cuts[i - 1].AtDepthMm, "mm")}.", "List the cuts from the root down, each deeper than the one before.")
                {
                    Value = Quantity.Text(here, "mm"),
                    Limit = Quantity.Text(parts.Cuts[i - 1].AtDepthMm, "mm"),
                };
            }

            if (here >= span)
            {
                yield return new("cut-below-tip", Severity.Error, path, $"The cut lies {Quantity.Text(here, "mm")} deep, but the blade ends at {Quantity.Text(span.Value, "mm")}.", "Move the cut up, or take it out.")
                {
                    Value = Quantity.Text(here, "mm"),
                    Limit = Quantity.Text(span.Value, "mm"),
                };
            }
        }
    }
}
