using System.IO.Compression;
using System.Net;
using System.Text.Json.Nodes;
using Bunit;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Page.Editing;
using Finwright.Page.Making;
using Finwright.Page.RunSheets;
using Finwright.Page.Tests.Making;
using Finwright.Page.Works;
using Finwright.Papers;
using Finwright.Workshop.Stock;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using TestContext = Xunit.TestContext;
using Thread = System.Threading.Thread;

namespace Finwright.Page.Tests.Works;

/// <summary>Work that is stopped at any moment leaves nothing behind, and the next run gives the whole answer.</summary>
[Collection(Alone.Name)]
[Trait("Pace", "long")]
public sealed class StoppedWorkTests : IDisposable
{
    private const int Times = 20;
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-stopped-").FullName;

    // The same moments in each run, as far as the machine lets them be.
    private readonly Random _chance = new(Seed: 2027);

    private string StorePath => Path.Combine(_folder, "store");

    private string FilesFolder => Path.Combine(_folder, "page", "files");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_design_stopped_while_it_is_worked_out_stays_stopped_and_goes_on_when_told()
    {
        using Workbench bench = new() { WorksAhead = false };
        DesignSession session = bench.Session();
        Footprint before = Footprint.Now();
        for (int i = 1; i <= Times; i++)
        {
            Assert.Empty(session.Set("$.shape.outline.span_mm", JsonValue.Create(300.0 + i % 2), "span"));
            Assert.False(session.Now.IsStopped);
            Thread.Sleep(_chance.Next(500));
            session.Stop();
            // Whatever the worker was just doing, it does not take the design up again by itself.
            Thread.Sleep(150);
            Assert.True(session.Now.IsStopped);
            Assert.Null(session.Now.Work);
        }

        session.GoOn();
        Assert.True(SpinWait.SpinUntil(() => session.Now is { Reach: Reach.Sailing, IsMakingOnRequest: true }, Patience), session.Now.Fault);
        Assert.False(session.Now.IsStopped);
        before.IsNotOutgrown();
        using Assessor anew = new(curves: CacheFolder.OpenCurves());
        Assert.Equal(Numbers(anew.Assess(session.Now.Design, AssessmentDepth.Strength, cancellation: TestContext.Current.CancellationToken)), Numbers(session.Now.Sailing!));

        static (string, object?, double?)[] Numbers(AssessmentResult result) =>
            [.. result.Verdicts.Concat(result.StrengthVerdicts).Select(own => (own.Code, (object?)own.Case, own.Value?.Value))];
    }

    [Fact]
    public void Files_stopped_while_they_are_made_leave_none_and_are_whole_the_next_time()
    {
        using WorkFloor floor = new(TimeProvider.System);
        PaperSettings papers = new() { Date = new(2027, 1, 1), ProgramVersion = "" };
        using (Handouts handouts = new(floor, new() { StorePath = StorePath, MadeBy = "Finwright 1.2.3" }, TimeProvider.System))
        {
            // Once to its end: the later ones are stopped in what comes after the work that is kept, writing among it.
            handouts.Drop(Made(Ask()).Key);
            Footprint before = Footprint.Now();
            for (int i = 0; i < Times; i++)
            {
                Handout asked = Ask();
                Thread.Sleep(_chance.Next(400));
                if (i % 2 == 0)
                    handouts.Stop(asked.Key);
                else
                    handouts.Drop(asked.Key);
                Assert.True(SpinWait.SpinUntil(() => handouts.Find(asked.Key) is not { State: HandoutState.Waiting or HandoutState.AtWork }, Patience));
                handouts.Drop(asked.Key);
            }

            Assert.True(SpinWait.SpinUntil(() => !Directory.EnumerateFiles(FilesFolder).Any(), TimeSpan.FromSeconds(20)), "A file stayed behind.");
            before.IsNotOutgrown();
            Handout whole = Made(Ask());
            using ZipArchive archive = ZipFile.OpenRead(whole.Path!);
            Assert.NotEmpty(whole.Files);
            Assert.Equal(whole.Files.Select(file => (file.Path, file.Bytes)), archive.Entries.Select(entry => (entry.FullName, entry.Length)));

            Handout Ask() => handouts.Ask(7, SmallFin.Design, HandoutKind.Parts, papers);

            Handout Made(Handout asked)
            {
                Assert.True(SpinWait.SpinUntil(() => handouts.Find(asked.Key)!.State is HandoutState.Ready, Patience));
                return handouts.Find(asked.Key)!;
            }
        }

        Assert.Empty(Directory.EnumerateFiles(FilesFolder));
    }

