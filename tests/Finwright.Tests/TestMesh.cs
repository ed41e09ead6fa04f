using System.Globalization;
using System.Text;
using Finwright.Geometry;
using Finwright.Geometry.Files;

namespace Finwright.Tests;

/// <summary>Triangles by hand, millimetres, sound or not, and the files that hold them.</summary>
internal sealed record TestMesh(IReadOnlyList<Point3[]> Triangles)
{
    /// <summary>A box of twelve triangles from a corner.</summary>
    public static TestMesh Box(double x, double y, double z, Point3 corner = default)
    {
        Point3 At(int bits) => corner + new Point3((bits & 1) * x, (bits >> 1 & 1) * y, (bits >> 2 & 1) * z);
        // Corners of each side, counter-clockwise from outside.
        int[][] sides = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
        return new([.. sides.SelectMany(side => new[] { new[] { At(side[0]), At(side[1]), At(side[2]) }, [At(side[0]), At(side[2]), At(side[3])] })]);
    }

    public TestMesh Open() => new([.. Triangles.SkipLast(1)]);

    public TestMesh InsideOut() => new([.. Triangles.Select(corners => new[] { corners[0], corners[2], corners[1] })]);

    public TestMesh And(TestMesh other) => new([.. Triangles, .. other.Triangles]);

    /// <summary>STL as text.</summary>
    public string Text()
    {
        StringBuilder text = new("solid part\n");
        foreach (Point3[] corners in Triangles)
        {
            text.Append("facet normal 0 0 0\nouter loop\n");
            foreach (Point3 p in corners)
                text.Append(CultureInfo.InvariantCulture, $"vertex {p.X} {p.Y} {p.Z}\n");
            text.Append("endloop\nendfacet\n");
        }

        return text.Append("endsolid part\n").ToString();
    }

    /// <summary>STL in binary, by the program's own writer; the mesh must be sound.</summary>
    public string Binary(string path)
    {
        using FileStream stream = File.Create(path);
        StlFile.Write(stream, Mesh(), "box");
        return path;
    }

    /// <summary>3MF by the program's own writer, with as many parts as asked; the mesh must be sound.</summary>
    public string ThreeMf(string path, params string[] names)
    {
        using FileStream stream = File.Create(path);
        ThreeMfFile.Write(stream, new("parts", [.. names.Select(name => new ThreeMfPart(name, Mesh(), Placement.Identity))]));
        return path;
    }

    private TriangleMesh Mesh()
    {
        List<Point3> points = [];
        List<int> corners = [];
        foreach (Point3 metres in Triangles.SelectMany(own => own).Select(p => 1e-3 * p))
        {
            int at = points.IndexOf(metres);
            corners.Add(at < 0 ? points.Count : at);
            if (at < 0)
                points.Add(metres);
        }

        return new([.. points.SelectMany(p => new[] { p.X, p.Y, p.Z })], [.. corners]);
    }
}
