using Finwright.Page.Hosting;
using Finwright.Page.RunSheets;
using Microsoft.AspNetCore.Http.Features;

namespace Finwright.Page.Making;

/// <summary>A motion file that was sent.</summary>
/// <param name="Name">Its name, as the maker has it; for showing only.</param>
/// <param name="Path">Where it lies; whoever takes it deletes it.</param>
/// <param name="Bytes">Its length.</param>
public sealed record SentMotion(string Name, string Path, long Bytes);

/// <summary>Takes motion files of a few hundred megabytes as they stream in, each for the part of the page that opened a box for it.</summary>
public sealed class MotionInbox : OfferBook<Func<SentMotion, Task>>
{
    /// <summary>Longer files are refused.</summary>
    public const long MostBytes = 512L << 20;

    /// <summary>Where files are sent to, before the key of a box.</summary>
    public const string Address = "/api/motion";

    private const int LongestName = 200;

    internal static void Map(IEndpointRouteBuilder web) => web.MapPost(Address + "/{key}", async (string key, MotionInbox inbox, Handouts handouts, HttpContext context) =>
    {
        if (context.Request.Headers[RunEndpoints.Header] != "motion")
            return Results.StatusCode(StatusCodes.Status403Forbidden);
        if (inbox.Find(key) is not { } take)
            return Results.NotFound();
        if (context.Request.ContentLength is not (> 0 and <= MostBytes))
            return Results.StatusCode(StatusCodes.Status413PayloadTooLarge);
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = MostBytes;
        string path = handouts.NewPath(".motion");
        try
        {
            await using (FileStream file = new(path, FileMode.CreateNew, FileAccess.Write))
                await context.Request.Body.CopyToAsync(file, context.RequestAborted).ConfigureAwait(false);
            await take(new(NameOf(context.Request.Headers["X-File-Name"].ToString()), path, new FileInfo(path).Length)).ConfigureAwait(false);
            return Results.NoContent();
        }
        catch
        {
            File.Delete(path);
            throw;
        }
    });

    /// <summary>The bare name of a file, without any folder and without what cannot be shown.</summary>
    internal static string NameOf(string sent)
    {
        string name = Uri.UnescapeDataString(sent);
        name = name[(name.LastIndexOfAny(['/', '\\']) + 1)..];
        name = new([.. name.Where(letter => !char.IsControl(letter)).Take(LongestName)]);
        return name.Length > 0 ? name : "motion file";
    }
}
