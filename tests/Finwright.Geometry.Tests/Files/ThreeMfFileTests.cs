using System.Globalization;
using Finwright.Geometry.Files;

namespace Finwright.Geometry.Tests.Files;

public sealed class ThreeMfFileTests
{
    private static readonly byte[] Pixel = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    [Fact]
    public void Read_gives_back_what_was_written()
    {
        ThreeMfDocument document = Sample();
        byte[] first = Written(document);
        ThreeMfDocument read = ThreeMfFile.Read(new MemoryStream(first));
        Assert.Equal(document.Title, read.Title);
        Assert.Equal([.. document.Notes], read.Notes.ToArray());
        Assert.Equal(document.Thumbnail, read.Thumbnail);
        Assert.Equal(document.Parts[0].Name, read.Parts[0].Name);
        Assert.Equal(document.Parts[1].Name, read.Parts[1].Name);
        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(document.Parts[i].Mesh.TriangleCount, read.Parts[i].Mesh.TriangleCount);
            // Single precision at 150 mm resolves 8e-6 mm.
            Assert.Equal(document.Parts[i].Mesh.Volume(), read.Parts[i].Mesh.Volume(), 1e-6 * document.Parts[i].Mesh.Volume());
            Assert.True((document.Parts[i].Placement.Apply(new(0.1, 0.2, 0.3)) - read.Parts[i].Placement.Apply(new(0.1, 0.2, 0.3))).Length < 1e-7);
        }

        Assert.Equal(first, Written(read));
    }

    [Fact]
    public void Write_gives_the_same_bytes_each_time() => Assert.Equal(Written(Sample()), Written(Sample()));

    [Fact]
    public void Written_files_are_sound_to_the_consortiums_own_library()
    {
        using TemporaryFolder folder = new();
        ThreeMfDocument document = Sample();
        AtomicFile.Write(folder["fin.3mf"], stream => ThreeMfFile.Write(stream, document));
        string checker = ExternalTool.Compile("lib3mf-check.cpp", folder.FolderPath, "lib3mf-dev", "-I/usr/include/lib3mf", "-l3MF");
        string[] lines = ExternalTool.Run(checker, "lib3mf-dev", folder["fin.3mf"]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("warnings 0", lines[0]);
        // eModelUnit: microns 0, millimetres 1.
        Assert.Equal("unit 1", lines[1]);
        Assert.Equal(4, lines.Length);
        for (int i = 0; i < 2; i++)
        {
            ThreeMfPart part = document.Parts[i];
            string[] words = lines[2 + i].Split(' ', 7);
            Assert.Equal(part.Mesh.VertexCount, int.Parse(words[1], CultureInfo.InvariantCulture));
            Assert.Equal(part.Mesh.TriangleCount, int.Parse(words[2], CultureInfo.InvariantCulture));
            Assert.Equal("1", words[3]);
            TriangleMesh laid = part.Mesh.Placed(part.Placement);
            Assert.Equal(1e9 * laid.Volume(), double.Parse(words[4], CultureInfo.InvariantCulture), 1e-5 * 1e9 * laid.Volume());
            Assert.Equal(1e3 * laid.Bounds().Minimum.Z, double.Parse(words[5], CultureInfo.InvariantCulture), 1e-3);
            Assert.Equal(part.Name, words[6]);
        }
    }

    [Fact]
    public void Write_refuses_what_no_file_could_carry()
    {
        TriangleMesh box = SampleMeshes.Box(0.01, 0.01, 0.01);
        ThreeMfPart good = new("box", box, Placement.Identity);
        Assert.Throws<ArgumentException>(() => Written(new("t", [])));
        Assert.Throws<ArgumentException>(() => Written(new("t", [good with { Placement = Placement.Identity with { AxisX = new(-1, 0, 0) } }])));
        Assert.Throws<ArgumentException>(() => Written(new("t", [good with { Placement = Placement.Shift(new(double.NaN, 0, 0)) }])));
        Assert.Throws<ArgumentException>(() => Written(new("t", [good]) { Notes = [new("a b", "")] }));
        Assert.Throws<ArgumentException>(() => Written(new("t", [good]) { Notes = [new("a", ""), new("a", "")] }));
        Assert.Throws<ArgumentException>(() => Written(new("t", [good with { Mesh = SampleMeshes.Ball(1e-9, new(0.1, 0.1, 0.1)) }])));
    }

    [Fact]
    public void Write_puts_a_blank_for_letters_that_the_file_cannot_carry()
    {
        ThreeMfDocument read = ThreeMfFile.Read(new MemoryStream(Written(new("a\0b\ud800c \U0001F3C4", [new("x\u0001", SampleMeshes.Box(0.01, 0.01, 0.01), Placement.Identity)]))));
        Assert.Equal("a b c \U0001F3C4", read.Title);
        Assert.Equal("x ", read.Parts[0].Name);
    }

    internal static ThreeMfDocument Sample() => new("Mudflat 21",
        [
            new("Blade <1> & \"tip\"", SampleMeshes.Ball(0.04, new(0.1, 0, 0.04)), Placement.Rotation(new(0, 0, 1), 0.3).Then(Placement.Shift(new(0.05, 0.06, 0)))),
            new("Fußteil", SampleMeshes.Box(0.15, 0.02, 0.01 / 3), Placement.Shift(new(0.01, 0.15, 0.0001))),
        ])
    {
        Notes = [new("DesignHash", "a1b2c3"), new("Span", "212 mm")],
        Thumbnail = Pixel,
    };

    internal static byte[] Written(ThreeMfDocument document)
    {
        using MemoryStream stream = new();
        ThreeMfFile.Write(stream, document);
        return stream.ToArray();
    }
}
