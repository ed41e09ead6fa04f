using Finwright.Geometry;
using Finwright.Geometry.Solids;
using Finwright.Making.Layers;
using Finwright.Making.Tests.Layers;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Evidence;

/// <summary>Layers and grid beside closed forms.</summary>
internal static class LayersEvidence
{
    private const double Litres = 1e6;

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Shells(), .. Surfaces()];

    private static IEnumerable<EvidenceRow> Shells()
    {
        const string Topic = "Layers of 0.2 mm, three walls of 0.45 mm, five solid layers";
        const string Exact = "Closed form";
        PartLayers box = TestParts.Slice(TestParts.Box(60e-3, 30e-3, 10.1e-3));
        yield return new(Topic, "Box 60 × 30 × 10.1 mm, layers", Exact, 51, box.Layers.Count, 0, "a count");
        yield return new(Topic, "Box 60 × 30 × 10.1 mm, core, cm³", Exact, 57.3 * 27.3 * 8.2e-3, box.CoreVolume * Litres, 1e-4, "last printed digit");
        const double r = 20e-3, h = 30e-3;
        PartLayers cone = TestParts.Slice(TestParts.Revolved(z => r * (1 - z / h), [0, h], 720));
        double envelope = Math.PI * 20 * 20 * 30 / 3e3;
        yield return new(Topic, "Cone 40 mm across, 30 mm high, volume, cm³", Exact, envelope, cone.EnvelopeVolume * Litres, 0.002 * envelope, "0.2 %: slices at mid-height");
        // Five layers up the outline has drawn in by 0.667 mm, less than the walls: above the foot the core is the outline less its walls,
        // from 1 mm up to where that is nothing.
        double foot = r * (1 - 1e-3 / h) - 1.35e-3, core = Math.PI * foot * foot * (foot * h / r) / 3 * Litres;
        yield return new(Topic, "Cone 40 mm across, 30 mm high, core, cm³", "Closed form: a cone in the cone", core, cone.CoreVolume * Litres, 0.002 * core, "0.2 %: slices at mid-height");
        PartLayers ball = TestParts.Slice(TestParts.Sphere(12e-3, 240));
        double sphere = 4 * Math.PI * Math.Pow(1.2, 3) / 3;
        yield return new(Topic, "Sphere of 24 mm, volume, cm³", Exact, sphere, ball.EnvelopeVolume * Litres, 0.002 * sphere, "0.2 %: facets of 1.5°");
    }

    private static IEnumerable<EvidenceRow> Surfaces()
    {
        const string Topic = "Surface on a grid of 1.3 × 0.9 × 0.7 mm, cm²";
        const string Why = "2 %: one flat piece a cell";
        Point3 cell = new(1.3e-3, 0.9e-3, 0.7e-3);
        double Area(PartLayers layers) => Voxeliser.Of(layers, cell).CooledArea.Sum() * 1e4;
        yield return new(Topic, "Sphere of 20 mm", "4πr²", 4 * Math.PI, Area(TestParts.Slice(TestParts.Sphere(10e-3))), 0.02 * 4 * Math.PI, Why);
        const double half = 5.358984, slope = 20.705524, wedge = (2 * half * 40 + 2 * slope * 40 + 2 * half * 20) / 100;
        SolidExpression solid = new PrismSolid([[new(-half * 1e-3, 0), new(half * 1e-3, 0), new(0, 20e-3)]], 40e-3).Placed(new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), default));
        yield return new(Topic, "Wedge of 30°, 20 mm high, 40 mm long", "Closed form", wedge, Area(TestParts.Slice(solid)), 0.02 * wedge, Why);
        const double box = 2 * (4 * 2 + 4 * 1 + 2 * 1);
        yield return new(
            Topic, "Box 40 × 20 × 10 mm, tilted by 29° about a level axis askew", "Closed form", box,
            Area(TestParts.Slice(TestParts.Box(40e-3, 20e-3, 10e-3), Placement.Rotation(new(0.6, 0.8, 0), 0.5))), 0.02 * box, Why);
    }
}
