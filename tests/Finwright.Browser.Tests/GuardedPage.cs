using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Finwright.Browser.Tests;

/// <summary>The page as somebody meets it who does not come with a browser: requests written by hand.</summary>
public sealed class GuardedPage : IAsyncLifetime
{
    // A name that is markup, with everything that ends an attribute.
    internal const string HostileName = "<img src=x onerror=window.hit=1> \"'&";

    private static readonly Dictionary<string, string> Widening = new(StringComparer.Ordinal)
    {
        ["ASPNETCORE_URLS"] = "http://0.0.0.0:0",
        ["DOTNET_URLS"] = "http://0.0.0.0:0",
        ["URLS"] = "http://0.0.0.0:0",
        ["ASPNETCORE_HTTP_PORTS"] = "0",
        ["Kestrel__Endpoints__Wide__Url"] = "http://0.0.0.0:0",
        ["ASPNETCORE_Kestrel__Endpoints__Wide__Url"] = "http://0.0.0.0:0",
        ["AllowedHosts"] = "*",
        ["ASPNETCORE_ENVIRONMENT"] = "Development",
        ["DOTNET_ENVIRONMENT"] = "Development",
        ["ASPNETCORE_DETAILEDERRORS"] = "true",
    };

    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false, UseProxy = false });
    private ServedPage? _served;
    private string? _cookie;

    internal ServedPage Served => _served!;

    internal string Cookie => _cookie!;

    /// <summary>What entering the page was answered.</summary>
    internal HttpResponseMessage Entered { get; private set; } = new();

    public async ValueTask InitializeAsync()
    {
        _served = await ServedPage.Prepared(Widening, worksAhead: false, ["shelf", "add", Path.Combine(ServedPage.Sources(), "examples", "sandbar-delta.fin.json"), "--name", HostileName], ["store", "demo"]);
        Entered = await Ask(HttpMethod.Get, _served.Entry.PathAndQuery, cookie: null);
        _cookie = Assert.Single(Entered.Headers.GetValues("Set-Cookie")).Split(';')[0];
    }

    public async ValueTask DisposeAsync()
    {
        Entered.Dispose();
        _client.Dispose();
        await Served.DisposeAsync();
    }

    /// <summary>Sends a request of somebody who was let in.</summary>
    internal Task<HttpResponseMessage> Ask(string path, params (string Name, string Value)[] headers) => Ask(HttpMethod.Get, path, Cookie, content: null, headers);

    /// <summary>Sends a request.</summary>
    internal async Task<HttpResponseMessage> Ask(HttpMethod method, string path, string? cookie, HttpContent? content = null, params (string Name, string Value)[] headers)
    {
        // As written: nothing is tidied up before it is sent.
        using HttpRequestMessage request = new(method, new Uri(Served.Address.AbsoluteUri.TrimEnd('/') + path, new UriCreationOptions { DangerousDisablePathAndQueryCanonicalization = true })) { Content = content };
        if (cookie is not null)
            request.Headers.Add("Cookie", cookie);
        foreach ((string name, string value) in headers)
            request.Headers.TryAddWithoutValidation(name, value);
        return await _client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    /// <summary>Sends bytes as they are and gives the first line of the answer; empty when there was none.</summary>
    internal async Task<string> Raw(string request)
    {
        using TcpClient line = new();
        await line.ConnectAsync(IPAddress.Loopback, Served.Address.Port, TestContext.Current.CancellationToken);
        await using NetworkStream stream = line.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(request), TestContext.Current.CancellationToken);
        using StreamReader reader = new(stream);
        return await reader.ReadLineAsync(TestContext.Current.CancellationToken) ?? "";
    }
}
