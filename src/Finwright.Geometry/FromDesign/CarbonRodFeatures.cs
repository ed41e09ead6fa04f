using Finwright.Design;
using Finwright.Geometry.Features;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>Bores for carbon rods along the span.</summary>
internal static class CarbonRodFeatures
{
    // Shortest bore worth making, and how much shorter than its bore a rod is cut, so that the glue has room at the end.
    private const double Shortest = 10e-3, RodShort = 1e-3;

    // In a fin printed as one the bore starts just above the hull plane, clear of the coinciding face.
    private const double OverrunAsOne = 1e-3;

    public static void Place(FeaturePlan plan)
    {
        IReadOnlyList<CarbonRod> rods = plan.Design.Hardware.CarbonRods;
        for (int i = 0; i < rods.Count; i++)
            Place(plan, rods[i], rods.Count == 1 ? "carbon rod" : $"carbon rod {i + 1}", $"$.hardware.carbon_rods[{i}]");
    }

    private static void Place(FeaturePlan plan, CarbonRod rod, string name, string path)
    {
        double span = plan.Blade.Span, margin = rod.MarginMm * 1e-3;
        double rootX = OnChord(plan, 0, rod.RootChordPercent), tipX = OnChord(plan, span, rod.TipChordPercent ?? rod.RootChordPercent);
        double diameter = rod.DiameterMm * 1e-3 + plan.BoreAllowance;
        RodBore bore = new(rootX, tipX, diameter, plan.Blade, plan.Skin);
        double fromY = -rod.IntoBaseMm * 1e-3;
        double? depth = rod.ToDepthMm is { } asked
            ? CheckedDepth(plan, bore, asked * 1e-3, margin, name, path)
            : bore.DeepestFor(margin, Shortest) is { } deepest
                ? ClearOfEarlierRods(plan, bore, fromY, deepest)
                : ReportShortest(plan, bore, margin, name, path);
        if (depth is not { } toY)
            return;

        FeatureVolume volume = bore.Between(fromY, toY);
        bool throughTop = fromY < 0 && !plan.Base.Holds(volume.From);
        if (plan.AsOne && !throughTop && IsCovered(plan, bore.Between(0, toY)))
        {
            plan.Report(
                "sealed-void", Severity.Error, $"{path}.into_base_mm",
                $"Printed as one with the base, the bore of the {name} has no way out: no rod can be put in, and no resin.",
                "Print blade and base apart, or let the bore run out of the top edge of the base.");
            return;
        }

        plan.Add(new PlacedFeature
        {
            Name = $"{name}: bore",
            Kind = FeatureKind.CarbonRodBore,
            Path = rod.IntoBaseMm > 0 ? $"{path}.into_base_mm" : $"{path}.root_chord_percent",
            Owner = path,
            Volume = volume,
            OpenBefore = fromY < 0 && !throughTop ? 0 : plan.AsOne && !throughTop ? OverrunAsOne : FeaturePlan.ToolOverrun,
            OpensAtTop = throughTop,
        });
        plan.Add(new HardwareItem(
            HardwareKind.CarbonRod, $"{Mm(rod.DiameterMm * 1e-3)} carbon rod", (volume.To - volume.From).Length - RodShort, 1, name));
    }

    // Rods placed by shares of the chord draw together toward a narrow tip: one that may go as deep as it can ends before it
    // meets a rod listed before it. Rods that meet already near the root are left for the check of meetings to report.
    private static double ClearOfEarlierRods(FeaturePlan plan, RodBore bore, double fromY, double deepest)
    {
        FeatureVolume[] earlier = [.. plan.Features.Where(feature => feature.Kind == FeatureKind.CarbonRodBore).Select(feature => feature.Volume)];
        bool IsClear(double toY)
        {
            FeatureVolume volume = bore.Between(fromY, toY);
            return earlier.All(other => volume.DistanceTo(other) >= plan.Line);
        }

        if (deepest <= Shortest || IsClear(deepest) || !IsClear(Shortest))
            return deepest;
        const double step = 1e-4;
        int good = (int)Math.Ceiling(Shortest / step), bad = (int)Math.Ceiling(deepest / step);
        while (bad - good > 1)
        {
            int middle = (good + bad) / 2;
            if (IsClear(middle * step))
                good = middle;
            else
                bad = middle;
        }

        return Math.Min(good * step, deepest);
    }

    private static double? CheckedDepth(FeaturePlan plan, RodBore bore, double toY, double margin, string name, string path)
    {
        if (toY >= plan.Blade.Span)
        {
            plan.Report(
                "rod-outside-skin", Severity.Error, $"{path}.to_depth_mm",
                $"The bore of the {name} ends at {Mm(toY)} depth; the tip of the blade is at {Mm(plan.Blade.Span)}.",
                "Leave the depth out to go as deep as the margin allows.",
                Mm(toY), Mm(plan.Blade.Span));
            return null;
        }

        Clearance clearance = bore.To(toY);
        if (clearance.Wall >= margin - Hair)
            return toY;
        double? deepest = bore.DeepestFor(margin, Shortest);
        string remedy = deepest is { } d
            ? $"End the bore at {Mm(d)} or less, leave the depth out, take a thinner rod, or move it to where the blade is thicker."
            : "Take a thinner rod, move it to where the blade is thicker, or thicken the sections.";
        Report(plan, clearance, margin, name, $"{path}.to_depth_mm", remedy);
        return null;
    }

    private static double? ReportShortest(FeaturePlan plan, RodBore bore, double margin, string name, string path)
    {
        double shortest = Math.Min(Shortest, plan.Blade.Span / 2);
        Report(
            plan, bore.To(shortest), margin, name, $"{path}.root_chord_percent",
            "Move the rod to where the blade is thicker, take a thinner one, or thicken the sections at the root.");
        return null;
    }

    private static void Report(FeaturePlan plan, Clearance clearance, double margin, string name, string path, string remedy)
    {
        bool outside = clearance.Wall < 0;
        plan.Report(
            outside ? "rod-outside-skin" : "rod-margin", Severity.Error, path,
            outside
                ? $"The bore of the {name} breaks {Mm(-clearance.Wall)} out of the skin at {Whereabouts(clearance.Place)}."
                : $"The bore of the {name} leaves {Mm(clearance.Wall)} of plastic at {Whereabouts(clearance.Place)}; {Mm(margin)} is asked for.",
            remedy, Mm(clearance.Wall), Mm(margin));
    }

    private static double OnChord(FeaturePlan plan, double y, double percent) =>
        plan.Blade.Outline.LeadingEdge(y) + percent / 100 * plan.Blade.Outline.Chord(y);

    // Whether the base covers the whole mouth of a bore that starts at the hull plane.
    private static bool IsCovered(FeaturePlan plan, FeatureVolume volume) =>
        volume.From.X - volume.ReachFromAxis >= plan.Base.FrontX && volume.From.X + volume.ReachFromAxis <= plan.Base.RearX
        && Math.Abs(volume.From.Z) + volume.ReachFromAxis <= plan.Base.HullWidth / 2;
}
