using Finwright.Design.Fields;

namespace Finwright.Design.Checks;

/// <summary>Whether the outline's numbers or points say exactly one blade.</summary>
internal static class OutlineChecks
{
    private const string Path = "$.shape.outline";

    /// <summary>A cubic curve needs four control points.</summary>
    private const int FewestPoints = 4;

    /// <summary>Depths nearer than this are the same depth, mm: a hundredth is less than any printer shows.</summary>
    private const double SameDepthMm = 0.01;

    public static IEnumerable<Finding> Of(Outline outline) =>
        outline.Family == OutlineFamily.Free ? OfFree(outline) : OfFamily(outline);

    /// <summary>The span and the place in the file that decides it; null when the outline does not say.</summary>
    public static (double SpanMm, string Path)? SpanMm(Outline outline)
    {
        if (outline.Family != OutlineFamily.Free)
            return outline.SpanMm is double span ? (span, $"{Path}.span_mm") : null;
        return outline.LeadingEdge.Concat(outline.TrailingEdge).Select(point => point.DepthMm).DefaultIfEmpty(double.NaN).Max() is double deepest && double.IsFinite(deepest)
            ? (deepest, $"{Path}.leading_edge")
            : null;
    }

    private static IEnumerable<Finding> OfFamily(Outline outline)
    {
        if (outline.SpanMm is null)
            yield return new("span-missing", Severity.Error, $"{Path}.span_mm", "Only a free outline finds its depth by itself; this family needs the span.", "Add \"span_mm\".");

        if (outline.RootChordMm is null && outline.AreaCm2 is null)
            yield return new("size-missing", Severity.Error, $"{Path}.root_chord_mm", "Neither the root chord nor the area is given, so the blade has no size along the chord.", "Add \"root_chord_mm\" or \"area_cm2\".");
        else if (outline.RootChordMm is not null && outline.AreaCm2 is not null)
            yield return new("size-given-twice", Severity.Error, $"{Path}.area_cm2", "Both the root chord and the area are given; each decides the other.", "Take one of the two out.");

        if (outline.LeadingEdge.Count > 0)
            yield return NotUsed("leading_edge", "points of your own are used only by the family \"free\"");
        if (outline.TrailingEdge.Count > 0)
            yield return NotUsed("trailing_edge", "points of your own are used only by the family \"free\"");
    }

    private static IEnumerable<Finding> OfFree(Outline outline)
    {
        foreach (Finding finding in OfEdge(outline.LeadingEdge, "leading_edge").Concat(OfEdge(outline.TrailingEdge, "trailing_edge")))
            yield return finding;

        if (outline.LeadingEdge.Count > 0 && outline.TrailingEdge.Count > 0)
        {
            OutlinePoint leadingEnd = outline.LeadingEdge[^1], trailingEnd = outline.TrailingEdge[^1];
            if (Math.Abs(leadingEnd.DepthMm - trailingEnd.DepthMm) > SameDepthMm)
            {
                yield return new("edges-end-apart", Severity.Error, $"{Path}.trailing_edge[{outline.TrailingEdge.Count - 1}].depth_mm", $"The trailing edge ends {Quantity.Text(trailingEnd.DepthMm, "mm")} deep and the leading edge {Quantity.Text(leadingEnd.DepthMm, "mm")}; between the two depths the blade has only one edge.", "Let both edges end at the same depth.")
                {
                    Value = Quantity.Text(trailingEnd.DepthMm, "mm"),
                    Limit = Quantity.Text(leadingEnd.DepthMm, "mm"),
                };
            }

            if (outline.TrailingEdge[0].AftMm <= outline.LeadingEdge[0].AftMm)
                yield return new("edges-cross", Severity.Error, $"{Path}.trailing_edge[0].aft_mm", "At the root the trailing edge does not stand aft of the leading edge.", "Move the trailing edge aft; \"aft_mm\" grows toward the tail of the board.");

            double least = RecordForm.Of(typeof(Outline)).Find("span_mm")!.Minimum!.Value;
            double deepest = Math.Max(leadingEnd.DepthMm, trailingEnd.DepthMm);
            if (deepest < least)
            {
                yield return new("out-of-range", Severity.Error, $"{Path}.leading_edge", $"The deepest point is {Quantity.Text(deepest, "mm")} below the hull; the least span accepted is {Quantity.Text(least, "mm")}.", "Move the last points deeper.")
                {
                    Value = Quantity.Text(deepest, "mm"),
                    Limit = Quantity.Text(least, "mm"),
                };
            }

            if (outline.SpanMm is double span && Math.Abs(span - deepest) > SameDepthMm)
                yield return NotUsed("span_mm", $"with free points the deepest point counts, {Quantity.Text(deepest, "mm")}");
        }

        foreach ((string key, double? value) in new[] { ("root_chord_mm", outline.RootChordMm), ("area_cm2", outline.AreaCm2), ("rake_degrees", outline.RakeDegrees), ("tip_chord_percent", outline.TipChordPercent) })
        {
            if (value is not null)
                yield return NotUsed(key, "a free outline follows its points alone");
        }
    }

    private static IEnumerable<Finding> OfEdge(IReadOnlyList<OutlinePoint> edge, string key)
    {
        string path = $"{Path}.{key}";
        if (edge.Count < FewestPoints)
        {
            yield return new("too-few-points", Severity.Error, path, $"The edge has {edge.Count} points; the curve through them needs at least {FewestPoints}.", $"Give \"{key}\" at least {FewestPoints} points, from the hull down to the tip.")
            {
                Value = $"{edge.Count} points",
                Limit = $"{FewestPoints} points",
            };
        }

        if (edge.Count > 0 && edge[0].DepthMm > 0)
        {
            yield return new("edge-starts-below-hull", Severity.Error, $"{path}[0].depth_mm", $"The edge starts {Quantity.Text(edge[0].DepthMm, "mm")} below the hull.", "Let the first point stand at depth 0.")
            {
                Value = Quantity.Text(edge[0].DepthMm, "mm"),
                Limit = "0 mm",
            };
        }

        for (int i = 1; i < edge.Count; i++)
        {
            if (edge[i].DepthMm < edge[i - 1].DepthMm)
            {
                yield return new("edge-turns-back", Severity.Error, $"{path}[{i}].depth_mm", $"The edge goes back up here, from {Quantity.Text(edge[i - 1].DepthMm, "mm")} to {Quantity.Text(edge[i].DepthMm, "mm")}; at some depths it would stand in several places.", "Give the points from the hull down, each at least as deep as the one before.")
                {
                    Value = Quantity.Text(edge[i].DepthMm, "mm"),
                    Limit = Quantity.Text(edge[i - 1].DepthMm, "mm"),
                };
            }
        }
    }

    private static Finding NotUsed(string key, string reason) =>
        new("not-used", Severity.Caution, $"{Path}.{key}", $"\"{key}\" changes nothing here: {reason}.", "Take it out, or choose another family.");
}
