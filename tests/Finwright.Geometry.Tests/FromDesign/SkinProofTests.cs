using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Solids;
using Finwright.Geometry.Tests.Solids;

namespace Finwright.Geometry.Tests.FromDesign;

public sealed class SkinProofTests : IDisposable
{
    private readonly ManifoldKernel _kernel = new();

    public void Dispose() => _kernel.Dispose();

    [Fact]
    public void Holds_refuses_a_skin_whose_edges_cross_and_says_where()
    {
        List<Finding> findings = [];
        Assert.False(SkinProof.Holds(Shapes.Blade(120, 60, -0.02), _kernel, findings, TestContext.Current.CancellationToken));
        Finding finding = Assert.Single(findings);
        Assert.Equal("skin-runs-through-itself", finding.Code);
        Assert.True(finding.IsError);
    }

    [Fact]
    public void Holds_takes_a_sound_skin_without_a_word()
    {
        List<Finding> findings = [];
        Assert.True(SkinProof.Holds(Shapes.Blade(120, 40), _kernel, findings, TestContext.Current.CancellationToken));
        Assert.Empty(findings);
    }
}
