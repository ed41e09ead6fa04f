using Finwright.Assessment.Caching;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Geometry.Sections;
using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Assessment.Tests.Caching;

public sealed class DiskStageCacheTests : IDisposable
{
    private static readonly StageKey Key = StageKey.Of("some", "curve"), Other = StageKey.Of("another", "curve");
    private static readonly IReadOnlyList<ResultForm> Forms = [new SectionCurveForm()];
    private readonly string _folder = Path.Combine(Path.GetTempPath(), "finwright-cache-" + Path.GetRandomFileName());

    private string FileOfKey => Path.Combine(_folder, Key.Hex + ".kept");

    public void Dispose()
    {
        if (Directory.Exists(_folder))
            Directory.Delete(_folder, recursive: true);
    }

    private DiskStageCache Open(long capacity = DiskStageCache.DefaultCapacity) => new(_folder, Forms, capacity);

    [Fact]
    public void TryGet_gives_back_what_was_kept_to_the_last_bit_in_another_run()
    {
        Finding finding = new("odd", Severity.Caution, "$.shape", "Message with ° and \"quotes\".", "Remedy.") { Line = 7, Value = "1 mm" };
        StageResult<SectionCurve> result = new(Curve(1e6 / 3), [finding]);
        Open().Keep(Key, result);
        Assert.True(Open().TryGet(Key, out StageResult<SectionCurve>? kept));
        Assert.Equal(result.Findings, kept.Findings);
        Assert.Equal(result.Value!.Conditions, kept.Value!.Conditions);
        Assert.Equal(result.Value.Points, kept.Value.Points);
        Assert.False(Open().TryGet(Other, out StageResult<SectionCurve>? _));
    }

    [Fact]
    public void TryGet_of_a_result_without_a_value_gives_its_findings()
    {
        Finding finding = new("no-curve", Severity.Error, "$.shape", "Message.", "Remedy.");
        Open().Keep(Key, new StageResult<SectionCurve>(null, [finding]));
        Assert.True(Open().TryGet(Key, out StageResult<SectionCurve>? kept));
        Assert.Null(kept.Value);
        Assert.Equal([finding], kept.Findings);
    }

    [Fact]
    public void Kinds_without_a_form_are_declined()
    {
        Open().Keep(Key, new StageResult<string>("text", []));
        Assert.False(Directory.Exists(_folder));
        Open().Keep(Key, new StageResult<SectionCurve>(Curve(1e6) with { Points = [new() { AngleOfAttack = 0, Converged = true, Surface = new([], [], [], [], [], []) }] }, []));
        Assert.False(Directory.Exists(_folder));
    }

    [Fact]
    public void TryGet_of_a_truncated_file_finds_nothing_at_any_length_and_keeping_mends_it()
    {
        StageResult<SectionCurve> result = new(Curve(1e6), []);
        Open().Keep(Key, result);
        byte[] whole = File.ReadAllBytes(FileOfKey);
        for (int length = 0; length < whole.Length; length += 7)
        {
            File.WriteAllBytes(FileOfKey, whole[..length]);
            Assert.False(Open().TryGet(Key, out StageResult<SectionCurve>? _), $"{length} bytes");
        }

        Open().Keep(Key, result);
        Assert.True(Open().TryGet(Key, out StageResult<SectionCurve>? _));
    }

    [Fact]
    public void TryGet_of_a_file_with_one_wrong_bit_finds_nothing()
    {
        Open().Keep(Key, new StageResult<SectionCurve>(Curve(1e6), []));
        byte[] whole = File.ReadAllBytes(FileOfKey);
        for (int at = 0; at < whole.Length; at += 11)
        {
            byte[] damaged = [.. whole];
            damaged[at] ^= 1;
            File.WriteAllBytes(FileOfKey, damaged);
            Assert.False(Open().TryGet(Key, out StageResult<SectionCurve>? _), $"byte {at}");
        }
    }

