using Finwright.Geometry;
using Finwright.Page.Scene;

namespace Finwright.Page.Tests.Scene;

public sealed class SceneFileTests
{
    private static readonly TriangleMesh Triangle = new([0, 0, 0, 1, 0, 0, 0, 2, 0], [0, 1, 2]);

    [Fact]
    public void What_goes_in_comes_out_again()
    {
        SceneFile file = new() { About = new { version = 7, words = "größer" } };
        file.Add("blade", "blade", Triangle, [1.5, double.NaN, -3], [0, 0, 0.1, 0, 0, 0.2, 0, 0, 0.3]);
        file.AddLines("line", "ink", [0, 0, 0, 1, 1, 1]);
        file.Add("base", "base", Triangle);
        file.AddLabel("feed", "disc", new(1, 2, 3));
        SceneReading read = new(file.ToBytes());
        Assert.Equal(7, read.About.GetProperty("version").GetInt32());
        Assert.Equal("größer", read.About.GetProperty("words").GetString());
        Assert.Equal(3, read.Parts.Count);
        Assert.Equal([0, 0, 0, 1, 0, 0, 0, 2, 0], read.Floats(read.Parts[0], "position"));
        Assert.Equal([0, 1, 2], read.Whole(read.Parts[0], "index"));
        Assert.Equal([1.5f, SceneFile.NotKnown, -3], read.Floats(read.Parts[0], "value"));
        Assert.Equal(0.2f, read.Floats(read.Parts[0], "shift")[5]);
        Assert.Equal([0, 0, 0, 1, 1, 1], read.Floats(read.Parts[1], "lines"));
        Assert.Equal([0, 1, 2], read.Whole(read.Parts[2], "index"));
        Assert.Equal(2, read.Header.GetProperty("labels")[0].GetProperty("at")[1].GetDouble());
    }

    [Fact]
    public void A_ring_closes_on_itself()
    {
        SceneFile file = new();
        file.AddRing("ring", "ink", [new(0, 0, 0), new(1, 0, 0), new(1, 1, 0)]);
        SceneReading read = new(file.ToBytes());
        float[] points = read.Floats(read.Parts[0], "lines");
        Assert.Equal(18, points.Length);
        Assert.Equal(points[..3], points[^3..]);
    }

    [Fact]
    public void A_finer_mesh_keeps_its_surface_and_stays_closed()
    {
        // A box of 1 × 2 × 3: two triangles a side.
        TriangleMesh box = PrismMesh.Between([new(0, 0, 0), new(1, 0, 0), new(1, 2, 0), new(0, 2, 0)], [new(0, 0, 3), new(1, 0, 3), new(1, 2, 3), new(0, 2, 3)]);
        Assert.Equal(6, box.Volume(), 12);
        TriangleMesh fine = FinerMesh.Of(box, 0.25);
        Assert.Equal(box.Area(), fine.Area(), 9);
        Assert.Equal(6, fine.Volume(), 9);
        Dictionary<(int, int), int> edges = [];
        for (int t = 0; t < fine.Corners.Length; t += 3)
        {
            for (int n = 0; n < 3; n++)
            {
                (int a, int b) = (fine.Corners[t + n], fine.Corners[t + (n + 1) % 3]);
                Assert.InRange((fine.Vertex(a) - fine.Vertex(b)).Length, 0, 0.25 + 1e-12);
                edges[(Math.Min(a, b), Math.Max(a, b))] = edges.GetValueOrDefault((Math.Min(a, b), Math.Max(a, b))) + (a < b ? 1 : -1);
            }
        }

        // Every edge is run through once each way.
        Assert.All(edges.Values, sum => Assert.Equal(0, sum));
    }
}
