using System.Text;

namespace Finwright;

/// <summary>The evidence table of a document: what the tests find stands there word for word, written by the tests themselves.</summary>
internal static class EvidenceDocument
{
    private const string Begin = "<!-- evidence: written by the tests -->";
    private const string End = "<!-- end of evidence -->";

    /// <summary>Holds a document's table against the rows; with FINWRIGHT_WRITE=1 writes it.</summary>
    /// <param name="path">The document.</param>
    /// <param name="rows">The rows, topic by topic.</param>
    public static void Hold(string path, IReadOnlyList<EvidenceRow> rows)
    {
        string text = File.ReadAllText(path), table = Table(rows);
        int begin = text.IndexOf(Begin, StringComparison.Ordinal), end = text.IndexOf(End, StringComparison.Ordinal);
        Assert.True(begin >= 0 && end > begin, $"{path} has lost the marks between which its evidence stands.");
        string updated = string.Concat(text.AsSpan(0, begin + Begin.Length), "\n", table, text.AsSpan(end));
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
            File.WriteAllText(path, updated);
        else
            Assert.Equal(updated, text);
    }

    private static string Table(IReadOnlyList<EvidenceRow> rows)
    {
        StringBuilder text = new();
        foreach (IGrouping<string, EvidenceRow> topic in rows.GroupBy(row => row.Topic, StringComparer.Ordinal))
        {
            text.Append("\n### ").Append(topic.Key).Append("\n\n| Case | Source | Expected | Computed | Difference | Verdict |\n| --- | --- | ---: | ---: | ---: | --- |\n");
            foreach (EvidenceRow row in topic)
                text.Append(row.Text()).Append('\n');
        }

        return text.Append('\n').ToString();
    }
}