    [Fact]
    public void TryGet_of_a_foreign_file_finds_nothing()
    {
        Directory.CreateDirectory(_folder);
        foreach (byte[] content in (byte[][])[[], "holiday pictures"u8.ToArray(), new byte[100_000], [.. Enumerable.Range(0, 5000).Select(i => (byte)(i * 31 >> 3))]])
        {
            File.WriteAllBytes(FileOfKey, content);
            Assert.False(Open().TryGet(Key, out StageResult<SectionCurve>? _));
        }

        // A whole file of another key, put under this name.
        Open().Keep(Other, new StageResult<SectionCurve>(Curve(1e6), []));
        File.Copy(Path.Combine(_folder, Other.Hex + ".kept"), FileOfKey, overwrite: true);
        Assert.False(Open().TryGet(Key, out StageResult<SectionCurve>? _));
    }

    [Fact]
    public void A_folder_in_the_place_of_a_file_or_a_file_in_the_place_of_the_folder_does_no_harm()
    {
        Directory.CreateDirectory(FileOfKey);
        Open().Keep(Key, new StageResult<SectionCurve>(Curve(1e6), []));
        Assert.False(Open().TryGet(Key, out StageResult<SectionCurve>? _));
        string file = Path.Combine(_folder, "file");
        File.WriteAllText(file, "");
        DiskStageCache inFile = new(file, Forms);
        inFile.Keep(Key, new StageResult<SectionCurve>(Curve(1e6), []));
        Assert.False(inFile.TryGet(Key, out StageResult<SectionCurve>? _));
    }

    [Fact]
    public void A_place_that_cannot_be_written_to_does_no_harm()
    {
        // /proc refuses every new file, even to the administrator, as whom tests may run.
        DiskStageCache cache = new("/proc/finwright", Forms);
        cache.Keep(Key, new StageResult<SectionCurve>(Curve(1e6), []));
        Assert.False(cache.TryGet(Key, out StageResult<SectionCurve>? _));
    }

