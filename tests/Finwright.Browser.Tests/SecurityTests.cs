using System.Globalization;
using System.Net;
using System.Net.WebSockets;
using System.Text.RegularExpressions;

namespace Finwright.Browser.Tests;

/// <summary>Who is let in, and what every answer says to the browser.</summary>
public sealed partial class SecurityTests(GuardedPage page) : IClassFixture<GuardedPage>
{
    [Fact]
    public void The_cookie_is_for_this_page_alone()
    {
        Assert.Equal(HttpStatusCode.Redirect, page.Entered.StatusCode);
        string cookie = Assert.Single(page.Entered.Headers.GetValues("Set-Cookie"));
        Assert.Matches("^finwright-[0-9a-f]{8}=[0-9A-F]{64}; max-age=[0-9]+; path=/; samesite=strict; httponly$", LowerAfterFirst(cookie));

        static string LowerAfterFirst(string cookie)
        {
            string[] parts = cookie.Split("; ");
            return string.Join("; ", parts[..1].Concat(parts[1..].Select(part => part.ToLowerInvariant()).Where(part => !part.StartsWith("expires", StringComparison.Ordinal))));
        }
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/design/Sandbar%20delta")]
    [InlineData("/settings")]
    [InlineData("/api/health")]
    [InlineData("/_content/Finwright.Page/css/page.css")]
    [InlineData("/_framework/blazor.web.js")]
    [InlineData("/_blazor/initializers")]
    [InlineData("/nowhere")]
    public async Task Without_the_key_nothing_is_shown_but_what_to_do(string path)
    {
        using HttpResponseMessage answer = await page.Ask(HttpMethod.Get, path, cookie: null);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("finwright serve", await Text(answer), StringComparison.Ordinal);
        using HttpResponseMessage wrong = await page.Ask(HttpMethod.Get, path, page.Cookie[..^2] + "00");
        Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
    }

    [Fact]
    public async Task The_address_lets_one_browser_in_once()
    {
        using HttpResponseMessage again = await page.Ask(HttpMethod.Get, page.Served.Entry.PathAndQuery, cookie: null);
        Assert.Equal(HttpStatusCode.Forbidden, again.StatusCode);
        Assert.False(again.Headers.Contains("Set-Cookie"));
        foreach (string guessed in new[] { "", "?key=", "?key=00", "?key=.", "?key=aa.bb", "?key=" + new string('a', 5000) })
        {
            using HttpResponseMessage refused = await page.Ask(HttpMethod.Get, "/enter" + guessed, cookie: null);
            Assert.Equal(HttpStatusCode.Forbidden, refused.StatusCode);
        }

        // Whoever is in already is only led on.
        using HttpResponseMessage known = await page.Ask(page.Served.Entry.PathAndQuery);
        Assert.Equal(("/#back", false), (known.Headers.Location!.ToString(), known.Headers.Contains("Set-Cookie")));
    }

    [Theory]
    [InlineData("example.org")]
    [InlineData("example.org:80")]
    [InlineData("127.0.0.1.example.org")]
    [InlineData("localhost.example.org")]
    [InlineData("[::1]")]
    [InlineData("0.0.0.0")]
    public async Task A_name_of_elsewhere_is_refused(string host)
    {
        using HttpResponseMessage answer = await page.Ask("/", ("Host", host));
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("GET", "Origin", "https://example.org")]
    [InlineData("GET", "Origin", "null")]
    [InlineData("POST", "Origin", "https://example.org")]
    [InlineData("POST", "Origin", "http://127.0.0.1:1")]
    [InlineData("GET", "Sec-Fetch-Site", "cross-site")]
    [InlineData("GET", "Sec-Fetch-Site", "same-site")]
    [InlineData("POST", "Sec-Fetch-Site", "cross-site")]
    public async Task Another_page_cannot_send_a_browser_here(string method, string header, string value)
    {
        foreach (string path in new[] { "/", "/settings", "/_blazor/negotiate", "/api/health", "/enter" })
        {
            using HttpResponseMessage answer = await page.Ask(new HttpMethod(method), path, page.Cookie, content: null, (header, value));
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        }
    }

    [Fact]
    public async Task A_socket_is_opened_for_the_own_page_alone()
    {
        string own = page.Served.Address.GetLeftPart(UriPartial.Authority);
        Assert.Equal(WebSocketState.Open, await Socket(own, page.Cookie));
        foreach ((string origin, string? cookie) in new[] { ("https://example.org", page.Cookie), ("http://127.0.0.1:1", page.Cookie), ("null", page.Cookie), (own, null) })
            Assert.Equal(WebSocketState.Closed, await Socket(origin, cookie));
    }

    [Fact]
    public async Task Nobody_but_this_computer_reaches_it_whatever_the_environment_says()
    {
        string[] lines = [.. await File.ReadAllLinesAsync($"/proc/{page.Served.ProcessId}/net/tcp", TestContext.Current.CancellationToken), .. await File.ReadAllLinesAsync($"/proc/{page.Served.ProcessId}/net/tcp6", TestContext.Current.CancellationToken)];
        HashSet<string> own = [.. Directory.GetFiles($"/proc/{page.Served.ProcessId}/fd").Select(file => File.ResolveLinkTarget(file, returnFinalTarget: false)?.Name ?? "")];
        const string listening = "0A";
        string[] addresses = [.. lines.Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(row => row.Length > 9 && row[3] == listening && own.Contains($"socket:[{row[9]}]")).Select(row => row[1])];
        Assert.Equal([string.Create(CultureInfo.InvariantCulture, $"0100007F:{page.Served.Address.Port:X4}")], addresses);
    }

    [Theory]
    [InlineData("/", 200)]
    [InlineData("/design/Sandbar%20delta", 200)]
    [InlineData("/_content/Finwright.Page/css/page.css", 200)]
    [InlineData("/_content/Finwright.Page/vendor/three.module.js", 200)]
    [InlineData("/_content/Finwright.Page/css/missing.css", 404)]
    [InlineData("/_framework/blazor.web.js", 200)]
    [InlineData("/api/health", 200)]
    [InlineData("/api/scene/none/plain", 404)]
    [InlineData("/nowhere", 404)]
    public async Task Every_answer_has_a_body_and_tells_the_browser_what_it_may_do(string path, int status)
    {
        using HttpResponseMessage answer = await page.Ask(path);
        Assert.Equal(status, (int)answer.StatusCode);
        Assert.NotEmpty(await Text(answer));
        Assert.Matches(Policy(), Assert.Single(answer.Headers.GetValues("Content-Security-Policy")));
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Resource-Policy")));
        Assert.False(answer.Headers.Contains("Server") || answer.Headers.Contains("X-Powered-By") || answer.Headers.Contains("Access-Control-Allow-Origin"));
        using HttpResponseMessage refused = await page.Ask(HttpMethod.Get, path, cookie: null);
        Assert.Matches(Policy(), Assert.Single(refused.Headers.GetValues("Content-Security-Policy")));
    }

    [Theory]
    [InlineData("/api/scene/0123456789abcdef0123456789abcdef?n=1", HttpStatusCode.NoContent)]
    [InlineData("/api/scene/0123456789abcdef0123456789abcdeX?n=1", HttpStatusCode.NotFound)]
    [InlineData("/api/scene/0123456789abcdef?n=1", HttpStatusCode.NotFound)]
    public async Task A_scene_whose_page_was_left_is_nothing_and_any_other_name_is_not_found(string path, HttpStatusCode status)
    {
        using HttpResponseMessage answer = await page.Ask(path);
        Assert.Equal(status, answer.StatusCode);
    }

    [Fact]
    public async Task A_page_that_is_not_there_says_so_and_leads_on()
    {
        using HttpResponseMessage answer = await page.Ask("/nowhere", ("Accept", "text/html"));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        string text = await Text(answer);
        Assert.Contains("There is nothing here", text, StringComparison.Ordinal);
        Assert.Contains("<nav", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("..")]
    [InlineData("%2e%2e")]
    [InlineData("..%2f")]
    [InlineData("%2e%2e%2f")]
    [InlineData("..\\")]
    [InlineData("..%5c")]
    [InlineData("%252e%252e%252f")]
    [InlineData("..%c0%af")]
    [InlineData("%00")]
    public async Task No_path_leads_out_of_what_is_served(string step)
    {
        foreach (string root in new[] { "/", "/_content/Finwright.Page/", "/_content/Finwright.Page/css/", "/_framework/", "/api/scene/", "/design/", "/api/papers/", "/api/pack/", "/api/photo/" })
        {
            foreach (string wanted in new[] { "workshop.finstore", "page/page.key", "etc/passwd" })
            {
                string up = step.EndsWith("..", StringComparison.Ordinal) || step.EndsWith('e') ? step + "/" : step;
                using HttpResponseMessage answer = await page.Ask(root + string.Concat(Enumerable.Repeat(up, 8)) + wanted);
                string text = await Text(answer);
                Assert.True((int)answer.StatusCode >= 400 || text.Contains("<html", StringComparison.Ordinal), $"{root}{step}: {answer.StatusCode}");
                Assert.DoesNotContain("root:", text, StringComparison.Ordinal);
                Assert.DoesNotContain("SQLite format", text, StringComparison.Ordinal);
                Assert.NotEqual(HttpStatusCode.InternalServerError, answer.StatusCode);
            }
        }
    }

    [Fact]
    public async Task A_name_that_is_markup_is_shown_as_text()
    {
        foreach (string path in new[] { "/", "/design/" + Uri.EscapeDataString(GuardedPage.HostileName), "/design/" + Uri.EscapeDataString("<script>hit()</script>"), "/outings", "/libraries" })
        {
            using HttpResponseMessage answer = await page.Ask(path, ("Accept", "text/html"));
            string text = await Text(answer);
            Assert.DoesNotContain("<img src=x", text, StringComparison.Ordinal);
            Assert.DoesNotContain("<script>hit", text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("TRACE")]
    [InlineData("OPTIONS")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("PATCH")]
    [InlineData("PROPFIND")]
    public async Task Other_methods_are_refused(string method)
    {
        foreach (string path in new[] { "/", "/settings", "/_content/Finwright.Page/css/page.css", "/api/health" })
        {
            using HttpResponseMessage answer = await page.Ask(new HttpMethod(method), path, page.Cookie);
            Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        }
    }

    [Fact]
    public async Task A_head_is_answered_like_the_whole_without_its_body()
    {
        using HttpResponseMessage answer = await page.Ask(HttpMethod.Head, "/_content/Finwright.Page/css/page.css", page.Cookie);
        Assert.Equal((HttpStatusCode.OK, ""), (answer.StatusCode, await Text(answer)));
    }

    [Fact]
    public async Task A_file_that_is_too_large_is_refused_before_it_is_read()
    {
        string request = $"POST /settings HTTP/1.1\r\nHost: 127.0.0.1:{page.Served.Address.Port}\r\nCookie: {page.Cookie}\r\nContent-Type: application/octet-stream\r\nContent-Length: 99000000000\r\n\r\n";
        Assert.Equal("HTTP/1.1 413 Payload Too Large", await page.Raw(request));
        // Motion files may be longer, and are for the part of the page that asked for one.
        Assert.Equal("HTTP/1.1 403 Forbidden", await page.Raw(request.Replace("/settings", "/api/motion/none", StringComparison.Ordinal).Replace("99000000000", "400000000", StringComparison.Ordinal)));
        // Without the key not even its length is looked at.
        Assert.Equal("HTTP/1.1 413 Payload Too Large", await page.Raw(request.Replace(page.Cookie, "a=b", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("GET / HTTP/1.1\r\n\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n")]
    [InlineData("GET http://example.org/ HTTP/1.1\r\nHost: example.org\r\n\r\n")]
    [InlineData("\0\0\0\r\n\r\n")]
    public async Task Nonsense_is_refused_and_the_page_goes_on(string request)
    {
        Assert.Matches("^HTTP/1.1 4[0-9]{2} |^$", await page.Raw(request));
        using HttpResponseMessage answer = await page.Ask("/api/health");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public void The_key_can_be_read_by_its_owner_alone()
    {
        string folder = Path.Combine(page.Served.Folder, "page");
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(folder));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Path.Combine(folder, "page.key")));
        foreach (string file in Directory.GetFiles(Path.Combine(folder, "keys")))
            Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(file) & (UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite));
    }

    [Fact]
    public async Task Who_asks_whether_the_key_is_here_learns_nothing_to_enter_with()
    {
        using HttpResponseMessage answer = await page.Ask(HttpMethod.Get, "/enter/proof?nonce=abc", cookie: null);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        string[] said = (await Text(answer)).Split(' ');
        foreach (string guessed in new[] { said[0], said[1], $"abc.{said[1]}", $"{said[0]}.{said[1]}" })
        {
            using HttpResponseMessage refused = await page.Ask(HttpMethod.Get, "/enter?key=" + guessed, cookie: null);
            Assert.Equal(HttpStatusCode.Forbidden, refused.StatusCode);
        }
    }

    private static Task<string> Text(HttpResponseMessage answer) => answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

    private async Task<WebSocketState> Socket(string origin, string? cookie)
    {
        using ClientWebSocket socket = new();
        socket.Options.SetRequestHeader("Origin", origin);
        if (cookie is not null)
            socket.Options.SetRequestHeader("Cookie", cookie);
        try
        {
            await socket.ConnectAsync(new UriBuilder(page.Served.Address) { Scheme = "ws", Path = "/_blazor" }.Uri, TestContext.Current.CancellationToken);
        }
        catch (WebSocketException)
        {
            // Refused: the state says it.
        }

        return socket.State;
    }

    [GeneratedRegex("^default-src 'none'; script-src 'self' 'nonce-[A-Za-z0-9+/=]{24}'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'; manifest-src 'self'$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Policy();
}
