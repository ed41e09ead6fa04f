using System.Reflection;

namespace Finwright;

/// <summary>The version of this program.</summary>
internal static class ProgramVersion
{
    /// <summary>For example <c>0.1.0</c>.</summary>
    public static string Text { get; } = typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
}