    [Fact]
    public async Task Motion_files_that_break_off_on_their_way_leave_nothing()
    {
        using WorkFloor floor = new(TimeProvider.System);
        using Handouts handouts = new(floor, new() { StorePath = StorePath, MadeBy = "Finwright 1.2.3" }, TimeProvider.System);
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(server => server.Listen(IPAddress.Loopback, 0));
        builder.Services.AddSingleton(handouts).AddSingleton<MotionInbox>();
        await using WebApplication web = builder.Build();
        MotionInbox.Map(web);
        await web.StartAsync(TestContext.Current.CancellationToken);
        List<SentMotion> came = [];
        string box = web.Services.GetRequiredService<MotionInbox>().Open(motion =>
        {
            came.Add(motion);
            return Task.CompletedTask;
        });
        using HttpClient browser = new() { BaseAddress = new(web.Urls.First()) };
        byte[] content = new byte[1 << 20];
        _chance.NextBytes(content);
        await Send(new(content, breaksOffAt: null));
        File.Delete(Assert.Single(came).Path);
        Footprint before = Footprint.Now();
        for (int i = 0; i < Times; i++)
            await Assert.ThrowsAnyAsync<Exception>(() => Send(new(content, _chance.Next(content.Length))));
        Assert.True(SpinWait.SpinUntil(() => !Directory.EnumerateFiles(FilesFolder).Any(), TimeSpan.FromSeconds(20)), "A file stayed behind.");
        Assert.Single(came);
        before.IsNotOutgrown();

        await Send(new(content, breaksOffAt: null));
        Assert.Equal(content, await File.ReadAllBytesAsync(came[^1].Path, TestContext.Current.CancellationToken));
        Assert.Equal(content.Length, came[^1].Bytes);

        async Task Send(Sending sending)
        {
            using HttpRequestMessage request = new(HttpMethod.Post, $"{MotionInbox.Address}/{box}") { Content = sending };
            request.Headers.Add(RunEndpoints.Header, "motion");
            using HttpResponseMessage answer = await browser.SendAsync(request, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        }
    }

    [Fact]
    public async Task A_motion_file_that_comes_after_its_page_was_closed_is_thrown_away()
    {
        using WorkFloor floor = new(TimeProvider.System);
        using Handouts handouts = new(floor, new() { StorePath = StorePath, MadeBy = "Finwright 1.2.3" }, TimeProvider.System);
        MotionInbox inbox = new();
        using ShownFin fin = new(give: services => services.AddSingleton(handouts).AddSingleton(inbox));
        BunitJSModuleInterop module = fin.Browser.SetupModule("./_content/Finwright.Page/js/making.js");
        module.Mode = JSRuntimeMode.Loose;
        IRenderedComponent<MotionDrop> drop = fin.Show<MotionDrop>();
        drop.WaitForAssertion(() => Assert.NotEmpty(module.Invocations["take"]));
        string address = (string)module.Invocations["take"][0].Arguments[1]!;
        Func<SentMotion, Task> take = inbox.Find(address[(address.LastIndexOf('/') + 1)..])!;
        await drop.Instance.DisposeAsync();
        Assert.Null(inbox.Find(address[(address.LastIndexOf('/') + 1)..]));
        string path = handouts.NewPath(".motion");
        await File.WriteAllTextAsync(path, "G28", TestContext.Current.CancellationToken);
        await take(new("late.gcode", path, 3));
        Assert.False(File.Exists(path));
    }

    [Fact]
    public void A_change_of_the_store_that_is_stopped_changes_nothing_and_locks_nothing()
    {
        using (Desk desk = Open())
        {
            desk.Change(store => store.Stock.Add(Spool("kept")));
            Footprint before = Footprint.Now();
            for (int i = 0; i < Times; i++)
            {
                using CancellationTokenSource stop = new();
                int last = _chance.Next(50);
                Assert.Throws<OperationCanceledException>(() => desk.Change(store =>
                {
                    for (int item = 0; ; item++)
                    {
                        if (item == last)
                            stop.Cancel();
                        stop.Token.ThrowIfCancellationRequested();
                        store.Stock.Add(Spool($"spool {item}"));
                    }
                }));
                Assert.Equal("kept", Assert.Single(desk.Ask(store => store.Stock.List())).Name);
            }

            before.IsNotOutgrown();
            // Another program may change the store meanwhile.
            using Desk other = Open();
            other.Change(store => store.Stock.Add(Spool("of another")));
            desk.Change(store => store.Stock.Add(Spool("after all")));
        }

        // Nobody holds the file: what lay beside it is gone, and it can be moved.
        Assert.Empty(Directory.EnumerateFiles(_folder, "store-*"));
        File.Move(StorePath, StorePath + "-moved");
        File.Move(StorePath + "-moved", StorePath);
        using Desk again = Open();
        Assert.Equal(["after all", "kept", "of another"], again.Ask(store => store.Stock.List()).Select(item => item.Name).Order(StringComparer.Ordinal));

        Desk Open() => Desk.Open(new() { StorePath = StorePath, MadeBy = "Finwright in trial" });

        static StockItem Spool(string name) => new() { Kind = StockKind.Filament, Name = name, Quantity = 1000, Unit = StockUnit.Grams };
    }

    /// <summary>A file on its way that says its whole length and may break off before.</summary>
    private sealed class Sending(byte[] content, int? breaksOffAt) : HttpContent
    {
        private const int Piece = 1 << 14;

        protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context)
        {
            for (int sent = 0; sent < content.Length; sent += Piece)
            {
                if (sent > breaksOffAt)
                    throw new IOException("The browser was closed.");
                await stream.WriteAsync(content.AsMemory(sent, Math.Min(Piece, content.Length - sent)));
            }

            if (breaksOffAt is not null)
                throw new IOException("The browser was closed.");
        }

        protected override bool TryComputeLength(out long length)
        {
            length = content.Length;
            return true;
        }
    }
}
