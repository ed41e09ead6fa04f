using System.Net;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.Configuration;

namespace Finwright.Page.Hosting;

/// <summary>A server that listens where it is told to and nowhere else.</summary>
internal static class PlainHost
{
    /// <summary>Name of the program, by which it finds its own files.</summary>
    public const string Program = "Finwright";

    /// <summary>Bytes that a request may bring.</summary>
    public const long MostUploadBytes = 64L << 20;

    /// <summary>A server that listens nowhere yet.</summary>
    /// <param name="programFolder">Folder of the program's own files.</param>
    public static WebApplicationBuilder Builder(string programFolder)
    {
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = Program,
            ContentRootPath = programFolder,
            EnvironmentName = Environments.Production,
        });
        // Nothing in the environment or in a file beside the program can make it listen to others, or say more than it does.
        builder.Configuration.Sources.Clear();
        builder.Configuration.AddInMemoryCollection();
        builder.Logging.ClearProviders();
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace).SetMinimumLevel(LogLevel.Error)
            // Why it did not start is told by whoever started it.
            .AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        // No variable of the environment brings other code along, or another address.
        builder.WebHost.UseSetting(WebHostDefaults.PreventHostingStartupKey, "true").UseUrls();
        // What is open in a browser comes back by itself: nobody who ends the program waits for it.
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(3));
        return builder;
    }

    /// <summary>Listens there and nowhere else.</summary>
    public static void ListenAt(KestrelServerOptions server, IPEndPoint where)
    {
        server.Listen(where);
        server.AddServerHeader = false;
        server.Limits.MaxRequestBodySize = MostUploadBytes;
    }

    /// <summary>Whether a host name is one of this computer's own.</summary>
    public static bool IsOurs(string host) => host is "127.0.0.1" or "localhost";
}
