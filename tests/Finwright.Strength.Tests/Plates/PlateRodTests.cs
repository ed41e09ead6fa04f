using CsCheck;
using Finwright.Strength.Plates;
using static Finwright.Strength.Tests.Plates.PlateCases;

namespace Finwright.Strength.Tests.Plates;

public sealed class PlateRodTests
{
    [Fact]
    public void Rod_of_the_same_stuff_changes_nothing()
    {
        // Isotropic, so that its modulus along any line is E; its twist counts against G. It runs out at both ends, so that the mesh stays the same.
        double shear = 2900e6 / 2.7;
        PlateFin fin = Tapered with { Rods = [new(0.02, -0.01, 0.12, 0.23, 0, 0.004, 2900e6, shear, Density)] };
        PlateModel with = PlateModel.Create(fin), without = PlateModel.Create(Tapered);
        Assert.Equal(1, with.Solve(Point(fin)).Tip(fin, 0.5) / without.Solve(Point(fin)).Tip(fin, 0.5), 1e-9);
        Assert.Equal(1, with.MassProperties.Mass / without.MassProperties.Mass, 1e-12);
        Assert.Equal(1, with.Modes(2).AngularFrequencies[0] / without.Modes(2).AngularFrequencies[0], 1e-9);
    }

    [Fact]
    public void Rod_across_a_raked_mesh_stores_the_energy_of_its_curvature() =>
        Gen.Select(Gen.Double[-1, 1].Array[3], Gen.Double[0.02, 0.09], Gen.Double[0.075, 0.12], Gen.Double[0, 0.002]).Hold((curvature, from, to, height) =>
        {
            // Even curvature: E (I + A z²) κtt² L + G J κtn² L, twice the energy, whatever elements the rod crosses. Straight edges: the elements represent the field exactly.
            PlateRod rod = new(from, 0.03, to, 0.15, height, 0.003, 125e9, 4e9, 1500);
            PlateModel model = PlateModel.Create(Tapered with { Rods = [rod] });
            PlateAssembly assembly = model.Assembly;
            double[] field = new double[assembly.Order], product = new double[assembly.Order];
            for (int i = 0; i < assembly.Mesh.Nodes; i++)
            {
                (double x, double y) = (assembly.Mesh.X[i], assembly.Mesh.Y(i));
                field[3 * i] = (curvature[0] * x * x + curvature[1] * y * y + curvature[2] * x * y) / 2;
                field[3 * i + 1] = curvature[0] * x + curvature[2] * y / 2;
                field[3 * i + 2] = curvature[1] * y + curvature[2] * x / 2;
            }

            assembly.Rods!.Multiply(field, product);
            double energy = field.Zip(product, (a, b) => a * b).Sum(), length = model.RodLengths[0];
            Assert.Equal(Math.Sqrt((to - from) * (to - from) + 0.12 * 0.12), length, 1e-9);
            double tx = (to - from) / length, ty = 0.12 / length, area = Math.PI * 0.003 * 0.003 / 4, own = area * 0.003 * 0.003 / 16;
            double along = tx * tx * curvature[0] + ty * ty * curvature[1] + tx * ty * curvature[2];
            double twist = tx * ty * (curvature[1] - curvature[0]) + (tx * tx - ty * ty) * curvature[2] / 2;
            double expected = length * (125e9 * (own + area * height * height) * along * along + 4e9 * 2 * own * twist * twist);
            Assert.Equal(expected, energy, 1e-8 * length * 125e9 * (own + area * height * height));
        }, iter: 10);

    [Fact]
    public void Rod_is_seen_only_where_there_is_blade()
    {
        PlateModel model = PlateModel.Create(Strip with { Rods = [new(0.015, -0.05, 0.015, 0.1, 0, 0.003, 125e9, 4e9, 1500), new(0.05, 0, 0.05, 0.2, 0, 0.003, 125e9, 4e9, 1500)] });
        Assert.Equal(0.1, model.RodLengths[0], 1e-9);
        Assert.Equal(0, model.RodLengths[1], 1e-9);
        PlateSolution solution = model.Solve(Line(Strip, 0.2, 20));
        Assert.Empty(solution.RodStations(1));
        Assert.All(solution.RodStations(0), station => Assert.InRange(station.Y, 0, 0.1 + 1e-12));

        // Mass of the rod less what it displaces.
        double extra = (1500 - Density) * Math.PI * 0.003 * 0.003 / 4 * 0.1;
        Assert.Equal(Density * 0.03 * 0.01 * 0.2 + extra, model.MassProperties.Mass, 1e-9);
    }

    [Fact]
    public void Rows_of_the_mesh_begin_where_rods_end()
    {
        PlateFin fin = Tapered with { Rods = [new(0.03, 0, 0.08, 0.15, 0, 0.004, 125e9, 4e9, 1500), new(0.04, 0.001, 0.08, 0.1501, 0, 0.004, 125e9, 4e9, 1500)] };
        PlateMesh mesh = new(fin, new());
        double[] rows = [.. Enumerable.Range(0, mesh.Rows).Select(j => mesh.Y(j * mesh.Columns))];
        Assert.Contains(rows.Where((_, j) => j % 2 is 0), y => Math.Abs(y - 0.15) < 1e-12);
        for (int j = 1; j < rows.Length; j++)
            Assert.True(rows[j] > rows[j - 1]);
        Assert.Equal(PlateStatus.Solved, PlateModel.Create(fin).Solve(Point(fin)).Status);
    }

    [Fact]
    public void Rod_moment_changes_as_the_shear_force_it_takes_over()
    {
        // Long strip with one rod in its middle line: the rod's share of the moment is E_r I_r/ΣEI, so its change per length is that share of −F. 2 %: spread across the width.
        PlateFin fin = Strip with { Rods = [new(0.015, 0, 0.015, 0.2, 0, 0.004, 125e9, 4e9, 1500)] };
        double own = Math.PI * Math.Pow(0.004, 4) / 64, plastic = 2900e6 * (0.03 * 1e-6 / 12 - own), share = 125e9 * own / (125e9 * own + plastic);
        RodStation station = PlateModel.Create(fin).Solve(Line(fin, 0.2, 20)).RodStations(0)[20];
        Assert.Equal(-20 * share, station.MomentChange, 0.02 * 20 * share);
        Assert.Equal(2 * share, station.Moment, 0.02 * 2 * share);
        Assert.Equal(station.Moment / own * 0.002, station.BendingStress, 1e-6 * station.BendingStress);
    }
}
