using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>Pin hole and screw hole of the tab for a long slot.</summary>
internal static class SlotTabFeatures
{
    // Radius of the head of a pan-head screw over its diameter: ISO 1580 has 8 mm heads on M4 (from memory).
    private const double HeadRadiusOverDiameter = 1;

    public static void Place(FeaturePlan plan)
    {
        if (plan.Base.Pin is { } pin)
            PlacePin(plan, pin);
        if (plan.Base.PlateScrew is { } screw)
            PlaceScrew(plan, screw);
    }

    private static void PlacePin(FeaturePlan plan, SlotPin pin)
    {
        Point3 half = new(0, 0, plan.Base.Width(pin.Middle.Y) / 2);
        plan.Add(new PlacedFeature
        {
            Name = "cross pin: hole",
            Kind = FeatureKind.PinHole,
            Path = "$.base.slot.pin_depth_mm",
            Owner = "$.base.slot.pin_depth_mm",
            Volume = FeatureVolume.Cylinder(pin.Diameter + plan.BoreAllowance, pin.Middle - half, pin.Middle + half),
            OpenBefore = FeaturePlan.ToolOverrun,
            OpenAfter = FeaturePlan.ToolOverrun,
        });
        plan.Add(new HardwareItem(
            HardwareKind.CrossPin, $"{Mm(pin.Diameter)} pin; add what stands out into the rails of the box", 2 * half.Z, 1, "rear of the tab"));
    }

    private static void PlaceScrew(FeaturePlan plan, BoltAxis screw)
    {
        Point3 top = plan.Base.OnTopEdge(screw.AtHull, screw.Up);
        plan.Add(new PlacedFeature
        {
            Name = "plate screw: hole",
            Kind = FeatureKind.ScrewHole,
            Path = "$.base.slot.screw",
            Owner = "$.base.slot.screw",
            Volume = FeatureVolume.Cylinder(screw.Thread.Diameter + plan.BoreAllowance, top, screw.AtHull),
            OpenBefore = FeaturePlan.ToolOverrun,
            OpenAfter = FeaturePlan.ToolOverrun,
            OpensAtTop = true,
        });
        plan.Add(new HardwareItem(
            HardwareKind.PlateScrew, $"{screw.Thread} screw and plate nut; add the plate", (screw.AtHull - top).Length, 1, "front of the tab"));
        double overhang = (plan.Design.Shape.Flange?.OverhangMm ?? 0) * 1e-3;
        double bladeFront = plan.Blade.Outline.LeadingEdge(0) - overhang;
        double bladeRear = plan.Blade.Outline.TrailingEdge(0) + overhang;
        double head = HeadRadiusOverDiameter * screw.Thread.Diameter;
        if (screw.AtHull.X + head <= bladeFront || screw.AtHull.X - head >= bladeRear)
            return;
        double covered = screw.AtHull.X + head - bladeFront;
        plan.Report(
            "screw-covered", Severity.Error, "$.base.slot.length_mm",
            $"The blade stands over the plate screw at the front of the tab: its front comes {Mm(covered)} too far forward for a driver.",
            $"Make the tab {Mm(2 * covered)} longer, or set the blade {Mm(covered)} further aft with \"blade_offset_mm\".",
            Mm(plan.Base.HullLength), Mm(plan.Base.HullLength + 2 * covered));
    }
}
