using System.Text.RegularExpressions;

namespace Finwright.Design.Tests;

/// <summary>Every design that the repository shows to a stranger reads well: the example of the document and the demo designs.</summary>
public sealed partial class CommittedDesignTests
{
    public static TheoryData<string, string> Designs => [.. FromDocument().Concat(FromExamples())];

    [Theory]
    [MemberData(nameof(Designs))]
    public void Committed_design_reads_without_errors_and_agrees_with_the_schema(string place, string text)
    {
        Assert.True(SchemaOracle.IsValid(text), place);
        Assert.All(DesignReader.Read(text).Findings, finding => Assert.False(finding.IsError, $"{place}: {finding.Path} {finding.Message}"));
    }

    private static IEnumerable<(string Place, string Text)> FromDocument() =>
        Example().Matches(File.ReadAllText(Path.Combine(Repository.Root, "docs", "design-file.md"))).Select(match => ("docs/design-file.md", match.Groups["json"].Value));

    private static IEnumerable<(string Place, string Text)> FromExamples()
    {
        string folder = Path.Combine(Repository.Root, "examples");
        return Directory.Exists(folder)
            ? Directory.GetFiles(folder, "*.fin.json", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(path => (Path.GetFileName(path), File.ReadAllText(path)))
            : [];
    }

    [GeneratedRegex("```json\n(?<json>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Example();
}
