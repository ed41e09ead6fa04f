namespace Finwright.Making.Tests.Evidence;

public sealed class PoresEvidenceTests
{
    public static TheoryData<int, string> Cases()
    {
        TheoryData<int, string> cases = [];
        for (int i = 0; i < PoresEvidence.Rows.Count; i++)
            cases.Add(i, PoresEvidence.Rows[i].What);
        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Value_agrees_with_its_source(int index, string what)
    {
        Assert.Equal(what, PoresEvidence.Rows[index].What);
        Assert.True(double.IsFinite(PoresEvidence.Rows[index].Computed), what);
        PoresEvidence.Rows[index].Hold();
    }
}
