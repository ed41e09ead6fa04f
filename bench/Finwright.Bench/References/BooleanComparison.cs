using System.Text.Json;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Solids;

namespace Finwright.Bench.References;

/// <summary>Joining and cutting a demo fin: our kernel, against the library it builds on used by itself.</summary>
internal static class BooleanComparison
{
    // Ours carries out each step when it comes, the reference all when asked: points that fall together within the 24 bits of a coordinate may be joined otherwise.
    private const double Limit = 1e-7;
    private const double CubicCentimetres = 1e6, CubicMillimetresPerCubicCentimetre = 1000;

    public static Comparison Run()
    {
        List<ComparisonRow> rows = [];
        string name = "", library = Path.Combine(Examples.Repository, "src", "Finwright.Geometry", "node_modules", "manifold-3d", "manifold.js");
        using ManifoldKernel kernel = new();
        foreach (string demo in Examples.All)
        {
            FinSolids fin = Examples.Solids(demo).Solids;
            SolidExpression[] solids = fin.Base is null ? [fin.Blade] : [fin.Blade, fin.Base];
            SolidProgram program = SolidProgram.Compile(solids, new KernelLimits().Triangles);
            JsonElement answer = ReferenceProgram.Ask(
                "node", "booleans.mjs", "nodejs npm", new { library, steps = program.Steps.Select(Told), results = program.Results, timing = Sampling.Usual.Told });
            name = ReferenceProgram.Name(answer) + ", manifold-3d from npm, the same files that are embedded";
            double theirs = answer.GetProperty("results").EnumerateArray().Sum(result => result.GetProperty("volume").GetDouble()) / CubicMillimetresPerCubicCentimetre;
            int triangles = answer.GetProperty("results").EnumerateArray().Sum(result => result.GetProperty("triangles").GetInt32());

            (Times times, IReadOnlyList<SolidResult> results) = Sampling.Usual.Measure(() => kernel.Evaluate(solids));
            double ours = results.Sum(result => result.Volume) * CubicCentimetres;
            rows.Add(ComparisonRow.Relative(
                $"{demo}: volume of blade and base", $"{program.Steps.Count} steps; triangles {results.Sum(result => result.Mesh.TriangleCount)} and {triangles}", "cm³",
                ours, theirs, Limit, times, ReferenceProgram.Times(answer)));
        }

        return new("Joining and cutting solids", name, rows);
    }

    private static object Told(SolidStep step) => step switch
    {
        MeshStep mesh => new { kind = "mesh", coordinates = mesh.Coordinates, corners = mesh.Corners },
        PrismStep prism => new { kind = "prism", rings = Rings(prism), height = prism.Height },
        CombineStep combine => new { kind = Kind(combine.How), operands = combine.Operands },
        PlaceStep place => new { kind = "place", operands = new[] { place.Operand }, matrix = place.Matrix },
        TrimStep trim => new { kind = "trim", operands = new[] { trim.Operand }, normal = new[] { trim.Normal.X, trim.Normal.Y, trim.Normal.Z }, offset = trim.Offset },
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "There is no such step."),
    };

    private static string Kind(Combination how) => how switch
    {
        Combination.Union => "union",
        Combination.Difference => "difference",
        Combination.Intersection => "intersection",
        _ => throw new ArgumentOutOfRangeException(nameof(how), how, "There is no such combination."),
    };

    private static List<double[][]> Rings(PrismStep prism)
    {
        List<double[][]> rings = [];
        int at = 0;
        foreach (uint length in prism.Lengths)
        {
            double[][] ring = new double[length][];
            for (int i = 0; i < ring.Length; i++, at += 2)
                ring[i] = [prism.Points[at], prism.Points[at + 1]];
            rings.Add(ring);
        }

        return rings;
    }
}
