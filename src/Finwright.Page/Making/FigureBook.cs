using Finwright.Page.Drawings;
using Finwright.Page.Hosting;

namespace Finwright.Page.Making;

/// <summary>Sets of figures that a browser may fetch as pictures: each gives a figure by its name, as SVG; null when there is none.</summary>
public sealed class FigureBook : OfferBook<Func<string, byte[]?>>
{
    internal static void Map(IEndpointRouteBuilder web) => web.MapGet("/api/figure/{key}/{name}", (string key, string name, bool? dark, FigureBook book, HttpContext context) =>
    {
        context.Response.Headers.CacheControl = "no-store";
        // Drawings carry their looks in themselves; they are shown as pictures and run nothing.
        context.Response.Headers.ContentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; sandbox";
        return book.Find(key)?.Invoke(name) is { } svg
            ? Results.Bytes(dark is true ? DarkPaper.Of(svg) : svg, "image/svg+xml")
            : Results.NotFound();
    });
}
