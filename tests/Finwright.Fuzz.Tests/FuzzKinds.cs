using System.IO.Compression;
using System.Text;
using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Files;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Sections;
using Finwright.Making.Files;
using Finwright.Making.Motion;
using Finwright.Page.RunSheets;
using Finwright.Page.Starting;
using Finwright.Strength.Files;
using Finwright.Workshop.Bench;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Exchange.Stores;
using Finwright.Workshop.Exchange.Tables;
using Finwright.Workshop.Library;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Season;
using Finwright.Workshop.Starting;
using Finwright.Workshop.Storing;
using Finwright.Workshop.Tracks;

namespace Finwright.Fuzz.Tests;

/// <summary>Every kind of file that comes from outside.</summary>
internal static class FuzzKinds
{
    // Small parts of a closed mesh: a file of a few hundred bytes is spoilt in many more ways than a long one.
    private static readonly TriangleMesh Tetrahedron = new([0, 0, 0, 0.02, 0, 0, 0, 0.03, 0, 0, 0, 0.04], [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]);

    private static readonly LibraryKind[] PartKinds = [LibraryKind.Box, LibraryKind.Printer, LibraryKind.Hardware, LibraryKind.Board, LibraryKind.Sail, LibraryKind.Rider, LibraryKind.Spot];

    private static readonly Lazy<FinDesign> Sandbar = new(() => DesignReader.Read(Example("sandbar-delta.fin.json")).Design!);

    private static readonly Lazy<WorkshopStore> Season = new(() =>
    {
        WorkshopStore store = WorkshopStore.InMemory();
        DemoSeason.Load(store, name => DesignReader.Read(Example(name + ".fin.json")).Design!, SmallWorkshop.MadeBy);
        return store;
    });

    private static readonly Lazy<WorkshopStore> Small = new(() =>
    {
        WorkshopStore store = WorkshopStore.InMemory();
        FillSmall(store);
        return store;
    });

    private static readonly Lazy<WorkshopStore> Empty = new(() => WorkshopStore.InMemory());

    private static readonly Lazy<Assessor> Works = new(() => new Assessor());

    private static readonly Lazy<IReadOnlyList<byte[]>> Designs = new(() => [.. DemoSeason.Designs.Select(name => Example(name + ".fin.json")), .. NewFins(), Encoding.UTF8.GetBytes(OldDesign)]);

    private static readonly Lazy<IReadOnlyList<byte[]>> Bundles = new(() => [.. ((bool[])[false, true]).Select(withBuilds => Written(stream => BundleExport.Write(Season.Value, new("Sandbar delta", null), withBuilds, SmallWorkshop.MadeBy, stream)))]);

    private static readonly Lazy<byte[]> WholeWorkshop = new(() => Written(stream => StoreExport.Write(Small.Value, SmallWorkshop.MadeBy, stream)));

    private static readonly Lazy<SealedPieces> BundlePieces = new(() => new(Written(stream => BundleExport.Write(Small.Value, new(SmallWorkshop.DesignName, null), true, SmallWorkshop.MadeBy, stream)), "bundle.json"));

    private static readonly Lazy<SealedPieces> WorkshopPieces = new(() => new(WholeWorkshop.Value, "workshop.json"));

    // What the page is brought, by the ending of its name.
    private static readonly Lazy<IReadOnlyList<(string Name, byte[] File)>> Brought = new(() =>
    [
        .. Designs.Value.Select(design => ("a.fin.json", design)), ("a.zip", Bundles.Value[0]), ("a.zip", WholeWorkshop.Value), ("a.stl", BinaryStl()), ("a.3mf", ThreeMf()),
        ("a.dat", Coordinates("\n")), ("a.csv", Encoding.UTF8.GetBytes(StockCsv.Write(Season.Value))), ("a.csv", Encoding.UTF8.GetBytes(OutingsCsv.Write(Season.Value))),
    ]);

