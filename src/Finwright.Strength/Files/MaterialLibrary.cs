using System.Reflection;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Files;

/// <summary>The materials that come with the program: typical values with ranges, to be replaced by a maker's data sheet or a bench test.</summary>
public static class MaterialLibrary
{
    private const string Folder = "material/";

    /// <summary>All materials, by name.</summary>
    public static IReadOnlyList<Material> All { get; } = Load();

    /// <summary>Finds a material.</summary>
    /// <param name="name">Its name in small letters.</param>
    /// <returns>Null when there is none of this name.</returns>
    public static Material? Find(string name) => All.FirstOrDefault(material => material.Name == name);

    /// <summary>Finds a material of one kind.</summary>
    /// <param name="name">Its name in small letters.</param>
    /// <exception cref="ArgumentException">There is none of this name and kind; the message lists those there are.</exception>
    public static T Get<T>(string name)
        where T : Material => Find(name) as T
            ?? throw new ArgumentException($"The library has no {typeof(T).Name} named \"{name}\"; it has {string.Join(", ", All.OfType<T>().Select(m => m.Name))}.", nameof(name));

    private static Material[] Load()
    {
        Assembly assembly = typeof(MaterialLibrary).Assembly;
        List<Material> materials = [];
        foreach (string resource in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using Stream stream = assembly.GetManifestResourceStream(resource)!;
            byte[] bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            MaterialReading reading = MaterialFile.Read(bytes);
            materials.Add(reading.Material ?? throw new InvalidDataException($"{resource}: {reading.Findings[0].Path}: {reading.Findings[0].Message}"));
        }

        return [.. materials];
    }
}
