namespace Finwright.Design.Checks;

/// <summary>Layer against line, margin against bed, dimples against walls.</summary>
internal static class PrintChecks
{
    /// <summary>Above this share of the line's width a layer bonds badly to the one below (common practice, no source).</summary>
    private const double TallestLayerToWidth = 0.8;

    /// <summary>Least bed that a part can use, mm: smaller than any base.</summary>
    private const double LeastBedMm = 40;

    public static IEnumerable<Finding> Of(FinDesign design)
    {
        Print print = design.Print;
        if (print.LayerMm > TallestLayerToWidth * print.LineWidthMm)
        {
            Severity severity = print.LayerMm >= print.LineWidthMm ? Severity.Error : Severity.Caution;
            yield return new("layer-too-tall", severity, "$.print.layer_mm", $"Layers of {Quantity.Text(print.LayerMm, "mm")} are more than {Quantity.Text(100 * TallestLayerToWidth, "%")} of the line's width of {Quantity.Text(print.LineWidthMm, "mm")}; such lines bond badly and leak resin.", $"Print layers of at most {Quantity.Text(Math.Round(TallestLayerToWidth * print.LineWidthMm, 3), "mm")}, or wider lines.")
            {
                Value = Quantity.Text(print.LayerMm, "mm"),
                Limit = Quantity.Text(Math.Round(TallestLayerToWidth * print.LineWidthMm, 3), "mm"),
            };
        }

        double usable = Math.Min(print.BedXMm, print.BedYMm) - 2 * print.EdgeMarginMm;
        if (usable < LeastBedMm)
        {
            yield return new("margin-leaves-no-bed", Severity.Error, "$.print.edge_margin_mm", $"The margin leaves {Quantity.Text(usable, "mm")} of the bed's shorter side; at least {Quantity.Text(LeastBedMm, "mm")} is needed.", "Give a smaller margin.")
            {
                Value = Quantity.Text(usable, "mm"),
                Limit = Quantity.Text(LeastBedMm, "mm"),
            };
        }

        double wall = print.Walls * print.LineWidthMm;
        if (design.Pour.Ports is { Dimples: true } ports && ports.DepthMm >= wall)
        {
            yield return new("dimple-through-wall", Severity.Caution, "$.pour.ports.depth_mm", $"Dimples {Quantity.Text(ports.DepthMm, "mm")} deep open the {Quantity.Text(Math.Round(wall, 3), "mm")} wall, so every port is open from the start and must be taped.", "Make the dimples shallower, or print more walls.")
            {
                Value = Quantity.Text(ports.DepthMm, "mm"),
                Limit = Quantity.Text(Math.Round(wall, 3), "mm"),
            };
        }
    }
}
