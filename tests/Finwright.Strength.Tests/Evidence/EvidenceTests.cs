using System.Runtime.CompilerServices;

namespace Finwright.Strength.Tests.Evidence;

public sealed class EvidenceTests
{
    private static IReadOnlyList<EvidenceRow> All { get; } =
    [
        .. PlateEvidence.Rows, .. SectionEvidence.Rows, .. BeamEvidence.Rows, .. VibrationEvidence.Rows, .. DivergenceEvidence.Rows, .. MaterialsEvidence.Rows, .. JointEvidence.Rows,
        .. CalibrationEvidence.Rows,
    ];

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
        EvidenceDocument.Hold(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "docs", "strength.md"), All);

    private static string Here([CallerFilePath] string path = "") => path;
}
