using System.Reflection;

namespace Finwright;

/// <summary>The demo designs, carried inside the program so that they work anywhere.</summary>
internal static class DemoDesigns
{
    private const string Prefix = "demo/";
    private const string Suffix = ".fin.json";

    /// <summary>Their names, in alphabetical order.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(name => name[Prefix.Length..^Suffix.Length])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The text of a demo design; null when there is none of that name.</summary>
    public static string? Find(string name)
    {
        using Stream? stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + name + Suffix);
        if (stream is null)
            return null;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
