using Finwright.Page.Hosting;

namespace Finwright.Page.Libraries;

/// <summary>A file that a browser may fetch.</summary>
/// <param name="Name">What the browser is to call it.</param>
/// <param name="Make">Makes it when it is asked for; null when it cannot be made.</param>
public sealed record FileOffer(string Name, Func<byte[]?> Make);

/// <summary>Single files that a browser may fetch.</summary>
public sealed class FileBook : OfferBook<FileOffer>
{
    /// <summary>Where a file is fetched.</summary>
    public static string Address(string name) => $"/api/library-file/{name}";

    /// <summary>A name that any disk takes.</summary>
    /// <param name="name">A name for people.</param>
    /// <param name="ending">The ending, with its dot.</param>
    public static string NameOf(string name, string ending) => LibraryShelf.SlugOf(name) + ending;

    internal static void Map(IEndpointRouteBuilder web) => web.MapGet("/api/library-file/{name}", (string name, FileBook book, HttpContext context) =>
    {
        context.Response.Headers.CacheControl = "no-store";
        return book.Find(name) is { } file && file.Make() is { } bytes
            ? Results.File(bytes, "application/octet-stream", file.Name)
            : Results.NotFound();
    });
}
