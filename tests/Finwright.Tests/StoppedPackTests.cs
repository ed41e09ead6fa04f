using System.Diagnostics;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Stages;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>A pack that is stopped at any moment is either the one before or the new one, whole.</summary>
public sealed class StoppedPackTests : IDisposable
{
    private const int Times = 20;

    // A small fin, so that the whole job is short.
    private const string Fin =
        """
        {
          "format": 2,
          "name": "Small fin",
          "shape": {
            "outline": { "family": "upright", "span_mm": 150, "root_chord_mm": 190 },
            "sections": [
              { "at_percent": 0, "section": "naca-0010-34", "thickness_percent": 14 },
              { "at_percent": 100, "section": "naca-0010-34", "thickness_percent": 12 }
            ]
          }
        }
        """;

    private readonly TemporaryFolder _folder = new();
    private readonly MemoryStageCache _results = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Pack_stopped_at_twenty_moments_leaves_nothing_and_is_whole_the_next_time()
    {
        string design = _folder.Write("small.fin.json", Fin);
        Random chance = new(Seed: 2027);
        // First while the fin is worked out, into a folder that is not there yet.
        for (int i = 0; i < Times / 2; i++)
        {
            Assert.Equal(ExitCode.Stopped, Run(TimeSpan.FromMilliseconds(chance.Next(300)), "new").Code);
            Assert.Equal(["small.fin.json"], _folder.Files());
        }

        // Then into an earlier pack, all over what is left to do once the fin is worked out: papers, figures, writing.
        Assert.NotEqual(ExitCode.Stopped, Run(null, "pack").Code);
        TimeSpan whole = Run(null, "pack").Took;
        (string, string)[] before = Content();
        Assert.Contains("pack/" + PackFolder.OfPacks.ListName, before.Select(file => file.Item1));
        for (int i = 0; i < Times / 2; i++)
        {
            Run(whole * chance.NextDouble(), "pack");
            Assert.Equal(before, Content());
        }

        Assert.NotEqual(ExitCode.Stopped, Run(null, "new").Code);
        Assert.Equal(before.Where(file => file.Item1.StartsWith("pack/", StringComparison.Ordinal)).Select(file => ("new/" + file.Item1["pack/".Length..], file.Item2)), Content().Where(file => file.Item1.StartsWith("new/", StringComparison.Ordinal)));

        (ExitCode Code, TimeSpan Took) Run(TimeSpan? until, string into)
        {
            using CancellationTokenSource stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
            if (until is { } moment)
                stop.CancelAfter(moment);
            using StringWriter output = new(), error = new();
            Stopwatch took = Stopwatch.StartNew();
            ExitCode code = CommandLine.Run(["pack", design, "--out", _folder[into], "--date", "2027-04-18"], new(output, error, TextStreams.PlainWidth, ShowsProgress: false), stop.Token, _results);
            Assert.True(code is ExitCode.Good or ExitCode.Fails or ExitCode.Stopped, error.ToString());
            return (code, took.Elapsed);
        }

        (string, string)[] Content() => [.. _folder.Files().Select(file => (file, Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(_folder[file])))))];
    }
}
