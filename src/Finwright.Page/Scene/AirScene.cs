using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Making.Voxels;
using Finwright.Page.Editing;
using Finwright.Page.Words;

namespace Finwright.Page.Scene;

/// <summary>The parts as they are held for the pour, with their ports and the air that stays.</summary>
internal static class AirScene
{
    // A cell is shown when so much of its room is air that stays.
    private const double SeenShare = 0.3;

    // Less is said to be none, m³: less than a drop.
    private const double Nothing = 0.05e-6;

    public static DrawnScene? Of(Standing standing, SceneRequest asked, Reader reader)
    {
        if (standing.Made is not { Poured: { Parts.Count: > 0 } poured, Parts: { } plan })
            return SceneNotes.Instead(standing, asked, reader, SceneNotes.Missing(standing, reader), reader["Air that stays when the parts are poured."]);
        SceneFile scene = new();
        Held held = new();
        List<SceneValue> values = [];
        foreach (PartPoured part in poured.Parts)
        {
            if (plan.Parts.FirstOrDefault(own => string.Equals(own.Name, part.Name, StringComparison.Ordinal))?.Mesh is not { } mesh)
                continue;
            Placement back = part.Layers.ToLayers.RigidInverse(), place = held.Put(mesh, back.Turn(part.Up)), layered = back.Then(place);
            string name = reader.Tongue.Words.Names.Part(part.Name);
            scene.Add(name, "clear", mesh.Placed(place));
            if (part.Air.Volume >= Nothing && TrappedAirFigure.AirShares(part) is { } shares && Blocks(part.Voxels, shares) is { TriangleCount: > 0 } air)
                scene.Add(reader["air"], "air", air.Placed(layered));
            foreach (PouredPort port in part.Ports)
                scene.AddLabel(reader[port.IsFeed ? "feed" : "vent"], port.IsFeed ? "disc" : "ring", layered.Apply(port.Port.Mouth));
            Bounds box = mesh.Placed(place).Bounds();
            scene.AddLabel(name, "none", new(box.Centre.X, box.Maximum.Y, box.Centre.Z));
            string told = part.Air.Volume < Nothing ? reader["none: all air finds its way out"] : $"{reader.Tongue.Millilitres(part.Air.Volume, 1)}, {reader["{0} of the pores", reader.Tongue.Percent(part.Air.Share, 1)]}";
            values.Add(new(name, told, reader["held with {0}", reader.Tongue.Words.Names.Attitude(part.Held(part.Attitude))]));
        }

        scene.About = new { version = standing.MadeVersion, isHeld = true };
        string suggested = poured.Parts.Any(part => part.ArePortsSuggested) ? reader["Some ports are suggested, since the part has none of its own."] : "";
        return new()
        {
            File = scene.ToBytes(),
            Version = standing.MadeVersion,
            Says = SceneNotes.Both(reader["The parts as they are held for the pour, up is up; blocks are air that stays. A disc is the feed, a ring a vent."], suggested),
            Note = SceneNotes.Made(standing, reader),
            Values = values,
        };
    }

    /// <summary>Cells with air as blocks, without the faces between two of them; axes of the grid.</summary>
    public static TriangleMesh Blocks(PartVoxels voxels, double[] shares)
    {
        Dictionary<int, int> numbers = [];
        List<double> points = [];
        List<int> corners = [];
        (int nx, int ny, int nz) = (voxels.CountX, voxels.CountY, voxels.CountZ);
        bool IsAir(int i, int j, int k) => i >= 0 && j >= 0 && k >= 0 && i < nx && j < ny && k < nz && shares[voxels.Index(i, j, k)] >= SeenShare;
        int Corner(int i, int j, int k)
        {
            int key = i + (nx + 1) * (j + (ny + 1) * k);
            if (!numbers.TryGetValue(key, out int number))
            {
                numbers[key] = number = points.Count / 3;
                points.AddRange([voxels.Origin.X + i * voxels.Cell.X, voxels.Origin.Y + j * voxels.Cell.Y, voxels.Origin.Z + k * voxels.Cell.Z]);
            }

            return number;
        }

        void Face(int a, int b, int c, int d) => corners.AddRange([a, b, c, a, c, d]);
        for (int k = 0; k < nz; k++)
        {
            for (int j = 0; j < ny; j++)
            {
                for (int i = 0; i < nx; i++)
                {
                    if (!IsAir(i, j, k))
                        continue;
                    if (!IsAir(i - 1, j, k))
                        Face(Corner(i, j, k), Corner(i, j, k + 1), Corner(i, j + 1, k + 1), Corner(i, j + 1, k));
                    if (!IsAir(i + 1, j, k))
                        Face(Corner(i + 1, j, k), Corner(i + 1, j + 1, k), Corner(i + 1, j + 1, k + 1), Corner(i + 1, j, k + 1));
                    if (!IsAir(i, j - 1, k))
                        Face(Corner(i, j, k), Corner(i + 1, j, k), Corner(i + 1, j, k + 1), Corner(i, j, k + 1));
                    if (!IsAir(i, j + 1, k))
                        Face(Corner(i, j + 1, k), Corner(i, j + 1, k + 1), Corner(i + 1, j + 1, k + 1), Corner(i + 1, j + 1, k));
                    if (!IsAir(i, j, k - 1))
                        Face(Corner(i, j, k), Corner(i, j + 1, k), Corner(i + 1, j + 1, k), Corner(i + 1, j, k));
                    if (!IsAir(i, j, k + 1))
                        Face(Corner(i, j, k + 1), Corner(i + 1, j, k + 1), Corner(i + 1, j + 1, k + 1), Corner(i, j + 1, k + 1));
                }
            }
        }

        return new([.. points], [.. corners]);
    }
}
