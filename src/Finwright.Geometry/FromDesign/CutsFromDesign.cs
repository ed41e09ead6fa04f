using Finwright.Design;
using Finwright.Geometry.Features;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.FromDesign;

/// <summary>Decides where the blade is cut: as the design says, or as proposed when it does not fit the printer.</summary>
internal static class CutsFromDesign
{
    /// <summary>Least length of a piece between two cuts, metres: enough to hold in a clamp.</summary>
    private const double ShortestPiece = 5e-3;

    /// <summary>How far proposed cuts keep from the ends of the strip's slot, metres.</summary>
    private const double ClearOfSlotEnd = 5e-3;

    private const string CutsPath = "$.parts.cuts";

    /// <summary>The cuts, from the root down; null when the design's own cannot be made.</summary>
    /// <param name="work">The design.</param>
    /// <param name="body">The whole blade.</param>
    public static IReadOnlyList<CutPlane>? Decide(PartWork work, TriangleMesh body)
    {
        if (work.Design.Parts.Cuts.Count > 0)
            return Given(work);
        if (!work.Design.Parts.ProposeCuts || LaidPart.Lay(body.Points(), work.BladeWays(null), work.Room).Fits)
            return [];
        // When nothing can be proposed, the uncut blade is reported as too large.
        IReadOnlyList<double> depths = Propose(work, body) ?? [];
        if (depths.Count > 0)
        {
            work.Findings.Add(new(
                "cuts-proposed", Severity.Note, CutsPath,
                $"The {work.BladeName} does not fit the printer in one piece, so it is cut into {depths.Count + 1} pieces at {List(depths)} below the hull.",
                "Enter these or other cuts under parts.cuts to settle them, or use a larger printer."));
        }

        return [.. depths.Select(y => CutPlane.Across(work.Blade.Outline, y, 0))];
    }

    /// <summary>Depths of level cuts that make every piece fit; null when there are none.</summary>
    public static IReadOnlyList<double>? Propose(PartWork work, TriangleMesh body)
    {
        CutPlane level = CutPlane.Across(work.Blade.Outline, 0, 0);
        return CutProposal.Find(body, work.Blade.Span, Forbidden(work), isRoot => work.BladeWays(isRoot ? null : level), work.Room);
    }

    /// <summary>Depths as text, for example "132.0, 264.0 mm".</summary>
    public static string List(IEnumerable<double> depths) => string.Join(", ", depths.Select(y => $"{1000 * y:0.0}")) + " mm";

    private static List<(double From, double To)> Forbidden(PartWork work)
    {
        Point3 down = new(0, 1, 0);
        List<(double, double)> spans = [];
        foreach (PlacedFeature pocket in work.BladePockets)
        {
            // A bolt should not have to reach through a bond to its nut: from the hull to below it.
            double top = pocket.Kind is FeatureKind.NutPocket or FeatureKind.NutWayIn ? 0 : -pocket.Volume.Reach(-1 * down) - work.Wall;
            spans.Add((top, pocket.Volume.Reach(down) + work.Wall));
        }

        if (work.Design.Shape.Strip is { } strip)
            foreach (double percent in (ReadOnlySpan<double>)[strip.FromPercent, strip.ToPercent])
                spans.Add((percent / 100 * work.Blade.Span - ClearOfSlotEnd, percent / 100 * work.Blade.Span + ClearOfSlotEnd));
        spans.Add((0, ShortestPiece));
        spans.Add((work.Blade.Span - ShortestPiece, work.Blade.Span));
        return spans;
    }

    private static CutPlane[]? Given(PartWork work)
    {
        const double metres = 1e-3;
        var cuts = work.Design.Parts.Cuts.Select((cut, index) => (Cut: cut, Index: index)).OrderBy(c => c.Cut.AtDepthMm).ToArray();
        List<CutPlane> planes = [];
        bool sound = true;
        (double Leading, double Trailing, double AtDepthMm)? before = null;
        foreach ((Cut cut, int index) in cuts)
        {
            string path = $"{CutsPath}[{index}].at_depth_mm";
            CutPlane? plane = cut.AtDepthMm * metres < work.Blade.Span
                ? CutPlane.Across(work.Blade.Outline, cut.AtDepthMm * metres, cut.SlopeDegrees * Math.PI / 180)
                : null;
            if (plane?.Exits(work.Blade.Outline) is not { } exits)
            {
                work.Findings.Add(Outside(work, cut, path));
                sound = false;
                continue;
            }

            if (before is { } last && Math.Min(exits.Leading - last.Leading, exits.Trailing - last.Trailing) is var apart && apart < ShortestPiece)
            {
                work.Findings.Add(new(
                    "cuts-meet", Severity.Error, path,
                    $"The cuts at {last.AtDepthMm:0.0} and {cut.AtDepthMm:0.0} mm come within {PartWork.Mm(apart)} of each other at an edge of the blade; a piece shorter than {PartWork.Mm(ShortestPiece)} cannot be held and bonded.",
                    "Move the cuts apart or give them the same slope.")
                { Value = PartWork.Mm(apart), Limit = PartWork.Mm(ShortestPiece) });
                sound = false;
            }

            sound &= ClearsPockets(work, plane.Value, cut, path);
            before = (exits.Leading, exits.Trailing, cut.AtDepthMm);
            planes.Add(plane.Value);
        }

        return sound ? [.. planes] : null;
    }

    private static Finding Outside(PartWork work, Cut cut, string path)
    {
        string why = cut.AtDepthMm * 1e-3 >= work.Blade.Span
            ? $"lies below the tip at {PartWork.Mm(work.Blade.Span)}"
            : $"with its slope of {cut.SlopeDegrees:0.#} degrees runs out through the root or the tip";
        return new(
            "cut-outside-blade", Severity.Error, path,
            $"The cut at {cut.AtDepthMm:0.0} mm {why}. A cut must leave the blade through its leading and its trailing edge, or it parts nothing.",
            "Move the cut toward the middle of the span or make it more level.")
        { Value = $"{cut.AtDepthMm:0.0} mm", Limit = PartWork.Mm(work.Blade.Span) };
    }

    private static bool ClearsPockets(PartWork work, CutPlane plane, Cut cut, string path)
    {
        bool clear = true;
        // A wall must be left on the near side, and half the bond is taken off it.
        double margin = work.Wall + work.BondGap / 2;
        foreach (PlacedFeature pocket in work.BladePockets)
        {
            double tipSide = pocket.Volume.Reach(plane.Normal) - plane.Offset + margin;
            double rootSide = plane.Offset + pocket.Volume.Reach(-1 * plane.Normal) + margin;
            if (tipSide <= 0 || rootSide <= 0)
                continue;
            double up = cut.AtDepthMm - 1000 * rootSide / Math.Cos(plane.Slope), down = cut.AtDepthMm + 1000 * tipSide / Math.Cos(plane.Slope);
            string places = up >= 1000 * ShortestPiece ? $"to at most {up:0.0} mm or at least {down:0.0} mm" : $"to at least {down:0.0} mm";
            work.Findings.Add(new(
                "cut-through-pocket", Severity.Error, path,
                $"The cut at {cut.AtDepthMm:0.0} mm runs through \"{pocket.Name}\" or the wall of {PartWork.Mm(work.Wall)} round it: the bond would lose its face and what lies in the pocket its hold.",
                $"Move the cut {places}.")
            { Value = $"{cut.AtDepthMm:0.0} mm" });
            clear = false;
        }

        return clear;
    }
}
