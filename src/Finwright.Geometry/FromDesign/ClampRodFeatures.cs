using Finwright.Design;
using Finwright.Geometry.Features;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>
/// Threaded rods that clamp the blade to the base: each screws into a nut held in the blade and is pulled up by a nut that
/// a socket turns in a round pocket at the top edge of the base.
/// </summary>
internal static class ClampRodFeatures
{
    // Above the upper nut: a washer and the end of the rod, so that nothing stands out of the top edge.
    private const double RoomAboveNut = 3e-3;

    // How far the rod stands out of the upper nut, and how short of the bottom of its bore it ends.
    private const double RodAboveNut = 1.5e-3, RodShort = 1e-3;

    public static void Place(FeaturePlan plan)
    {
        IReadOnlyList<ClampRod> rods = plan.Design.Hardware.ClampRods;
        if (plan.Design.Base.Fixing != Fixing.ClampRods)
            return;
        if (rods.Count == 0)
            plan.Report(
                "rods-missing", Severity.Error, "$.hardware.clamp_rods",
                "The blade is to be clamped to the base by threaded rods, but none is described.",
                "Describe at least one clamp rod, or choose another fixing.");
        for (int i = 0; i < rods.Count; i++)
            Place(plan, rods[i], rods.Count == 1 ? "clamp rod" : $"clamp rod {i + 1}", $"$.hardware.clamp_rods[{i}]");
    }

    private static void Place(FeaturePlan plan, ClampRod rod, string name, string path)
    {
        MetricThread thread = HardwareSizes.Of(rod.Thread);
        double lean = rod.LeanDegrees * Math.PI / 180;
        Point3 down = new(Math.Sin(lean), Math.Cos(lean), 0);
        double fromFront = rod.FromFrontMm * 1e-3;
        if (fromFront >= plan.Base.HullLength)
        {
            plan.Report(
                "clamp-rod-off-base", Severity.Error, $"{path}.from_front_mm",
                $"{Capital(name)} stands {Mm(fromFront)} behind the front corner; the base is only {Mm(plan.Base.HullLength)} long at the hull.",
                $"Move it to less than {Mm(plan.Base.HullLength)}.",
                Mm(fromFront), Mm(plan.Base.HullLength));
            return;
        }

        Point3 atHull = new(plan.Base.FrontX + fromFront, 0, 0);
        Point3 top = plan.Base.OnTopEdge(atHull, down);
        double half = HardwareSizes.HalfAlongBolt(thread, rod.Nut, plan.PocketAllowance);
        Point3 nutMiddle = atHull + rod.BladeDepthMm * 1e-3 / down.Y * down;
        Point3 end = nutMiddle + (half + FeaturePlan.EndRoom) * down;
        Point3 seat = top + (thread.HexNut.Height + RoomAboveNut) * down;
        plan.Add(new PlacedFeature
        {
            Name = $"{name}: bore",
            Kind = FeatureKind.ClampRodBore,
            Path = $"{path}.from_front_mm",
            Owner = path,
            Volume = FeatureVolume.Cylinder(thread.Diameter + plan.BoreAllowance, top, end),
            OpenBefore = FeaturePlan.ToolOverrun,
            OpensAtTop = true,
        });
        plan.AddNutPocket(new PlacedFeature
        {
            Name = $"{name}: nut pocket",
            Kind = FeatureKind.NutPocket,
            Path = $"{path}.blade_depth_mm",
            Owner = path,
            Volume = HardwareSizes.Pocket(thread, rod.Nut, nutMiddle, down, plan.PocketAllowance),
        });
        plan.Add(new PlacedFeature
        {
            Name = $"{name}: socket pocket",
            Kind = FeatureKind.SocketPocket,
            Path = $"{path}.thread",
            Owner = path,
            Volume = FeatureVolume.Cylinder(thread.SocketDiameter + plan.PocketAllowance, top, seat),
            OpenBefore = FeaturePlan.ToolOverrun,
            OpensAtTop = true,
        });
        plan.Add(new HardwareItem(HardwareKind.Nut, HardwareSizes.Name(thread, rod.Nut), 0, 1, $"{name}, in the blade"));
        plan.Add(new HardwareItem(HardwareKind.Nut, $"{HardwareSizes.Name(thread, NutKind.Hex)} and washer", 0, 1, $"{name}, at the top edge of the base"));
        plan.Add(new HardwareItem(
            HardwareKind.ThreadedRod, $"{thread} threaded rod, stainless",
            (end - seat).Length - RodShort + thread.HexNut.Height + RodAboveNut, 1, name));
    }
}
