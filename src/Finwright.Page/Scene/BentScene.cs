using Finwright.Assessment;
using Finwright.Assessment.Loaded;
using Finwright.Geometry;
using Finwright.Page.Editing;
using Finwright.Page.Words;
using Finwright.Papers;
using Finwright.Papers.Words;
using Finwright.Strength.Plates;

namespace Finwright.Page.Scene;

/// <summary>The blade bent by its load, drawn larger than it is when it is little.</summary>
internal static class BentScene
{
    // Drawn at most this far bent, shares of the span: farther looks like another fin.
    private const double FarthestDrawn = 0.22;

    private static readonly double[] Factors = [1, 2, 5, 10, 20, 50];

    public static DrawnScene? Of(Standing standing, SceneRequest asked, Reader reader)
    {
        if (LoadedScenes.Find(standing, asked, reader, reader["The blade bent by its load."], out DrawnScene? instead) is not { } found)
            return instead;
        (AssessmentResult result, CaseLoaded own, TriangleMesh skin) = found;
        double span = result.Blade!.Span, perMetre = reader.Tongue.Units is PaperUnits.Inch ? 1 / UnitScale.Inch : 1e3;
        double[] shifts = Shifts(own.Plate, skin, span), values = new double[skin.VertexCount];
        double greatest = 0;
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = Math.Abs(shifts[3 * i + 2]) * perMetre;
            greatest = Math.Max(greatest, values[i]);
        }

        ColourScale scale = ColourScale.Rising(0, Math.Max(greatest, 1e-3));
        double factor = Factors.Where(each => each * greatest / perMetre <= FarthestDrawn * span).DefaultIfEmpty(1).Max();
        SceneFile scene = new();
        scene.Add("blade", "blade", skin, values, shifts);
        scene.Add("unbent", "ghost", skin);
        PlainScene.AddOutlines(scene, standing, asked with { Beside = null });
        scene.About = new { version = standing.SailingVersion, view = "bent", factor, scale = SceneScale.Of(scale, reader.Tongue.LengthUnit, reader) };
        string twist = own.Tip.Twist == 0 ? "" : reader["The tip turns by {0}.", reader.Tongue.Angle(Math.Abs(own.Tip.Twist))];
        string note = LoadedScenes.Note(standing, own, reader);
        if (own.Plate.DeflectionShare > PlateSolution.LinearShare)
            note = SceneNotes.Both(note, reader["Beyond a tenth of the depth the true fin bends less than is shown."]);
        return new()
        {
            File = scene.ToBytes(),
            Version = standing.SailingVersion,
            Says = SceneNotes.Both(reader["Bent {0} by {1} of side force: the tip goes {2} aside. Dashed: unbent.",
                reader.Tongue.Words.Verdicts.InCase(own.Load.Kind), reader.Tongue.Force(Math.Abs(own.Load.SideForce)), reader.Tongue.Length(Math.Abs(own.Tip.MidChord))], twist),
            Note = note,
            Legend = new(reader["deflection"], reader.Tongue.LengthUnit, scale),
            Values =
            [
                new(reader["tip, leading edge"], reader.Tongue.Length(Math.Abs(own.Tip.LeadingEdge)), reader["{0} below the hull", reader.Tongue.Length(own.Tip.Depth, 0)]),
                new(reader["tip, trailing edge"], reader.Tongue.Length(Math.Abs(own.Tip.TrailingEdge)), reader["{0} below the hull", reader.Tongue.Length(own.Tip.Depth, 0)]),
                new(reader["half way down, middle of the chord"], reader.Tongue.Length(Math.Abs(own.Along[own.Along.Count / 2].MidChord)), reader["{0} below the hull", reader.Tongue.Length(own.Along[own.Along.Count / 2].Depth, 0)]),
            ],
            Cases = LoadedScenes.Kinds(result.Loaded!),
            Case = own.Load.Kind,
            Exaggeration = factor,
        };
    }

    /// <summary>Where each vertex goes, x, y, z, metres: along z as far as the plate says; what stands above the hull stays.</summary>
    public static double[] Shifts(PlateSolution plate, TriangleMesh skin, double span)
    {
        double[] shifts = new double[3 * skin.VertexCount];
        for (int i = 0; i < skin.VertexCount; i++)
        {
            Point3 place = skin.Vertex(i);
            if (place.Y >= 0)
                shifts[3 * i + 2] = plate.Deflection(place.X, Math.Min(place.Y, span));
        }

        return shifts;
    }
}
