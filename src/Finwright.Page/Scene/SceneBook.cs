using Finwright.Page.Hosting;

namespace Finwright.Page.Scene;

/// <summary>Scenes that a browser may fetch: each gives the scene as it is now; null when there is none yet.</summary>
public sealed class SceneBook : OfferBook<Func<byte[]?>>
{
    /// <summary>The address of a scene.</summary>
    /// <param name="name">From <see cref="OfferBook{TOffer}.Open"/>.</param>
    /// <param name="number">Of the drawing: another one is another address.</param>
    public static string Address(string name, long number) => $"/api/scene/{name}?n={number}";

    internal static void Map(IEndpointRouteBuilder web) => web.MapGet("/api/scene/{name}", (string name, SceneBook book, HttpContext context) =>
    {
        context.Response.Headers.CacheControl = "no-store";
        if (book.Find(name)?.Invoke() is { } scene)
            return Results.Bytes(scene, "application/octet-stream");
        // Who asks for a scene while its page is left gets nothing, which is no fault.
        return UnguessableName.IsOne(name) ? Results.NoContent() : Results.NotFound();
    });
}
