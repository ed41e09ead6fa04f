using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>Bores and nut pockets of the bolts that come down from the deck of the board.</summary>
internal static class BoxBoltFeatures
{
    private const string NutDepthPath = "$.base.nut_depth_mm", BladeDepthPath = "$.hardware.box_bolts.blade_depth_mm";

    // What stays between the end of a bore in the base and the hull plane, metres.
    private const double HullFloor = 2e-3;

    public static void Place(FeaturePlan plan)
    {
        Fixing fixing = plan.Design.Base.Fixing;
        IReadOnlyList<BoltAxis> bolts = plan.Base.Bolts;
        if (bolts.Count == 0 && fixing == Fixing.ThroughBolts)
            plan.Report(
                "bolts-missing", Severity.Error, "$.base.fixing",
                "The bolts are to run through the base into the blade, but this box has no bolts from the deck.",
                "Choose the fixing \"base-only\" or \"clamp-rods\", or give the bolts of the box.");
        for (int i = 0; i < bolts.Count; i++)
            Place(plan, bolts[i], Name(i, bolts.Count), BoltPath(plan, i), fixing == Fixing.ThroughBolts);
        foreach (IGrouping<MetricThread, BoltAxis> group in bolts.GroupBy(b => b.Thread))
        {
            plan.Add(new HardwareItem(
                HardwareKind.Nut, HardwareSizes.Name(group.Key, plan.Design.Hardware.BoxBolts.Nut), 0, group.Count(),
                fixing == Fixing.ThroughBolts ? "box bolts, in the blade" : "box bolts, in the base"));
            if (plan.BoreAllowance < group.Key.FineClearance - group.Key.Diameter - Hair)
                plan.Report(
                    "bore-tight", Severity.Caution, "$.print.bore_allowance_mm",
                    $"{group.Key} bolts run in bores of {Mm(group.Key.Diameter + plan.BoreAllowance)}; even the fine series of ISO 273 has {Mm(group.Key.FineClearance)}, the medium one {Mm(group.Key.MediumClearance)}.",
                    "Raise the bore allowance, unless you mean to drill the bores out.",
                    Mm(group.Key.Diameter + plan.BoreAllowance), Mm(group.Key.FineClearance));
        }
    }

    private static void Place(FeaturePlan plan, BoltAxis bolt, string name, string boltPath, bool through)
    {
        NutKind nut = plan.Design.Hardware.BoxBolts.Nut;
        Point3 down = -1 * bolt.Up;
        Point3 top = plan.Base.OnTopEdge(bolt.AtHull, bolt.Up);
        double half = HardwareSizes.HalfAlongBolt(bolt.Thread, nut, plan.PocketAllowance);
        Point3 nutMiddle = through ? bolt.At(plan.Design.Hardware.BoxBolts.BladeDepthMm * 1e-3) : top + plan.Design.Base.NutDepthMm * 1e-3 * down;
        Point3 end = nutMiddle + (half + FeaturePlan.EndRoom) * down;
        if (!through && end.Y > -HullFloor)
            end = bolt.At(Math.Max(-HullFloor, (nutMiddle + half * down).Y));
        string path = through ? BladeDepthPath : NutDepthPath;
        plan.Add(new PlacedFeature
        {
            Name = $"{name}: bore",
            Kind = FeatureKind.BoltBore,
            Path = boltPath,
            Owner = name,
            Volume = FeatureVolume.Cylinder(bolt.Thread.Diameter + plan.BoreAllowance, top, end),
            OpenBefore = FeaturePlan.ToolOverrun,
            OpensAtTop = true,
        });
        plan.AddNutPocket(new PlacedFeature
        {
            Name = $"{name}: nut pocket",
            Kind = FeatureKind.NutPocket,
            Path = path,
            Owner = name,
            Volume = HardwareSizes.Pocket(bolt.Thread, nut, nutMiddle, down, plan.PocketAllowance),
        });
        plan.Add(new HardwareItem(
            HardwareKind.BoxBolt, $"{bolt.Thread} bolt, stainless; add the board's own thickness above the base", (end - top).Length - 1e-3, 1, name));
    }

    private static string BoltPath(FeaturePlan plan, int index) =>
        plan.Design.Base.Box == BoxKind.Measured ? $"$.base.measured.bolts[{index}].from_front_mm"
        : plan.Design.Base.Fixing == Fixing.ThroughBolts ? BladeDepthPath
        : "$.base.box";

    private static string Name(int index, int count) => count switch
    {
        1 => "box bolt",
        2 => index == 0 ? "front box bolt" : "rear box bolt",
        _ => $"box bolt {index + 1}",
    };
}
