using System.Collections.Concurrent;
using System.Security.Cryptography;

namespace Finwright.Page.Scene;

/// <summary>Scenes that a browser may fetch, each under a name that nobody can guess.</summary>
public sealed class SceneBook
{
    private readonly ConcurrentDictionary<string, Func<byte[]?>> _scenes = new(StringComparer.Ordinal);

    /// <summary>Opens a page of the book.</summary>
    /// <param name="make">Gives the scene as it is now; null when there is none yet.</param>
    /// <returns>Its name; <see cref="Close"/> ends it.</returns>
    public string Open(Func<byte[]?> make)
    {
        string name = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        _scenes[name] = make;
        return name;
    }

    /// <summary>Closes it.</summary>
    public void Close(string name) => _scenes.TryRemove(name, out _);

    /// <summary>The address of a scene.</summary>
    /// <param name="name">From <see cref="Open"/>.</param>
    /// <param name="number">Of the drawing: another one is another address.</param>
    public static string Address(string name, long number) => $"/api/scene/{name}?n={number}";

    internal byte[]? Make(string name) => _scenes.TryGetValue(name, out Func<byte[]?>? make) ? make() : null;
}
