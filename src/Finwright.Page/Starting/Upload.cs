using Finwright.Page.Shelf;
using Microsoft.AspNetCore.Components.Forms;

namespace Finwright.Page.Starting;

/// <summary>A file on its way from the browser, on the disk piece by piece, gone when it is closed.</summary>
internal static class Upload
{
    /// <summary>Most bytes of one file.</summary>
    public const long MostBytes = 64L << 20;

    private const int Piece = 64 * 1024;

    /// <summary>Takes a file.</summary>
    /// <param name="file">As the browser offers it.</param>
    /// <param name="came">Told the share that came, 0 to 1.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The file, at its beginning; the caller closes it.</returns>
    /// <exception cref="IOException">It is too large, or the browser stopped sending.</exception>
    public static async Task<FileStream> Take(IBrowserFile file, Action<double> came, CancellationToken cancellation)
    {
        if (file.Size > MostBytes)
            throw new IOException($"The file has {file.Size >> 20} MB; {MostBytes >> 20} MB are the most.");
        FileStream kept = TemporaryFile.Open();
        try
        {
            await using Stream sent = file.OpenReadStream(MostBytes, cancellation);
            byte[] piece = new byte[Piece];
            for (int read; (read = await sent.ReadAsync(piece, cancellation)) > 0;)
            {
                await kept.WriteAsync(piece.AsMemory(0, read), cancellation);
                came((double)kept.Length / Math.Max(1, file.Size));
            }

            kept.Position = 0;
            return kept;
        }
        catch
        {
            await kept.DisposeAsync();
            throw;
        }
    }
}
