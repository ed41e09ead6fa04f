using System.Text;
using Finwright.Page.Drawings;
using Finwright.Page.Hosting;
using Finwright.Page.Starting;
using Finwright.Page.Works;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Exchange.Stores;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Page.Shelf;

/// <summary>Where the browser fetches pictures and files of the shelf.</summary>
internal static class ShelfEndpoints
{
    private const string Archive = "application/zip", DesignFile = "application/json; charset=utf-8";

    // A picture may have come from elsewhere: whatever it holds, opened alone it can do nothing.
    private const string PicturePolicy = "default-src 'none'; sandbox", FigurePolicy = "default-src 'none'; style-src 'unsafe-inline'; sandbox";

    public static void Map(IEndpointRouteBuilder web)
    {
        web.MapGet("/api/shelf/picture/{revision:long}", Picture);
        web.MapGet("/api/shelf/file/{revision:long}", File);
        web.MapGet("/api/shelf/bundle/{revision:long}", Bundle);
        web.MapGet("/api/shelf/workshop", Workshop);
        web.MapGet("/api/part/{id}/{figure:int}", PartFigure);
    }

    /// <summary>A picture; a revision never changes, so it may be kept by the browser.</summary>
    private static IResult Picture(long revision, bool? dark, Desk desk, HttpContext context)
    {
        if (desk.Ask(store => store.Shelf.Picture(revision)) is not string svg)
            return Results.NotFound();
        context.Response.Headers.ContentSecurityPolicy = PicturePolicy;
        context.Response.Headers.CacheControl = "private, max-age=86400";
        return Svg(Encoding.UTF8.GetBytes(svg), dark);
    }

    /// <summary>A figure of a part; another after each change.</summary>
    private static IResult PartFigure(string id, int figure, bool? dark, PartBook book, HttpContext context)
    {
        if (book.Find(id)?.Figures is not { } figures || figure < 0 || figure >= figures.Count)
            return Results.NotFound();
        context.Response.Headers.ContentSecurityPolicy = FigurePolicy;
        context.Response.Headers.CacheControl = "no-store";
        return Svg(figures[figure].Svg, dark);
    }

    private static IResult Svg(byte[] svg, bool? dark) => Results.Bytes(dark is true ? DarkPaper.Of(svg) : svg, "image/svg+xml");

    private static IResult File(long revision, Desk desk) => desk.Ask(store => store.Shelf.Find(revision) is { } own
        ? Results.File(Encoding.UTF8.GetBytes(store.Shelf.Text(revision)), DesignFile, FileName.Of(own.Label.Replace('@', '-')) + ".fin.json")
        : Results.NotFound());

    private static Task<IResult> Bundle(long revision, Desk desk, HttpContext context, bool all = true, bool builds = false) => Answer(
        context,
        () => desk.Ask(store =>
        {
            Revision? own = store.Shelf.Find(revision);
            return own is null
                ? Results.NotFound()
                : Written(FileName.Of(own.DesignName) + BundleExport.Ending, stream => BundleExport.Write(store, new(own.DesignName, all ? null : own.Number), builds, desk.MadeBy, stream));
        }));

    private static Task<IResult> Workshop(Desk desk, HttpContext context) => Answer(
        context,
        () => desk.Ask(store => Written("workshop" + StoreExport.Ending, stream => StoreExport.Write(store, desk.MadeBy, stream))));

    private static async Task<IResult> Answer(HttpContext context, Func<IResult> make)
    {
        try
        {
            return make();
        }
        catch (StoreException problem)
        {
            await Refusal.Write(context, StatusCodes.Status409Conflict, problem.Message, problem.Remedy).ConfigureAwait(false);
        }
        catch (ExchangeException problem)
        {
            await Refusal.Write(context, StatusCodes.Status409Conflict, problem.Message, problem.Remedy).ConfigureAwait(false);
        }

        return Results.Empty;
    }

    // On the disk first: a workshop with many tracks need not fit into memory, and nobody waits for the store while the browser fetches.
    private static IResult Written(string name, Action<Stream> write)
    {
        FileStream file = TemporaryFile.Open();
        try
        {
            write(file);
            file.Position = 0;
        }
        catch
        {
            file.Dispose();
            throw;
        }

        return Results.Stream(file, Archive, name);
    }
}
