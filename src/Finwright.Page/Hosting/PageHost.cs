using System.Net.Sockets;
using Finwright.Page.Bench;
using Finwright.Page.Builds;
using Finwright.Page.Editing;
using Finwright.Page.Help;
using Finwright.Page.Libraries;
using Finwright.Page.Making;
using Finwright.Page.Phone;
using Finwright.Page.RunSheets;
using Finwright.Page.Scene;
using Finwright.Page.Settings;
using Finwright.Page.Shelf;
using Finwright.Page.Starting;
using Finwright.Page.Words;
using Finwright.Page.Works;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Hosting.StaticWebAssets;
using Microsoft.AspNetCore.Http.Features;

namespace Finwright.Page.Hosting;

/// <summary>The page's server: listens on this computer alone, until it is disposed of.</summary>
public sealed partial class PageHost : IAsyncDisposable
{
    // Tabs that lost their connection and may come back. Each holds a few megabytes.
    private const int KeptTabs = 20;

    // What a tab may send in one go: a drag is far smaller, a piece of a file may be this large.
    private const long LargestMessageBytes = 128L << 10;

    private readonly WebApplication _web;
    private readonly LocalDoor _door;
    private readonly Desk _desk;

    private PageHost(WebApplication web, LocalDoor door, Desk desk) => (_web, _door, _desk) = (web, door, desk);

    /// <summary>Where the page is.</summary>
    public Uri Address => new(_web.Services.GetRequiredService<IServer>().Features.GetRequiredFeature<IServerAddressesFeature>().Addresses.First());

    /// <summary>An address that lets a browser in, once.</summary>
    public Uri Entry() => new(Address, $"{LocalDoor.EntryPath}?key={_door.Ticket()}");

    /// <summary>Starts serving.</summary>
    /// <param name="settings">How.</param>
    /// <param name="cancellation">Stops the start.</param>
    /// <exception cref="Workshop.Storing.StoreException">The store cannot be opened.</exception>
    /// <exception cref="PortTakenException">Another program listens on the port.</exception>
    public static async Task<PageHost> Start(PageSettings settings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Desk desk = Desk.Open(settings);
        try
        {
            MakeKeepingFolder(settings.KeepingFolder);
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

            return new(web, door, desk);
        }
        catch (Exception problem)
        {
            desk.Dispose();
            if (problem is IOException { InnerException: AddressInUseException } or SocketException)
                throw new PortTakenException(settings.Port, problem);
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
        // Last: what is open writes what it has not written yet.
        _desk.Dispose();
    }

    /// <summary>A server that listens nowhere yet, and finds the files for the browser.</summary>
    internal static WebApplicationBuilder Bare(PageSettings settings)
    {
        WebApplicationBuilder builder = PlainHost.Builder(settings.ProgramFolder);
        // Run from its sources, the files for the browser lie where the build found them.
        if (File.Exists(Path.Combine(settings.ProgramFolder, PlainHost.Program + ".staticwebassets.runtime.json")))
            StaticWebAssetsLoader.UseStaticWebAssets(builder.Environment, builder.Configuration);
        return builder;
    }

    /// <summary>The list of files for the browser.</summary>
    internal static string AssetsOf(PageSettings settings) => Path.Combine(settings.ProgramFolder, PlainHost.Program + ".staticwebassets.endpoints.json");

    private static WebApplication Build(PageSettings settings, Desk desk, LocalDoor door)
    {
        WebApplicationBuilder builder = Bare(settings);
        builder.WebHost.ConfigureKestrel(server => PlainHost.ListenAt(server, settings.Listening));
        IDataProtectionBuilder protection = builder.Services.AddDataProtection().SetApplicationName(PlainHost.Program);
        if (MayKeep(settings.KeepingFolder))
            protection.PersistKeysToFileSystem(new(Path.Combine(settings.KeepingFolder, "keys")));
        else
            protection.UseEphemeralDataProtectionProvider();
        builder.Services.AddRazorComponents().AddInteractiveServerComponents(circuits =>
        {
            circuits.DetailedErrors = false;
            // A tab that lost its connection (a laptop that slept) finds its own again for so long; after that it starts anew from what is kept.
            circuits.DisconnectedCircuitMaxRetained = KeptTabs;
            circuits.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(5);
        }).AddHubOptions(hub => hub.MaximumReceiveMessageSize = LargestMessageBytes);
        builder.Services.AddHttpContextAccessor();
        builder.Services
            .AddSingleton(settings)
            .AddSingleton(desk)
            .AddSingleton(settings.Time)
            .AddSingleton<ReaderSettings>()
            .AddSingleton(own => new WorkFloor(settings.Time) { WorksAhead = () => own.GetRequiredService<ReaderSettings>().Choice.WorksAhead })
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
        if (settings.EndsAlone)
            builder.Services.AddSingleton<OpenTabs>().AddSingleton<CircuitHandler>(own => own.GetRequiredService<OpenTabs>());

        WebApplication web = builder.Build();
        ILogger log = web.Services.GetRequiredService<ILoggerFactory>().CreateLogger(PlainHost.Program);
        web.Use(RequestRules.OwnPageOnly(PlainHost.IsOurs));
        web.Use(RequestRules.Told(Most, fault => Fault(log, fault)));
        web.Use((context, next) => context.Request.Path.Value switch
        {
            LocalDoor.EntryPath => door.Enter(context),
            LocalDoor.ProofPath => door.Prove(context),
            _ when door.Knows(context.Request) => next(context),
            _ => Refusal.Write(context, StatusCodes.Status403Forbidden, "This browser was not let in yet.", "Open the address that \"finwright serve\" shows; it lets this browser in."),
        });
        // Who reads a page gets the page that says so; who fetches a part of one gets a line.
        web.UseWhen(WantsPage, pages => pages.UseStatusCodePagesWithReExecute("/not-there"));
        web.UseWhen(context => !WantsPage(context), parts => parts.UseStatusCodePages(told => RequestRules.InWords(told.HttpContext, Most)));
        web.UseRouting();
        web.UseAntiforgery();
        web.MapGet("/api/health", () => Results.Text(door.Run));
        web.MapStaticAssets(AssetsOf(settings));
        SceneBook.Map(web);
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

    // What the printer is told to do is long; it is written to the disk as it comes.
    private static long Most(HttpRequest request) => request.Path.StartsWithSegments(MotionInbox.Address, StringComparison.Ordinal) ? MotionInbox.MostBytes : PlainHost.MostUploadBytes;

    private static bool WantsPage(HttpContext context) =>
        HttpMethods.IsGet(context.Request.Method) && context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);

    // It holds the key: nobody else looks into it, whoever made the folder. On a write-protected disk there is none.
    private static void MakeKeepingFolder(string folder)
    {
        const UnixFileMode own = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        try
        {
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
                return;
            }

            Directory.CreateDirectory(folder, own);
            File.SetUnixFileMode(folder, own);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return;
        }
    }

    private static bool MayKeep(string folder)
    {
        try
        {
            string trial = Path.Combine(folder, "trial-" + Guid.NewGuid().ToString("N"));
            File.WriteAllBytes(trial, []);
            File.Delete(trial);
            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "A fault while answering the browser.")]
    private static partial void Fault(ILogger log, Exception fault);
}
