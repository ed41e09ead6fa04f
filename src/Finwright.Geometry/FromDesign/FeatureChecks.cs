using Finwright.Design;
using Finwright.Geometry.Features;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>Checks of the placed features against the outside of the fin and against one another.</summary>
internal static class FeatureChecks
{
    // Faces of a base in their order.
    private const int FirstSide = 0, SecondSide = 1, Front = 2, Rear = 3, TopEdge = 4;

    public static void Check(FeaturePlan plan)
    {
        BladeOnBase(plan);
        foreach (PlacedFeature feature in plan.Features)
        {
            if (feature.Kind is FeatureKind.CavityRoom or FeatureKind.LidRecess)
                continue;
            Hull(plan, feature);
            if (feature.IsInBlade && feature.Kind != FeatureKind.CarbonRodBore)
                Wall(plan, feature, Clearance.InBlade(feature.Volume, plan.Blade, plan.Skin));
            if (feature.IsInBase)
                Wall(plan, feature, Clearance.InBase(feature.Volume, plan.Base, Faces(plan, feature)));
        }

        Meetings(plan);
    }

    // The blade must stand on its base for a good part of its root, else nothing holds it.
    private static void BladeOnBase(FeaturePlan plan)
    {
        double front = Math.Max(plan.Base.FrontX, plan.Blade.Outline.LeadingEdge(0));
        double rear = Math.Min(plan.Base.RearX, plan.Blade.Outline.TrailingEdge(0));
        double shared = Math.Max(0, rear - front) / Math.Min(plan.Blade.Outline.Chord(0), plan.Base.HullLength);
        const double least = 0.5;
        if (shared < least)
            plan.Report(
                "blade-beside-base", Severity.Error, "$.base.blade_offset_mm",
                FormattableString.Invariant($"Only {100 * shared:0} % of the blade's root stands on the base."),
                FormattableString.Invariant($"Bring the blade closer to the middle of the base; at least {100 * least:0} % must stand on it."),
                FormattableString.Invariant($"{100 * shared:0} %"), FormattableString.Invariant($"{100 * least:0} %"));
    }

    private static SurfacePatch[] Faces(FeaturePlan plan, PlacedFeature feature)
    {
        IReadOnlyList<SurfacePatch> all = plan.BaseFaces;
        if (feature.Kind == FeatureKind.PinHole)
            return [all[Front], all[Rear], all[TopEdge]];
        return feature.OpensAtTop
            ? [all[FirstSide], all[SecondSide], all[Front], all[Rear]]
            : [all[FirstSide], all[SecondSide], all[Front], all[Rear], all[TopEdge]];
    }

    // A pocket, or the pin's hole, must lie wholly on one side of the hull plane and leave a wall to it.
    private static void Hull(FeaturePlan plan, PlacedFeature feature)
    {
        if (feature.Kind is not (FeatureKind.NutPocket or FeatureKind.SocketPocket or FeatureKind.PinHole))
            return;
        double deepest = feature.Volume.Reach(new(0, 1, 0)), shallowest = -feature.Volume.Reach(new(0, -1, 0));
        double wall = feature.Volume.Middle.Y < 0 ? -deepest : shallowest;
        if (JudgeWall(wall, plan.Line) is not { } severity)
            return;
        plan.Report(
            "pocket-meets-hull", severity, feature.Path,
            wall < 0
                ? $"{Capital(feature.Name)} reaches {Mm(-wall)} through the hull plane."
                : $"{Capital(feature.Name)} leaves {Mm(wall)} to the hull plane; one printed line is {Mm(plan.Line)}.",
            feature.Volume.Middle.Y < 0
                ? $"Move it at least {Mm(plan.Line - wall)} further up into the base, or choose a deeper base."
                : $"Move it at least {Mm(plan.Line - wall)} further down.",
            Mm(wall), Mm(plan.Line));
    }

    private static void Wall(FeaturePlan plan, PlacedFeature feature, Clearance clearance)
    {
        if (JudgeWall(clearance.Wall, plan.Line) is not { } severity)
            return;
        bool inBase = clearance.Place.Y < 0;
        string outside = inBase ? "face of the base" : "skin";
        double missing = plan.Line - clearance.Wall;
        string remedy = inBase
            ? $"Move it by {Mm(missing)} or more, take smaller hardware, or make the base thicker."
            : $"Move it to where the blade is thicker, take smaller hardware, or thicken the blade there by {Mm(2 * missing)}.";
        plan.Report(
            clearance.Wall < 0 ? "feature-outside-skin" : "feature-wall-thin", severity, feature.Path,
            clearance.Wall < 0
                ? $"{Capital(feature.Name)} breaks {Mm(-clearance.Wall)} through the {outside} at {Whereabouts(clearance.Place)}."
                : $"{Capital(feature.Name)} leaves {Mm(clearance.Wall)} to the {outside} at {Whereabouts(clearance.Place)}; one printed line is {Mm(plan.Line)}.",
            remedy, Mm(clearance.Wall), Mm(plan.Line));
    }

    private static void Meetings(FeaturePlan plan)
    {
        IReadOnlyList<PlacedFeature> all = plan.Features;
        for (int i = 0; i < all.Count; i++)
        {
            if (plan.Slot is { } slot && all[i].IsInBlade)
                Meeting(plan, all[i], "the strip's slot", slot.DistanceFrom(all[i].Volume).Wall);
            for (int j = 0; j < i; j++)
                if (all[i].Owner != all[j].Owner && MayMeet(all[i].Volume, all[j].Volume, plan.Line))
                    Meeting(plan, all[i], $"the {all[j].Name}", all[i].Volume.DistanceTo(all[j].Volume));
        }
    }

    private static void Meeting(FeaturePlan plan, PlacedFeature feature, string other, double distance)
    {
        if (JudgeWall(distance, plan.Line) is not { } severity)
            return;
        plan.Report(
            "pockets-meet", severity, feature.Path,
            distance <= 0
                ? $"The {feature.Name} runs into {other}."
                : $"The {feature.Name} leaves {Mm(distance)} to {other}; one printed line is {Mm(plan.Line)}.",
            $"Move one of them by {Mm(plan.Line - Math.Max(0, distance))} or more.",
            Mm(Math.Max(0, distance)), Mm(plan.Line));
    }

    private static bool MayMeet(FeatureVolume a, FeatureVolume b, double wall)
    {
        double Half(FeatureVolume v) => (v.To - v.From).Length / 2 + v.ReachFromAxis;
        return (a.Middle - b.Middle).Length < Half(a) + Half(b) + wall;
    }
}
