using Finwright.Geometry;
using Finwright.Geometry.Solids;
using Finwright.Making.Layers;

namespace Finwright.Making.Tests.Layers;

public sealed class LayerSlicerTests
{
    private const double T = 1.35e-3;

    [Fact]
    public void Slice_box_gives_the_exact_shells()
    {
        const double x = 60e-3, y = 30e-3, z = 10.1e-3;
        PartLayers part = TestParts.Slice(TestParts.Box(x, y, z));
        // ⌈10.1 / 0.2⌉ = 51; five solid at each end, the last of them 0.1 mm high. Plain arithmetic; tolerance: 24-bit mesh coordinates.
        Assert.Equal(51, part.Layers.Count);
        Assert.Equal(z, part.Layers[^1].Top, 1e-9);
        Assert.Equal(0.1e-3, part.Layers[^1].Height, 1e-9);
        Assert.Equal(1, part.EnvelopeVolume / (x * y * z), 1e-6);
        double inside = (x - 2 * T) * (y - 2 * T);
        Assert.Equal(1, part.Layers[20].InsideArea / inside, 1e-6);
        Assert.Equal(1, part.CoreVolume / (inside * 41 * 0.2e-3), 1e-6);
        Assert.All(part.Layers.Take(5), layer => Assert.Empty(layer.Core));
        Assert.All(part.Layers.TakeLast(5), layer => Assert.Equal(0, layer.CoreArea));
        // Three lines, their middles 0.225, 0.675 and 1.125 mm inside.
        double lines = Enumerable.Range(0, 3).Sum(line => 2 * (x + y - 4 * (line + 0.5) * 0.45e-3));
        Assert.Equal(1, part.Layers[20].WallLength / lines, 1e-6);
        Assert.Equal(part.Layers[20].OutlineArea, part.Layers[20].WallArea + part.Layers[20].SolidArea + part.Layers[20].CoreArea, 1e-12);
    }

    [Fact]
    public void Slice_turned_box_lies_square_with_its_corner_at_the_origin()
    {
        Placement askew = Placement.Rotation(new(0, 0, 1), 0.7).Then(Placement.Shift(new(0.3, -0.2, 0.05)));
        PartLayers part = TestParts.Slice(TestParts.Box(20e-3, 90e-3, 4e-3), askew);
        Assert.Equal(90e-3, part.Size.X, 1e-7);
        Assert.Equal(20e-3, part.Size.Y, 1e-7);
        Assert.Equal(4e-3, part.Size.Z, 1e-7);
        IEnumerable<Point2> points = part.Layers.SelectMany(layer => layer.Outline).SelectMany(ring => ring);
        Assert.Equal(0, points.Min(p => p.X), 1e-7);
        Assert.Equal(0, points.Min(p => p.Y), 1e-7);
        Assert.Equal(90e-3, points.Max(p => p.X), 1e-7);
        Assert.Equal(1, part.ToLayers.Determinant, 1e-12);
    }

    [Fact]
    public void Slice_cone_prints_solid_what_the_layers_above_do_not_cover()
    {
        const double r = 20e-3, h = 30e-3;
        PartLayers part = TestParts.Slice(TestParts.Revolved(z => r * (1 - z / h), [0, h], 720));
        // πr²h/3; tolerance 0.01 %: mid-height rule, 150 layers.
        Assert.Equal(1, part.EnvelopeVolume / (Math.PI * r * r * h / 3), 1e-4);
        // Exact: the core's radius is the lesser of outline less walls and the outline five layers higher.
        double core = 0;
        for (int i = 5; i < 145; i++)
            core += 0.2e-3 * Math.PI * Math.Pow(Math.Max(0, Math.Min(R(i) - T, R(i + 5))), 2);
        // 0.1 %: pieces smaller than a line's width squared are left out, and 720 corners are no circle.
        Assert.Equal(1, part.CoreVolume / core, 1e-3);

        static double R(int layer) => r * (1 - (layer + 0.5) * 0.2e-3 / h);
    }

    [Theory]
    [InlineData(2, 4)]
    [InlineData(1, 12)]
    [InlineData(5, 0)]
    public void Slice_sphere_gives_the_shells_of_a_stack_of_circles(int walls, int solid)
    {
        const double r = 12e-3;
        PrintSettings settings = TestParts.Settings with { Walls = walls, SolidLayers = solid };
        PartLayers part = TestParts.Slice(TestParts.Sphere(r, 240), null, settings);
        const int count = 120;
        Assert.Equal(count, part.Layers.Count);
        // 4πr³/3; tolerance 0.05 %: facets of 1.5 degrees.
        Assert.Equal(1, part.EnvelopeVolume / (4 * Math.PI * r * r * r / 3), 5e-4);
        double core = 0;
        for (int i = solid; i < count - solid; i++)
        {
            double radius = R(i) - settings.WallThickness;
            for (int j = i - solid; j <= i + solid; j++)
                radius = Math.Min(radius, j == i ? radius : R(j));
            core += 0.2e-3 * Math.PI * Math.Pow(Math.Max(0, radius), 2);
        }

        Assert.Equal(1, part.CoreVolume / core, 2e-3);

        static double R(int layer)
        {
            double z = (layer + 0.5) * 0.2e-3 - r;
            return Math.Sqrt(r * r - z * z);
        }
    }

