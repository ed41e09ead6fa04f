namespace Finwright.Making.Tests.Evidence;

public sealed class LayersEvidenceTests
{
    [Fact]
    public void Layers_and_grid_agree_with_closed_forms() =>
        Assert.All(LayersEvidence.Rows, row =>
        {
            Assert.True(double.IsFinite(row.Computed), row.What);
            row.Hold();
        });
}
