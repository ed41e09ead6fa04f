using System.Globalization;
using System.Text;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Files;
using Finwright.Page.Starting;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Exchange.Stores;

namespace Finwright.Page.Tests.Starting;

public sealed class StartingFileTests : IDisposable
{
    private readonly Workbench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_design_file_is_known_by_what_it_holds()
    {
        StartingFile.OfDesign found = Assert.IsType<StartingFile.OfDesign>(Read("whatever.bin", DesignWriter.Write(_bench.Design)));
        Assert.Equal("Plain", found.Design.Name);
        Assert.NotNull(found.Blade);
    }

    [Fact]
    public void A_design_file_cannot_name_files_of_this_computer()
    {
        FinDesign greedy = _bench.Design with { Shape = _bench.Design.Shape with { ImportedSections = [new() { Name = "own", File = "passwd" }], Sections = [new() { AtPercent = 0, Section = "own" }, new() { AtPercent = 100, Section = "own" }] } };
        StartingFile.Refused refused = Assert.IsType<StartingFile.Refused>(Read("a.fin.json", DesignWriter.Write(greedy)));
        Assert.Contains(refused.Findings, finding => finding.Code == "section-file-missing");
    }

    [Fact]
    public void Everything_wrong_with_a_design_is_told()
    {
        StartingFile.Refused refused = Assert.IsType<StartingFile.Refused>(Read("a.fin.json", """{ "format": 2, "name": "x", "shape": { "outline": { "family": "upright", "span_mm": 9999, "area_cm2": 1 } } }"""));
        Assert.True(refused.Findings.Count >= 2);
    }

    [Fact]
    public void A_bundle_and_a_whole_workshop_are_known()
    {
        using MemoryStream bundle = new(), workshop = new();
        _bench.Desk.Ask(store => BundleExport.Write(store, new("Plain", null), withBuilds: false, "test", bundle));
        _bench.Desk.Ask(store => StoreExport.Write(store, "test", workshop));
        Assert.IsType<StartingFile.OfBundle>(StartingFile.Read("a.zip", bundle, TestContext.Current.CancellationToken));
        Assert.IsType<StartingFile.OfWorkshop>(StartingFile.Read("a.zip", workshop, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void A_mesh_is_read()
    {
        TriangleMesh tetrahedron = new([0, 0, 0, 0.01f, 0, 0, 0, 0.01f, 0, 0, 0, 0.01f], [0, 2, 1, 0, 1, 3, 1, 2, 3, 0, 3, 2]);
        using MemoryStream file = new();
        StlFile.Write(file, tetrahedron, "t");
        file.Position = 0;
        Assert.Equal(4, Assert.IsType<StartingFile.OfMesh>(StartingFile.Read("part.STL", file, TestContext.Current.CancellationToken)).Mesh.TriangleCount);
        Assert.IsType<StartingFile.Refused>(Read("part.stl", "not a mesh at all"));
    }

    [Fact]
    public void Section_coordinates_are_read_and_can_start_a_fin()
    {
        // An ellipse of 12 % with a sharp tail: any closed ring will do.
        StringBuilder text = new("my section\n");
        for (int i = 0; i <= 60; i++)
        {
            double u = 2 * Math.PI * i / 60, x = 0.5 * (1 + Math.Cos(u));
            text.Append(CultureInfo.InvariantCulture, $"{x:0.00000} {0.12 * Math.Sqrt(x) * (1 - x) * Math.Sign(Math.Sin(u)):0.00000}\n");
        }

        StartingFile.OfSection found = Assert.IsType<StartingFile.OfSection>(Read("mine.dat", text.ToString()));
        Assert.Equal("mine", found.Points.Name);
        DesignReading drawn = new Finwright.Workshop.Starting.NewFin { Name = "With it", Section = found.Points }.Draw();
        Assert.False(drawn.HasErrors);
        Assert.All(drawn.Design!.Shape.Sections, station => Assert.Equal("mine", station.Section));
    }

    [Theory]
    [InlineData("a.dat", "1 2\n3 4\n5 6\n7 8\n9 10\n")]
    [InlineData("a.txt", "Dear friend,\nthis is a letter.\n")]
    [InlineData("a.zip", "PK\u0003\u0004 and then nothing")]
    [InlineData("a.3mf", "PK\u0003\u0004 and then nothing")]
    [InlineData("a.json", "")]
    [InlineData("a.json", "{")]
    [InlineData("a.bin", "\0\0\0\0")]
    public void What_cannot_be_used_is_refused_with_a_reason(string name, string content)
    {
        StartingFile.Refused refused = Assert.IsType<StartingFile.Refused>(Read(name, content));
        Assert.NotEmpty(refused.Message);
        Assert.NotEmpty(refused.Remedy);
    }

    [Fact]
    public void A_table_is_known_by_its_columns() =>
        Assert.Equal(ExchangeKind.Stock, Assert.IsType<StartingFile.OfTable>(Read("s.csv", Finwright.Workshop.Exchange.Tables.StockCsv.Write(Finwright.Workshop.Storing.WorkshopStore.InMemory()))).Kind);

    private static StartingFile Read(string name, string content)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(content));
        return StartingFile.Read(name, stream, TestContext.Current.CancellationToken);
    }
}
