using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Making.Voxels;
using Finwright.Page.Scene;

namespace Finwright.Page.Tests.Scene;

public sealed class MadeSceneTests(KnownFin fin)
{
    [Fact]
    public void The_cut_face_is_as_warm_as_the_cure_says()
    {
        PartCured part = fin.Made.Made!.Cured!.Parts.MaxBy(own => own.Band.Nominal.Resin.Temperature)!;
        DrawnScene scene = FinScene.Of(fin.Made, new(Surface.Warmth), fin.Reader, TestContext.Current.CancellationToken)!;
        Assert.True(scene.IsThere);
        SceneReading read = new(scene.File);
        double hottest = read.Parts.Where(own => own.GetProperty("tone").GetString() == "blade").Max(own => read.Floats(own, "value").Max());
        double peak = part.Band.Nominal.Resin.Temperature - 273.15, field = part.Band.Nominal.FieldAtPeak.Max() - 273.15;
        // The hottest cell lies near the middle, but cells beside it are mixed in on the face.
        Assert.InRange(hottest, field - 0.1 * (field - 15) - 0.5, Math.Max(peak, field) + 1e-3);
        Assert.True(scene.Legend!.Scale.Last >= hottest);
    }

    [Fact]
    public void The_cut_face_has_the_outline_of_the_part()
    {
        PartCured part = fin.Made.Made!.Cured!.Parts.First(own => own.Name.StartsWith("blade", StringComparison.Ordinal));
        (TriangleMesh face, double[] kelvin) = WarmthSlice.Of(part);
        Assert.Equal(face.VertexCount, kelvin.Length);
        TriangleMesh mesh = fin.Made.Made.Parts!.Parts.First(own => own.Name == part.Name).Mesh;
        Bounds cut = face.Bounds(), whole = mesh.Bounds();
        // To a cell or two of the grid at each edge, where less than half of a cell is part.
        double cell = 2 * Math.Max(part.Voxels.Cell.X, Math.Max(part.Voxels.Cell.Y, part.Voxels.Cell.Z));
        Assert.InRange(cut.Size.Y, whole.Size.Y - 2 * cell, whole.Size.Y + cell);
        Assert.InRange(cut.Size.X, whole.Size.X - 3 * cell, whole.Size.X + cell);
        TriangleMesh starboard = WarmthSlice.Behind(mesh, starboard: true), port = WarmthSlice.Behind(mesh, starboard: false);
        Assert.Equal(mesh.Area(), starboard.Area() + port.Area(), 1e-3 * mesh.Area());
        Assert.True(starboard.Points().Where((_, i) => starboard.Corners.Contains(i)).All(p => p.Z >= -1e-12));
    }

    [Fact]
    public void Every_part_that_is_poured_has_its_ports_and_its_air()
    {
        DrawnScene scene = FinScene.Of(fin.Made, new(Surface.Air), fin.Reader, TestContext.Current.CancellationToken)!;
        SceneReading read = new(scene.File);
        int ports = fin.Made.Made!.Poured!.Parts.Sum(part => part.Ports.Count), labels = read.Header.GetProperty("labels").GetArrayLength();
        Assert.Equal(ports + fin.Made.Made.Poured.Parts.Count, labels);
        Assert.Equal(fin.Made.Made.Poured.Parts.Count, scene.Values.Count);
    }

    [Fact]
    public void Cells_of_air_become_closed_blocks()
    {
        PartVoxels voxels = new(new(1, 2, 3), new(0.5, 1, 2), 4, 4, 4);
        double[] shares = new double[voxels.Count];
        shares[voxels.Index(1, 1, 1)] = shares[voxels.Index(2, 1, 1)] = shares[voxels.Index(3, 3, 3)] = 1;
        TriangleMesh air = AirScene.Blocks(voxels, shares);
        // Cells of 0.5 × 1 × 2: one alone has 7 m² of faces, two side by side have 2 × 7 − 2 × 2.
        Assert.Equal(3, air.Volume(), 12);
        Assert.Equal(7 + 10, air.Area(), 12);
    }

    [Fact]
    public void Parts_stand_on_their_bed()
    {
        int plates = fin.Made.Made!.Parts!.Plates.Count;
        for (int number = 1; number <= plates; number++)
        {
            DrawnScene scene = FinScene.Of(fin.Made, new(Surface.Parts) { Plate = number }, fin.Reader, TestContext.Current.CancellationToken)!;
            Assert.Equal(plates, scene.Plates);
            SceneReading read = new(scene.File);
            float[] bed = read.Floats(read.Parts.First(part => part.GetProperty("name").GetString() == "bed"), "lines");
            foreach (float[] places in read.Parts.Where(part => part.TryGetProperty("position", out _)).Select(part => read.Floats(part, "position")))
            {
                // Up is −y: nothing below the bed, and all of it within.
                Assert.InRange(places.Where((_, i) => i % 3 == 1).Max(), -1e-5, 1e-5);
                Assert.InRange(places.Where((_, i) => i % 3 == 0).Min(), 0, 1);
                Assert.True(places.Where((_, i) => i % 3 == 0).Max() <= bed.Where((_, i) => i % 3 == 0).Max());
                Assert.True(places.Where((_, i) => i % 3 == 2).Max() <= bed.Where((_, i) => i % 3 == 2).Max());
            }
        }
    }

    [Fact]
    public void Held_parts_show_up_as_up_and_stand_side_by_side()
    {
        TriangleMesh mesh = fin.Shaped.Skin!;
        Held held = new();
        Point3 up = new(0.6, -0.8, 0);
        Placement first = held.Put(mesh, up), second = held.Put(mesh, up);
        Point3 shown = first.Turn(up);
        Assert.Equal(-1, shown.Y, 9);
        Assert.Equal(1, first.Determinant, 9);
        Bounds a = mesh.Placed(first).Bounds(), b = mesh.Placed(second).Bounds();
        Assert.True(b.Minimum.X > a.Maximum.X);
        Assert.Equal(0, a.Maximum.Y, 9);
    }
}
