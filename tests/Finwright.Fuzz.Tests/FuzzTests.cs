using System.Diagnostics;
using System.Globalization;

namespace Finwright.Fuzz.Tests;

/// <summary>
/// Spoilt files of every kind that comes from outside: each is taken or refused in words, within seconds and without filling the memory.
/// A few hundred of each kind on every run; <c>FINWRIGHT_FUZZ=100000</c> tries so many, <c>FINWRIGHT_FUZZ_SEED</c> other ones, <c>FINWRIGHT_FUZZ_KIND</c> one kind alone. What fails is kept in <c>artifacts/fuzz</c>,
/// as is what a long run found; docs/fuzz.md shows it.
/// </summary>
public sealed class FuzzTests(ITestOutputHelper output)
{
    private const int Usual = 400, UsualSeed = 20270501, Patience = 12;
    private const long MostMemory = 1L << 30;
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(200);

    public static TheoryData<string> Kinds => [.. Environment.GetEnvironmentVariable("FINWRIGHT_FUZZ_KIND") is { Length: > 0 } only ? [only] : FuzzKinds.All.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Spoilt_files_are_taken_or_refused_in_words(string kind)
    {
        int? asked = Setting("FINWRIGHT_FUZZ");
        FuzzTarget target = FuzzKinds.All[kind];
        IReadOnlyList<byte[]> seeds = target.Seeds();
        Mutator mutator = new(seeds, new(Setting("FINWRIGHT_FUZZ_SEED") ?? UsualSeed));
        foreach ((int at, byte[] good) in seeds.Index())
        {
            if (target.Read(good, at) is { } refusal)
                Assert.Fail($"A good {kind}, kept in {Keep(kind, good)}, was refused: {refusal}");
        }

        int count = Math.Max(1, (asked ?? Usual) / target.OneIn), taken = 0;
        long atWork = 0, peak = 0, worked = 0;
        byte[] file = [];
        TimeSpan slowest = default;
        // The reader may hang: another thread holds the clock, and ends the process when it must. Work counts, not waiting for a busy machine, unless that has no end.
        using Timer clock = new(_ =>
        {
            peak = Math.Max(peak, Environment.WorkingSet);
            long began = Interlocked.Read(ref atWork);
            if (began == 0)
                return;
            TimeSpan work = Environment.CpuUsage.TotalTime - TimeSpan.FromTicks(Interlocked.Read(ref worked)), wait = Stopwatch.GetElapsedTime(began);
            long held = GC.GetTotalMemory(forceFullCollection: false);
            if (Interlocked.Read(ref atWork) == began && (work > target.Longest || wait > Patience * target.Longest || held > MostMemory))
                Environment.FailFast($"A spoilt {kind} took {work.TotalSeconds:0.0} s of work in {wait.TotalSeconds:0.0} s and {held >> 20} MB; {target.Longest.TotalSeconds:0} s and {MostMemory >> 20} MB are the most. It is kept in {Keep(kind, file)}.");
        }, null, TimeSpan.Zero, Look);
        Stopwatch all = Stopwatch.StartNew();
        for (int i = 0; i < count; i++)
        {
            (file, int seed) = mutator.Next();
            long began = Stopwatch.GetTimestamp();
            Interlocked.Exchange(ref worked, Environment.CpuUsage.TotalTime.Ticks);
            Interlocked.Exchange(ref atWork, began);
            try
            {
                if (target.Read(file, seed) is not { } refusal)
                    taken++;
                else if (string.IsNullOrWhiteSpace(refusal))
                    Assert.Fail($"The {i + 1}th spoilt {kind}, kept in {Keep(kind, file)}, was refused without a word.");
            }
            catch (Exception refusal) when (target.IsRefusal(refusal) && !string.IsNullOrWhiteSpace(refusal.Message))
            {
                // As promised.
            }
            catch (Exception fault) when (fault is not Xunit.Sdk.FailException)
            {
                Assert.Fail($"The {i + 1}th spoilt {kind}, kept in {Keep(kind, file)}, was neither taken nor refused: {fault}");
            }
            finally
            {
                Interlocked.Exchange(ref atWork, 0);
                TimeSpan spent = Stopwatch.GetElapsedTime(began);
                slowest = spent > slowest ? spent : slowest;
            }
        }

        FuzzRow row = new(kind, count, taken, slowest.TotalMilliseconds, Math.Max(peak, Environment.WorkingSet) >> 20);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row.Text} {count / all.Elapsed.TotalSeconds:0} a second."));
        if (asked is not null)
            row.Keep(Kept);
    }

    /// <summary>Where files that fail are kept, and what long runs found.</summary>
    internal static string Kept
    {
        get
        {
            string folder = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "fuzz"));
            Directory.CreateDirectory(folder);
            return folder;
        }
    }

    private static int? Setting(string name) => int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out int own) ? own : null;

    private static string Keep(string kind, byte[] file)
    {
        string path = Path.Combine(Kept, $"{kind.Replace(' ', '-')}-{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(file))[..12]}");
        File.WriteAllBytes(path, file);
        return path;
    }
}
