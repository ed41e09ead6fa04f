using System.Globalization;
using BenchmarkDotNet.Attributes;
using Finwright.Design;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Bench;

/// <summary>A workshop's store after many years: 200 designs with 50 revisions each, 400 builds, 1,000 outings with their tracks.</summary>
[MemoryDiagnoser]
public class StoreBench
{
    private static readonly int Designs = DryRun.IsOn ? 10 : 200, Revisions = DryRun.IsOn ? 3 : 50, Outings = DryRun.IsOn ? 10 : 1000;

    // Filled once for all of the benchmarks below: that takes longer than any of them.
    private static readonly Lazy<string> Filled = new(Fill);

    private WorkshopStore _store = null!;

    [GlobalSetup]
    public void Open() => _store = WorkshopStore.Open(Filled.Value);

    [GlobalCleanup]
    public void Close() => _store.Dispose();

    [Benchmark(Description = "opening and closing")]
    public string OpenAndClose()
    {
        using WorkshopStore store = WorkshopStore.Open(Filled.Value);
        return store.Path;
    }

    [Benchmark(Description = "list of 200 designs")]
    public int ListDesigns() => _store.Shelf.List().Count;

    [Benchmark(Description = "designs found by a word")]
    public int Search() => _store.Shelf.List("slalom 7").Count;

    [Benchmark(Description = "a design by its name")]
    public long FindOne() => _store.Shelf.Find("fin 7")!.Id;

    [Benchmark(Description = "a revision by name and number")]
    public long GetOne() => _store.Shelf.Get(Reference.Parse("fin 7@2")).Id;

    [Benchmark(Description = "list of the 50 revisions of a design")]
    public int ListRevisions() => _store.Shelf.Revisions(7).Count;

    [Benchmark(Description = "list of 400 builds")]
    public int ListBuilds() => _store.Builds.List().Count;

    [Benchmark(Description = "list of 1,000 outings")]
    public int ListOutings() => _store.Outings.List().Count;

    [Benchmark(Description = "keeping an outing, on the disk")]
    public long Add() => _store.Outings.Add(new() { SailedOn = new(2027, 5, 1), Place = "the bay" }, null).Id;

    [Benchmark(Description = "counting what is there")]
    public int Count() => StoreContents.Of(_store).Revisions;

    [Benchmark(Description = "checking it from end to end")]
    public int Check() => StoreCheck.Of(_store).Findings.Count;

    private static string Fill()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("finwright-bench-").FullName, "workshop.finstore");
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        FinDesign design = Examples.Read("fairway-upright").Design!;
        byte[] track = new byte[20_000];
        using WorkshopStore store = WorkshopStore.Open(path);
        store.Together(() =>
        {
            for (int i = 0; i < Designs; i++)
            {
                string name = string.Create(CultureInfo.InvariantCulture, $"Fin {i}");
                Revision revision = store.Shelf.Add(name, Entry(name, 0), ["slalom", $"{i} cm"]);
                for (int j = 1; j < Revisions; j++)
                {
                    revision = store.Shelf.Revise(revision.DesignId, Entry(name, j));
                    if (j % 25 == 0)
                        store.Builds.Add(new Build { RevisionId = revision.Id, Name = $"{name}, {j}" });
                }

                store.Builds.Add(new Build { RevisionId = revision.Id, Name = name });
            }

            for (int i = 0; i < Outings; i++)
            {
                System.Buffers.Binary.BinaryPrimitives.WriteInt32LittleEndian(track, i);
                store.Outings.Add(
                    new() { SailedOn = new DateOnly(2027, 1, 1).AddDays(i), Place = "the bay", BuildId = 1 + i % Designs, Grip = 4 },
                    new($"{i}.gpx", Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(track)), track));
            }
        });
        return path;

        ShelfEntry Entry(string name, int revision) =>
            new(design with { Name = name, Prove = design.Prove with { MassKg = 5 + revision / 10.0 } }, new string(' ', 3000), "a little less weight", "bench");
    }
}
