using Microsoft.ClearScript.V8;

namespace Finwright.Geometry.Solids;

/// <summary>The one script runtime of the process, in which every engine has a room of its own, and the turn to use it.</summary>
/// <remarks>
/// A runtime for each engine would let kernels work at the same time, but does not hold: all runtimes of a process share one
/// store of compiled WebAssembly, and when it clears out what is no longer used while another runtime is being set up or taken
/// down, the threads wait for one another for ever. (A stress test with four threads hung within seconds, also with set-up and
/// take-down under a lock.)
/// </remarks>
internal static class ScriptRuntime
{
    /// <summary>Script heap (not the solids: those lie in WebAssembly memory). Without a limit a runaway would end the process.</summary>
    private const int HeapBytes = 256 << 20;

    private static readonly TimeSpan HeapSampling = TimeSpan.FromMilliseconds(20);
    private static readonly Lazy<V8Runtime> Shared = new(() => new V8Runtime());

    /// <summary>Whoever sets up, uses or takes down an engine holds this.</summary>
    public static SemaphoreSlim Turn { get; } = new(1, 1);

    /// <summary>Sets up an engine; the caller holds <see cref="Turn"/>.</summary>
    public static V8ScriptEngine CreateEngine()
    {
        V8Runtime runtime = Shared.Value;
        // Set anew each time: after the limit was broken the runtime refuses to work until it is told a limit again.
        runtime.HeapSizeViolationPolicy = V8RuntimeViolationPolicy.Exception;
        runtime.HeapSizeSampleInterval = HeapSampling;
        runtime.MaxHeapSize = HeapBytes;
        return runtime.CreateScriptEngine(V8ScriptEngineFlags.DisableGlobalMembers);
    }

    /// <summary>Takes down an engine and frees the memory of its solids; the caller holds <see cref="Turn"/>.</summary>
    public static void Remove(V8ScriptEngine engine)
    {
        engine.Dispose();
        Shared.Value.CollectGarbage(exhaustive: true);
    }
}
