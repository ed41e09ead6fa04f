using System.IO.Compression;
using System.Text;
using Finwright.Design;
using Finwright.Page.Editing;
using Microsoft.AspNetCore.StaticFiles;

namespace Finwright.Page.Making;

/// <summary>Where files are fetched.</summary>
internal static class FileEndpoints
{
    private static readonly FileExtensionContentTypeProvider Types = new();

    public static void Map(IEndpointRouteBuilder web)
    {
        web.MapGet("/api/files/{key}", (string key, Handouts handouts, HttpContext context) =>
        {
            context.Response.Headers.CacheControl = "no-store";
            return handouts.Find(key) is { State: HandoutState.Ready, Path: { } path } handout && File.Exists(path)
                ? Results.File(path, TypeOf(handout.FileName), handout.FileName)
                : Gone();
        });
        web.MapGet("/api/files/{key}/{index:int}", (string key, int index, Handouts handouts, HttpContext context) =>
        {
            context.Response.Headers.CacheControl = "no-store";
            if (handouts.Find(key) is not { State: HandoutState.Ready, Path: { } path } handout || index < 0 || index >= handout.Files.Count || !File.Exists(path))
                return Gone();
            string name = handout.Files[index].Path;
            return Results.Stream(async to =>
            {
                using ZipArchive archive = ZipFile.OpenRead(path);
                await using Stream from = await archive.GetEntry(name)!.OpenAsync(context.RequestAborted).ConfigureAwait(false);
                await from.CopyToAsync(to, context.RequestAborted).ConfigureAwait(false);
            }, TypeOf(name), name[(name.LastIndexOf('/') + 1)..]);
        });
        web.MapGet("/api/design/{name}/file", (string name, OpenDesigns designs) =>
        {
            if (designs.Open(name) is not { } session)
                return Results.NotFound();
            FinDesign design = session.Now.Design;
            return Results.Bytes(Encoding.UTF8.GetBytes(DesignWriter.Write(design)), "application/json", DownloadName.Of(design.Name, ".fin.json"));
        });
    }

    private static IResult Gone() => Results.Text("These files are not kept any more. Ask for them again on the sheet of the design.", "text/plain", Encoding.UTF8, StatusCodes.Status404NotFound);

    private static string TypeOf(string name) => Types.TryGetContentType(name, out string? type) ? type : "application/octet-stream";
}
