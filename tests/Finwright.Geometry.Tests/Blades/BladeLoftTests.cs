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
            TriangleMesh mesh = BladeLoft.Build(blade, new() { Tolerance = tolerance });
            Assert.Null(MeshCheck.Fault(mesh));
            Assert.Equal(1, mesh.Volume() / expected, accuracy);
        }
    }

    [Fact]
    public void Build_halves_the_volume_error_at_least_with_the_tolerance()
    {
        Blade blade = Samples["round"]();
        double expected = TestBlades.Volume(blade);
        double Error(double tolerance) => Math.Abs(BladeLoft.Build(blade, new() { Tolerance = tolerance }).Volume() / expected - 1);
        // The facets alone would be out by tolerance over thickness, first order; balanced ones must do better by far over two decades.
        Assert.True(Error(2e-6) < Error(2e-4) / 100, $"{Error(2e-4):e2} at 0.2 mm, {Error(2e-6):e2} at 0.002 mm");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Build_keeps_every_facet_within_the_tolerance_of_the_skin(string name)
    {
        Blade blade = Samples[name]();
        const double tolerance = 2e-5;
        TriangleMesh mesh = BladeLoft.Build(blade, new() { Tolerance = tolerance });
        double worst = 0;
        Point3 at = default;
        // Every seventh facet: the search for the nearest point of the skin is slow.
        for (int t = 0; t < mesh.Corners.Length; t += 21)
        {
            Point3 a = mesh.Vertex(mesh.Corners[t]), b = mesh.Vertex(mesh.Corners[t + 1]), c = mesh.Vertex(mesh.Corners[t + 2]);
            foreach ((double p, double q) in ((double, double)[])[(0, 0), (0.5, 0), (0.5, 0.5), (0, 0.5), (0.33, 0.33), (0.6, 0.2)])
            {
                Point3 point = a + p * (b - a) + q * (c - a);
                // Caps and the trailing edge's face are flat; the ends of the blade are looked at by other tests.
                if (point.Y < 1e-5 || point.Y > blade.Span - 1.5e-3 || point.X > Math.Min(blade.Skin(point.Y, 0).X, blade.Skin(point.Y, 1).X) - 1e-4)
                    continue;
                double off = DistanceToSkin(blade, point);
                if (off > worst)
                    (worst, at) = (off, point);
            }
        }

        Assert.True(worst <= tolerance, $"{1e3 * worst:0.####} mm off at {at}");
    }

    [Fact]
    public void Build_of_a_symmetric_blade_is_mirrored_to_the_last_bit()
    {
        TriangleMesh mesh = BladeLoft.Build(Samples["round"](), new() { Flange = new(0.006, 0.003, 0.005) });
        HashSet<Point3> vertices = [.. Enumerable.Range(0, mesh.VertexCount).Select(mesh.Vertex)];
        Assert.All(vertices, v => Assert.Contains(v with { Z = -v.Z + 0.0 }, vertices));
    }

    [Fact]
    public void Build_twice_gives_the_same_bits()
    {
        TriangleMesh first = BladeLoft.Build(Samples["twisted and cambered"]()), second = BladeLoft.Build(Samples["twisted and cambered"]());
        Assert.True(first.Coordinates.SequenceEqual(second.Coordinates));
        Assert.True(first.Corners.SequenceEqual(second.Corners));
    }

    [Fact]
    public void Build_at_twice_the_size_holds_eight_times_the_volume()
    {
        Blade Scaled(double k) => new(TestBlades.Trapezoid(0.1 * k, 0.06 * k, 0.3 * k, 0.05 * k), [TestBlades.Station(0, "naca-0010", 0.1)], 0.001 * k);
        TriangleMesh one = BladeLoft.Build(Scaled(1), new() { Tolerance = 2e-5 }), two = BladeLoft.Build(Scaled(2), new() { Tolerance = 4e-5 });
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
        TriangleMesh plain = BladeLoft.Build(blade, new() { Tolerance = 2e-6 });
        TriangleMesh flanged = BladeLoft.Build(blade, new() { Tolerance = 2e-6, Flange = new(overhang, thickness, fillet) });
        Assert.Null(MeshCheck.Fault(flanged));
        // The back of a four-digit section is not convex everywhere by a hair, hence not to the last digit.
        Assert.Equal(1, (flanged.Volume() - plain.Volume()) / expected, 5e-4);
        Assert.Equal(blade.Outline.LeadingEdge(0) - overhang, flanged.Bounds().Minimum.X, 3e-6);
    }

    [Fact]
    public void Build_with_a_root_extension_draws_the_root_on_straight()
    {
        Blade blade = Samples["round"]();
        TriangleMesh plain = BladeLoft.Build(blade), longer = BladeLoft.Build(blade, new() { RootExtension = 0.008, Flange = new(0.006, 0.003, 0.005) });
        Assert.Null(MeshCheck.Fault(longer));
        Assert.Equal(-0.008, longer.Bounds().Minimum.Y, 1e-12);
        TriangleMesh flanged = BladeLoft.Build(blade, new() { Flange = new(0.006, 0.003, 0.005) });
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

    /// <summary>Distance along the skin's own normal: Newton from the point at the same depth and place on the chord.</summary>
    private static double DistanceToSkin(Blade blade, Point3 p)
    {
        Point3 middle = new(p.X, p.Y, blade.MidSurface(p.X, p.Y));
        bool starboard = p.Z >= middle.Z;
        double low = starboard ? 0 : 0.5, high = starboard ? 0.5 : 1;
        double y = p.Y, u = Nearest(blade, p, y, low, high), best = (blade.Skin(y, u) - p).Length;
        // Alternate searches over depth and place round the section.
        for (int i = 0; i < 3; i++)
        {
            double reach = Math.Max(2 * best, 1e-7);
            y = Golden(v => (blade.Skin(v, u) - p).Length, Math.Max(0, y - reach), Math.Min(blade.Span, y + reach));
            u = Nearest(blade, p, y, low, high);
            best = Math.Min(best, (blade.Skin(y, u) - p).Length);
        }

        return best;
    }

    private static double Nearest(Blade blade, Point3 p, double y, double low, double high)
    {
        double best = low, least = double.MaxValue;
        const int n = 48;
        for (int i = 0; i <= n; i++)
        {
            double u = low + (high - low) * i / n, d = (blade.Skin(y, u) - p).Length;
            if (d < least)
                (best, least) = (u, d);
        }

        double step = (high - low) / n;
        return Golden(u => (blade.Skin(y, u) - p).Length, Math.Max(0, best - step), Math.Min(1, best + step));
    }

    private static double Golden(Func<double, double> f, double low, double high)
    {
        double shrink = (Math.Sqrt(5) - 1) / 2, a = high - shrink * (high - low), b = low + shrink * (high - low), fa = f(a), fb = f(b);
        for (int i = 0; i < 30; i++)
            if (fa < fb)
                (high, b, fb, a, fa) = (b, a, fa, b - shrink * (b - low), f(b - shrink * (b - low)));
            else
                (low, a, fa, b, fb) = (a, b, fb, a + shrink * (high - a), f(a + shrink * (high - a)));
        return (low + high) / 2;
    }
}
