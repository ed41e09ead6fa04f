using System.IO.Compression;
using System.Text;
using CsCheck;
using Finwright.Geometry.Files;

namespace Finwright.Geometry.Tests.Files;

/// <summary>Files from strangers can at worst be refused, with the place of the fault.</summary>
public sealed class ThreeMfHostileTests
{
    private const string Types = """
        <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>
        """;

    private const string Relationships = """
        <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel" Target="/3D/3dmodel.model"/></Relationships>
        """;

    private const string Model = """
        <?xml version="1.0" encoding="utf-8"?>
        <model unit="millimeter" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">
        <metadata name="Title">t</metadata>
        <resources><object id="1" type="model"><mesh>
        <vertices><vertex x="0" y="0" z="0"/><vertex x="10" y="0" z="0"/><vertex x="0" y="10" z="0"/><vertex x="0" y="0" z="10"/></vertices>
        <triangles><triangle v1="0" v2="2" v3="1"/><triangle v1="0" v2="1" v3="3"/><triangle v1="1" v2="2" v3="3"/><triangle v1="2" v2="0" v3="3"/></triangles>
        </mesh></object></resources>
        <build><item objectid="1"/></build></model>
        """;

    [Fact]
    public void The_plain_sample_is_read() => Assert.Equal(1e-6 / 6, Read(Package(Model)).Parts[0].Mesh.Volume(), 1e-18);

    [Theory]
    [InlineData("millimeter", "inch", 25.4)]
    [InlineData("millimeter", "micron", 0.001)]
    [InlineData("unit=\"millimeter\"", "", 1)]
    public void The_unit_of_the_file_is_heeded(string from, string to, double millimetres) =>
        Assert.Equal(0.01 * millimetres, Read(Package(Model.Replace(from, to, StringComparison.Ordinal))).Parts[0].Mesh.Bounds().Maximum.X, 1e-12);

    [Fact]
    public void Components_are_put_together()
    {
        ThreeMfDocument read = Read(Package(Model
            .Replace("</resources>", "<object id=\"7\" name=\"pair\"><components><component objectid=\"1\"/><component objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 20 0 0\"/></components></object></resources>", StringComparison.Ordinal)
            .Replace("objectid=\"1\"/></build>", "objectid=\"7\"/></build>", StringComparison.Ordinal)));
        Assert.Equal("pair", read.Parts[0].Name);
        Assert.Equal(8, read.Parts[0].Mesh.TriangleCount);
        Assert.Equal(0.03, read.Parts[0].Mesh.Bounds().Maximum.X, 1e-12);
    }

