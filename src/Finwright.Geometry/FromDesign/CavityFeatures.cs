using Finwright.Design;
using Finwright.Geometry.Features;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>Free cavities with their lids.</summary>
internal static class CavityFeatures
{
    public static void Place(FeaturePlan plan)
    {
        IReadOnlyList<Cavity> cavities = plan.Design.Hardware.Cavities;
        for (int i = 0; i < cavities.Count; i++)
            Place(plan, cavities[i], $"$.hardware.cavities[{i}]");
    }

    private static void Place(FeaturePlan plan, Cavity cavity, string path)
    {
        string name = string.IsNullOrWhiteSpace(cavity.Name) ? "cavity" : cavity.Name;
        double y = cavity.AtDepthMm * 1e-3, margin = cavity.MarginMm * 1e-3;
        bool round = cavity.Kind == CavityKind.Cylinder;
        double length = cavity.LengthMm * 1e-3, height = round ? length : (cavity.HeightMm ?? cavity.LengthMm) * 1e-3, ledge = cavity.LedgeMm * 1e-3;
        double top = y - height / 2 - ledge, bottom = y + height / 2 + ledge;
        if (top < margin - Hair || bottom > plan.Blade.Span)
        {
            plan.Report(
                "cavity-outside-blade", Severity.Error, $"{path}.at_depth_mm",
                $"The opening for \"{name}\" reaches from {Mm(top)} to {Mm(bottom)} depth, ledge included; it must lie between {Mm(margin)} and the tip at {Mm(plan.Blade.Span)}.",
                "Move it along the span, or make it lower.",
                $"{Mm(top)} to {Mm(bottom)}", $"{Mm(margin)} to {Mm(plan.Blade.Span)}");
            return;
        }

        double x = plan.Blade.Outline.LeadingEdge(y) + cavity.AtChordPercent / 100 * plan.Blade.Outline.Chord(y);
        CavitySize size = new(x, y, round, cavity.Side == Side.Starboard, length, height, cavity.RoomMm * 1e-3, ledge, cavity.LidMm * 1e-3);
        if (LidCavity.Make(plan.Blade, size) is not { } made)
        {
            plan.Report(
                "cavity-outside-blade", Severity.Error, $"{path}.at_chord_percent",
                $"The opening for \"{name}\", {Mm(length + 2 * ledge)} by {Mm(height + 2 * ledge)} with its ledge, reaches past the outline of the blade.",
                "Move it along the chord, or make it or its ledge smaller.");
            return;
        }

        // Its own side is open by design: what counts is the far side, the trailing edge and the tip.
        SurfacePatch[] far = [plan.Skin[size.ToStarboard ? 1 : 0], plan.Skin[2], plan.Skin[3]];
        Clearance clearance = Clearance.InBlade(made.Room, plan.Blade, far);
        if (made.Recess is { } recess)
        {
            Clearance ofRecess = Clearance.InBlade(recess, plan.Blade, far);
            clearance = ofRecess.Wall < clearance.Wall ? ofRecess : clearance;
        }

        if (clearance.Wall < margin - Hair)
        {
            plan.Report(
                "cavity-margin", Severity.Error, $"{path}.room_mm",
                clearance.Wall < 0
                    ? $"\"{name}\" breaks {Mm(-clearance.Wall)} out of the far side at {Whereabouts(clearance.Place)}."
                    : $"\"{name}\" leaves {Mm(clearance.Wall)} of plastic on the far side at {Whereabouts(clearance.Place)}; {Mm(margin)} is asked for.",
                $"Make the room {Mm(margin - clearance.Wall)} shallower, move it to where the blade is thicker, or thicken the sections.",
                Mm(clearance.Wall), Mm(margin));
            return;
        }

        plan.Add(made, name, path);
        if (ledge > 0)
            plan.Add(new HardwareItem(
                HardwareKind.Lid,
                round ? $"round lid, {Mm(length + 2 * ledge)}, {Mm(size.Lid)} thick at its rim" : $"lid, {Mm(length + 2 * ledge)} by {Mm(height + 2 * ledge)}, {Mm(size.Lid)} thick at its thinnest",
                0, 1, name));
    }
}
