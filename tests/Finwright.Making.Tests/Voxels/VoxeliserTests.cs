using Finwright.Geometry;
using Finwright.Geometry.Solids;
using Finwright.Making.Layers;
using Finwright.Making.Tests.Layers;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Voxels;

public sealed class VoxeliserTests
{
    private static readonly Point3 Cell = new(1.3e-3, 0.9e-3, 0.7e-3);

    public static TheoryData<string> Shapes => ["box", "tilted box", "wedge", "sphere", "tube"];

    private static PartVoxels Of(PartLayers layers, Point3 cell) => Voxeliser.Of(layers, cell, TestContext.Current.CancellationToken);

    private static PartLayers Shape(string name) => name switch
    {
        "box" => TestParts.Slice(TestParts.Box(40e-3, 20e-3, 10e-3)),
        "tilted box" => TestParts.Slice(TestParts.Box(40e-3, 20e-3, 10e-3), Placement.Rotation(new(0.6, 0.8, 0), 0.5)),
        "wedge" => TestParts.Slice(Wedge()),
        "sphere" => TestParts.Slice(TestParts.Sphere(10e-3)),
        "tube" => TestParts.Slice(new PrismSolid([Rings.Circle(20e-3), [.. Rings.Circle(15e-3).Reverse()]], 30e-3)),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    /// <summary>A wedge of 30 degrees, its edge up: 40 mm long, 20 mm high.</summary>
    private static SolidExpression Wedge()
    {
        double half = 20e-3 * Math.Tan(Math.PI / 12);
        return new PrismSolid([[new(-half, 0), new(half, 0), new(0, 20e-3)]], 40e-3).Placed(new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), default));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Of_shape_holds_the_volumes_of_its_layers(string shape)
    {
        PartLayers layers = Shape(shape);
        PartVoxels voxels = Of(layers, Cell);
        Assert.Equal(1, voxels.PartVolume / layers.EnvelopeVolume, 1e-9);
        Assert.Equal(1, voxels.CoreVolume / layers.CoreVolume, 1e-9);
        for (int i = 0; i < voxels.Count; i++)
            Assert.InRange(voxels.Core[i], 0, voxels.Part[i]);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Of_shape_has_an_empty_cell_all_round(string shape)
    {
        PartVoxels voxels = Of(Shape(shape), Cell);
        for (int k = 0; k < voxels.CountZ; k++)
            for (int j = 0; j < voxels.CountY; j++)
                for (int i = 0; i < voxels.CountX; i++)
                    if (i == 0 || j == 0 || k == 0 || i == voxels.CountX - 1 || j == voxels.CountY - 1 || k == voxels.CountZ - 1)
                        Assert.Equal(0, voxels.Part[voxels.Index(i, j, k)] + voxels.CooledArea[voxels.Index(i, j, k)]);
    }

    [Fact]
    public void Of_upright_prism_the_area_inside_each_face_fits_the_shares_of_its_neighbours()
    {
        // Between two full cells a face is full; beside an empty cell it is empty.
        PartVoxels voxels = Of(Shape("tube"), Cell);
        for (int k = 0; k < voxels.CountZ; k++)
            for (int j = 0; j < voxels.CountY; j++)
                for (int i = 1; i < voxels.CountX; i++)
                {
                    double before = voxels.Part[voxels.Index(i - 1, j, k)], after = voxels.Part[voxels.Index(i, j, k)];
                    double face = voxels.FacesX[i + (voxels.CountX + 1) * (j + voxels.CountY * k)];
                    double height = Math.Max(before, after);
                    Assert.InRange(face, 0, 1);
                    if (before == 0 || after == 0)
                        Assert.Equal(0, face, 1e-9);
                    if (before > 1 - 1e-12 && after > 1 - 1e-12)
                        Assert.Equal(1, face, 1e-9);
                    Assert.True(face == 0 || height > 0);
                }
    }

    [Theory]
    [InlineData("box", 2 * (40 * 20 + 40 * 10 + 20 * 10))]
    [InlineData("tilted box", 2 * (40 * 20 + 40 * 10 + 20 * 10))]
    [InlineData("sphere", 4 * Math.PI * 100)]
    public void Of_shape_has_its_surface(string shape, double squareMillimetres)
    {
        // Closed forms. 2 %: a cell keeps one flat piece of each slope.
        double area = 1e6 * Of(Shape(shape), Cell).CooledArea.Sum();
        Assert.Equal(1, area / squareMillimetres, 0.02);
    }

    [Fact]
    public void Of_wedge_has_its_surface()
    {
        // Floor, two slopes, two ends. 2 % as before.
        double half = 20 * Math.Tan(Math.PI / 12), exact = 2 * half * 40 + 2 * 40 * Math.Sqrt(half * half + 400) + 2 * half * 20;
        Assert.Equal(1, 1e6 * Of(Shape("wedge"), Cell).CooledArea.Sum() / exact, 0.02);
    }

    [Fact]
    public void Of_plate_thinner_than_a_cell_keeps_both_its_sides()
    {
        PartVoxels voxels = Of(TestParts.Slice(TestParts.Box(40e-3, 0.8e-3, 20e-3)), new(2e-3, 2e-3, 2e-3));
        Assert.Equal(2 * (40 * 20 + 40 * 0.8 + 20 * 0.8), 1e6 * voxels.CooledArea.Sum(), 1e-3 * 1600);
    }

    [Theory]
    [InlineData(6, 6, 0.1)]
    [InlineData(30, 30, 1)]
    public void Of_bore_counts_only_when_it_is_wide(double diameterMillimetres, double lengthMillimetres, double share)
    {
        // A block 50 × 50 × 40 mm, bored from the top; the bore's own wall is π d l.
        const double block = 2 * (50 * 50 + 50 * 40 + 50 * 40);
        double depth = Math.Max(lengthMillimetres, 25);
        SolidExpression bored = TestParts.Box(50e-3, 50e-3, 40e-3).Without(new PrismSolid([Rings.Circle(diameterMillimetres * 0.5e-3)], depth * 1e-3 + 10e-3).Placed(Placement.Shift(new(0, 0, 40e-3 - depth * 1e-3))));
        double wall = Math.PI * diameterMillimetres * depth, floor = Math.PI * diameterMillimetres * diameterMillimetres / 4;
        double area = 1e6 * Of(TestParts.Slice(bored), new(1e-3, 1e-3, 1e-3)).CooledArea.Sum();
        double outside = block - floor;
        if (share < 1)
            // The ball dips a millimetre into the mouth, and a surface is told to a cell: 3 mm of 25 at most.
            Assert.InRange(area - outside, -0.01 * outside, 3.0 / 25 * wall);
        else
            Assert.Equal(1, area / (outside + wall + floor), 0.02);
    }

    [Fact]
    public void Of_step_inside_a_layer_row_shares_it_by_height()
    {
        // Rows of 0.5 mm over layers of 0.2 mm: the third layer lies in two rows.
        PartLayers layers = TestParts.Slice(TestParts.Box(20e-3, 20e-3, 0.4e-3).And(TestParts.Box(10e-3, 10e-3, 3e-3)));
        PartVoxels voxels = Of(layers, new(1e-3, 1e-3, 0.5e-3));
        double[] rows = new double[voxels.CountZ];
        for (int i = 0; i < voxels.Count; i++)
            rows[i / (voxels.CountX * voxels.CountY)] += voxels.Part[i] * voxels.CellVolume;
        for (int k = 0; k < rows.Length; k++)
        {
            double from = voxels.Origin.Z + k * 0.5e-3, to = from + 0.5e-3;
            double expected = 4e-4 * Overlap(from, to, 0, 0.4e-3) + 1e-4 * Overlap(from, to, 0.4e-3, 3e-3);
            Assert.Equal(expected, rows[k], 1e-12);
        }

        static double Overlap(double a, double b, double c, double d) => Math.Max(0, Math.Min(b, d) - Math.Max(a, c));
    }

    [Fact]
    public void CellFor_keeps_to_the_budget_and_is_finest_across_the_thinnest_direction()
    {
        PartLayers blade = TestParts.Slice(TestParts.Box(200e-3, 100e-3, 10e-3));
        foreach (int most in (int[])[5000, 60_000, 400_000])
        {
            Point3 cell = Voxeliser.CellFor(blade, 0.6e-3, most);
            PartVoxels voxels = Of(blade, cell);
            Assert.InRange(voxels.Count, most / 2, most);
            Assert.True(cell.Z <= cell.X && cell.X == cell.Y && cell.Z >= 0.6e-3);
        }
    }

    [Fact]
    public void Of_refuses_cells_that_would_take_all_memory()
    {
        PartLayers box = Shape("box");
        Assert.Throws<ArgumentException>(() => Of(box, new(1e-6, 1e-6, 1e-6)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(box, new(1e-3, 0, 1e-3)));
    }
}
