using System.Diagnostics;
using System.Globalization;

namespace Finwright.Fuzz.Tests;

/// <summary>
/// Spoilt files of every kind that comes from outside: each is taken or refused in words, within seconds and without filling the memory.
/// A few hundred of each kind on every run; <c>FINWRIGHT_FUZZ=100000</c> tries so many, <c>FINWRIGHT_FUZZ_SEED</c> other ones. What fails is kept in <c>artifacts/fuzz</c>.
/// </summary>
public sealed class FuzzTests
{
    private const int Usual = 400, UsualSeed = 20270501;
    private const long MostMemory = 1L << 30;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    public static TheoryData<string> Kinds => [.. FuzzTarget.All.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Spoilt_files_are_taken_or_refused_in_words(string kind)
    {
        int count = Setting("FINWRIGHT_FUZZ", Usual), seed = Setting("FINWRIGHT_FUZZ_SEED", UsualSeed);
        FuzzTarget target = FuzzTarget.All[kind];
        Mutator mutator = new(target.Seeds(), new(seed));
        foreach (byte[] good in target.Seeds())
            target.Read(good);
        long atWork = 0;
        byte[] file = [];
        // The reader may hang: another thread holds the clock, and ends the process when it must.
        using Timer clock = new(_ =>
        {
            long began = Interlocked.Read(ref atWork);
            if (began == 0)
                return;
            if (Stopwatch.GetElapsedTime(began) > Longest || GC.GetTotalMemory(forceFullCollection: false) > MostMemory)
                Environment.FailFast($"A spoilt {kind} took longer than {Longest.TotalSeconds:0} s or more than {MostMemory >> 20} MB; it is kept in {Keep(kind, file)}.");
        }, null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(1));
        for (int i = 0; i < count; i++)
        {
            file = mutator.Next();
            Interlocked.Exchange(ref atWork, Stopwatch.GetTimestamp());
            try
            {
                target.Read(file);
            }
            catch (Exception refusal) when (target.IsRefusal(refusal))
            {
                Assert.False(string.IsNullOrWhiteSpace(refusal.Message), Keep(kind, file));
            }
            catch (Exception fault)
            {
                Assert.Fail($"The {i + 1}th spoilt {kind}, kept in {Keep(kind, file)}, was neither taken nor refused: {fault}");
            }
            finally
            {
                Interlocked.Exchange(ref atWork, 0);
            }
        }
    }

    private static int Setting(string name, int usual) => int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out int own) ? own : usual;

    private static string Keep(string kind, byte[] file)
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "fuzz");
        Directory.CreateDirectory(folder);
        string path = Path.GetFullPath(Path.Combine(folder, $"{kind.Replace(' ', '-')}-{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(file))[..12]}"));
        File.WriteAllBytes(path, file);
        return path;
    }
}
