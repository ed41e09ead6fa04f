using CsCheck;
using Finwright.Strength.Plates;
using MathNet.Numerics.LinearAlgebra;

namespace Finwright.Strength.Tests.Plates;

/// <summary>Patch tests: what a fine mesh must represent, a distorted coarse one represents already.</summary>
public sealed class QuadraticElementTests
{
    private const int Unknowns = QuadraticElement.Unknowns;

    // Five quadrilaterals, none a parallelogram. MacNeal and Harder, 1985, A proposed standard set of problems to test finite element accuracy, figure 1: 0.24 by 0.12 (from memory).
    private static readonly (double X, double Y)[] Corners = [(0, 0), (0.24, 0), (0.24, 0.12), (0, 0.12), (0.04, 0.02), (0.18, 0.03), (0.16, 0.08), (0.08, 0.08)];
    private static readonly int[][] Patch = [[0, 1, 4, 5], [5, 1, 6, 2], [7, 6, 3, 2], [0, 4, 3, 7], [4, 5, 7, 6]];

    private static readonly Gen<double[]> Curvatures = Gen.Double[-1, 1].Array[3];

    [Theory]
    [InlineData(1e-1)]
    [InlineData(1e-4)]
    public void Constant_curvature_passes_the_patch_test(double thickness) => Curvatures.Hold(curvature =>
    {
        // Exact field: w = (κx x² + κy y² + κxy x y)/2, slopes its derivatives, no shear, constant moments. Given on the outer edge, it must come out inside.
        (List<(double X, double Y)> places, int[][] elements) = Quadratic();
        int n = 3 * places.Count;
        Matrix<double> stiffness = Matrix<double>.Build.Dense(n, n);
        QuadraticElement element = new();
        double bending = thickness * thickness * thickness / 12 / (1 - 0.09), shear = 5.0 / 6 * thickness / 2.6;
        foreach (int[] nodes in elements)
        {
            double[] own = new double[Unknowns * Unknowns];
            Take(element, nodes, places);
            ForPoints((xi, eta, weight) =>
            {
                element.At(xi, eta);
                element.Shear();
                double area = weight * element.Area;
                PlateAssembly.AddStiffness(element, own, (area * bending, 0.3 * area * bending, area * bending, 0.35 * area * bending), area * shear, area * shear);
            });
            for (int u = 0; u < Unknowns; u++)
            {
                for (int v = 0; v < Unknowns; v++)
                    stiffness[3 * nodes[u / 3] + u % 3, 3 * nodes[v / 3] + v % 3] += own[Math.Max(u, v) * Unknowns + Math.Min(u, v)];
            }
        }

        double[] exact = new double[n];
        for (int i = 0; i < places.Count; i++)
            (exact[3 * i], exact[3 * i + 1], exact[3 * i + 2]) = Field(curvature, places[i]);
        int[] inner = [.. Enumerable.Range(0, n).Where(u => places[u / 3].X is > 1e-9 and < 0.24 - 1e-9 && places[u / 3].Y is > 1e-9 and < 0.12 - 1e-9)];
        Assert.True(inner.Length > 3 * 8);
        int[] outer = [.. Enumerable.Range(0, n).Except(inner)];
        Matrix<double> block = Matrix<double>.Build.Dense(inner.Length, inner.Length, (i, j) => stiffness[inner[i], inner[j]]);
        Vector<double> right = Vector<double>.Build.Dense(inner.Length, i => -outer.Sum(v => stiffness[inner[i], v] * exact[v]));
        Vector<double> solution = block.Solve(right);

        // Rounding of a general solver, worse the thinner.
        double tolerance = 1e-13 / thickness;
        for (int i = 0; i < inner.Length; i++)
            Assert.Equal(exact[inner[i]], solution[i], tolerance);
    }, iter: 5);

    [Fact]
    public void Constant_shear_passes_the_patch_test() => Gen.Double[-1, 1].Array[4].Hold(values =>
    {
        // w linear and slopes even: the shear is the difference everywhere, in every element, whatever its shape.
        (List<(double X, double Y)> places, int[][] elements) = Quadratic();
        QuadraticElement element = new();
        foreach (int[] nodes in elements)
        {
            Take(element, nodes, places);
            ForPoints((xi, eta, _) =>
            {
                element.At(xi, eta);
                element.Shear();
                double x = 0, y = 0;
                for (int k = 0; k < QuadraticElement.Nodes; k++)
                {
                    double[] own = [values[0] * places[nodes[k]].X + values[1] * places[nodes[k]].Y, values[2], values[3]];
                    for (int c = 0; c < 3; c++)
                    {
                        x += element.ShearX[3 * k + c] * own[c];
                        y += element.ShearY[3 * k + c] * own[c];
                    }
                }

                Assert.Equal(values[0] - values[2], x, 1e-11);
                Assert.Equal(values[1] - values[3], y, 1e-11);
            });
        }
    }, iter: 20);

    [Fact]
    public void Pure_bending_has_no_shear_anywhere_in_a_distorted_element() => Curvatures.Hold(curvature =>
    {
        (List<(double X, double Y)> places, int[][] elements) = Quadratic();
        QuadraticElement element = new();
        foreach (int[] nodes in elements)
        {
            Take(element, nodes, places);
            element.At(0.3, -0.7);
            element.Shear();
            double x = 0;
            for (int k = 0; k < QuadraticElement.Nodes; k++)
            {
                (double w, double slopeX, double slopeY) = Field(curvature, places[nodes[k]]);
                x += element.ShearX[3 * k] * w + element.ShearX[3 * k + 1] * slopeX + element.ShearX[3 * k + 2] * slopeY;
            }

            Assert.Equal(0, x, 1e-13);
        }
    }, iter: 20);

    private static (double W, double X, double Y) Field(double[] curvature, (double X, double Y) place)
    {
        (double x, double y) = place;
        return ((curvature[0] * x * x + curvature[1] * y * y + curvature[2] * x * y) / 2, curvature[0] * x + curvature[2] * y / 2, curvature[1] * y + curvature[2] * x / 2);
    }

    // The patch with nine nodes an element, straight sides.
    private static (List<(double X, double Y)> Places, int[][] Elements) Quadratic()
    {
        List<(double X, double Y)> places = [];
        int Index(double x, double y)
        {
            int found = places.FindIndex(p => Math.Abs(p.X - x) + Math.Abs(p.Y - y) < 1e-9);
            if (found >= 0)
                return found;
            places.Add((x, y));
            return places.Count - 1;
        }

        int[][] elements = [.. Patch.Select(corners => Enumerable.Range(0, 9).Select(k =>
        {
            double s = k % 3 / 2.0, t = k / 3 / 2.0;
            double[] share = [(1 - s) * (1 - t), s * (1 - t), (1 - s) * t, s * t];
            return Index(Enumerable.Range(0, 4).Sum(c => share[c] * Corners[corners[c]].X), Enumerable.Range(0, 4).Sum(c => share[c] * Corners[corners[c]].Y));
        }).ToArray())];
        return (places, elements);
    }

    private static void Take(QuadraticElement element, int[] nodes, List<(double X, double Y)> places) =>
        element.Take([.. nodes.Select(k => places[k].X)], [.. nodes.Select(k => places[k].Y)]);

    private static void ForPoints(Action<double, double, double> action)
    {
        double far = Math.Sqrt(0.6);
        double[] at = [-far, 0, far], weights = [5.0 / 9, 8.0 / 9, 5.0 / 9];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < 3; j++)
                action(at[i], at[j], weights[i] * weights[j]);
        }
    }
}
