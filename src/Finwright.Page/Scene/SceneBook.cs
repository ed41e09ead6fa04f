using System.Collections.Concurrent;
using System.Security.Cryptography;

namespace Finwright.Page.Scene;

/// <summary>Scenes that a browser may fetch, each under a name that nobody can guess.</summary>
public sealed class SceneBook
{
    private readonly ConcurrentDictionary<string, Func<Surface, byte[]?>> _scenes = new(StringComparer.Ordinal);

    /// <summary>Opens a page of the book.</summary>
    /// <param name="make">Makes the scene as it is now; null when there is none yet.</param>
    /// <returns>The address it is fetched from, without the surface; <see cref="Close"/> ends it.</returns>
    public string Open(Func<Surface, byte[]?> make)
    {
        string name = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        _scenes[name] = make;
        return name;
    }

    /// <summary>Closes it.</summary>
    public void Close(string name) => _scenes.TryRemove(name, out _);

    /// <summary>The address of a scene.</summary>
    /// <param name="name">From <see cref="Open"/>.</param>
    /// <param name="surface">What it is to show.</param>
    /// <param name="version">Of the design: another version is another address.</param>
    public static string Address(string name, Surface surface, long version) => $"/api/scene/{name}/{surface.ToString().ToLowerInvariant()}?v={version}";

    internal byte[]? Make(string name, Surface surface) => _scenes.TryGetValue(name, out Func<Surface, byte[]?>? make) ? make(surface) : null;
}
