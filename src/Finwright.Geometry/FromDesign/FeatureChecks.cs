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
        // What stands beside the blade is said once for a bolt or rod, not again for its bore and its nut.
        HashSet<string> beside = new(StringComparer.Ordinal);
        foreach (PlacedFeature feature in plan.Features)
        {
            if (feature.Kind is FeatureKind.CavityRoom or FeatureKind.LidRecess)
                continue;
            Hull(plan, feature);
            bool judged = feature.IsInBlade && feature.Kind != FeatureKind.CarbonRodBore;
            if (judged && Beside(plan, feature) is { } gap)
            {
                if (beside.Add(feature.Owner))
                    ReportBeside(plan, feature, gap);
            }
            else if (judged)
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
        if (feature.Kind is not (FeatureKind.NutPocket or FeatureKind.NutWayIn or FeatureKind.SocketPocket or FeatureKind.PinHole))
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

    /// <summary>How far the lower end of a feature stands ahead of the blade (negative) or behind it (positive); null when it does not.</summary>
    private static double? Beside(FeaturePlan plan, PlacedFeature feature)
    {
        Point3 lowest = feature.Volume.From.Y > feature.Volume.To.Y ? feature.Volume.From : feature.Volume.To;
        double y = Math.Clamp(lowest.Y, 0, plan.Blade.Span);
        double ahead = lowest.X - plan.Blade.Outline.LeadingEdge(y), behind = lowest.X - plan.Blade.Outline.TrailingEdge(y);
        return ahead < 0 ? ahead : behind > 0 ? behind : null;
    }

    private static void ReportBeside(FeaturePlan plan, PlacedFeature feature, double gap) =>
        plan.Report(
            "blade-does-not-reach", Severity.Error, feature.Path,
            $"The blade does not reach the {feature.Name.Split(':')[0]}: it stands {Mm(Math.Abs(gap))} {(gap < 0 ? "ahead of the leading" : "behind the trailing")} edge.",
            "Move the blade with \"blade_offset_mm\", give it a longer root chord, or choose another fixing: with \"base-only\" the bolts end in the base and carbon rods hold the blade.",
            Mm(Math.Abs(gap)), Mm(0));

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
        // Of two bolts, rods or cavities only the closest pair of bores and pockets is told.
        Dictionary<(string, string), (PlacedFeature Feature, string Other, double Distance)> closest = [];
        List<(string, string)> order = [];
        for (int i = 0; i < all.Count; i++)
        {
            if (plan.Slot is { } slot && all[i].IsInBlade)
                Note(all[i], "", "the strip's slot", slot.DistanceFrom(all[i].Volume).Wall);
            for (int j = 0; j < i; j++)
                if (all[i].Owner != all[j].Owner && MayMeet(all[i].Volume, all[j].Volume, plan.Line))
                    Note(all[i], all[j].Owner, $"the {all[j].Name}", all[i].Volume.DistanceTo(all[j].Volume));
        }

        foreach ((string, string) pair in order)
            Meeting(plan, closest[pair].Feature, closest[pair].Other, closest[pair].Distance);

        void Note(PlacedFeature feature, string otherOwner, string other, double distance)
        {
            (string, string) pair = (feature.Owner, otherOwner);
            if (!closest.TryGetValue(pair, out var known))
                order.Add(pair);
            else if (known.Distance <= distance)
                return;
            closest[pair] = (feature, other, distance);
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
            distance <= 0
                ? $"Move one of them until at least {Mm(plan.Line)} of plastic is left between them."
                : $"Move one of them by {Mm(plan.Line - distance)} or more.",
            Mm(Math.Max(0, distance)), Mm(plan.Line));
    }

    private static bool MayMeet(FeatureVolume a, FeatureVolume b, double wall)
    {
        double Half(FeatureVolume v) => (v.To - v.From).Length / 2 + v.ReachFromAxis;
        return (a.Middle - b.Middle).Length < Half(a) + Half(b) + wall;
    }
}
