using System.Runtime.CompilerServices;
using Finwright.Assessment.Caching;

namespace Finwright.Tests;

/// <summary>Keeps the curves of sections that the tests solve beside the build output, away from those of the person who runs them.</summary>
internal static class TestCache
{
    /// <summary>The folder; several runs share it, as they may.</summary>
    public static string Folder { get; } = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "test-cache"));

#pragma warning disable CA2255 // The program reads the variable when a command starts; it must stand before any test.
    [ModuleInitializer]
#pragma warning restore CA2255
    internal static void Set() => Environment.SetEnvironmentVariable(CacheFolder.Variable, Folder);
}
