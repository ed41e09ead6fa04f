using System.IO.Compression;
using System.Text;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Files;
using Finwright.Geometry.Sections;
using Finwright.Making.Files;
using Finwright.Making.Motion;
using Finwright.Strength.Files;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Exchange.Tables;
using Finwright.Workshop.Season;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Fuzz.Tests;

/// <summary>One kind of file that comes from outside.</summary>
/// <param name="Seeds">Good files of the kind.</param>
/// <param name="Read">Reads one as the program does.</param>
/// <param name="IsRefusal">Whether an exception is one that the reader promises.</param>
internal sealed record FuzzTarget(Func<IReadOnlyList<byte[]>> Seeds, Action<byte[]> Read, Func<Exception, bool> IsRefusal)
{
    private const string MadeBy = "Finwright in trial";

    // Small parts of a closed mesh: a file of a few hundred bytes is spoilt in many more ways than a long one.
    private static readonly TriangleMesh Tetrahedron = new([0, 0, 0, 0.02, 0, 0, 0, 0.03, 0, 0, 0, 0.04], [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]);

    private static readonly Lazy<WorkshopStore> Season = new(() =>
    {
        WorkshopStore store = WorkshopStore.InMemory();
        DemoSeason.Load(store, name => DesignReader.Read(Example(name + ".fin.json")).Design!, MadeBy);
        return store;
    });

    private static readonly Lazy<IReadOnlyList<byte[]>> Designs = new(() => [.. DemoSeason.Designs.Select(name => Example(name + ".fin.json"))]);
    private static readonly Lazy<IReadOnlyList<byte[]>> Bundles = new(() => [.. ((bool[])[false, true]).Select(withBuilds => Written(stream => BundleExport.Write(Season.Value, new("Sandbar delta", null), withBuilds, MadeBy, stream)))]);

    /// <summary>Every kind by its name.</summary>
    public static IReadOnlyDictionary<string, FuzzTarget> All { get; } = new Dictionary<string, FuzzTarget>(StringComparer.Ordinal)
    {
        ["design"] = Told(() => Designs.Value, file => DesignReader.Read(file)),
        ["section coordinates"] = Told(() => [Coordinates("\n"), Coordinates("\r\n")], file => CoordinateReader.Read("spoilt", new StreamReader(new MemoryStream(file)))),
        ["stl"] = new(() => [Written(stream => StlFile.Write(stream, Tetrahedron, "seed")), Encoding.ASCII.GetBytes(StlText)], file => StlFile.Read(new MemoryStream(file)), fault => fault is FileFormatException),
        ["3mf"] = new(() => [ThreeMf()], file => ThreeMfFile.Read(new MemoryStream(file)), fault => fault is FileFormatException),
        ["3mf model"] = new(() => [Model()], file => ThreeMfFile.Read(new MemoryStream(Packed(file))), fault => fault is FileFormatException),
        ["track"] = Told(() => [Track()], file => GpxFile.Read(new MemoryStream(file))),
        ["motion"] = Told(() => [Encoding.ASCII.GetBytes(Motion)], file => MotionFile.Read(new MemoryStream(file))),
        ["bundle"] = Taken(() => Bundles.Value, (file, store) => BundleImport.Read(new MemoryStream(file), store)),
        ["stock table"] = Taken(() => [Encoding.UTF8.GetBytes(StockCsv.Write(Season.Value))], (file, store) => StockCsv.Read(new MemoryStream(file), store)),
        ["outings table"] = Taken(() => [Encoding.UTF8.GetBytes(OutingsCsv.Write(Season.Value))], (file, store) => OutingsCsv.Read(new MemoryStream(file), store)),
        ["bench readings"] = Told(() => [Example("sandbar-delta.readings.csv")], file => BenchReadings.Read(file)),
        ["cup test"] = Told(() => [Example("slow-laminating.cup.csv")], file => CupTestFile.Read(file)),
        ["material"] = Told(() => [Written(stream => MaterialFile.Write(stream, MaterialLibrary.All[0]))], file => MaterialFile.Read(file)),
        ["resin"] = Told(() => [Written(stream => ResinFile.Write(stream, ResinLibrary.All[0]))], file => ResinFile.Read(file)),
    };

