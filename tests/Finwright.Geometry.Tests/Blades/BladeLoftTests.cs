using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Tests.Blades;

public sealed class BladeLoftTests
{
    private static readonly Dictionary<string, Func<Blade>> Samples = new(StringComparer.Ordinal)
    {
        ["straight"] = () => new(TestBlades.Trapezoid(0.1, 0.06, 0.3, 0.05), [TestBlades.Station(0, "naca-0010", 0.1)], 0.001),
        ["flat tip"] = () => new(TestBlades.Trapezoid(0.1, 0.06, 0.3, 0.05), [TestBlades.Station(0, "naca-0010", 0.1)], 0.001, 0),
        ["sharp edge"] = () => new(TestBlades.Trapezoid(0.1, 0.06, 0.3, 0.05), [TestBlades.Station(0, "naca-0010", 0.1)], 0),
        ["round"] = () => new(TestBlades.Round(), [TestBlades.Station(0, "naca-0010", 0.1), TestBlades.Station(0.32, "naca-0010", 0.08)], 0.001),
        ["twisted and cambered"] = () => new(
            TestBlades.Round(),
            [TestBlades.Station(0, "naca-0010", 0.1), TestBlades.Station(0.15, "naca-16-009", 0.09, 0.02, 0.05), TestBlades.Station(0.32, "naca-2412", 0.08, 0.03, -0.1)],
            0.001),
    };

