using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.Parts;

public sealed class MeshProbeTests
{
    private static readonly StraightBlade Blade = new(0.11, 0.06, 0.3, 0.2, 0.1);
    private static readonly MeshProbe Probe = new(Blade.Mesh(around: 400));

    [Theory]
    [InlineData(0.3, 0.05)]
    [InlineData(0.5, 0.15)]
    [InlineData(0.8, 0.29)]
    public void Crossings_of_a_blade_are_its_half_thickness_either_side(double share, double y)
    {
        double x = Blade.Outline.LeadingEdge(y) + share * Blade.Outline.Chord(y);
        IReadOnlyList<double> z = Probe.Crossings(x, y);
        // Facets of 400 points round lie within 3 µm of the section there.
        Assert.Equal(2, z.Count);
        Assert.Equal(Blade.HalfThickness(x, y), z[0], 3e-6);
        Assert.Equal(-Blade.HalfThickness(x, y), z[1], 3e-6);
    }

    [Fact]
    public void Crossings_beside_the_blade_are_none() => Assert.Empty(Probe.Crossings(-0.2, 0.1));

    [Fact]
    public void Contains_tells_inside_from_outside()
    {
        Assert.True(Probe.Contains(new(0, 0.1, 0)));
        Assert.False(Probe.Contains(new(0.02, 0.1, 0.02)));
        Assert.False(Probe.Contains(new(0, -0.01, 0)));
    }

    [Fact]
    public void Distance_from_the_root_face_is_the_depth()
    {
        // A short stick near the root: the face y = 0 is nearest, 1 mm off; the skin is 5 mm away.
        Assert.Equal(1e-3, Probe.Distance(new(0, 1e-3, 0), new(0.01, 1e-3, 0), 0.02), 9);
    }

    [Fact]
    public void Distance_farther_than_asked_is_what_was_asked() => Assert.Equal(2e-3, Probe.Distance(new(0.01, 0.1, 0), new(0.011, 0.1, 0), 2e-3));
}
