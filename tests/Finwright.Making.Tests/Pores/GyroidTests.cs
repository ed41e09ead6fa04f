using Finwright.Making.Pores;

namespace Finwright.Making.Tests.Pores;

public sealed class GyroidTests
{
    // Length of the zero contour of F in a layer, by marching squares: no formula of the program is used.
    private static double ContourLengthPerArea(double z, int count)
    {
        double step = 2 * Math.PI / count, length = 0;
        double F(int i, int j) => Math.Sin(i * step) * Math.Cos(j * step) + Math.Sin(j * step) * Math.Cos(z) + Math.Sin(z) * Math.Cos(i * step);
        for (int i = 0; i < count; i++)
            for (int j = 0; j < count; j++)
            {
                double[] corner = [F(i, j), F(i + 1, j), F(i + 1, j + 1), F(i, j + 1)];
                List<(double X, double Y)> cuts = [];
                (double X, double Y)[] at = [(0, 0), (1, 0), (1, 1), (0, 1)];
                for (int e = 0; e < 4; e++)
                {
                    double a = corner[e], b = corner[(e + 1) % 4];
                    if (a > 0 != b > 0)
                        cuts.Add((at[e].X + a / (a - b) * (at[(e + 1) % 4].X - at[e].X), at[e].Y + a / (a - b) * (at[(e + 1) % 4].Y - at[e].Y)));
                }

                for (int c = 0; c + 1 < cuts.Count; c += 2)
                    length += step * double.Hypot(cuts[c].X - cuts[c + 1].X, cuts[c].Y - cuts[c + 1].Y);
            }

        return length / (4 * Math.PI * Math.PI) * 2 * Math.PI;
    }

    [Fact]
    public void Line_factor_is_the_length_of_the_zero_contours_found_by_marching_squares()
    {
        double sum = 0;
        const int Layers = 100;
        for (int k = 0; k < Layers; k++)
            sum += ContourLengthPerArea((k + 0.5) * 2 * Math.PI / Layers, 150);
        // 0.5 %, as stated with the factor.
        Assert.Equal(Gyroid.LineFactor, sum / Layers, 0.005 * Gyroid.LineFactor);
    }

    [Fact]
    public void Surface_stands_at_0795_of_upright_in_the_mean_over_its_area()
    {
        // Mean of |n_xy| over the surface, by sampling a thin shell about F = 0.
        double steep = 0, all = 0;
        const int Count = 120;
        for (int i = 0; i < Count; i++)
            for (int j = 0; j < Count; j++)
                for (int k = 0; k < Count; k++)
                {
                    (double sx, double cx) = Math.SinCos((i + 0.5) * 2 * Math.PI / Count);
                    (double sy, double cy) = Math.SinCos((j + 0.5) * 2 * Math.PI / Count);
                    (double sz, double cz) = Math.SinCos((k + 0.5) * 2 * Math.PI / Count);
                    if (Math.Abs(sx * cy + sy * cz + sz * cx) > 0.06)
                        continue;
                    double gx = cx * cy - sz * sx, gy = cy * cz - sx * sy, gz = cz * cx - sy * sz;
                    steep += double.Hypot(gx, gy);
                    all += Math.Sqrt(gx * gx + gy * gy + gz * gz);
                }

        // The shell of finite thickness and the grid: 0.3 %.
        Assert.Equal(0.795, steep / all, 0.0025);
        Assert.Equal(Gyroid.LineFactor, Gyroid.AreaFactor * steep / all, 0.012);
    }

    [Theory]
    // Numerical reference, numpy: share of printed lines of constant width over the cell edge; 0.5 % is its own tolerance.
    [InlineData(0.05, 0.1235)]
    [InlineData(0.06, 0.1484)]
    [InlineData(0.08, 0.1975)]
    [InlineData(0.10, 0.2466)]
    [InlineData(0.12, 0.2957)]
    [InlineData(0.15, 0.3689)]
    [InlineData(0.20, 0.4893)]
    public void InfillShare_of_printed_lines_agrees_with_sampled_layers(double widthOverCell, double share)
    {
        Assert.Equal(share, Gyroid.InfillShare(widthOverCell, 1), 0.006 * share);
        Assert.Equal(1, Gyroid.CellEdge(widthOverCell, Gyroid.InfillShare(widthOverCell, 1)), 12);
    }

