using CsCheck;
using Finwright.Geometry;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Voxels;

public sealed class PlaneCoverageTests
{
    private const double CellX = 1.25, CellY = 0.5;
    private const int CountX = 9, CountY = 12;

    private static readonly Gen<Point2[]> Stars =
        from radii in Gen.Double[0.5, 2.9].Array[3, 14]
        from x in Gen.Double[3.2, 7.5]
        from y in Gen.Double[2.95, 3.05]
        select Star(radii, x, y);

    private static Point2[] Star(double[] radii, double x, double y) =>
        [.. radii.Select((r, i) => new Point2(x + r * Math.Cos(2 * Math.PI * i / radii.Length), y + r * Math.Sin(2 * Math.PI * i / radii.Length)))];

    private static PlaneCoverage Lay(params IReadOnlyList<IReadOnlyList<Point2>> rings)
    {
        PlaneCoverage plane = new(default, CellX, CellY, CountX, CountY);
        plane.Lay(rings);
        return plane;
    }

    [Fact]
    public void Lay_star_holds_its_area_and_length() => Stars.Hold(star =>
    {
        PlaneCoverage plane = Lay(star);
        double area = 0, length = 0;
        for (int i = 0; i < star.Length; i++)
        {
            Point2 a = star[i], b = star[(i + 1) % star.Length];
            area += a.Cross(b) / 2;
            length += (b - a).Length;
        }

        Assert.Equal(area, CellX * CellY * plane.Shares.Sum(), 1e-10);
        Assert.Equal(length, plane.Lengths.Sum(), 1e-10);
        Assert.All(plane.Shares, share => Assert.InRange(share, -1e-10, 1 + 1e-10));
    });

    [Fact]
    public void Lay_star_each_cell_agrees_with_cutting_the_star_to_the_cell() => Stars.Hold(star =>
    {
        // Second method: the star's corners cut against the four sides of each cell (Sutherland and Hodgman 1974), which is right for areas.
        PlaneCoverage plane = Lay(star);
        for (int j = 0; j < CountY; j++)
            for (int i = 0; i < CountX; i++)
                Assert.Equal(Cut(star, i * CellX, (i + 1) * CellX, j * CellY, (j + 1) * CellY) / (CellX * CellY), plane.Shares[i + CountX * j], 1e-9);
    }, iter: 40);

    [Fact]
    public void Lay_star_sides_and_edges_of_each_cell_balance() => Stars.Hold(star =>
    {
        // Divergence theorem in the plane: what enters a cell through its sides leaves through the ring in it. The vector of the ring in a cell
        // cannot be longer than the ring there, and is just as long where one straight piece lies in it.
        PlaneCoverage plane = Lay(star);
        double sumX = 0, sumY = 0;
        for (int j = 0; j < CountY; j++)
        {
            for (int i = 0; i < CountX; i++)
            {
                double x = CellY * (plane.LinesX[i + 1 + (CountX + 1) * j] - plane.LinesX[i + (CountX + 1) * j]);
                double y = CellX * (plane.LinesY[i + CountX * (j + 1)] - plane.LinesY[i + CountX * j]);
                Assert.True(Math.Sqrt(x * x + y * y) <= plane.Lengths[i + CountX * j] + 1e-9);
                sumX += x;
                sumY += y;
            }
        }

        Assert.Equal(0, sumX, 1e-10);
        Assert.Equal(0, sumY, 1e-10);
    });

    [Fact]
    public void Lay_triangle_its_slope_is_found_exactly_in_every_cell()
    {
        Point2[] triangle = [new(1.1, 0.7), new(9.3, 0.9), new(4.2, 5.3)];
        PlaneCoverage plane = Lay(triangle);
        int single = 0;
        for (int j = 0; j < CountY; j++)
        {
            for (int i = 0; i < CountX; i++)
            {
                int edges = Enumerable.Range(0, 3).Count(e => Crosses(triangle[e], triangle[(e + 1) % 3], i, j));
                if (edges != 1)
                    continue;
                double x = CellY * (plane.LinesX[i + 1 + (CountX + 1) * j] - plane.LinesX[i + (CountX + 1) * j]);
                double y = CellX * (plane.LinesY[i + CountX * (j + 1)] - plane.LinesY[i + CountX * j]);
                Assert.Equal(plane.Lengths[i + CountX * j], Math.Sqrt(x * x + y * y), 1e-9);
                single++;
            }
        }

        Assert.InRange(single, 20, 60);
    }

    [Fact]
    public void Lay_square_on_the_grid_lines_belongs_to_the_cells_inside_it()
    {
        PlaneCoverage plane = Lay([new Point2(2.5, 1), new(5, 1), new(5, 3), new(2.5, 3)]);
        for (int j = 0; j < CountY; j++)
        {
            for (int i = 0; i < CountX; i++)
            {
                bool inside = i is 2 or 3 && j is >= 2 and < 6;
                Assert.Equal(inside ? 1 : 0, plane.Shares[i + CountX * j], 1e-12);
                double edge = !inside ? 0 : CellY + (j is 2 or 5 ? CellX : 0);
                Assert.Equal(edge, plane.Lengths[i + CountX * j], 1e-12);
            }
        }
    }

    [Fact]
    public void Lay_hole_is_taken_out()
    {
        PlaneCoverage plane = Lay([new Point2(1, 1), new(9, 1), new(9, 5), new(1, 5)], [new Point2(3, 2), new(3, 4), new(6, 4), new(6, 2)]);
        Assert.Equal(32 - 6, CellX * CellY * plane.Shares.Sum(), 1e-12);
        Assert.Equal(0, plane.Shares[3 + CountX * 6], 1e-12);
    }

    private static bool Crosses(Point2 a, Point2 b, int i, int j)
    {
        double t0 = 0, t1 = 1;
        foreach ((double from, double way, double low, double high) in new[] { (a.X, b.X - a.X, i * CellX, (i + 1) * CellX), (a.Y, b.Y - a.Y, j * CellY, (j + 1) * CellY) })
        {
            double p = (low - from) / way, q = (high - from) / way;
            (t0, t1) = (Math.Max(t0, Math.Min(p, q)), Math.Min(t1, Math.Max(p, q)));
        }

        return t1 > t0;
    }

    private static double Cut(Point2[] ring, double left, double right, double low, double high)
    {
        List<Point2> points = [.. ring];
        foreach ((Point2 normal, double offset) in new[] { (new Point2(1, 0), left), (new Point2(-1, 0), -right), (new Point2(0, 1), low), (new Point2(0, -1), -high) })
        {
            List<Point2> kept = [];
            for (int i = 0; i < points.Count; i++)
            {
                Point2 a = points[i], b = points[(i + 1) % points.Count];
                double da = a.Dot(normal) - offset, db = b.Dot(normal) - offset;
                if (da >= 0)
                    kept.Add(a);
                if (da >= 0 != db >= 0)
                    kept.Add(a + da / (da - db) * (b - a));
            }

            points = kept;
        }

        double twice = 0;
        for (int i = 0; i < points.Count; i++)
            twice += points[i].Cross(points[(i + 1) % points.Count]);
        return twice / 2;
    }
}