    private const string StlText = "solid seed\nfacet normal 0 0 -1\nouter loop\nvertex 0 0 0\nvertex 0 30 0\nvertex 20 0 0\nendloop\nendfacet\nfacet normal 0 -1 0\nouter loop\nvertex 0 0 0\nvertex 20 0 0\nvertex 0 0 40\nendloop\nendfacet\nendsolid seed\n";

    private const string Motion = "; a box of two layers\nG21\nG90\nM83\nM104 S240\nG1 Z0.2 F600\nG0 X50 Y50 F6000\nG1 X90 E1.5 F1200\nG1 Y90 E1.5\nG1 X50 E1.5\nG1 Y50 E1.5\nM600\nG1 Z0.4\nG2 X60 Y60 I5 J5 E1\nG3 X50 Y50 R20 E1\nG92 E0\nG4 P100\nN5 G1 X80 E1*71\n";

    // Answers in words, and throws nothing.
    private static FuzzTarget Told(Func<IReadOnlyList<byte[]>> seeds, Action<byte[]> read) => new(seeds, read, _ => false);

    // Goes into a store that has what the tables speak of; what was taken in is taken out again before the next.
    private static FuzzTarget Taken(Func<IReadOnlyList<byte[]>> seeds, Action<byte[], WorkshopStore> read) => new(seeds, file =>
    {
        try
        {
            Season.Value.Together<bool>(() =>
            {
                read(file, Season.Value);
                throw new TakenOutException();
            });
        }
        catch (TakenOutException)
        {
            // As it was.
        }
    }, fault => fault is ExchangeException or StoreException);

    private static byte[] Example(string name) => File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, name));

    private static byte[] Written(Action<Stream> write)
    {
        using MemoryStream stream = new();
        write(stream);
        return stream.ToArray();
    }

    private static byte[] Coordinates(string lineEnd)
    {
        FourDigitSection section = new(2, 4, 12);
        IEnumerable<string> rows = Enumerable.Range(0, 41).Select(i => SectionGeometry.PointAt(section, i / 40.0)).Select(point => FormattableString.Invariant($"{point.X:0.00000} {point.Y:0.00000}"));
        return Encoding.ASCII.GetBytes("a section" + lineEnd + string.Join(lineEnd, rows) + lineEnd);
    }

    private static byte[] ThreeMf() => Written(stream => ThreeMfFile.Write(stream, new("seed", [new("part", Tetrahedron, Placement.Identity)]) { Notes = [new("Hash", "abc")] }));

    private static byte[] Model()
    {
        using ZipArchive archive = new(new MemoryStream(ThreeMf()));
        using Stream model = archive.GetEntry("3D/3dmodel.model")!.Open();
        return Written(model.CopyTo);
    }

    // The package is sound; only what is in it is spoilt.
    private static byte[] Packed(byte[] model)
    {
        using MemoryStream stream = new();
        stream.Write(ThreeMf());
        using (ZipArchive archive = new(stream, ZipArchiveMode.Update, leaveOpen: true))
        {
            archive.GetEntry("3D/3dmodel.model")!.Delete();
            using Stream entry = archive.CreateEntry("3D/3dmodel.model").Open();
            entry.Write(model);
        }

        return stream.ToArray();
    }

    // The first hour of the example is as good as all of it, and read a hundred times as fast.
    private static byte[] Track()
    {
        string text = Encoding.UTF8.GetString(Example("lagoon-afternoon.gpx"));
        int cut = text.IndexOf("</trkpt>", 6000, StringComparison.Ordinal) + "</trkpt>".Length;
        return Encoding.UTF8.GetBytes(text[..cut] + "</trkseg></trk></gpx>");
    }

    private sealed class TakenOutException : Exception;
}
