using System.Net;
using System.Text;
using Finwright.Design;
using Finwright.Page.Hosting;
using Finwright.Page.Phone;
using Finwright.Page.RunSheets;
using Finwright.Page.Settings;
using Finwright.Page.Works;
using Finwright.Workshop.RunSheets;

namespace Finwright.Page.Tests.Phone;

public sealed class PhoneHostTests : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-phone-").FullName;
    private readonly Desk _desk = Desk.InMemory();
    private readonly CookieContainer _cookies = new();
    private PhoneHost _host = null!;
    private HttpClient _phone = null!;
    private long _sheet;

    public async ValueTask InitializeAsync()
    {
        // The list of files for the browser: none are asked for here.
        await File.WriteAllTextAsync(Path.Combine(_folder, "Finwright.staticwebassets.endpoints.json"), """{"Version":1,"ManifestType":"Build","Endpoints":[]}""", TestContext.Current.CancellationToken);
        PageSettings settings = new() { StorePath = Path.Combine(_folder, "store"), MadeBy = "Finwright 1.2.3", ProgramFolder = _folder };
        RunPlan plan = new() { Language = "en", Origin = "test", Chapters = [new("Make ready", "", [new() { Id = "s1", Text = "Lay out <cups>" }])] };
        _sheet = _desk.Change(store => store.RunSheets.Add(new()
        {
            DesignId = store.Shelf.Add("Plain", new(new FinDesign { Name = "Plain", Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 300, RootChordMm = 120 } } }, null, "", "test"), []).DesignId,
            Kind = RunKind.Pour,
            Title = "Plain: pour",
            MadeBy = "test",
            Plan = plan.ToJson(),
        }).Id);
        _host = await PhoneHost.Start(IPAddress.Loopback, settings, _desk, new ReaderSettings(settings));
        _phone = new(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = _cookies }) { BaseAddress = _host.Address };
    }

    public async ValueTask DisposeAsync()
    {
        _phone.Dispose();
        await _host.DisposeAsync();
        _desk.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/design/Plain")]
    [InlineData("/api/health")]
    [InlineData("/api/design/Plain/file")]
    [InlineData("/runs")]
    [InlineData("/_framework/blazor.web.js")]
    [InlineData("/_content/Finwright.Page/js/page.js")]
    [InlineData("/run/../api/health")]
    [InlineData("/run/%2e%2e/api/health")]
    public async Task Nothing_but_run_sheets_is_reached_even_when_let_in(string path)
    {
        await LetIn();
        Assert.Equal(HttpStatusCode.NotFound, (await Get(path)).StatusCode);
    }

    [Fact]
    public async Task Without_a_code_nobody_reads_or_ticks()
    {
        Assert.Equal(HttpStatusCode.Forbidden, (await Get("/run")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await Get($"/run/{_sheet}")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await Tick()).StatusCode);
        Assert.Empty(_desk.Ask(store => store.RunSheets.Entries(_sheet)));
    }

    [Fact]
    public async Task A_code_is_good_once_and_looking_at_its_address_does_not_use_it_up()
    {
        string code = _host.Door.Code!;
        Assert.Equal(HttpStatusCode.OK, (await Get(_host.Entry!.PathAndQuery)).StatusCode);
        Assert.Equal(code, _host.Door.Code);
        Assert.Equal(HttpStatusCode.Redirect, (await Enter(code)).StatusCode);
        Assert.Null(_host.Entry);
        using HttpClient other = new(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = _host.Address };
        using FormUrlEncodedContent again = new([new("code", code)]);
        Assert.Equal(HttpStatusCode.Forbidden, (await other.PostAsync(PhoneHost.EntryPath, again, TestContext.Current.CancellationToken)).StatusCode);
        Assert.Single(_host.Door.Phones);
    }

    [Fact]
    public async Task A_phone_reads_and_ticks_until_it_is_sent_away()
    {
        await LetIn();
        string page = await (await Get($"/run/{_sheet}")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("Lay out &lt;cups&gt;", page, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"/phone\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("blazor", page, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await Tick()).StatusCode);
        Assert.Equal("yes", Assert.Single(_desk.Ask(store => store.RunSheets.Entries(_sheet))).Value);
        _host.Door.SendAway(_host.Door.Phones[0].Id);
        Assert.Equal(HttpStatusCode.Forbidden, (await Get("/run")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await Tick()).StatusCode);
    }

    [Fact]
    public async Task Other_hosts_other_pages_and_plain_forms_are_refused()
    {
        await LetIn();
        Assert.Equal(HttpStatusCode.Forbidden, (await Get("/run", request => request.Headers.Host = "evil.example")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await Get("/run", request => request.Headers.Add("Origin", "http://evil.example"))).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await Get("/run", request => request.Headers.Add("Sec-Fetch-Site", "cross-site"))).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await Tick(header: null)).StatusCode);
    }

    [Fact]
    public async Task What_is_no_entry_is_refused()
    {
        await LetIn();
        Assert.Equal(HttpStatusCode.BadRequest, (await Tick(body: "nonsense")).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await Tick(body: """[{"key":"s9:tick","value":"yes","at":1}]""")).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await Tick(body: """[{"key":"s1:tick","value":"yes","at":-1}]""")).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await Tick(body: """[null]""")).StatusCode);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, (await Tick(body: new string(' ', (1 << 20) + 1))).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await Get("/run/999")).StatusCode);
        Assert.Empty(_desk.Ask(store => store.RunSheets.Entries(_sheet)));
    }

    [Fact]
    public async Task Switched_off_it_does_not_listen_any_more()
    {
        await LetIn();
        await _host.DisposeAsync();
        await Assert.ThrowsAsync<HttpRequestException>(() => Get("/run"));
        // The store is the page's own and stays open.
        Assert.NotNull(_desk.Ask(store => store.RunSheets.Find(_sheet)));
    }

    private async Task LetIn() => Assert.Equal(HttpStatusCode.Redirect, (await Enter(_host.Door.Code!)).StatusCode);

    private async Task<HttpResponseMessage> Enter(string code)
    {
        using FormUrlEncodedContent form = new([new("code", code)]);
        return await _phone.PostAsync(PhoneHost.EntryPath, form, TestContext.Current.CancellationToken);
    }

    private async Task<HttpResponseMessage> Get(string path, Action<HttpRequestMessage>? change = null)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, path);
        change?.Invoke(request);
        return await _phone.SendAsync(request, TestContext.Current.CancellationToken);
    }

    private async Task<HttpResponseMessage> Tick(string? header = "run", string? body = null)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, $"/run/{_sheet}/entries") { Content = new StringContent(body ?? """[{"key":"s1:tick","value":"yes","at":1000}]""", Encoding.UTF8, "application/json") };
        // What is refused for its length is refused before it is sent.
        request.Headers.ExpectContinue = true;
        if (header is not null)
            request.Headers.Add(RunEndpoints.Header, header);
        return await _phone.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
