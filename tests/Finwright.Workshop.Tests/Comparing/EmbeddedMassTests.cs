using Finwright.Assessment;
using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Numerics;
using Finwright.Workshop.Comparing;

namespace Finwright.Workshop.Tests.Comparing;

public sealed class EmbeddedMassTests
{
    [Theory]
    // A pultruded rod of 4 mm in its bore of 4.2 mm: 1.55 g/cm³ (from memory).
    [InlineData(FeatureKind.CarbonRodBore, 4.2, 200, 3.9)]
    // M6 threaded rod weighs some 0.18 kg a metre (from memory), in a bore of 6.4 mm.
    [InlineData(FeatureKind.ClampRodBore, 6.4, 170, 30.6)]
    // Bolts stay with the board.
    [InlineData(FeatureKind.BoltBore, 6.4, 100, 0)]
    [InlineData(FeatureKind.SocketPocket, 14, 30, 0)]
    public void Of_what_lies_in_a_bore_is_near_what_it_weighs(FeatureKind kind, double diameterMm, double lengthMm, double grams) =>
        Holds(grams, Feature(kind, FeatureVolume.Cylinder(1e-3 * diameterMm, default, new(0, 1e-3 * lengthMm, 0))));

    [Fact]
    public void Of_a_nut_is_near_what_it_weighs()
    {
        // M6, 10 mm across flats and 5 mm high, a pocket 0.2 mm larger: some 2.5 g (from memory).
        double reach = 10.2e-3 / Math.Sqrt(3);
        Point2[] hexagon = [.. Enumerable.Range(0, 6).Select(i => new Point2(reach * Math.Cos(i * Math.PI / 3), reach * Math.Sin(i * Math.PI / 3)))];
        Holds(2.5, Feature(FeatureKind.NutPocket, FeatureVolume.Prism(hexagon, default, new(0, 5.2e-3, 0))));
    }

    [Fact]
    public void Of_a_fin_whose_solids_were_not_reached_is_not_known()
    {
        using Assessor assessor = new();
        Assert.Null(EmbeddedMass.Of(assessor.Assess(SampleFins.Design(), AssessmentDepth.Shape, cancellation: TestContext.Current.CancellationToken)));
    }

    private static void Holds(double grams, PlacedFeature feature)
    {
        AssessmentResult result = new()
        {
            Design = SampleFins.Design(),
            DesignHash = "",
            Findings = [],
            InputIsWrong = false,
            Solids = new() { Blade = null!, Base = null, Plan = null!, Hardware = [], Features = [feature], Slot = null },
        };
        Ranged mass = EmbeddedMass.Of(result)!.Value.Times(1e3);
        Assert.InRange(grams, mass.Low, mass.High);
    }

    private static PlacedFeature Feature(FeatureKind kind, FeatureVolume volume) => new() { Name = "one", Kind = kind, Path = "$", Owner = "one", Volume = volume };
}
