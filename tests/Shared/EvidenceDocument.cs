using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace Finwright;

/// <summary>The document of all evidence: what the tests find stands there word for word, written by the tests themselves.</summary>
internal static class EvidenceDocument
{
    private const string Head = "| Case | Source | Expected | Computed | Difference | Verdict |\n| --- | --- | ---: | ---: | ---: | --- |\n";

    /// <summary>Holds an area's section of the document against its rows; with FINWRIGHT_WRITE=1 writes it.</summary>
    /// <param name="area">Name of the area.</param>
    /// <param name="rows">The rows, topic by topic.</param>
    public static void Hold(string area, IReadOnlyList<EvidenceRow> rows)
    {
        string path = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "docs", "evidence.md")), text = File.ReadAllText(path);
        string opening = $"<!-- {area}: written by the tests -->", closing = $"<!-- end of {area} -->";
        int begin = text.IndexOf(opening, StringComparison.Ordinal), end = text.IndexOf(closing, StringComparison.Ordinal);
        Assert.True(begin >= 0 && end > begin, $"{path} has lost the marks between which its evidence of {area} stands.");
        string updated = string.Concat(text.AsSpan(0, begin + opening.Length), "\n", Section(rows), text.AsSpan(end));
        if (Environment.GetEnvironmentVariable("FINWRIGHT_WRITE") == "1")
            File.WriteAllText(path, updated);
        else
            Assert.Equal(updated, text);
    }

    // Misses first; they stand with their topic's name, and once only.
    private static string Section(IReadOnlyList<EvidenceRow> rows)
    {
        EvidenceRow[] missed = [.. rows.Where(row => row.IsMissed)];
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"{rows.Count} comparisons, {missed.Length} outside the tolerance that we defend.\n");
        if (missed.Length > 0)
            text.Append("\n### Missed\n\n").Append(Head).AppendJoin("", missed.Select(row => row.Text(withTopic: true) + "\n"));
        foreach (IGrouping<string, EvidenceRow> topic in rows.Where(row => !row.IsMissed).GroupBy(row => row.Topic, StringComparer.Ordinal))
            text.Append("\n### ").Append(topic.Key).Append("\n\n").Append(Head).AppendJoin("", topic.Select(row => row.Text(withTopic: false) + "\n"));
        return text.Append('\n').ToString();
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
