using Finwright.Strength.Tests.Evidence;

namespace Finwright.Strength.Tests.Plates;

public sealed class PlateReferenceTests
{
    [Fact]
    public void Rows_of_evidence_hold()
    {
        Assert.All(PlateEvidence.Rows, row => Assert.True(double.IsFinite(row.Computed), row.What));
        Assert.All(PlateEvidence.Rows, row => row.Hold());
    }
}
