using System.Security.Cryptography;

namespace Finwright.Page.Hosting;

/// <summary>What every request must keep to before anything else looks at it, and what every answer says to the browser.</summary>
internal static class RequestRules
{
    private const string NonceKey = "nonce";

    /// <summary>The number used once that allows the page's own inline script.</summary>
    public static string Nonce(HttpContext context) => (string)context.Items[NonceKey]!;

    /// <summary>Refuses what does not come from this computer's own page, whatever the kind of request; sockets too.</summary>
    /// <param name="isOurHost">Whether a host name, without its port, is one of ours.</param>
    public static Func<HttpContext, RequestDelegate, Task> OwnPageOnly(Func<string, bool> isOurHost) => (context, next) =>
    {
        HttpRequest request = context.Request;
        Harden(context);
        if (!isOurHost(request.Host.Host))
            return Refusal.Write(context, StatusCodes.Status403Forbidden, "This address is not one of ours.", "Open the address that \"finwright serve\" shows.");
        string own = $"{request.Scheme}://{request.Host.Value}";
        // A page from elsewhere that sends the browser here is told by its origin, or by what the browser says of the request.
        if (request.Headers.Origin is [{ } origin, ..] && !string.Equals(origin, own, StringComparison.OrdinalIgnoreCase))
            return Refusal.Write(context, StatusCodes.Status403Forbidden, "The request came from another page.", "Open the address that \"finwright serve\" shows.");
        return request.Headers["Sec-Fetch-Site"].ToString() is "cross-site" or "same-site"
            ? Refusal.Write(context, StatusCodes.Status403Forbidden, "The request came from another page.", "Type the address that \"finwright serve\" shows, or open it from a bookmark.")
            : next(context);
    };

    private static void Harden(HttpContext context)
    {
        string nonce = Convert.ToBase64String(RandomNumberGenerator.GetBytes(16));
        context.Items[NonceKey] = nonce;
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy =
            $"default-src 'none'; script-src 'self' 'nonce-{nonce}'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'; manifest-src 'self'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
    }
}
