using System.Globalization;
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
        foreach (string? origin in request.Headers.Origin)
        {
            if (!string.Equals(origin, own, StringComparison.OrdinalIgnoreCase))
                return Refusal.Write(context, StatusCodes.Status403Forbidden, "The request came from another page.", "Open the address that \"finwright serve\" shows.");
        }

        if (request.Headers["Sec-Fetch-Site"].ToString() is not ("" or "none" or "same-origin"))
            return Refusal.Write(context, StatusCodes.Status403Forbidden, "The request came from another page.", "Type the address that \"finwright serve\" shows, or open it from a bookmark.");
        return IsKnownMethod(request) ? next(context) : NoSuchMethod(context);
    };

    /// <summary>Says what went wrong in place of an empty answer: a file that is too large, a fault of ours.</summary>
    /// <param name="most">Bytes that a request may bring.</param>
    /// <param name="tell">Notes a fault.</param>
    public static Func<HttpContext, RequestDelegate, Task> Told(Func<HttpRequest, long> most, Action<Exception> tell) => async (context, next) =>
    {
        long mostBytes = most(context.Request);
        try
        {
            if (context.Request.ContentLength > mostBytes)
                await TooLarge(context, mostBytes).ConfigureAwait(false);
            else
                await next(context).ConfigureAwait(false);
        }
        catch (BadHttpRequestException wrong) when (!context.Response.HasStarted)
        {
            await (wrong.StatusCode == StatusCodes.Status413PayloadTooLarge
                ? TooLarge(context, mostBytes)
                : Refusal.Write(context, wrong.StatusCode, "The request could not be read.", "Load the page again, and try once more.")).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The browser turned away; nobody waits for an answer.
        }
#pragma warning disable CA1031 // The one place where every fault of a request ends: it is told and written down.
        catch (Exception fault) when (!context.Response.HasStarted)
#pragma warning restore CA1031
        {
            tell(fault);
            await Refusal.Write(context, StatusCodes.Status500InternalServerError, $"A fault in Finwright: {fault.Message}", "Go back and load the page again: what you did is kept. If it comes again, report it with what the terminal says.").ConfigureAwait(false);
        }
    };

    /// <summary>Says in words what an answer without a body only numbers.</summary>
    /// <param name="context">The request.</param>
    /// <param name="most">Bytes that a request may bring.</param>
    public static Task InWords(HttpContext context, Func<HttpRequest, long> most) => context.Response.StatusCode switch
    {
        StatusCodes.Status404NotFound => Refusal.Write(context, StatusCodes.Status404NotFound, "There is nothing here.", "It may have been renamed or deleted: go to the shelf."),
        StatusCodes.Status413PayloadTooLarge => TooLarge(context, most(context.Request)),
        int other => Refusal.Write(context, other, $"This could not be answered (number {other.ToString(CultureInfo.InvariantCulture)} of the protocol).", "Go back, load the page again, and try once more: what you did is kept."),
    };

    private static Task TooLarge(HttpContext context, long mostBytes) =>
        Refusal.Write(context, StatusCodes.Status413PayloadTooLarge, $"The file is larger than {mostBytes >> 20} MB, more than is taken. Nothing of it was kept.", "Bring a smaller file, or use the command line, which reads it from the disk.");

    // Sockets come as GET; the framework ends its connections without sockets with DELETE.
    private static bool IsKnownMethod(HttpRequest request) =>
        HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || HttpMethods.IsPost(request.Method)
        || (HttpMethods.IsDelete(request.Method) && request.Path.StartsWithSegments("/_blazor", StringComparison.Ordinal));

    private static Task NoSuchMethod(HttpContext context)
    {
        context.Response.Headers.Allow = "GET, HEAD, POST";
        return Refusal.Write(context, StatusCodes.Status405MethodNotAllowed, "Nothing here is asked for in this way.", "Open the page in a browser.");
    }

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
