using System.Runtime.CompilerServices;

namespace Finwright.Making.Tests.Evidence;

public sealed class EvidenceTests
{
    /// <summary>Every comparison in the order of the document: topics with a miss first.</summary>
    private static IReadOnlyList<EvidenceRow> All { get; } = Ordered([.. LayersEvidence.Rows, .. MotionEvidence.Rows, .. PoresEvidence.Rows, .. CureEvidence.Rows]);

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
    public void Document_shows_what_the_tests_find() =>
        EvidenceDocument.Hold(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "docs", "print-and-pour.md"), All);

    private static IReadOnlyList<EvidenceRow> Ordered(IReadOnlyList<EvidenceRow> rows)
    {
        HashSet<string> missed = rows.Where(row => row.Miss is not null && !row.IsWithin).Select(row => row.Topic).ToHashSet(StringComparer.Ordinal);
        return [.. rows.OrderBy(row => missed.Contains(row.Topic) ? 0 : 1)];
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
