using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Page.Editing;
using Finwright.Page.Words;

namespace Finwright.Page.Scene;

/// <summary>The fin as it looks: blade and base; on asking, what is inside.</summary>
internal static class PlainScene
{
    public static DrawnScene? Of(Standing standing, SceneRequest asked, Reader reader)
    {
        if (standing.Skin is not { } skin || standing.Shape is not { Blade: { } blade, Design: { } design })
            return null;
        SceneFile scene = new();
        bool isPointed = Pointed.Add(scene, standing, asked.Place);
        bool inside = asked.Inside || isPointed;
        scene.Add("blade", inside ? "clear" : "blade", skin);
        string says = reader["The fin as it looks."];
        if (inside || asked.Surface is Surface.Plain)
        {
            // Bores are placed anew only when they are to be seen; the base alone is quick.
            PlacedHardware? placed = inside ? FinSolids.Place(design, blade, []) : null;
            double middle = (blade.Outline.LeadingEdge(0) + blade.Outline.TrailingEdge(0)) / 2;
            if ((placed?.Base ?? BaseFromDesign.Plan(design, middle, [])) is { } plan)
                scene.Add("base", inside ? "clearbase" : "base", PrismMesh.Of(plan));
            foreach (PlacedFeature feature in placed?.Features ?? [])
                if (ToneOf(feature.Kind) is { } tone && PrismMesh.Of(feature.Volume) is { } mesh)
                    scene.Add(reader.Tongue.Words.Names.Feature(feature.Name), tone, mesh);
            if (inside)
                says = placed is null
                    ? reader["The fin as it looks; what is inside cannot be placed: see the verdicts."]
                    : reader["The fin made clear, with the room that bolts, nuts, rods and cavities take in it."];
        }

        if (asked.Beside is { } beside)
        {
            scene.Add(beside.Label, "ghost", beside.Skin);
            says = SceneNotes.Both(says, reader["Dashed: {0}.", beside.Label]);
        }

        scene.About = new { version = standing.ShapeVersion, isPointed };
        bool isOld = standing.ShapeVersion < standing.Version;
        return new() { File = scene.ToBytes(), Version = standing.ShapeVersion, Says = says, Note = isOld ? reader["The last shape that could be drawn: see the verdicts."] : "" };
    }

    /// <summary>Adds the outline of the fin as it is now round one that is older, and that of the one beside.</summary>
    public static void AddOutlines(SceneFile scene, Standing standing, SceneRequest asked)
    {
        if (standing.SailingVersion != standing.ShapeVersion && standing.Skin is { } skin)
            scene.Add("now", "now", skin);
        if (asked.Beside is { } beside)
            scene.Add(beside.Label, "ghost", beside.Skin);
    }

    private static string? ToneOf(FeatureKind kind) => kind switch
    {
        FeatureKind.BoltBore or FeatureKind.ClampRodBore or FeatureKind.PinHole or FeatureKind.ScrewHole => "metal",
        FeatureKind.NutPocket => "nut",
        FeatureKind.CarbonRodBore => "rod",
        FeatureKind.CavityRoom => "air",
        // Ways in, sockets and lids are room for tools and fingers.
        _ => null,
    };
}
