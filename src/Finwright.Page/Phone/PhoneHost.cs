using System.Net;
using System.Net.Sockets;
using Finwright.Page.Hosting;
using Finwright.Page.RunSheets;
using Finwright.Page.Settings;
using Finwright.Page.Words;
using Finwright.Page.Works;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Finwright.Page.Phone;

/// <summary>A second server at an address of the home network, for run sheets and nothing else.</summary>
public sealed class PhoneHost : IAsyncDisposable
{
    /// <summary>Where a code is turned into a cookie.</summary>
    public const string EntryPath = "/run/enter";

    private const long MostBytes = 1 << 20;

    // All that the pages of run sheets need besides themselves.
    private static readonly string[] Files = ["/_content/Finwright.Page/css/page.css", "/_content/Finwright.Page/css/run.css", "/_content/Finwright.Page/js/run.js", "/_content/Finwright.Page/js/judge.js", "/_content/Finwright.Page/fin.svg"];

    private readonly WebApplication _web;

    private PhoneHost(WebApplication web, PhoneDoor door) => (_web, Door) = (web, door);

    /// <summary>Who may come in.</summary>
    public PhoneDoor Door { get; }

    /// <summary>Where it listens.</summary>
    public Uri Address => new(_web.Services.GetRequiredService<IServer>().Features.GetRequiredFeature<IServerAddressesFeature>().Addresses.First());

    /// <summary>The address that lets one phone in; null when the code was used.</summary>
    public Uri? Entry => Door.Code is { } code ? new Uri(Address, $"{EntryPath}?code={code}") : null;

    /// <summary>Starts listening.</summary>
    /// <param name="at">Address of this computer.</param>
    /// <param name="settings">How the page is served.</param>
    /// <param name="desk">The store.</param>
    /// <param name="reader">How the page speaks.</param>
    /// <exception cref="IOException">It cannot listen there.</exception>
    public static async Task<PhoneHost> Start(IPAddress at, PageSettings settings, Desk desk, ReaderSettings reader)
    {
        ArgumentNullException.ThrowIfNull(at);
        ArgumentNullException.ThrowIfNull(settings);
        PhoneDoor door = new(settings.Time);
        WebApplication web = Build(at, settings, desk, reader, door);
        try
        {
            await web.StartAsync().ConfigureAwait(false);
            return new(web, door);
        }
        catch (Exception problem)
        {
            await web.DisposeAsync().ConfigureAwait(false);
            if (problem is SocketException)
                throw new IOException(problem.Message, problem);
            throw;
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        // A phone that waits for an answer is not waited for.
        using CancellationTokenSource atOnce = new(TimeSpan.FromSeconds(1));
        await _web.StopAsync(atOnce.Token).ConfigureAwait(false);
        await _web.DisposeAsync().ConfigureAwait(false);
    }

    private static WebApplication Build(IPAddress at, PageSettings settings, Desk desk, ReaderSettings reader, PhoneDoor door)
    {
        WebApplicationBuilder builder = PageHost.Bare(settings);
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.Listen(new IPEndPoint(at, 0));
            server.AddServerHeader = false;
            server.Limits.MaxRequestBodySize = MostBytes;
            server.Limits.MaxConcurrentConnections = 64;
        });
        builder.Services.AddRazorComponents();
        // Instances given from outside are not disposed of with this server: they are the page's own.
        builder.Services.AddSingleton(settings).AddSingleton(settings.Time).AddSingleton(desk).AddSingleton(reader).AddScoped<Reader>();
        WebApplication web = builder.Build();
        web.Use(RequestRules.OwnPageOnly(host => string.Equals(host, at.ToString(), StringComparison.Ordinal)));
        web.Use((context, next) =>
        {
            string path = context.Request.Path.Value ?? "";
            if (!IsOurs(path))
                return Refusal.Write(context, StatusCodes.Status404NotFound, "There is nothing here.", "Phones reach run sheets only.");
            return path == EntryPath || Files.Contains(path, StringComparer.Ordinal) || door.Knows(context.Request.Cookies[PhoneDoor.Cookie])
                ? next(context)
                : Refusal.Write(context, StatusCodes.Status403Forbidden, "This phone was not let in yet, or not any more.", "Scan the code that Finwright shows under \"Let your phone in\".");
        });
        web.MapStaticAssets(PageHost.AssetsOf(settings));
        web.MapGet(EntryPath, (string? code) => new RazorComponentResult<PhoneEntryPage>(new { Code = code ?? "" }));
        web.MapPost(EntryPath, async (HttpContext context) =>
        {
            IFormCollection form = await context.Request.ReadFormAsync(context.RequestAborted).ConfigureAwait(false);
            if (door.Admit(form["code"].ToString(), context.Request.Headers.UserAgent.ToString()) is not { } key)
                return new RazorComponentResult<PhoneEntryPage>(new { Code = "", IsWrong = true }) { StatusCode = StatusCodes.Status403Forbidden };
            context.Response.Cookies.Append(PhoneDoor.Cookie, key, new() { HttpOnly = true, SameSite = SameSiteMode.Strict, IsEssential = true, MaxAge = PhoneAccess.Longest, Path = "/run" });
            return Results.LocalRedirect("/run");
        });
        RunEndpoints.Map(web, isPhone: true);
        return web;
    }

    private static bool IsOurs(string path) => path == "/run" || path.StartsWith("/run/", StringComparison.Ordinal) || Files.Contains(path, StringComparer.Ordinal);
}