    /// <summary>Every kind by its name.</summary>
    public static IReadOnlyDictionary<string, FuzzTarget> All { get; } = new Dictionary<string, FuzzTarget>(StringComparer.Ordinal)
    {
        ["design"] = FuzzTarget.Told(() => Designs.Value, file => DesignReader.Read(file).Findings),
        ["brought to the page"] = new(() => [.. Brought.Value.Select(own => own.File)], (file, seed) => StartingFile.Read(Brought.Value[seed].Name, new MemoryStream(file)) is StartingFile.Refused { Message: var why, Remedy: var remedy } ? $"{why} {remedy}" : null, _ => false) { OneIn = 10 },
        ["section coordinates"] = new(() => [Coordinates("\n"), Coordinates("\r\n"), SideBySide()], (file, _) => SectionFiles.Take("spoilt", new StreamReader(new MemoryStream(file))).Reading is { Section: null, Problems: var problems } ? problems[0].Message : null, _ => false),
        ["stl"] = FuzzTarget.Thrown(() => [BinaryStl(), Encoding.ASCII.GetBytes(StlText)], (file, _) => StlFile.Read(new MemoryStream(file)), fault => fault is FileFormatException),
        ["3mf"] = FuzzTarget.Thrown(() => [ThreeMf()], (file, _) => ThreeMfFile.Read(new MemoryStream(file)), fault => fault is FileFormatException),
        ["3mf model"] = FuzzTarget.Thrown(() => [Model()], (file, _) => ThreeMfFile.Read(new MemoryStream(Packed(file))), fault => fault is FileFormatException),
        ["mesh as a part"] = new(() => [Model()], (file, _) => MakePart(Packed(file)), fault => fault is FileFormatException) { OneIn = 100, Longest = TimeSpan.FromMinutes(1) },
        ["part settings"] = FuzzTarget.Told(() => [Encoding.UTF8.GetBytes(PartSettings)], file => PartSettingsReader.Read(file).Findings),
        ["track"] = FuzzTarget.Told(() => [Track(), Encoding.UTF8.GetBytes(OldTrack)], file => Measured(OutingTracks.Read(new MemoryStream(file), "a.gpx"))),
        ["motion"] = FuzzTarget.Told(() => [Encoding.ASCII.GetBytes(Motion), Encoding.ASCII.GetBytes(ArcMotion)], Stopped),
        ["bundle"] = Taken(() => Bundles.Value, Season, (file, _, store) => BundleImport.Read(new MemoryStream(file), store)),
        ["bundle contents"] = Taken(() => BundlePieces.Value.Contents, Empty, (file, seed, store) => BundleImport.Read(new MemoryStream(BundlePieces.Value.With(seed, file)), store)),
        ["workshop"] = FuzzTarget.Thrown(() => [WholeWorkshop.Value], (file, _) => TakeWorkshop(file), IsRefusalOfStore) with { OneIn = 2 },
        ["workshop contents"] = FuzzTarget.Thrown(() => WorkshopPieces.Value.Contents, (file, seed) => TakeWorkshop(WorkshopPieces.Value.With(seed, file)), IsRefusalOfStore) with { OneIn = 2 },
        ["store"] = FuzzTarget.Thrown(() => [StoreFile()], (file, _) => OpenStore(file), IsRefusalOfStore) with { OneIn = 4 },
        ["stock table"] = Taken(() => [Encoding.UTF8.GetBytes(StockCsv.Write(Season.Value))], Season, (file, _, store) => StockCsv.Read(new MemoryStream(file), store)),
        ["outings table"] = Taken(() => [Encoding.UTF8.GetBytes(OutingsCsv.Write(Season.Value))], Season, (file, _, store) => OutingsCsv.Read(new MemoryStream(file), store)),
        ["readings table"] = Taken(() => [Example("sandbar-delta.readings.csv")], Small, (file, _, store) => ReadingsCsv.Read(new MemoryStream(file), store, store.Builds.List()[0], new(2026, 6, 4), RootHold.Elastic, 0.24)),
        ["bench readings"] = FuzzTarget.Told(() => [Example("sandbar-delta.readings.csv")], file => BenchReadings.Read(file).Findings),
        ["cup test"] = FuzzTarget.Told(() => [Example("slow-laminating.cup.csv")], file => CupTestFile.Read(file).Findings),
        ["material"] = FuzzTarget.Told(() => [.. MaterialLibrary.All.Select(own => Written(stream => MaterialFile.Write(stream, own)))], file => PutIn(LibraryKind.Material, file)),
        ["resin"] = FuzzTarget.Told(() => [.. ResinLibrary.All.Select(own => Written(stream => ResinFile.Write(stream, own)))], file => PutIn(LibraryKind.Resin, file)),
        ["library part"] = FuzzTarget.Told(() => [.. PartKinds.Select(kind => Encoding.UTF8.GetBytes(DesignPart.Of(kind, "Mine", "as measured", Sandbar.Value).Write()))], (file, seed) => PutIn(PartKinds[seed], file)),
        ["run sheet entries"] = new(() => [SmallWorkshop.Sent], (file, _) => EntersRunSheet(file) ? null : "What was sent does not fit the sheet.", fault => fault is StoreException),
    };

