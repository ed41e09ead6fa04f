using Finwright.Geometry.Blades;
using Finwright.Geometry.Solids;
using Finwright.Geometry.Tests.Blades;
using Finwright.Geometry.Tests.Solids;

namespace Finwright.Geometry.Tests.Evidence;

/// <summary>Volumes of meshes and solids beside closed forms and an independent integral.</summary>
internal static class SolidEvidence
{
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Skins(), .. Cuts()];

    private static IEnumerable<EvidenceRow> Skins()
    {
        const string Topic = "Volume of the printed skin over that of the true blade", Source = "Numerical reference: Gauss quadrature of section areas over depth";
        Blade blade = new(TestBlades.Round(), [TestBlades.Station(0, "naca-0010", 0.1), TestBlades.Station(0.15, "naca-16-009", 0.09, 0.02, 0.05), TestBlades.Station(0.32, "naca-2412", 0.08, 0.03, -0.1)], 0.001);
        double volume = TestBlades.Volume(blade);
        foreach ((double tolerance, double within) in new[] { (2e-5, 1e-4), (2e-6, 1e-5) })
            yield return new(Topic, $"Raked, twisted, cambered, round tip; tolerance {1e3 * tolerance} mm", Source, 1, BladeLoft.Build(blade, new LoftOptions { Tolerance = tolerance }).Mesh.Volume() / volume, within, "what the loft promises");
    }

    private static IEnumerable<EvidenceRow> Cuts()
    {
        const string Topic = "Joining and cutting", Form = "closed form";
        using ManifoldKernel kernel = new();
        double Volume(SolidExpression solid) => kernel.Evaluate([solid])[0].Volume;
        SolidExpression ball = new MeshSolid(SampleMeshes.Ball(0.03, default, 180)), block = Shapes.Block(new(-0.02, -0.015, 0), new(0.04, 0.03, 0.025));
        double ring = 4.0 / 3 * Math.PI * Math.Pow(0.03 * 0.03 - 0.01 * 0.01, 1.5), left = 0.04 * 0.03 * 0.025 - Math.PI * 0.00325 * 0.00325 * 0.025;
        yield return new(Topic, "Ball of 30 mm bored by 20 mm, volume over 4/3 π (r² − a²)^1.5", Form, 1, Volume(ball.Without(Tools.Bore(0.02, new(0, 0, -0.04), new(0, 0, 0.04)))) / ring, 3e-4, "the ball is a mesh of 360 by 180 facets");
        yield return new(Topic, "Block bored by 6.5 mm, volume over closed form", Form, 1, Volume(block.Without(Tools.Bore(0.0065, new(0, 0, -0.01), new(0, 0, 0.035)))) / left, 1e-6, "single precision of meshes");
        yield return new(Topic, "Two blocks that share a face, volume over the sum", Form, 1, Volume(Shapes.Block(default, new(0.01, 0.01, 0.01)).And(Shapes.Block(new(0.01, 0, 0), new(0.02, 0.01, 0.01)))) / 3e-6, 1e-6, "single precision of meshes");
    }
}
