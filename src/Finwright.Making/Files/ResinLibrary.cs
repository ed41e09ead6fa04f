using System.Reflection;
using Finwright.Making.Resins;

namespace Finwright.Making.Files;

/// <summary>The resins that come with the program: kinds to start from, to be replaced by a maker's data sheet and a cup test.</summary>
public static class ResinLibrary
{
    private const string Folder = "resin/";

    /// <summary>All resins, by name.</summary>
    public static IReadOnlyList<ResinSystem> All { get; } = Load();

    /// <summary>Finds a resin.</summary>
    /// <param name="name">Its name in small letters.</param>
    /// <returns>Null when there is none of this name.</returns>
    public static ResinSystem? Find(string name) => All.FirstOrDefault(resin => resin.Name == name);

    /// <summary>A resin that is there.</summary>
    /// <param name="name">Its name in small letters.</param>
    /// <exception cref="ArgumentException">There is none of this name; the message lists those there are.</exception>
    public static ResinSystem Get(string name) => Find(name)
        ?? throw new ArgumentException($"The library has no resin named \"{name}\"; it has {string.Join(", ", All.Select(r => r.Name))}.", nameof(name));

    private static ResinSystem[] Load()
    {
        Assembly assembly = typeof(ResinLibrary).Assembly;
        List<ResinSystem> resins = [];
        foreach (string resource in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using Stream stream = assembly.GetManifestResourceStream(resource)!;
            byte[] bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            ResinReading reading = ResinFile.Read(bytes);
            resins.Add(reading.Resin ?? throw new InvalidDataException($"{resource}: {reading.Findings[0].Path}: {reading.Findings[0].Message}"));
        }

        return [.. resins];
    }
}
