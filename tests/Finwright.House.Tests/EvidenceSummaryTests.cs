using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Finwright.House.Tests;

/// <summary>The head of <c>docs/evidence.md</c> counts what its sections, written by other tests, hold.</summary>
public sealed partial class EvidenceSummaryTests
{
    private const string Document = "docs/evidence.md", Opening = "<!-- summary: written by the tests -->", Closing = "<!-- end of summary -->";

    [Fact]
    public void Summary_counts_every_section()
    {
        string text = Repository.Read(Document);
        StringBuilder table = new("\n| Area | Comparisons | Outside the tolerance |\n| --- | ---: | ---: |\n");
        int all = 0, outside = 0;
        foreach (Match section in Sections().Matches(text))
        {
            string title = section.Groups["title"].Value;
            int rows = int.Parse(section.Groups["rows"].ValueSpan, CultureInfo.InvariantCulture), missed = int.Parse(section.Groups["missed"].ValueSpan, CultureInfo.InvariantCulture);
            string body = section.Groups["body"].Value;
            Assert.Equal(rows, body.Split('\n').Count(line => line.StartsWith("| ", StringComparison.Ordinal) && !line.StartsWith("| Case |", StringComparison.Ordinal) && !line.StartsWith("| --- |", StringComparison.Ordinal)));
            Assert.Equal(missed, MissedMark().Count(body));
            table.Append(CultureInfo.InvariantCulture, $"| [{title}](#{Anchor(title)}) | {rows} | {missed} |\n");
            (all, outside) = (all + rows, outside + missed);
        }

        Assert.True(all > 300, $"Only {all} comparisons were found.");
        table.Append(CultureInfo.InvariantCulture, $"| all | {all} | {outside} |\n");
        int begin = text.IndexOf(Opening, StringComparison.Ordinal), end = text.IndexOf(Closing, StringComparison.Ordinal);
        Assert.True(begin >= 0 && end > begin, "The marks of the summary are gone.");
        string updated = $"{text[..(begin + Opening.Length)]}\n{table}\n{text[end..]}";
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
            File.WriteAllText(Path.Combine(Repository.Root, Document), updated);
        else
            Assert.Equal(updated, text);
    }

    private static string Anchor(string title) => title.ToLowerInvariant().Replace(",", "", StringComparison.Ordinal).Replace(' ', '-');

    [GeneratedRegex(@"^## (?<title>[^\n]+)\n\n<!-- (?<name>[^:\n]+): written by the tests -->\n(?<rows>\d+) comparisons, (?<missed>\d+) outside[^\n]*\n(?<body>.*?)<!-- end of \k<name> -->", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Sections();

    [GeneratedRegex(@"\*\*missed\*\*", RegexOptions.None, matchTimeoutMilliseconds: 5000)]
    private static partial Regex MissedMark();
}