    [Theory]
    // Numerical reference, numpy (voxel counts of 400³ or finer); four printed digits, 3e-4 for their counting.
    [InlineData(0, 0.5000)]
    [InlineData(0.1, 0.4677)]
    [InlineData(0.2, 0.4356)]
    [InlineData(0.3, 0.4032)]
    [InlineData(0.5, 0.3381)]
    [InlineData(0.8, 0.2387)]
    [InlineData(1.0, 0.1703)]
    [InlineData(1.2, 0.0990)]
    [InlineData(1.4, 0.0225)]
    public void NetworkShare_agrees_with_counting(double level, double share) => Assert.Equal(share, Gyroid.NetworkShare(level), 3e-4);

    [Fact]
    public void NetworkShare_counts_what_a_plain_count_of_points_counts()
    {
        int above = 0;
        const int Count = 100;
        for (int i = 0; i < Count; i++)
            for (int j = 0; j < Count; j++)
                for (int k = 0; k < Count; k++)
                {
                    double x = (i + 0.5) * 2 * Math.PI / Count, y = (j + 0.5) * 2 * Math.PI / Count, z = (k + 0.5) * 2 * Math.PI / Count;
                    if (Math.Sin(x) * Math.Cos(y) + Math.Sin(y) * Math.Cos(z) + Math.Sin(z) * Math.Cos(x) > 0.37)
                        above++;
                }

        // A count of a million points: 1e-3 for its coarse surface.
        Assert.Equal((double)above / (Count * Count * Count), Gyroid.NetworkShare(0.37), 1e-3);
    }

    [Fact]
    public void Labyrinth_falls_apart_at_the_square_root_of_two()
    {
        // Cells of a labyrinth that touch: below √2 its pieces join across the period, above they do not. Counted on a grid, no formula of the program but the level.
        Assert.True(Spans(Gyroid.PinchOff - 0.04));
        Assert.False(Spans(Gyroid.PinchOff + 0.01));
    }

    /// <summary>Whether a point of one cell's labyrinth is joined with the same point of a cell farther on.</summary>
    private static bool Spans(double level)
    {
        const int Count = 48, Periods = 3, Long = Count * Periods;
        double step = 2 * Math.PI / Count;
        bool Open(int i, int j, int k) => Math.Sin(i * step) * Math.Cos(j * step) + Math.Sin(j * step) * Math.Cos(k * step) + Math.Sin(k * step) * Math.Cos(i * step) > level;
        bool[] seen = new bool[Long * Long * Long];
        Stack<(int I, int J, int K)> open = new();
        // The greatest F lies at an eighth of the period along each axis.
        open.Push((Count + Count / 8, Count + Count / 8, Count + Count / 8));
        bool far = false;
        while (open.TryPop(out (int I, int J, int K) at))
        {
            if (at.I < 0 || at.J < 0 || at.K < 0 || at.I >= Long || at.J >= Long || at.K >= Long)
            {
                far = true;
                continue;
            }

            int index = at.I + Long * (at.J + Long * at.K);
            if (seen[index] || !Open(at.I, at.J, at.K))
                continue;
            seen[index] = true;
            open.Push((at.I + 1, at.J, at.K));
            open.Push((at.I - 1, at.J, at.K));
            open.Push((at.I, at.J + 1, at.K));
            open.Push((at.I, at.J - 1, at.K));
            open.Push((at.I, at.J, at.K + 1));
            open.Push((at.I, at.J, at.K - 1));
        }

        return far;
    }

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.15)]
    [InlineData(0.6)]
    [InlineData(0.95)]
    public void Level_gives_back_the_share(double share) => Assert.Equal(share, Gyroid.SheetShare(Gyroid.Level(share)), 1e-7);

    [Fact]
    public void Thin_wall_takes_its_area_times_its_thickness_and_less_when_thicker()
    {
        Assert.Equal(3.0915e-4, Gyroid.UniformWallShare(1e-4, 1), 1e-9);
        // 3.0915 × 0.2 − 4.1888 × 0.008, by hand.
        Assert.Equal(0.5847896, Gyroid.UniformWallShare(0.2, 1), 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => Gyroid.UniformWallShare(0.4, 1));
    }

    [Fact]
    public void Permeability_grows_with_the_square_of_the_cell_and_is_not_told_beyond_what_was_computed()
    {
        double one = Gyroid.Permeability(0.0074, 0.15)!.Value.Value;
        Assert.Equal(4, Gyroid.Permeability(0.0148, 0.15)!.Value.Value / one, 12);
        Assert.True(Gyroid.Permeability(0.0074, 0.25)!.Value.Value < one);
        Assert.Null(Gyroid.Permeability(0.0074, 0.04));
        Assert.Null(Gyroid.Permeability(0.0074, 0.31));
    }
}