    [Theory]
    [InlineData("v3=\"1\"/>", "v3=\"4\"/>", "line 6: vertex 4 does not exist; the mesh has 4")]
    [InlineData("v3=\"1\"/>", "v3=\"-1\"/>", "line 6: v3 \"-1\" is not a whole number")]
    [InlineData("v3=\"1\"/>", "v3=\"99999999999\"/>", "line 6: v3 \"99999999999\" is not a whole number")]
    [InlineData("v3=\"1\"/>", "v3=\"2\"/>", "uses a vertex twice")]
    [InlineData("v3=\"1\"/>", "/>", "lacks the attribute \"v3\"")]
    [InlineData("x=\"10\"", "x=\"NaN\"", "line 5: a coordinate is not a finite number")]
    [InlineData("x=\"10\"", "x=\"ten\"", "line 5: \"ten\" is not a number")]
    [InlineData("x=\"10\"", "x=\"1e9\"", "Check the unit")]
    [InlineData("x=\"10\"", "x=\"10\" w=\"1\"", "attribute \"w\" that the format does not know")]
    [InlineData("unit=\"millimeter\"", "unit=\"cubit\"", "\"cubit\" is not one of")]
    [InlineData("unit=", "requiredextensions=\"p\" unit=", "requires the extensions \"p\"")]
    [InlineData("</resources>", "<object id=\"1\"/></resources>", "id 1 is not positive or used twice")]
    [InlineData("</resources>", "<object id=\"2\"/></resources>", "neither a mesh nor components")]
    [InlineData("</resources>", "<object id=\"2\"><components><component objectid=\"2\"/></components></object></resources>", "no object 2 above")]
    [InlineData("item objectid=\"1\"", "item objectid=\"3\"", "line 8: there is no object 3")]
    [InlineData("<item objectid=\"1\"/>", "", "nothing to print")]
    [InlineData("objectid=\"1\"", "objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 -1 0 0 0\"", "mirrors or flattens")]
    [InlineData("objectid=\"1\"", "objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 0 0\"", "12 numbers")]
    [InlineData("objectid=\"1\"", "objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 0 0 1e30\"", "too large")]
    [InlineData("type=\"model\"", "type=\"other\"", "cannot be printed")]
    [InlineData("<metadata name=\"Title\">t</metadata>", "<metadata name=\"Colour\">t</metadata>", "neither a known one")]
    [InlineData("<metadata name=\"Title\">t</metadata>", "<metadata name=\"Title\"/><metadata name=\"Title\"/>", "given twice")]
    [InlineData("<build>", "<build/><build>", "wrong place or twice")]
    [InlineData("<triangles>", "text<triangles>", "text stands where")]
    [InlineData("core/2015/02", "core/2099/01", "must begin with <model>")]
    [InlineData("</model>", "", "line 8")]
    [InlineData("<model ", "<!DOCTYPE model [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]><model ", "DTD")]
    [InlineData("<model ", "<!DOCTYPE model SYSTEM \"file:///etc/passwd\"><model ", "DTD")]
    public void A_faulty_model_is_refused_with_its_place(string from, string to, string expected)
    {
        Assert.Contains(from, Model, StringComparison.Ordinal);
        int at = Model.IndexOf(from, StringComparison.Ordinal);
        string message = Refusal(Package(Model[..at] + to + Model[(at + from.Length)..]));
        Assert.Contains(expected, message, StringComparison.Ordinal);
        Assert.Contains("3dmodel.model", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Components_that_double_forty_times_are_refused_before_they_are_built()
    {
        StringBuilder more = new();
        for (int id = 2; id < 42; id++)
            more.Append(System.Globalization.CultureInfo.InvariantCulture, $"<object id=\"{id}\"><components><component objectid=\"{id - 1}\"/><component objectid=\"{id - 1}\"/></components></object>");
        Assert.Contains("more than 4000000 triangles", Refusal(Package(Model.Replace("</resources>", more + "</resources>", StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    [Fact]
    public void Elements_nested_without_end_are_refused()
    {
        string deep = string.Concat(Enumerable.Repeat("<a xmlns=\"urn:x\">", 100_000));
        Assert.Contains("nested deeper", Refusal(Package(Model.Replace("<build>", deep, StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Target=\"/3D/3dmodel.model\"", "Target=\"/3D/other.model\"", "which the file does not have")]
    [InlineData("Target=\"/3D/3dmodel.model\"", "Target=\"http://example.org/a.model\" TargetMode=\"External\"", "points outside the file")]
    [InlineData("2013/01/3dmodel\"", "2013/01/other\"", "no relationship names the model")]
    [InlineData("Id=\"r\"", "", "lacks the attribute \"Id\"")]
    [InlineData("</Relationships>", "<Relationship Id=\"r\" Type=\"x\" Target=\"/3D/3dmodel.model\"/></Relationships>", "used twice")]
    public void A_faulty_relationship_is_refused(string from, string to, string expected)
    {
        Assert.Contains(from, Relationships, StringComparison.Ordinal);
        Assert.Contains(expected, Refusal(Package(Model, Relationships.Replace(from, to, StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3dmanufacturing-3dmodel+xml", "other+xml", "it must be")]
    [InlineData("</Types>", "<Default Extension=\"MODEL\" ContentType=\"x\"/></Types>", "stated twice")]
    public void A_faulty_content_type_is_refused(string from, string to, string expected) =>
        Assert.Contains(expected, Refusal(Package(Model, Relationships, Types.Replace(from, to, StringComparison.Ordinal))), StringComparison.Ordinal);

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("/etc/passwd")]
    [InlineData("..\\windows")]
    [InlineData("C:/x")]
    [InlineData("a//b")]
    public void An_entry_that_points_out_of_the_package_is_refused(string path) =>
        Assert.Contains("unsafe path", Refusal(Package(Model, extra: archive => archive.CreateEntry(path))), StringComparison.Ordinal);

    [Fact]
    public void Doubled_or_too_many_entries_are_refused()
    {
        Assert.Contains("two entries", Refusal(Package(Model, extra: archive => archive.CreateEntry("3D/3DMODEL.model"))), StringComparison.Ordinal);
        Assert.Contains("more than 1000", Refusal(Package(Model, extra: archive =>
        {
            for (int i = 0; i < 1001; i++)
                archive.CreateEntry($"x{i}");
        })), StringComparison.Ordinal);
    }

    [Fact]
    public void A_model_that_unpacks_without_end_is_refused()
    {
        // 300 MB of blanks pack into less than a hundredth of that.
        byte[] bomb = Package(Model, extra: archive =>
        {
            using Stream stream = archive.CreateEntry("3D/bomb.model", CompressionLevel.Optimal).Open();
            stream.Write(Encoding.UTF8.GetBytes(Model.Replace("</model>", "<a xmlns=\"urn:x\">", StringComparison.Ordinal)));
            byte[] blanks = new byte[1 << 20];
            blanks.AsSpan().Fill((byte)' ');
            for (int i = 0; i < 300; i++)
                stream.Write(blanks);
        }, relationships: Relationships.Replace("3dmodel.model", "bomb.model", StringComparison.Ordinal));
        Assert.True(bomb.Length < 3_000_000);
        Assert.Contains("unpacks to more than 256 MB", Refusal(bomb), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_cut_and_an_empty_file_are_refused()
    {
        byte[] whole = ThreeMfFileTests.Written(ThreeMfFileTests.Sample());
        for (int part = 0; part < 50; part++)
            Assert.NotEmpty(Refusal(whole[..(whole.Length * part / 50)]));
    }

    [Fact]
    public void Changed_bytes_are_refused_or_read()
    {
        byte[] whole = Package(Model);
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte, Gen.Int[0, whole.Length - 1], Gen.Byte).Hold((first, a, second, b) =>
        {
            byte[] changed = [.. whole];
            (changed[first], changed[second]) = (a, b);
            try
            {
                Read(changed);
            }
            catch (FileFormatException)
            {
            }
        }, iter: 3000);
    }

    private static ThreeMfDocument Read(byte[] bytes) => ThreeMfFile.Read(new MemoryStream(bytes));

    private static string Refusal(byte[] bytes) => Assert.Throws<FileFormatException>(() => Read(bytes)).Message;

    private static byte[] Package(string model, string relationships = Relationships, string types = Types, Action<ZipArchive>? extra = null)
    {
        using MemoryStream stream = new();
        using (ZipArchive archive = new(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string path, string text) in (ReadOnlySpan<(string, string)>)[("[Content_Types].xml", types), ("_rels/.rels", relationships), ("3D/3dmodel.model", model)])
            {
                using Stream entry = archive.CreateEntry(path).Open();
                entry.Write(Encoding.UTF8.GetBytes(text));
            }

            extra?.Invoke(archive);
        }

        return stream.ToArray();
    }
}
