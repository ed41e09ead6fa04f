using System.Runtime.CompilerServices;
using Finwright.Workshop.Storing;

namespace Finwright.Tests;

/// <summary>Keeps the tests away from the store of the person who runs them: a call that names none gets one in a folder of its own.</summary>
internal static class TestStore
{
#pragma warning disable CA2255 // The program reads the variable when a command starts; it must stand before any test.
    [ModuleInitializer]
#pragma warning restore CA2255
    internal static void Set() =>
        Environment.SetEnvironmentVariable(StorePlace.Variable, Path.Combine(Path.GetTempPath(), $"finwright-tests-{Environment.ProcessId}", StorePlace.FileName));
}
