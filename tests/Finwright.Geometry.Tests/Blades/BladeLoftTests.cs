using Finwright.Geometry.Blades;

namespace Finwright.Geometry.Tests.Blades;

public sealed class BladeLoftTests
{
    public static TheoryData<string> Names => [.. Samples.Keys];

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
}
