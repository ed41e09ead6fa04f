using System.Text.Json;
using Finwright.Page.Works;
using Finwright.Workshop.RunSheets;
using Finwright.Workshop.Storing;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Finwright.Page.RunSheets;

/// <summary>Where run sheets are read and ticked. Plain pages and small requests: a phone sleeps and walks out of reach, and goes on where it was.</summary>
internal static class RunEndpoints
{
    /// <summary>A header that no form of another page can send.</summary>
    public const string Header = "X-Finwright";

    private const int MostBytes = 1 << 20;

    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web);

    /// <summary>Adds the addresses.</summary>
    /// <param name="web">To what.</param>
    /// <param name="isPhone">Whether phones are served: the pages then lead nowhere else.</param>
    public static void Map(IEndpointRouteBuilder web, bool isPhone)
    {
        web.MapGet("/run", (HttpContext context) => NotKept(context, () => new RazorComponentResult<RunListPage>(new { IsPhone = isPhone })));
        web.MapGet("/run/{id:long}", (long id, Desk desk, HttpContext context) => NotKept(context, () => Page(desk, id, isPhone)));
        web.MapGet("/run/{id:long}/entries", (long id, Desk desk, HttpContext context) => NotKept(context, () =>
            desk.Ask(store => store.RunSheets.Find(id)) is null ? Results.NotFound() : Results.Json(Answer(desk, id), Form)));
        web.MapPost("/run/{id:long}/entries", Enter);
    }

    /// <summary>What was entered on a sheet, as the page's script reads it.</summary>
    public static RunState Answer(Desk desk, long id) => desk.Ask(store => new RunState(
        store.RunSheets.Now.ToUnixTimeMilliseconds(),
        [.. store.RunSheets.Entries(id).Select(entry => new SentEntry(entry.Key, entry.Value, entry.At.ToUnixTimeMilliseconds()))]));

    private static IResult NotKept(HttpContext context, Func<IResult> answer)
    {
        context.Response.Headers.CacheControl = "no-store";
        return answer();
    }

    private static IResult Page(Desk desk, long id, bool isPhone)
    {
        RunSheet? sheet = desk.Ask(store => store.RunSheets.Find(id));
        return sheet is null
            ? new RazorComponentResult<RunListPage>(new { IsPhone = isPhone, Missing = true }) { StatusCode = StatusCodes.Status404NotFound }
            : new RazorComponentResult<RunSheetPage>(new { Sheet = sheet, IsPhone = isPhone });
    }

    private static async Task<IResult> Enter(long id, Desk desk, HttpContext context)
    {
        if (context.Request.Headers[Header] != "run")
            return Results.StatusCode(StatusCodes.Status403Forbidden);
        if (context.Request.ContentLength is not (> 0 and <= MostBytes and long bytes))
            return Results.StatusCode(StatusCodes.Status413PayloadTooLarge);
        if (desk.Ask(store => store.RunSheets.Find(id)) is not { } sheet)
            return Results.NotFound();
        byte[] sent = new byte[bytes];
        int length = await context.Request.Body.ReadAtLeastAsync(sent, sent.Length, throwOnEndOfStream: false, context.RequestAborted).ConfigureAwait(false);
        if (RunEntries.Read(RunPlan.Of(sheet.Plan), sent.AsSpan(0, length)) is not { } entries)
            return Results.BadRequest();
        try
        {
            desk.Change(store => store.RunSheets.Enter(id, entries));
        }
        catch (StoreException problem)
        {
            return Results.Json(new { problem.Message, problem.Remedy }, Form, statusCode: StatusCodes.Status409Conflict);
        }

        context.Response.Headers.CacheControl = "no-store";
        return Results.Json(Answer(desk, id), Form);
    }
}

/// <summary>What was entered on a sheet.</summary>
/// <param name="Now">The clock of this computer, ms since 1970.</param>
/// <param name="Entries">The entries.</param>
internal sealed record RunState(long Now, IReadOnlyList<SentEntry> Entries);

/// <summary>An entry on its way between browser and store.</summary>
/// <param name="Key">What it belongs to.</param>
/// <param name="Value">Its value.</param>
/// <param name="At">When it was set, ms since 1970.</param>
internal sealed record SentEntry(string Key, string Value, long At);
