using System.Net;

namespace Finwright.Page.Hosting;

/// <summary>A short page of plain text for what is not answered: what happened, and what to do.</summary>
internal static class Refusal
{
    /// <summary>Writes it.</summary>
    /// <param name="context">The request.</param>
    /// <param name="status">HTTP status.</param>
    /// <param name="message">What happened.</param>
    /// <param name="remedy">What to do.</param>
    public static Task Write(HttpContext context, int status, string message, string remedy)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(
            $"<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>Finwright</title><body><h1>Finwright</h1><p>{WebUtility.HtmlEncode(message)}</p><p>{WebUtility.HtmlEncode(remedy)}</p></body></html>",
            context.RequestAborted);
    }
}