    private const string StlText = "solid seed\nfacet normal 0 0 -1\nouter loop\nvertex 0 0 0\nvertex 0 30 0\nvertex 20 0 0\nendloop\nendfacet\nfacet normal 0 -1 0\nouter loop\nvertex 0 0 0\nvertex 20 0 0\nvertex 0 0 40\nendloop\nendfacet\nendsolid seed\n";

    private const string Motion = "; a box of two layers\nG21\nG90\nM83\nM104 S240\nG1 Z0.2 F600\nG0 X50 Y50 F6000\nG1 X90 E1.5 F1200\nG1 Y90 E1.5\nG1 X50 E1.5\nG1 Y50 E1.5\nM600\nG1 Z0.4\nG2 X60 Y60 I5 J5 E1\nG3 X50 Y50 R20 E1\nG92 E0\nG4 P100\nN5 G1 X80 E1*9\n";

    // Arcs by centre and radius, a full circle, a helix; inches and steps from place to place; heat, fan and flow.
    private const string ArcMotion = "M140 S80\nM190 S80\nM104 S240 T0\nM109 S240\nT0\nG28\nG92 E0\nM82\nM106 S128\nG1 Z0.2 F900\nG0 X10 Y10\nG1 X40 E1.2 F1800\nG2 X50 Y20 I0 J10 E1.9\nG3 X40 Y30 R10 E2.6\nG2 I5 J0 E4\n(a remark)\nM221 S95\nG91\nG1 Z0.2\nG90\nG1 X10 E5.5\nG3 X10 Y10 Z0.8 I0 J-10 E7\nG20\nG1 X0.5 Y0.5 E8\nG21\nG90.1\nG2 X20 Y10 I15 J10 E9\nG91.1\nM200 D0\nM107\nM0\nG1 Z1 F900\nG1 X40 E12\nM104 S0\nM84\n";

    // A recorder of version 1.0 that names its speeds otherwise, and two segments.
    private const string OldTrack = "<?xml version=\"1.0\"?><gpx version=\"1.0\" xmlns=\"http://www.topografix.com/GPX/1/0\"><wpt lat=\"52\" lon=\"5\"><name>Slip</name></wpt><trk><trkseg>"
        + "<trkpt lat=\"52.0000\" lon=\"5.0000\"><ele>0</ele><time>2026-07-14T11:00:00Z</time><speed>8.1</speed><fix>3d</fix><sat>9</sat><hdop>1.2</hdop></trkpt><trkpt lat=\"52.0001\" lon=\"5.0000\"><time>2026-07-14T11:00:01.5Z</time><speed>8.2</speed></trkpt></trkseg><trkseg>"
        + "<trkpt lat=\"52.0002\" lon=\"5.0001\"><time>2026-07-14T13:00:02+02:00</time><extensions><x:data xmlns:x=\"urn:test\"><x:hr>120</x:hr><x:speed>8.3</x:speed></x:data></extensions></trkpt><trkpt lat=\"52.0003\" lon=\"5.0002\"><time>2026-07-14T13:00:03+02:00</time><extensions><x:data xmlns:x=\"urn:test\"><x:speed>8.4</x:speed></x:data></extensions></trkpt></trkseg></trk></gpx>";

