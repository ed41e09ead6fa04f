using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http.Features;

namespace Finwright.Page.Hosting;

/// <summary>A page that only says why there is none: for whoever started the program without a terminal, and would see nothing.</summary>
public sealed class TroublePage : IAsyncDisposable
{
    private readonly WebApplication _web;
    private readonly string _word;

    private TroublePage(WebApplication web, string word) => (_web, _word) = (web, word);

    /// <summary>Where it is; under a word that nobody else on this computer can guess.</summary>
    public Uri Address => new(new Uri(_web.Services.GetRequiredService<IServer>().Features.GetRequiredFeature<IServerAddressesFeature>().Addresses.First()), _word);

    /// <summary>Shows it, on a port that is free.</summary>
    /// <param name="message">What happened.</param>
    /// <param name="remedy">What to do.</param>
    /// <param name="cancellation">Stops the start.</param>
    public static async Task<TroublePage> Start(string message, string remedy, CancellationToken cancellation)
    {
        string word = UnguessableName.New();
        WebApplicationBuilder builder = PlainHost.Builder(AppContext.BaseDirectory);
        builder.WebHost.ConfigureKestrel(server => PlainHost.ListenAt(server, new(IPAddress.Loopback, 0)));
        WebApplication web = builder.Build();
        web.Use(RequestRules.OwnPageOnly(PlainHost.IsOurs));
        web.Run(context => context.Request.Path == "/" + word
            ? Refusal.Write(context, StatusCodes.Status503ServiceUnavailable, message, remedy)
            : Refusal.Write(context, StatusCodes.Status404NotFound, "There is nothing here.", "Open the address that Finwright shows."));
        await web.StartAsync(cancellation).ConfigureAwait(false);
        return new(web, word);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _web.StopAsync().ConfigureAwait(false);
        await _web.DisposeAsync().ConfigureAwait(false);
    }
}
