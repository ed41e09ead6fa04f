using System.Collections.Concurrent;
using System.Security.Cryptography;

namespace Finwright.Page.Libraries;

/// <summary>Files that a browser may fetch, each under a name that nobody can guess, for as long as the page that offers it is open.</summary>
public sealed class FileBook
{
    private readonly ConcurrentDictionary<string, (string Name, Func<byte[]?> Make)> _files = new(StringComparer.Ordinal);

    /// <summary>Offers a file.</summary>
    /// <param name="name">What the browser is to call it.</param>
    /// <param name="make">Makes it when it is asked for; null when it cannot be made.</param>
    /// <returns>A key for <see cref="Address"/> and <see cref="Close"/>.</returns>
    public string Open(string name, Func<byte[]?> make)
    {
        string key = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        _files[key] = (name, make);
        return key;
    }

    /// <summary>Offers it no longer.</summary>
    public void Close(string key) => _files.TryRemove(key, out _);

    /// <summary>Where it is fetched.</summary>
    public static string Address(string key) => $"/api/library-file/{key}";

    /// <summary>A name that any disk takes.</summary>
    /// <param name="name">A name for people.</param>
    /// <param name="ending">The ending, with its dot.</param>
    public static string NameOf(string name, string ending) => LibraryShelf.SlugOf(name) + ending;

    internal static void Map(IEndpointRouteBuilder web) => web.MapGet("/api/library-file/{key}", (string key, FileBook book, HttpContext context) =>
    {
        context.Response.Headers.CacheControl = "no-store";
        return book._files.TryGetValue(key, out (string Name, Func<byte[]?> Make) file) && file.Make() is { } bytes
            ? Results.File(bytes, "application/octet-stream", file.Name)
            : Results.NotFound();
    });
}
