using System.Diagnostics;
using System.Text;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Stages;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>A pack that is stopped at any moment leaves what was there before, and nothing else.</summary>
[Trait("Pace", "long")]
public sealed class StoppedPackTests : IDisposable
{
    private const int Times = 20;

    private readonly TemporaryFolder _folder = new();

    // The same moments in each run, as far as the machine lets them be.
    private readonly Random _chance = new(Seed: 2027);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Pack_stopped_while_the_fin_is_worked_out_leaves_nothing()
    {
        string design = _folder.Write("fin.fin.json", DemoDesigns.Find("sandbar-delta")!);
        MemoryStageCache results = new();
        for (int i = 0; i < Times; i++)
        {
            using CancellationTokenSource stop = new(TimeSpan.FromMilliseconds(_chance.Next(300)));
            using StringWriter output = new(), error = new();
            Assert.Equal(ExitCode.Stopped, CommandLine.Run(["pack", design, "--out", _folder["new"]], new(output, error, TextStreams.PlainWidth, ShowsProgress: false), stop.Token, results));
            Assert.Equal("", output.ToString());
            Assert.Equal(["fin.fin.json"], _folder.Files());
            Assert.False(Directory.Exists(_folder["new"]));
        }
    }

    [Fact]
    public void Pack_stopped_while_it_is_written_is_the_one_before_or_the_new_one_whole()
    {
        // Enough files that writing takes long enough to be stopped in.
        const int Files = 60;
        Write(0, CancellationToken.None);
        Stopwatch watch = Stopwatch.StartNew();
        Write(0, CancellationToken.None);
        TimeSpan whole = watch.Elapsed;
        int kept = 0, stopped = 0;
        for (int i = 1; i <= Times; i++)
        {
            using CancellationTokenSource stop = new(whole * _chance.NextDouble());
            try
            {
                Write(i, stop.Token);
                kept = i;
            }
            catch (OperationCanceledException)
            {
                stopped++;
            }

            IsWhole(kept);
        }

        Assert.True(stopped > 0);
        Write(Times + 1, CancellationToken.None);
        IsWhole(Times + 1);

        void Write(int number, CancellationToken stop) => PackFolder.OfPacks.Write(_folder["pack"], [.. Pack(number)], overwrite: false, stop);

        void IsWhole(int number) => Assert.Equal(
            Pack(number).Select(file => ("pack/" + file.Path, Encoding.UTF8.GetString(file.Content.Span))).Order(),
            _folder.Files().Select(file => (file, File.ReadAllText(_folder[file]))).Order());

        static IEnumerable<PackFile> Pack(int number)
        {
            string[] names = [.. Enumerable.Range(0, Files).Select(i => $"part-{i:00}.stl"), PackFolder.OfPacks.ListName];
            string list = $$"""{"kind":"{{PackFolder.OfPacks.ListKind}}","files":[{{string.Join(',', names.Select(name => $$"""{"file":"{{name}}"}"""))}}]}""";
            return names.Select(name => new PackFile(name, Encoding.UTF8.GetBytes(name == names[^1] ? list : $"{name} of pack {number}"), "a part"));
        }
    }
}
