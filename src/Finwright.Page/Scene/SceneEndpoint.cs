namespace Finwright.Page.Scene;

/// <summary>Where the browser fetches scenes.</summary>
internal static class SceneEndpoint
{
    public static void Map(IEndpointRouteBuilder web) => web.MapGet("/api/scene/{name}", (string name, SceneBook book, HttpContext context) =>
    {
        context.Response.Headers.CacheControl = "no-store";
        return book.Make(name) is { } scene ? Results.Bytes(scene, "application/octet-stream") : Results.NotFound();
    });
}
