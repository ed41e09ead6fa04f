using System.Runtime.CompilerServices;
using System.Text;

namespace Finwright.Water.Tests.Evidence;

public sealed class EvidenceTests
{
    private const string Begin = "<!-- evidence: written by the tests -->";
    private const string End = "<!-- end of evidence -->";

    private static IReadOnlyList<EvidenceRow> All { get; } = [.. SectionEvidence.Rows, .. LiftingEvidence.Rows, .. WaterEvidence.Rows];

    public static TheoryData<int, string> Cases()
    {
        TheoryData<int, string> cases = [];
        for (int i = 0; i < All.Count; i++)
            cases.Add(i, All[i].What);
        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Value_agrees_with_its_source_or_is_told_as_a_miss(int index, string what)
    {
        Assert.Equal(what, All[index].What);
        Assert.True(double.IsFinite(All[index].Computed), what);
        All[index].Hold();
    }

    [Fact]
    public void Document_shows_what_the_tests_find()
    {
        string path = Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "docs", "water.md");
        string text = File.ReadAllText(path), table = Table();
        int begin = text.IndexOf(Begin, StringComparison.Ordinal), end = text.IndexOf(End, StringComparison.Ordinal);
        Assert.True(begin >= 0 && end > begin, "docs/water.md has lost the marks between which its evidence stands.");
        string updated = string.Concat(text.AsSpan(0, begin + Begin.Length), "\n", table, text.AsSpan(end));
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
            File.WriteAllText(path, updated);
        else
            Assert.Equal(updated, text);
    }

    private static string Table()
    {
        StringBuilder text = new();
        foreach (IGrouping<string, EvidenceRow> topic in All.GroupBy(row => row.Topic, StringComparer.Ordinal))
        {
            text.Append("\n### ").Append(topic.Key).Append("\n\n| Case | Source | Expected | Computed | Difference | Verdict |\n| --- | --- | ---: | ---: | ---: | --- |\n");
            foreach (EvidenceRow row in topic)
                text.Append(row.Text()).Append('\n');
        }

        return text.Append('\n').ToString();
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
