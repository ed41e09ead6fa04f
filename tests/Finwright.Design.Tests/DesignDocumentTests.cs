using System.Text.RegularExpressions;

namespace Finwright.Design.Tests;

public sealed partial class DesignDocumentTests
{
    private const string Document = "docs/design-file.md";

    [Fact]
    public void Generate_is_what_the_committed_document_says()
    {
        string byHand = File.ReadAllText(Path.Combine(Repository.Root, Document)).Split(DesignDocument.Marker)[0];

        Repository.Holds(Document, byHand + DesignDocument.Generate());
    }

    [Fact]
    public void Examples_in_the_document_read_without_findings()
    {
        MatchCollection examples = Example().Matches(File.ReadAllText(Path.Combine(Repository.Root, Document)));

        Assert.NotEmpty(examples);
        Assert.All(examples, example => Assert.Empty(DesignReader.Read(example.Groups["json"].Value).Findings));
    }

    [GeneratedRegex("```json\n(?<json>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Example();
}
