using System.Net.Sockets;
using Finwright.Page.Bench;
using Finwright.Page.Builds;
using Finwright.Page.Editing;
using Finwright.Page.Making;
using Finwright.Page.Phone;
using Finwright.Page.RunSheets;
using Finwright.Page.Help;
using Finwright.Page.Libraries;
using Finwright.Page.Scene;
using Finwright.Page.Settings;
using Finwright.Page.Shelf;
using Finwright.Page.Starting;
using Finwright.Page.Words;
using Finwright.Page.Works;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Hosting.StaticWebAssets;
using Microsoft.AspNetCore.Http.Features;

namespace Finwright.Page.Hosting;

/// <summary>The page's server: listens on this computer alone, until it is disposed of.</summary>
public sealed class PageHost : IAsyncDisposable
{
    private const string Program = "Finwright";

    private const long MostUploadBytes = 64L << 20;

    private readonly WebApplication _web;
    private readonly LocalDoor _door;

    private PageHost(WebApplication web, LocalDoor door) => (_web, _door) = (web, door);

    /// <summary>Where the page is.</summary>
    public Uri Address => new(_web.Services.GetRequiredService<IServer>().Features.GetRequiredFeature<IServerAddressesFeature>().Addresses.First());

    /// <summary>An address that lets a browser in, once.</summary>
    public Uri Entry() => new(Address, $"{LocalDoor.EntryPath}?key={_door.Ticket()}");

    /// <summary>Starts serving.</summary>
    /// <param name="settings">How.</param>
    /// <param name="cancellation">Stops the start.</param>
    /// <exception cref="Workshop.Storing.StoreException">The store cannot be opened.</exception>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<PageHost> Start(PageSettings settings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Desk desk = Desk.Open(settings);
        try
        {
            Directory.CreateDirectory(settings.KeepingFolder);
            LocalDoor door = LocalDoor.Of(settings.KeepingFolder);
            WebApplication web = Build(settings, desk, door);
            try
            {
                await web.StartAsync(cancellation).ConfigureAwait(false);
            }
            catch
            {
                await web.DisposeAsync().ConfigureAwait(false);
                throw;
            }

            return new(web, door);
        }
        catch (Exception problem)
        {
            desk.Dispose();
            if (problem is IOException { InnerException: SocketException })
                throw new IOException($"Port {settings.Port} is taken: another Finwright may be running.", problem);
            throw;
        }
    }

    /// <summary>Waits until the server is told to stop.</summary>
    /// <param name="cancellation">Tells it to.</param>
    public Task Run(CancellationToken cancellation) => _web.WaitForShutdownAsync(cancellation);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _web.StopAsync().ConfigureAwait(false);
        await _web.DisposeAsync().ConfigureAwait(false);
    }

    /// <summary>A server that listens nowhere yet, and finds the files for the browser.</summary>
    internal static WebApplicationBuilder Bare(PageSettings settings)
    {
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = Program,
            ContentRootPath = settings.ProgramFolder,
            EnvironmentName = Environments.Production,
        });
        // Run from its sources, the files for the browser lie where the build found them.
        if (File.Exists(Path.Combine(settings.ProgramFolder, Program + ".staticwebassets.runtime.json")))
            StaticWebAssetsLoader.UseStaticWebAssets(builder.Environment, builder.Configuration);
        builder.Logging.ClearProviders();
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace).SetMinimumLevel(LogLevel.Error);
        // No variable of the environment brings other code along, or another address.
        builder.WebHost.UseSetting(WebHostDefaults.PreventHostingStartupKey, "true").UseUrls();
        return builder;
    }

    /// <summary>The list of files for the browser.</summary>
    internal static string AssetsOf(PageSettings settings) => Path.Combine(settings.ProgramFolder, Program + ".staticwebassets.endpoints.json");

    private static WebApplication Build(PageSettings settings, Desk desk, LocalDoor door)
    {
        WebApplicationBuilder builder = Bare(settings);
        builder.WebHost.ConfigureKestrel(server =>
        {
            // Not by configuration: no variable of the environment can make it listen to others.
            server.Listen(settings.Listening);
            server.AddServerHeader = false;
            server.Limits.MaxRequestBodySize = MostUploadBytes;
        });
        builder.Services.AddDataProtection().SetApplicationName(Program).PersistKeysToFileSystem(new(Path.Combine(settings.KeepingFolder, "keys")));
        builder.Services.AddRazorComponents().AddInteractiveServerComponents(circuits => circuits.DetailedErrors = false);
        builder.Services.AddHttpContextAccessor();
        builder.Services
            .AddSingleton(settings)
            .AddSingleton(desk)
            .AddSingleton(settings.Time)
            .AddSingleton<ReaderSettings>()
            .AddSingleton<WorkFloor>()
            .AddSingleton<OpenDesigns>()
            .AddSingleton<SceneBook>()
            .AddSingleton<Handouts>()
            .AddSingleton<MotionInbox>()
            .AddSingleton<FigureBook>()
            .AddSingleton<PhoneAccess>()
            .AddSingleton<BenchRoom>()
            .AddSingleton<LibraryShelf>()
            .AddSingleton<FileBook>()
            .AddSingleton<TourDesign>()
            .AddSingleton<PartBook>()
            .AddScoped<Reader>();

        WebApplication web = builder.Build();
        web.Use(RequestRules.OwnPageOnly(host => host is "127.0.0.1" or "localhost"));
        web.Use((context, next) => context.Request.Path.Equals(LocalDoor.EntryPath, StringComparison.Ordinal)
            ? door.Enter(context)
            : door.Knows(context.Request)
                ? next(context)
                : Refusal.Write(context, StatusCodes.Status403Forbidden, "This browser was not let in yet.", "Open the address that \"finwright serve\" shows; it lets this browser in."));
        web.UseAntiforgery();
        string run = Guid.NewGuid().ToString("N");
        web.MapGet("/api/health", () => Results.Text(run));
        web.MapStaticAssets(AssetsOf(settings));
        SceneEndpoint.Map(web);
        FileEndpoints.Map(web);
        MotionInbox.Map(web);
        FigureBook.Map(web);
        RunEndpoints.Map(web, isPhone: false);
        PhotoEndpoint.Map(web);
        FileBook.Map(web);
        ShelfEndpoints.Map(web);
        web.MapRazorComponents<App>().AddInteractiveServerRenderMode(circuits => circuits.ContentSecurityFrameAncestorsPolicy = null);
        return web;
    }
}
