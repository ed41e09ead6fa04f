using Finwright.Page.Works;
using Finwright.Workshop.Builds;

namespace Finwright.Page.Builds;

/// <summary>Where the browser fetches photos: only files that the maker noted with a build, only pictures, none larger than <see cref="MostBytes"/>.</summary>
internal static class PhotoEndpoint
{
    /// <summary>Largest photo that is shown.</summary>
    public const long MostBytes = 25L << 20;

    /// <summary>The address of a photo.</summary>
    public static string Address(long build, int number) => FormattableString.Invariant($"/api/photo/{build}/{number}");

    public static void Map(IEndpointRouteBuilder web) => web.MapGet("/api/photo/{build:long}/{number:int}", (long build, int number, Desk desk, HttpContext context) =>
    {
        IReadOnlyList<BuildPhoto> photos = desk.Ask(store => store.Builds.Photos(build));
        if (number < 0 || number >= photos.Count || Open(photos[number].Path) is not var (stream, type))
            return Results.NotFound();
        context.Response.Headers.CacheControl = "no-store";
        return Results.Stream(stream, type);
    });

    /// <summary>Opens a photo.</summary>
    /// <param name="path">Its file.</param>
    /// <returns>The file and its type; null when it is not there, too large, or no picture by its first bytes.</returns>
    public static (Stream Stream, string Type)? Open(string path)
    {
        FileStream? stream = null;
        try
        {
            FileInfo file = new(path);
            if (!file.Exists || file.Length > MostBytes || file.Attributes.HasFlag(FileAttributes.Device))
                return null;
            stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            Span<byte> head = stackalloc byte[12];
            if (stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length || TypeOf(head) is not { } type)
            {
                stream.Dispose();
                return null;
            }

            stream.Position = 0;
            return (stream, type);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            stream?.Dispose();
            return null;
        }
    }

    // By content, not by name: what is no picture is never sent.
    private static string? TypeOf(ReadOnlySpan<byte> head) =>
        head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]) ? "image/jpeg"
        : head.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]) ? "image/png"
        : head.StartsWith("GIF8"u8) ? "image/gif"
        : head.StartsWith("RIFF"u8) && head[8..].StartsWith("WEBP"u8) ? "image/webp"
        : null;
}