    [Fact]
    public void Slice_bore_and_pocket_are_holes_with_walls_round_them()
    {
        IReadOnlyList<Point2> hexagon = [.. Rings.Hexagon(8e-3).Select(p => p + new Point2(15e-3, 0))];
        SolidExpression plate = new PrismSolid([Rings.Rectangle(60e-3, 30e-3), [.. Rings.Circle(5e-3).Select(p => p - new Point2(12e-3, 0)).Reverse()], [.. hexagon.Reverse()]], 8e-3);
        PartLayers part = TestParts.Slice(plate);
        Layer layer = part.Layers[20];
        Assert.Equal(3, layer.Outline.Count);
        Assert.Equal(3, layer.Core.Count);
        // A hexagon of 8 mm across flats, area 2√3 (s/2)² and perimeter 4√3 (s/2), grown by 1.35 mm all round (Steiner's formula).
        double hexagonGrown = 2 * Math.Sqrt(3) * Math.Pow(4e-3, 2) + 4 * Math.Sqrt(3) * 4e-3 * T + Math.PI * T * T;
        double inside = (60e-3 - 2 * T) * (30e-3 - 2 * T) - hexagonGrown - Math.PI * Math.Pow(5e-3 + T, 2);
        Assert.Equal(1, layer.InsideArea / inside, 1e-4);
    }

    [Fact]
    public void Slice_blind_pocket_gets_solid_layers_under_its_floor_and_over_its_roof()
    {
        // A hollow 10 × 10 × 4 mm inside a block 30 × 30 × 16 mm, from 6 to 10 mm up.
        SolidExpression block = TestParts.Box(30e-3, 30e-3, 16e-3).Without(TestParts.Box(10e-3, 10e-3, 4e-3).Placed(Placement.Shift(new(0, 0, 6e-3))));
        PartLayers part = TestParts.Slice(block);
        double full = Math.Pow(30e-3 - 2 * T, 2);
        Assert.Equal(full, part.Layers[24].CoreArea, 1e-9);
        Assert.Equal(full - 1e-4, part.Layers[25].CoreArea, 1e-9);
        Assert.Equal(full - 1e-4, part.Layers[29].CoreArea, 1e-9);
        // Steiner's formula; tolerance: its quarter circles are of 16 chords.
        Assert.Equal(full - 1e-4 - 4 * 10e-3 * T - Math.PI * T * T, part.Layers[40].CoreArea, 2e-8);
        Assert.Equal(full - 1e-4, part.Layers[54].CoreArea, 1e-9);
        Assert.Equal(full, part.Layers[55].CoreArea, 1e-9);
    }

    [Fact]
    public void Slice_a_tunnel_through_the_side_cuts_the_core_though_no_corner_lies_in_it()
    {
        // A level bore of square section right through a block: over and under it the core is parted, though all corners of either are covered.
        SolidExpression block = TestParts.Box(30e-3, 30e-3, 16e-3).Without(TestParts.Box(50e-3, 6e-3, 4e-3).Placed(Placement.Shift(new(0, 0, 6e-3))));
        PartLayers part = TestParts.Slice(block);
        Assert.Equal(2, part.Layers[27].Core.Count);
        Assert.Equal((30e-3 - 2 * T) * (30e-3 - 2 * T - 6e-3), part.Layers[27].CoreArea, 1e-9);
    }

    [Fact]
    public void Slice_through_a_level_face_keeps_to_one_side_of_it()
    {
        // The step lies exactly in the middle of a layer.
        SolidExpression stepped = TestParts.Box(20e-3, 20e-3, 2.1e-3).And(TestParts.Box(10e-3, 10e-3, 4e-3));
        PartLayers part = TestParts.Slice(stepped);
        Assert.Equal(1e-4, part.Layers[10].OutlineArea, 1e-9);
        Assert.All(part.Layers, layer => Assert.Single(layer.Outline));
    }

    [Fact]
    public void Slice_twice_gives_the_same_bits()
    {
        TriangleMesh mesh = TestParts.Sphere(8e-3, 60);
        PartLayers one = TestParts.Slice(mesh), two = TestParts.Slice(mesh);
        Assert.Equal(one.CoreVolume, two.CoreVolume);
        Assert.Equal(one.Layers[30].Core[0], two.Layers[30].Core[0]);
    }

    [Fact]
    public void Slice_larger_part_with_larger_lines_scales()
    {
        PrintSettings twice = TestParts.Settings with { LayerHeight = 0.4e-3, LineWidth = 0.9e-3 };
        PartLayers one = TestParts.Slice(TestParts.Sphere(8e-3, 60)), two = TestParts.Slice(TestParts.Sphere(16e-3, 60), null, twice);
        Assert.Equal(8, two.CoreVolume / one.CoreVolume, 1e-4);
        Assert.Equal(2, two.Layers[30].WallLength / one.Layers[30].WallLength, 1e-4);
    }

    [Fact]
    public void Slice_refuses_settings_that_mean_nothing()
    {
        TriangleMesh mesh = TestParts.Build(TestParts.Box(1e-2, 1e-2, 1e-2));
        Assert.Throws<ArgumentOutOfRangeException>(() => TestParts.Slice(mesh, null, TestParts.Settings with { LayerHeight = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => TestParts.Slice(mesh, null, TestParts.Settings with { Walls = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => TestParts.Slice(mesh, null, TestParts.Settings with { LineWidth = double.NaN }));
    }
}