    [Fact]
    public void A_read_only_folder_still_serves_what_it_holds()
    {
        if (OperatingSystem.IsWindows())
            return;
        Open().Keep(Key, new StageResult<SectionCurve>(Curve(1e6), []));
        File.SetUnixFileMode(_folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            DiskStageCache cache = Open();
            cache.Keep(Other, new StageResult<SectionCurve>(Curve(2e6), []));
            Assert.True(cache.TryGet(Key, out StageResult<SectionCurve>? _));
        }
        finally
        {
            File.SetUnixFileMode(_folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [Fact]
    public void A_full_cache_drops_the_files_longest_unused_and_leaves_what_is_not_its_own()
    {
        Open().Keep(Key, new StageResult<SectionCurve>(Curve(1e6), []));
        long size = new FileInfo(FileOfKey).Length;
        File.WriteAllText(Path.Combine(_folder, "notes.txt"), "mine");
        string abandoned = Path.Combine(_folder, "old.partial");
        File.WriteAllText(abandoned, "");
        File.SetLastWriteTimeUtc(abandoned, DateTime.UtcNow.AddDays(-1));
        for (int i = 0; i < 10; i++)
        {
            StageKey key = StageKey.Of($"{i}");
            Open().Keep(key, new StageResult<SectionCurve>(Curve(1e6), []));
            File.SetLastWriteTimeUtc(Path.Combine(_folder, key.Hex + ".kept"), DateTime.UtcNow.AddDays(-30 + i));
        }

        Open(capacity: 5 * size).Keep(Other, new StageResult<SectionCurve>(Curve(1e6), []));
        string[] left = [.. Directory.EnumerateFiles(_folder, "*.kept")];
        Assert.InRange(left.Length * size, 1, 5 * size);
        Assert.True(Open().TryGet(Key, out StageResult<SectionCurve>? _));
        Assert.True(Open().TryGet(StageKey.Of("9"), out StageResult<SectionCurve>? _));
        Assert.False(Open().TryGet(StageKey.Of("0"), out StageResult<SectionCurve>? _));
        Assert.True(File.Exists(Path.Combine(_folder, "notes.txt")));
        Assert.False(File.Exists(abandoned));
    }

    [Fact]
    public void Many_writers_and_readers_of_one_key_see_whole_results()
    {
        SectionCurve curve = Curve(1e6);
        int found = 0;
        Parallel.For(0, 200, new() { MaxDegreeOfParallelism = 8, CancellationToken = TestContext.Current.CancellationToken }, i =>
        {
            DiskStageCache cache = Open();
            if (i % 3 == 0)
                cache.Keep(Key, new StageResult<SectionCurve>(curve, []));
            else if (cache.TryGet(Key, out StageResult<SectionCurve>? kept))
                Interlocked.Add(ref found, kept.Value!.Points.SequenceEqual(curve.Points) ? 1 : 1_000_000);
        });
        Assert.InRange(found, 1, 200);
        Assert.Empty(Directory.EnumerateFiles(_folder, "*.partial"));
    }

    [Fact]
    public void Solve_gives_the_same_bits_from_the_solver_and_from_the_cache_and_solves_once()
    {
        int solved = 0;
        SectionCurve Solver(Section section, SectionConditions conditions, IReadOnlyList<double> angles, CancellationToken stop)
        {
            solved++;
            return Curve(conditions.ReynoldsNumber) with { Conditions = conditions };
        }

        SectionConditions stream = new() { ReynoldsNumber = 1e6, Upper = new() { TripAt = 0.05 } };
        SectionCurve Solve(Section section, SectionConditions conditions, IReadOnlyList<double> angles) =>
            new KeptSectionCurves(Solver, Open()).Solve(section, conditions, angles, TestContext.Current.CancellationToken);
        SectionCurve first = Solve(new FourDigitSection(0, 0, 10), stream, PolarGrid.Angles(false));
        SectionCurve second = Solve(new FourDigitSection(0, 0, 10), stream, PolarGrid.Angles(false));
        Assert.Equal(1, solved);
        Assert.Equal(first.Points, second.Points);
        Assert.Equal(first.Conditions, second.Conditions);

        // Whatever can change the answer changes the key.
        Solve(new FourDigitSection(0, 0, 11), stream, PolarGrid.Angles(false));
        Solve(new FourDigitSection(1, 4, 10), stream, PolarGrid.Angles(false));
        Solve(new FourDigitSection(0, 0, 10), stream with { ReynoldsNumber = Math.BitIncrement(1e6) }, PolarGrid.Angles(false));
        Solve(new FourDigitSection(0, 0, 10), stream with { CriticalAmplification = 5 }, PolarGrid.Angles(false));
        Solve(new FourDigitSection(0, 0, 10), stream with { Upper = SideFinish.Smooth }, PolarGrid.Angles(false));
        Solve(new FourDigitSection(0, 0, 10), stream with { Lower = new() { SandRoughness = 1e-5 } }, PolarGrid.Angles(false));
        Solve(new FourDigitSection(0, 0, 10), stream, PolarGrid.Angles(true));
        Assert.Equal(8, solved);
    }

    [Fact]
    public void A_tiered_cache_asks_the_quick_one_first_and_fills_it()
    {
        MemoryStageCache quick = new();
        DiskStageCache lasting = Open();
        lasting.Keep(Key, new StageResult<SectionCurve>(Curve(1e6), []));
        TieredStageCache both = new(quick, lasting);
        Assert.True(both.TryGet(Key, out StageResult<SectionCurve>? _));
        Assert.Equal(1, quick.Count);
        File.Delete(FileOfKey);
        Assert.True(both.TryGet(Key, out StageResult<SectionCurve>? _));
        Assert.False(both.TryGet(Other, out StageResult<SectionCurve>? _));
        both.Keep(Other, new StageResult<SectionCurve>(Curve(1e6), []));
        Assert.True(lasting.TryGet(Other, out StageResult<SectionCurve>? _));
    }

    private static SectionCurve Curve(double reynoldsNumber) => new()
    {
        Conditions = new() { ReynoldsNumber = reynoldsNumber, CriticalAmplification = 5, Upper = new() { TripAt = 0.1, RoughnessHeight = 1e-4 }, Lower = new() { SandRoughness = 3e-5 } },
        Points =
        [
            new() { AngleOfAttack = -0.1, Converged = false, Iterations = 60 },
            new() { AngleOfAttack = 0.1 / 3, Converged = true, Iterations = 7, Cl = Math.PI / 9, Cd = 0.0123456789012345678, CdFriction = double.Epsilon, Cm = -0.0, TransitionUpper = 0.1, TransitionLower = 1, SeparationUpper = 0.98, SeparationLower = 1, MinimumCp = -1.23, MinimumCpAt = 0.01 },
        ],
    };
}
