namespace Finwright.Workshop.Storing;

/// <summary>Where the store lies when nobody says otherwise.</summary>
public static class StorePlace
{
    /// <summary>Environment variable that names another file.</summary>
    public const string Variable = "FINWRIGHT_STORE";

    /// <summary>Name of the file.</summary>
    public const string FileName = "workshop.finstore";

    private const string Name = "finwright";

    /// <summary>The store of the person who runs the program; null when the system names no place for it.</summary>
    public static string? OfUser() => Of(
        Environment.GetEnvironmentVariable,
        OperatingSystem.IsWindows() ? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData) : null,
        OperatingSystem.IsMacOS());

    /// <summary>
    /// The file by the system's convention: in <c>$XDG_DATA_HOME/finwright</c> or <c>~/.local/share/finwright</c> (XDG Base Directory
    /// Specification), <c>~/Library/Application Support/finwright</c> on macOS, the local application data on Windows.
    /// </summary>
    /// <param name="environment">Looks up an environment variable.</param>
    /// <param name="localData">The local application data on Windows; null elsewhere.</param>
    /// <param name="isMac">Whether the system is macOS.</param>
    internal static string? Of(Func<string, string?> environment, string? localData, bool isMac)
    {
        if (environment(Variable) is { Length: > 0 } wanted)
            return wanted;
        if (localData is { Length: > 0 })
            return Path.Combine(localData, Name, FileName);
        if (environment("HOME") is not { Length: > 0 } home)
            return null;
        if (isMac)
            return Path.Combine(home, "Library", "Application Support", Name, FileName);
        // A relative path there is to be ignored, says the specification.
        return environment("XDG_DATA_HOME") is { Length: > 0 } shared && Path.IsPathRooted(shared)
            ? Path.Combine(shared, Name, FileName)
            : Path.Combine(home, ".local", "share", Name, FileName);
    }
}
