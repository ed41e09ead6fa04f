namespace Finwright.Making.Tests.Evidence;

public sealed class CureEvidenceTests
{
    public static TheoryData<int, string> Cases()
    {
        TheoryData<int, string> cases = [];
        for (int i = 0; i < CureEvidence.Rows.Count; i++)
            cases.Add(i, CureEvidence.Rows[i].What);
        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Value_agrees_with_its_source(int index, string what)
    {
        Assert.Equal(what, CureEvidence.Rows[index].What);
        Assert.True(double.IsFinite(CureEvidence.Rows[index].Computed), what);
        CureEvidence.Rows[index].Hold();
    }
}
