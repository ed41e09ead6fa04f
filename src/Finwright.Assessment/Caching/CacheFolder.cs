namespace Finwright.Assessment.Caching;

/// <summary>Where the program keeps results between runs. Nothing there is needed: it may be deleted at any time.</summary>
public static class CacheFolder
{
    /// <summary>Environment variable that names another folder, or switches keeping off with the word <see cref="Off"/>.</summary>
    public const string Variable = "FINWRIGHT_CACHE";

    /// <summary>Value of <see cref="Variable"/> that switches keeping off.</summary>
    public const string Off = "off";

    private const string Name = "finwright";

    /// <summary>The folder of the person who runs the program; null when keeping is switched off or the system names no place for it.</summary>
    public static string? OfUser() => Of(
        Environment.GetEnvironmentVariable,
        OperatingSystem.IsWindows() ? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData) : null,
        OperatingSystem.IsMacOS());

    /// <summary>Opens the folder of the person who runs the program, for curves of sections; null when nothing is to be kept.</summary>
    public static DiskStageCache? OpenCurves() => OfUser() is string folder ? new(folder, [new SectionCurveForm()]) : null;

    /// <summary>
    /// The folder by the system's convention: <c>$XDG_CACHE_HOME</c> or <c>~/.cache</c> (XDG Base Directory Specification),
    /// <c>~/Library/Caches</c> on macOS, the local application data on Windows.
    /// </summary>
    /// <param name="environment">Looks up an environment variable.</param>
    /// <param name="localData">The local application data on Windows; null elsewhere.</param>
    /// <param name="isMac">Whether the system is macOS.</param>
    internal static string? Of(Func<string, string?> environment, string? localData, bool isMac)
    {
        if (environment(Variable) is { Length: > 0 } wanted)
            return string.Equals(wanted, Off, StringComparison.OrdinalIgnoreCase) ? null : Full(wanted);
        if (localData is { Length: > 0 })
            return Path.Combine(localData, Name, "cache");
        string? home = environment("HOME");
        if (isMac)
            return Under(home, "Library", "Caches", Name);
        // A relative path there is to be ignored, says the specification.
        string? shared = environment("XDG_CACHE_HOME");
        return shared is { Length: > 0 } && Path.IsPathRooted(shared) ? Path.Combine(shared, Name) : Under(home, ".cache", Name);
    }

    private static string? Under(string? home, params string[] parts) => home is { Length: > 0 } ? Path.Combine([home, .. parts]) : null;

    private static string? Full(string path)
    {
        try
        {
            return Path.GetFullPath(path);
        }
        catch (Exception problem) when (problem is ArgumentException or NotSupportedException or PathTooLongException)
        {
            return null;
        }
    }
}
