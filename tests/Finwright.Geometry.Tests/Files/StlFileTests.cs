using System.Buffers.Binary;
using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Finwright.Geometry.Files;

namespace Finwright.Geometry.Tests.Files;

public sealed partial class StlFileTests
{
    [Fact]
    public void Write_has_the_binary_layout_and_never_starts_like_the_text_form()
    {
        byte[] bytes = Written(SampleMeshes.Box(0.1, 0.02, 0.003), "solid Flügel");
        Assert.Equal(84 + 50 * 12, bytes.Length);
        Assert.StartsWith("Finwright, millimetres: solid Fl?gel\0", Encoding.ASCII.GetString(bytes, 0, 80), StringComparison.Ordinal);
        Assert.Equal(12, BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(80)));
        // First triangle of the box lies in its bottom: normal (0, 0, -1), then a corner 100 mm along x among the three.
        Assert.Equal(-1f, BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(84 + 8)));
        Assert.Equal(100f, BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(84 + 24)));
    }

    [Fact]
    public void Read_gives_back_what_was_written()
    {
        TriangleMesh ball = SampleMeshes.Ball(0.07, new(0.2, -0.1, 0.05));
        byte[] first = Written(ball, "ball");
        TriangleMesh read = StlFile.Read(new MemoryStream(first));
        Assert.Equal(ball.TriangleCount, read.TriangleCount);
        Assert.Equal(ball.VertexCount, read.VertexCount);
        // Single precision at 270 mm resolves 1.5e-5 mm.
        Assert.Equal(ball.Volume(), read.Volume(), 1e-6 * ball.Volume());
        Assert.Equal(first, Written(read, "ball"));
    }

    [Fact]
    public void Write_leaves_out_triangles_that_single_precision_flattens()
    {
        // A ball of a millionth of a millimetre at 100 mm, where single precision resolves 8e-6 mm.
        TriangleMesh ball = SampleMeshes.Ball(1e-9, new(0.1, 0.1, 0.1));
        Assert.Throws<ArgumentException>(() => Written(ball, "nothing"));
        TriangleMesh both = new([.. SampleMeshes.Box(0.01, 0.01, 0.01).Coordinates, .. ball.Coordinates], [.. SampleMeshes.Box(1, 1, 1).Corners, .. ball.Corners.ToArray().Select(i => i + 8)]);
        TriangleMesh read = StlFile.Read(new MemoryStream(Written(both, "box")));
        Assert.Equal(12, read.TriangleCount);
        Assert.True(MeshSummary.Of(read).IsClosed);
    }

    [Fact]
    public void Written_files_are_watertight_to_an_independent_checker()
    {
        using TemporaryFolder folder = new();
        TriangleMesh ball = SampleMeshes.Ball(0.07, new(0.2, -0.1, 0.05));
        AtomicFile.Write(folder["ball.stl"], stream => StlFile.Write(stream, ball, "ball"));
        string report = ExternalTool.Run("admesh", "admesh", "--no-check", "--exact", "--normal-directions", folder["ball.stl"]);
        foreach (string fault in (string[])["Total disconnected facets", "Degenerate facets", "Edges fixed", "Facets removed", "Facets reversed", "Backwards edges", "Normals fixed"])
            Assert.True(Regex.IsMatch(report, $@"{fault}\s*:\s*0\b", RegexOptions.None, TimeSpan.FromSeconds(1)) || !report.Contains(fault, StringComparison.Ordinal), report);
        Match volume = Volume().Match(report);
        Assert.Equal(1e9 * ball.Volume(), double.Parse(volume.Groups["mm3"].Value, System.Globalization.CultureInfo.InvariantCulture), 1e-5 * 1e9 * ball.Volume());
    }

    [GeneratedRegex(@"Volume\s*:\s*(?<mm3>[0-9.]+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Volume();

    [Fact]
    public void Read_takes_the_text_form_with_several_solids_and_any_case()
    {
        string text = Text(SampleMeshes.Box(0.01, 0.02, 0.03), "one") + Text(SampleMeshes.Box(0.01, 0.01, 0.01).Placed(Placement.Shift(new(1, 0, 0))), "two solid").ToUpperInvariant();
        TriangleMesh read = StlFile.Read(new MemoryStream(Encoding.ASCII.GetBytes(text)));
        Assert.Equal(24, read.TriangleCount);
        Assert.Equal(16, read.VertexCount);
        Assert.Equal(7e-6, read.Volume(), 1e-11);
    }

    [Fact]
    public void Read_takes_a_binary_file_whose_header_starts_with_solid()
    {
        byte[] bytes = Written(SampleMeshes.Box(0.01, 0.01, 0.01), "box");
        "solid box"u8.CopyTo(bytes);
        Assert.Equal(12, StlFile.Read(new MemoryStream(bytes)).TriangleCount);
    }

    [Theory]
    [InlineData("solid x\nfacet normal 0 0 1\nouter loop\nvertex 0 0 NaN", "Line 4", "cut short")]
    [InlineData("solid x\nfacet normal 0 0 1\nouter loop\nvertex 0 0 zero", "Line 4", "\"zero\" is not a number")]
    [InlineData("solid x\nfacet normal 0 0 1\nouter loop\nvertex 0 0 NaN vertex 1 0 0 vertex 0 1 0 endloop endfacet endsolid", "Line 4", "not a finite number")]
    [InlineData("solid x\nfacet normal 0 0 1\nouter loop\nvertex 0 0 1e9 vertex 1 0 0 vertex 0 1 0 endloop endfacet endsolid", "Line 4", "Check the unit")]
    [InlineData("solid x\nfacet normal 0 0 1\nouter hoop", "Line 3", "\"loop\" must stand")]
    [InlineData("solid x\nendsolid x\n", "no triangle", "")]
    [InlineData("", "0 bytes", "cut short")]
    [InlineData("<html>not found</html>", "22 bytes", "another kind")]
    public void Read_refuses_a_bad_text_with_its_place_and_reason(string text, string place, string reason)
    {
        string message = Assert.Throws<FileFormatException>(() => StlFile.Read(new MemoryStream(Encoding.ASCII.GetBytes(text)))).Message;
        Assert.Contains(place, message, StringComparison.Ordinal);
        Assert.Contains(reason, message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(float.NaN)]
    [InlineData(float.NegativeInfinity)]
    [InlineData(1e9f)]
    public void Read_refuses_a_bad_coordinate_with_its_triangle(float value)
    {
        byte[] bytes = Written(SampleMeshes.Box(0.01, 0.01, 0.01), "box");
        BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(84 + 50 + 12), value);
        string message = Assert.Throws<FileFormatException>(() => StlFile.Read(new MemoryStream(bytes))).Message;
        Assert.StartsWith("Triangle 2 ", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_refuses_every_cut_of_either_form()
    {
        TriangleMesh box = SampleMeshes.Box(0.01, 0.01, 0.01);
        foreach (byte[] whole in (byte[][])[Written(box, "box"), Encoding.ASCII.GetBytes(Text(box, "box").TrimEnd()[..^"endsolid box".Length])])
            for (int part = 0; part < 50; part++)
                Assert.Throws<FileFormatException>(() => StlFile.Read(new MemoryStream(whole, 0, whole.Length * part / 50)));
    }

    [Fact]
    public void Read_of_random_bytes_refuses_or_gives_a_mesh()
    {
        byte[] head = "solid x\nfacet normal 0 0 0 outer loop vertex "u8.ToArray();
        Gen.Select(Gen.Byte.Array[0, 400], Gen.Bool).Hold((bytes, text) =>
        {
            try
            {
                StlFile.Read(new MemoryStream(text ? [.. head, .. bytes] : bytes));
            }
            catch (FileFormatException)
            {
            }
        });
    }

    [Fact]
    public void Read_stops_at_its_limit_without_taking_the_whole_stream()
    {
        using EndlessStream endless = new();
        Assert.Contains("larger than", Assert.Throws<FileFormatException>(() => StlFile.Read(endless)).Message, StringComparison.Ordinal);
        Assert.True(endless.Taken < 300L * 1024 * 1024);
    }

    private static byte[] Written(TriangleMesh mesh, string title)
    {
        using MemoryStream stream = new();
        StlFile.Write(stream, mesh, title);
        return stream.ToArray();
    }

    private static string Text(TriangleMesh mesh, string name)
    {
        StringBuilder text = new($"solid {name}\n");
        for (int i = 0; i < mesh.Corners.Length; i += 3)
        {
            text.Append("  facet normal 0 0 0\r\n    outer loop\n");
            for (int k = 0; k < 3; k++)
            {
                Point3 p = 1000 * mesh.Vertex(mesh.Corners[i + k]);
                text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\tvertex {p.X:e6} {p.Y:e6} {p.Z:e6}\n");
            }

            text.Append("    endloop\n  endfacet\n");
        }

        return text.Append(System.Globalization.CultureInfo.InvariantCulture, $"endsolid {name}\n").ToString();
    }
}