    // Of the first format, which is brought up to date when it is read; with comments.
    private const string OldDesign = """
        {
          // from an older program
          "format": 1,
          "name": "old",
          "blade": {
            "outline": { "family": "upright", "span_cm": 30, "root_chord_cm": 12 },
            "stations": [ { "at": 0, "twist_deg": 0 }, { "at": 1, "twist_deg": -1.5 }, ]
          }
        }
        """;

    // As docs/part-settings.md has it.
    private const string PartSettings = """
        {
          "format": 1,
          "name": "test block",
          "print": { "walls": 3, "solid_layers": 5, "infill_percent": 15, "layer_mm": 0.2 },
          "pour": { "system": { "name": "laminating-slow" }, "room_celsius": 20, "cooling": "still-air" },
          "ports": [
            { "x_mm": 30, "y_mm": 0, "z_mm": 5 },
            { "x_mm": 30, "y_mm": 0, "z_mm": 95 }
          ],
          "prices": { "filament_per_kg": 20, "resin_per_kg": 25 }
        }
        """;

    // Goes into a store and is looked at there as the program shows it; what was taken in is taken out again before the next.
    private static FuzzTarget Taken(Func<IReadOnlyList<byte[]>> seeds, Lazy<WorkshopStore> store, Action<byte[], int, WorkshopStore> read) => FuzzTarget.Thrown(
        seeds,
        (file, seed) => TakenOut(store.Value, () =>
        {
            read(file, seed, store.Value);
            // The season is large, and its tables are read by hundreds of tests.
            if (store != Season)
                SmallWorkshop.LookAtAll(store.Value);
        }),
        IsRefusalOfStore);

    private static bool IsRefusalOfStore(Exception fault) => fault is ExchangeException or StoreException;

    private static void TakeWorkshop(byte[] file)
    {
        using WorkshopStore store = WorkshopStore.InMemory();
        StoreImport.Read(new MemoryStream(file), store);
        SmallWorkshop.LookAtAll(store);
    }

    private static void TakenOut(WorkshopStore store, Action work)
    {
        try
        {
            store.Together<bool>(() =>
            {
                work();
                throw new TakenOutException();
            });
        }
        catch (TakenOutException)
        {
            // As it was.
        }
    }

    private static IEnumerable<Finding> Measured((TrackReading Reading, KeptTrack? Kept) came)
    {
        if (came.Kept is not { } kept)
            return came.Reading.Findings;
        Track track = TrackForm.Read(kept.Points);
        return [.. came.Reading.Findings, .. TrackMeasures.Of(track).Findings, .. TrackMeasures.Of(track, positionsOnly: true).Findings];
    }

    private static IEnumerable<Finding> Stopped(byte[] file)
    {
        MotionReading reading = MotionFile.Read(new MemoryStream(file));
        if (reading.Summary is null)
            return reading.Findings;
        using MemoryStream copy = new();
        StopInsertion insertion = MotionStops.Insert(new MemoryStream(file), copy, [new(0.3e-3, "nut"), new(0.7e-3, "rod")]);
        Assert.True(insertion.Proof is null or { Holds: true } || insertion.Findings.Any(finding => finding.IsError), "Stops were put in without a proof that nothing else changed.");
        return reading.Findings;
    }

    private static IEnumerable<Finding> PutIn(LibraryKind kind, byte[] file)
    {
        LibraryReading reading = LibraryFile.Read(kind, file);
        return reading.Content is { } content ? [.. reading.Findings, .. content.Into(Sandbar.Value, isKnown: false).Findings] : reading.Findings;
    }

