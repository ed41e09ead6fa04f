namespace Finwright.Page.Scene;

/// <summary>Where the browser fetches scenes.</summary>
internal static class SceneEndpoint
{
    public static void Map(IEndpointRouteBuilder web) => web.MapGet("/api/scene/{name}/{surface}", (string name, string surface, SceneBook book, HttpContext context) =>
    {
        context.Response.Headers.CacheControl = "no-store";
        return Enum.TryParse(surface, ignoreCase: true, out Surface wanted) && book.Make(name, wanted) is { } scene
            ? Results.Bytes(scene, "application/octet-stream")
            : Results.NotFound();
    });
}
