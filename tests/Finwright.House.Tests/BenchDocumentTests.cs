using System.Text.RegularExpressions;

namespace Finwright.House.Tests;

/// <summary>bench/README.md gives the filter of every benchmark, and none that there is not.</summary>
public sealed partial class BenchDocumentTests
{
    [Fact]
    public void Every_benchmark_has_its_filter_in_the_readme()
    {
        string[] benchmarks = [.. Repository.Files.Where(file => file.StartsWith("bench/Finwright.Bench/", StringComparison.Ordinal) && file.EndsWith(".cs", StringComparison.Ordinal)).Select(Repository.Read)
            .Where(text => text.Contains("[Benchmark", StringComparison.Ordinal)).Select(text => ClassName().Match(text).Groups["name"].Value)];
        Assert.NotEmpty(benchmarks);
        string[] filters = [.. Filter().Matches(Repository.Read("bench/README.md")).Select(filter => filter.Groups["name"].Value)];
        Assert.Equal(benchmarks.Order(StringComparer.Ordinal), filters.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void Every_comparison_is_told_in_the_readme()
    {
        string[] comparisons = [.. Comparison().Matches(Repository.Read("bench/Finwright.Bench/References/CompareRun.cs")).Select(own => own.Groups["name"].Value)];
        Assert.NotEmpty(comparisons);
        string[] told = [.. ToldComparison().Matches(Repository.Read("bench/README.md")).Select(own => own.Groups["name"].Value)];
        Assert.Equal(comparisons.Order(StringComparer.Ordinal), told.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [GeneratedRegex(@"^public class (?<name>\w+Bench)\b", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex ClassName();

    [GeneratedRegex(@"--filter '\*(?<name>\w+)\*'", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Filter();

    [GeneratedRegex(@"""(?<name>[a-z]+)"", ?\w+Comparison\.Run", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Comparison();

    [GeneratedRegex(@"^\| `(?<name>[a-z]+)` \|", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex ToldComparison();
}
