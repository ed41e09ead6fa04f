using System.Diagnostics;
using Thread = System.Threading.Thread;

namespace Finwright.Page.Tests.Works;

/// <summary>Tests that measure the whole process: no other test runs beside them.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class Alone
{
    public const string Name = "alone";
}

/// <summary>What the process holds when everything that can be let go was let go.</summary>
/// <param name="Bytes">Managed memory after a full collection.</param>
/// <param name="Handles">Open files and other handles of the system.</param>
/// <param name="Threads">Threads without those of the pool, which come and go as the runtime sees fit.</param>
/// <param name="Timers">Timers that are set.</param>
internal sealed record Footprint(long Bytes, int Handles, int Threads, long Timers)
{
    /// <summary>Bytes that two measurements of the same state may differ by: buffers of pools, code compiled meanwhile, one standing more or less. A lost skin alone has some hundred kilobytes, so 1,600 lost ones would be far above.</summary>
    public const long MarginBytes = 10L << 20;

    // The runtime opens and closes some for itself, and a server takes its time over broken connections; what is lost at every turn is lost twenty times and more.
    private const int MarginHandles = 10, MarginThreads = 3, MarginTimers = 3;

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(250);
    private const int Looks = 20;

    public static Footprint Now()
    {
        // What was waiting for its finalizer is free only the next time.
        for (int i = 0; i < 3; i++)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Forced, blocking: true, compacting: true);
            GC.WaitForPendingFinalizers();
        }

        using Process own = Process.GetCurrentProcess();
        int handles = OperatingSystem.IsLinux() ? Directory.GetFileSystemEntries("/proc/self/fd").Length : own.HandleCount;
        return new(GC.GetTotalMemory(forceFullCollection: true), handles, own.Threads.Count - ThreadPool.ThreadCount, Timer.ActiveCount);
    }

    /// <summary>Holds that no more is held now; what ends by itself has a few seconds to end.</summary>
    public void IsNotOutgrown(long marginBytes = MarginBytes)
    {
        Footprint now = Now();
        for (int i = 0; i < Looks && !Fits(now); i++)
        {
            Thread.Sleep(Look);
            now = Now();
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{this} -> {now}");
        Assert.True(Fits(now), $"Before: {this}. Now: {now}.");

        bool Fits(Footprint then) =>
            then.Bytes - Bytes < marginBytes && then.Handles - Handles <= MarginHandles && then.Threads - Threads <= MarginThreads && then.Timers - Timers <= MarginTimers;
    }
}