    public static TheoryData<string> Names => [.. Samples.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Build_gives_a_closed_mesh_of_the_right_volume(string name)
    {
        Blade blade = Samples[name]();
        double expected = TestBlades.Volume(blade);
        foreach ((double tolerance, double accuracy) in ((double, double)[])[(2e-5, 1e-4), (2e-6, 1e-5)])
        {
            TriangleMesh mesh = Loft(blade, new() { Tolerance = tolerance });
            AssertSound(mesh);
            Assert.Equal(1, mesh.Volume() / expected, accuracy);
        }
    }

    [Theory]
    [InlineData("straight")]
    [InlineData("round")]
    [InlineData("twisted and cambered")]
    public void Build_volume_converges_faster_than_first_order_in_the_tolerance(string name)
    {
        Blade blade = Samples[name]();
        double expected = TestBlades.Volume(blade);
        double Error(double tolerance) => Math.Abs(Loft(blade, new() { Tolerance = tolerance }).Volume() / expected - 1);
        // Tolerance goes with the square of the spacing. Facets with corners on the skin give first order in the tolerance, second in the
        // spacing; balanced ones up to twice that where the skin is smooth, less at a tip that closes like a square root.
        double order = Math.Log(Error(2e-4) / Error(2e-6)) / Math.Log(100);
        Assert.True(order > 1, $"order {order:0.00}: {Error(2e-4):e2} at 0.2 mm, {Error(2e-6):e2} at 0.002 mm");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Build_keeps_every_facet_within_the_tolerance_of_the_skin(string name)
    {
        Blade blade = Samples[name]();
        const double tolerance = 2e-5;
        LoftedSkin skin = BladeLoft.Build(blade, new() { Tolerance = tolerance });
        Assert.True(skin.WorstStray <= tolerance);
        TriangleMesh mesh = skin.Mesh;
        SkinDistance distance = new(blade, tolerance);
        double worst = 0;
        Point3 at = default;
        foreach (Point3 point in PointsOnFacets(mesh))
            if (distance.From(point) is var off && off > worst)
                (worst, at) = (off, point);
        Assert.True(worst <= tolerance, $"{1e3 * worst:0.####} mm off at {at}");
    }

    [Theory]
    [InlineData(3e-6)]
    [InlineData(5e-7)]
    public void Build_meets_a_fine_tolerance_on_a_bent_blade(double tolerance)
    {
        LoftedSkin skin = BladeLoft.Build(Samples["twisted and cambered"](), new() { Tolerance = tolerance });
        Assert.InRange(skin.WorstStray, 0, tolerance);
        Assert.InRange(skin.Mesh.TriangleCount, 1, BladeLoft.MostTriangles);
    }

    [Fact]
    public void Build_of_a_tolerance_beyond_reach_stops_at_the_greatest_mesh_and_tells_its_stray()
    {
        LoftedSkin skin = BladeLoft.Build(Samples["twisted and cambered"](), new() { Tolerance = 1e-8 });
        AssertSound(skin.Mesh);
        Assert.InRange(skin.Mesh.TriangleCount, BladeLoft.MostTriangles / 4, BladeLoft.MostTriangles);
        Assert.InRange(skin.WorstStray, 1e-8, 2e-6);
    }

    [Fact]
    public void Build_of_a_symmetric_blade_is_mirrored_to_the_last_bit()
    {
        TriangleMesh mesh = Loft(Samples["round"](), new() { Flange = new(0.006, 0.003, 0.005) });
        HashSet<Point3> vertices = [.. Enumerable.Range(0, mesh.VertexCount).Select(mesh.Vertex)];
        Assert.All(vertices, v => Assert.Contains(v with { Z = -v.Z + 0.0 }, vertices));
    }

    [Fact]
    public void Build_twice_gives_the_same_bits()
    {
        TriangleMesh first = Loft(Samples["twisted and cambered"]()), second = Loft(Samples["twisted and cambered"]());
        Assert.True(first.Coordinates.SequenceEqual(second.Coordinates));
        Assert.True(first.Corners.SequenceEqual(second.Corners));
    }

    [Fact]
    public void Build_at_twice_the_size_holds_eight_times_the_volume()
    {
        Blade Scaled(double k) => new(TestBlades.Trapezoid(0.1 * k, 0.06 * k, 0.3 * k, 0.05 * k), [TestBlades.Station(0, "naca-0010", 0.1)], 0.001 * k);
        TriangleMesh one = Loft(Scaled(1), new() { Tolerance = 2e-5 }), two = Loft(Scaled(2), new() { Tolerance = 4e-5 });
        Assert.Equal(one.TriangleCount, two.TriangleCount);
        Assert.Equal(8, two.Volume() / one.Volume(), 1e-12);
    }

    [Theory]
    [InlineData(0.006, 0.003, 0.005)]
    [InlineData(0.006, 0.003, 0.006)]
    [InlineData(0.004, 0.002, 0)]
    public void Build_with_a_flange_adds_the_volume_of_Steiner(double overhang, double thickness, double fillet)
    {
        Blade blade = new(TestBlades.Trapezoid(0.1, 0.1, 0.3, 0), [TestBlades.Station(0, "naca-0010", 0.1)], 0.001, 0);
        double perimeter = 0;
        const int n = 40_000;
        for (int i = 0; i < n; i++)
            perimeter += (blade.Skin(0, (i + 1.0) / n) - blade.Skin(0, (double)i / n)).Length;
        perimeter += blade.TrailingEdgeThickness;

        // Steiner: moving a convex outline out by d adds perimeter · d + π d². Fillet between two perpendicular faces: d = r (1 - sin φ) over
        // y = r (1 - cos φ), so the integral of d is r² (1 - π/4) and that of d² is r³ (5/3 - π/2).
        double r = fillet;
        double expected = thickness * (perimeter * overhang + Math.PI * overhang * overhang)
            + perimeter * r * r * (1 - Math.PI / 4) + Math.PI * r * r * r * (5.0 / 3 - Math.PI / 2);
        TriangleMesh plain = Loft(blade, new() { Tolerance = 2e-6 });
        TriangleMesh flanged = Loft(blade, new() { Tolerance = 2e-6, Flange = new(overhang, thickness, fillet) });
        AssertSound(flanged);
        // The back of a four-digit section is not convex everywhere by a hair, hence not to the last digit.
        Assert.Equal(1, (flanged.Volume() - plain.Volume()) / expected, 5e-4);
        Assert.Equal(blade.Outline.LeadingEdge(0) - overhang, flanged.Bounds().Minimum.X, 3e-6);
    }

    [Fact]
    public void Build_with_a_root_extension_draws_the_root_on_straight()
    {
        Blade blade = Samples["round"]();
        TriangleMesh plain = Loft(blade), longer = Loft(blade, new() { RootExtension = 0.008, Flange = new(0.006, 0.003, 0.005) });
        AssertSound(longer);
        Assert.Equal(-0.008, longer.Bounds().Minimum.Y, 1e-12);
        TriangleMesh flanged = Loft(blade, new() { Flange = new(0.006, 0.003, 0.005) });
        Assert.Equal(0.008 * TestBlades.SectionArea(blade, 0), longer.Volume() - flanged.Volume(), 1e-3 * 0.008 * TestBlades.SectionArea(blade, 0));
        Assert.True(flanged.Volume() > plain.Volume());
    }

    [Fact]
    public void Build_refuses_options_that_make_no_sense()
    {
        Blade blade = Samples["straight"]();
        Assert.Throws<ArgumentOutOfRangeException>(() => BladeLoft.Build(blade, new() { Tolerance = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => BladeLoft.Build(blade, new() { RootExtension = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => BladeLoft.Build(blade, new() { Flange = new(0.004, 0.003, 0.005) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => BladeLoft.Build(blade, new() { Flange = new(0.2, 0.003, 0.199) }));
    }

    private static TriangleMesh Loft(Blade blade, LoftOptions? options = null) => BladeLoft.Build(blade, options).Mesh;

    private static void AssertSound(TriangleMesh mesh)
    {
        Assert.Empty(MeshChecks.Defects(mesh));
        Assert.Empty(MeshChecks.SinglePrecisionDefects(mesh));
    }

    /// <summary>Every corner, the middle of every edge, and four points inside every facet.</summary>
    private static IEnumerable<Point3> PointsOnFacets(TriangleMesh mesh)
    {
        for (int i = 0; i < mesh.VertexCount; i++)
            yield return mesh.Vertex(i);
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            int i = mesh.Corners[3 * t], j = mesh.Corners[3 * t + 1], k = mesh.Corners[3 * t + 2];
            Point3 a = mesh.Vertex(i), b = mesh.Vertex(j), c = mesh.Vertex(k);
            if (i < j)
                yield return 0.5 * (a + b);
            if (j < k)
                yield return 0.5 * (b + c);
            if (k < i)
                yield return 0.5 * (c + a);
            yield return 1.0 / 3 * (a + b + c);
            yield return 0.6 * a + 0.2 * (b + c);
            yield return 0.6 * b + 0.2 * (c + a);
            yield return 0.6 * c + 0.2 * (a + b);
        }
    }
}
