using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;
using Finwright.Page.Editing;
using Finwright.Page.Words;

namespace Finwright.Page.Scene;

/// <summary>The parts of one plate as they lie on the printer's bed.</summary>
internal static class PlateScene
{
    public static DrawnScene? Of(Standing standing, SceneRequest asked, Reader reader)
    {
        if (standing.Made is not { Parts: { } plan, Design: { } design })
            return SceneNotes.Instead(standing, asked, reader, SceneNotes.Missing(standing, reader), reader["The parts on the printer's bed."]);
        if (plan.Plates.Count == 0)
            return SceneNotes.Instead(standing, asked, reader, reader["No part fits the printer, so nothing lies on a bed: see the verdicts."], reader["The parts on the printer's bed."]);
        Plate plate = plan.Plates.FirstOrDefault(own => own.Number == asked.Plate) ?? plan.Plates[0];
        double width = 1e-3 * design.Print.BedXMm, depth = 1e-3 * design.Print.BedYMm;
        PrintRoom room = RoomFromDesign.Of(design.Print);
        SceneFile scene = new();
        scene.AddRing("bed", "ink", Rectangle(0, 0, width, depth));
        scene.AddRing("room that is used", "quiet", Rectangle(room.Edge, room.Edge, room.Width, room.Depth));
        scene.AddLabel(reader["front, {0}", reader.Tongue.Length(width, 0)], "none", Held.Upright.Apply(new(width / 2, 0, 0)));
        scene.AddLabel(reader.Tongue.Length(depth, 0), "none", Held.Upright.Apply(new(width, depth / 2, 0)));
        List<SceneValue> values = [];
        foreach (PlatedPart plated in plate.Parts)
        {
            string name = reader.Tongue.Words.Names.Part(plated.Part.Name);
            Geometry.TriangleMesh laid = plated.Part.Mesh.Placed(plated.Placement.Then(Held.Upright));
            scene.Add(name, plated.Part.IsGauge ? "base" : "blade", laid);
            Geometry.Bounds box = laid.Bounds();
            scene.AddLabel(name, "none", new(box.Centre.X, box.Minimum.Y, box.Centre.Z));
            values.Add(new(name, reader["{0} high", reader.Tongue.Length(plated.Part.Size.Z)], reader["{0} by {1} on the bed", reader.Tongue.Length(plated.Part.Size.X), reader.Tongue.Length(plated.Part.Size.Y)]));
        }

        scene.About = new { version = standing.MadeVersion, isHeld = true, isBed = true };
        return new()
        {
            File = scene.ToBytes(),
            Version = standing.MadeVersion,
            Says = reader["Plate {0} of {1} as it lies on the bed of {2} by {3}, front toward you; the thin line is the room that is used.", plate.Number, plan.Plates.Count, reader.Tongue.Length(width, 0), reader.Tongue.Length(depth, 0)],
            Note = SceneNotes.Made(standing, reader),
            Values = values,
            Plates = plan.Plates.Count,
        };

        static IReadOnlyList<Geometry.Point3> Rectangle(double x, double y, double wide, double deep) =>
            [Held.Upright.Apply(new(x, y, 0)), Held.Upright.Apply(new(x + wide, y, 0)), Held.Upright.Apply(new(x + wide, y + deep, 0)), Held.Upright.Apply(new(x, y + deep, 0))];
    }
}
