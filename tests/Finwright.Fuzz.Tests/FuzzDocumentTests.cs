using System.Runtime.CompilerServices;

namespace Finwright.Fuzz.Tests;

/// <summary>docs/fuzz.md shows the last long run of every kind, and no kind that there is not.</summary>
public sealed class FuzzDocumentTests
{
    private const string Opening = "<!-- long run: written by the tests -->", Closing = "<!-- end of long run -->";
    private const string Head = "\n\n| Kind of file | Files | Taken | Refused | Slowest, ms | Peak, MB |\n| --- | ---: | ---: | ---: | ---: | ---: |\n";

    // What docs/fuzz.md promises.
    private const int LeastFiles = 100_000;

    [Fact]
    public void Document_shows_a_long_run_of_every_kind()
    {
        string path = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "docs", "fuzz.md")), text = File.ReadAllText(path);
        int begin = text.IndexOf(Opening, StringComparison.Ordinal) + Opening.Length, end = text.IndexOf(Closing, StringComparison.Ordinal);
        Assert.True(begin >= Opening.Length && end > begin, $"{path} has lost the marks between which the long run stands.");
        Dictionary<string, FuzzRow> shown = text[begin..end].Split('\n').Select(FuzzRow.Of).OfType<FuzzRow>().ToDictionary(row => row.Kind, StringComparer.Ordinal);
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
        {
            IEnumerable<FuzzRow> rows = FuzzKinds.All.Keys.Select(kind => FuzzRow.Kept(FuzzTests.Kept, kind) ?? shown.GetValueOrDefault(kind)).OfType<FuzzRow>();
            File.WriteAllText(path, $"{text[..begin]}{Head}{string.Concat(rows.Select(row => row.Text + "\n"))}\n{text[end..]}");
            return;
        }

        Assert.Equal(FuzzKinds.All.Keys, shown.Keys);
        Assert.All(shown.Values, row =>
        {
            Assert.True(row.Files >= LeastFiles, row.Text);
            // The bounds that the run itself holds.
            Assert.InRange(row.SlowestMilliseconds, 0, FuzzKinds.All[row.Kind].Longest.TotalMilliseconds);
            Assert.InRange(row.PeakMegabytes, 1, 2048);
        });
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