    private static bool EntersRunSheet(byte[] file)
    {
        if (RunEntries.Read(SmallWorkshop.Plan, file) is not { } entries)
            return false;
        WorkshopStore store = Small.Value;
        long sheet = store.RunSheets.List()[0].Id;
        TakenOut(store, () =>
        {
            store.RunSheets.Enter(sheet, entries);
            store.RunSheets.Readings(sheet);
        });
        return true;
    }

    private static string? MakePart(byte[] file)
    {
        if (ThreeMfFile.Read(new MemoryStream(file)).Parts is not [{ } part])
            return "Not one part.";
        Finding? error = Works.Value.Make("spoilt", part.Mesh.Placed(part.Placement), PartSettingsReader.Check(new()), AssessmentDepth.Pour).Findings.FirstOrDefault(finding => finding.IsError);
        return error is null ? null : $"{error.Message} {error.Remedy}";
    }

    private static void OpenStore(byte[] file)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("finwright-fuzz-");
        string path = Path.Combine(folder.FullName, "spoilt.finstore");
        try
        {
            File.WriteAllBytes(path, file);
            using WorkshopStore store = WorkshopStore.Open(path);
            StoreCheck.Of(store);
            SmallWorkshop.LookAtAll(store);
            // What is taken for sound must take changes too.
            if (store.Refusal is null)
                store.Stock.Add(new() { Kind = Workshop.Stock.StockKind.Other, Name = "one more", Quantity = 1, Unit = Workshop.Stock.StockUnit.Pieces });
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static byte[] StoreFile()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("finwright-fuzz-");
        string path = Path.Combine(folder.FullName, "good.finstore");
        try
        {
            using (WorkshopStore store = WorkshopStore.Open(path))
                FillSmall(store);
            return File.ReadAllBytes(path);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void FillSmall(WorkshopStore store)
    {
        byte[] track = Track();
        SmallWorkshop.Fill(store, Sandbar.Value, OutingTracks.Read(new MemoryStream(track), "lagoon.gpx").Kept!, new BenchSession(0, 0, new(2026, 6, 3), RootHold.Elastic, "", BenchReadings.Read(Example("sandbar-delta.readings.csv")).Lines));
    }

    // Every family in every box that needs no measuring.
    private static IEnumerable<byte[]> NewFins() =>
        from family in Enum.GetValues<OutlineFamily>()
        where family != OutlineFamily.Free
        from box in (BoxKind[])[BoxKind.TwoBoltTapered, BoxKind.TwoBoltDeep, BoxKind.LongSlot]
        let drawn = new NewFin { Name = $"{family} {box}", Family = family, Box = box, AsPoints = box == BoxKind.TwoBoltDeep }.Draw()
        where !drawn.HasErrors
        select Encoding.UTF8.GetBytes(DesignWriter.Write(drawn.Design!));

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

    // Upper side, then lower side, each from the nose, with how many points each has, in per cent.
    private static byte[] SideBySide()
    {
        FourDigitSection section = new(0, 0, 9);
        string[] sides = [.. ((int[])[1, -1]).Select(sign => string.Concat(Enumerable.Range(0, 21).Select(i => i / 20.0).Select(x => FormattableString.Invariant($"{100 * x * x:0.0000};{100 * sign * section.HalfThickness(x * x):0.0000}\n"))))];
        return Encoding.ASCII.GetBytes("# both sides\n21;21\n\n" + string.Join('\n', sides));
    }

    private static byte[] BinaryStl() => Written(stream => StlFile.Write(stream, Tetrahedron, "seed"));

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

    // The first minute of the example is as good as all of it, and read a hundred times as fast.
    private static byte[] Track()
    {
        string text = Encoding.UTF8.GetString(Example("lagoon-afternoon.gpx"));
        int cut = text.IndexOf("</trkpt>", 6000, StringComparison.Ordinal) + "</trkpt>".Length;
        return Encoding.UTF8.GetBytes(text[..cut] + "</trkseg></trk></gpx>");
    }

    private sealed class TakenOutException : Exception;
}
