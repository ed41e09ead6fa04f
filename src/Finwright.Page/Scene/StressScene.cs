using Finwright.Assessment;
using Finwright.Assessment.Loaded;
using Finwright.Geometry;
using Finwright.Page.Editing;
using Finwright.Page.Words;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Margins;
using Finwright.Strength.Plates;

namespace Finwright.Page.Scene;

/// <summary>How much of their strength the walls use: the same field as the stress figure of a pack.</summary>
internal static class StressScene
{
    // Steps within one of the grid on which walls are judged.
    private const int Finer = 2;

    public static DrawnScene? Of(Standing standing, SceneRequest asked, Reader reader)
    {
        string plain = reader["How much of their strength the walls use."];
        if (LoadedScenes.Find(standing, asked, reader, plain, out DrawnScene? instead) is not { } found)
            return instead;
        (AssessmentResult result, CaseLoaded own, TriangleMesh skin) = found;
        FinStructure structure = result.Loaded!.Structure!;
        double[] values = Use(structure, own.Plate, skin);
        StressPeak[] walls = [.. own.Peaks.Where(peak => peak.Part is StressedPart.WallAcrossLayers or StressedPart.WallAlongLayers)];
        double greatest = walls.Length > 0 ? 100 / walls.Min(peak => peak.Reserve) : values.Where(double.IsFinite).DefaultIfEmpty(0).Max();
        ColourScale scale = ColourScale.Rising(0, greatest);
        SceneFile scene = new();
        scene.Add("blade", "blade", skin, values);
        Pointed.Add(scene, standing, asked.Place);
        PlainScene.AddOutlines(scene, standing, asked);
        double? limit = greatest > 100 ? 100 : null;
        scene.About = new { version = standing.SailingVersion, scale = SceneScale.Of(scale, "%", reader, limit) };
        return new()
        {
            File = scene.ToBytes(),
            Version = standing.SailingVersion,
            Says = reader["How much of their strength the walls use {0}, {1} of side force: the worse of both sides, and of along and across the printed layers.",
                reader.Tongue.Words.Verdicts.InCase(own.Load.Kind), reader.Tongue.Force(Math.Abs(own.Load.SideForce))],
            Note = LoadedScenes.Note(standing, own, reader),
            Legend = new(reader["use of strength"], "%", scale, limit, reader["here the walls may give"]),
            Values = [.. own.Peaks.Where(peak => peak.Stress > 0).OrderBy(peak => peak.Reserve).Take(5).Select(peak => new SceneValue(
                reader[peak.Name], reader["{0} of what it bears", reader.Tongue.Percent(1 / peak.Reserve)], SceneScale.Place(new(peak.X, peak.Y, 0), reader)))],
            Cases = LoadedScenes.Kinds(result.Loaded),
            Case = own.Load.Kind,
        };
    }

    /// <summary>Use of the walls' strength at each vertex, per cent; NaN above the hull.</summary>
    public static double[] Use(FinStructure structure, PlateSolution plate, TriangleMesh skin)
    {
        PlateFin fin = structure.Plate.Fin;
        JudgedZone zone = LayerMargins.Judged(fin);
        int columns = Finer * zone.ChordSteps, rows = Finer * zone.SpanSteps;
        double[] grid = new double[(rows + 1) * (columns + 1)];
        for (int j = 0; j <= rows; j++)
        {
            double y = zone.FromDepth + (zone.ToDepth - zone.FromDepth) * j / rows, leading = fin.LeadingEdge(y), chord = fin.TrailingEdge(y) - leading;
            for (int i = 0; i <= columns; i++)
                grid[j * (columns + 1) + i] = 100 * LayerMargins.WallUse(plate, structure.Materials, structure.Direction, leading + chord * (zone.EdgeShare + (1 - 2 * zone.EdgeShare) * i / columns), y);
        }

        double[] values = new double[skin.VertexCount];
        for (int v = 0; v < values.Length; v++)
        {
            Point3 place = skin.Vertex(v);
            if (place.Y < -1e-6)
            {
                values[v] = double.NaN;
                continue;
            }

            double y = Math.Min(place.Y, fin.Span), leading = fin.LeadingEdge(y), chord = fin.TrailingEdge(y) - leading;
            double share = chord > 0 ? (place.X - leading) / chord : 0.5;
            double column = Math.Clamp((share - zone.EdgeShare) / (1 - 2 * zone.EdgeShare), 0, 1) * columns, row = Math.Clamp((y - zone.FromDepth) / (zone.ToDepth - zone.FromDepth), 0, 1) * rows;
            int i = Math.Min((int)column, columns - 1), j = Math.Min((int)row, rows - 1);
            (double s, double t) = (column - i, row - j);
            double At(int dj, int di) => grid[(j + dj) * (columns + 1) + i + di];
            values[v] = (1 - t) * ((1 - s) * At(0, 0) + s * At(0, 1)) + t * ((1 - s) * At(1, 0) + s * At(1, 1));
        }

        return values;
    }
}
