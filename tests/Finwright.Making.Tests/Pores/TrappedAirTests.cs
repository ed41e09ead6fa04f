using CsCheck;
using Finwright.Geometry;
using Finwright.Making.Pores;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Pores;

public sealed class TrappedAirTests
{
    private static PartVoxels Box(double cell, int x, int y, int z)
    {
        PartVoxels box = new(default, new(cell, cell, cell), x, y, z);
        Array.Fill(box.Core, 1);
        return box;
    }

    private static double Trapped(PartVoxels part, Point3 up, params PourPort[] vents) => new TrappedAir(PoreGrid.Create(part, 0)).Solve(up, vents).Volume;

    [Fact]
    public void Box_with_a_vent_at_its_top_keeps_no_air()
    {
        PartVoxels box = Box(0.001, 40, 20, 15);
        Assert.Equal(0, Trapped(box, new(0, 0, 1), new PourPort(new(0.02, 0.01, 0.015), new(0, 0, 1), 0.003)));
    }

    [Fact]
    public void Box_with_a_vent_in_its_side_keeps_what_lies_above_the_vent()
    {
        // Upright box, vent at two thirds of its height: one third stays; a hole of 3 mm lets air out to its upper edge, 1.5 mm higher.
        PartVoxels box = Box(0.001, 40, 20, 30);
        Assert.Equal(0.040 * 0.020 * (0.010 - 0.0015), Trapped(box, new(0, 0, 1), new PourPort(new(0, 0.01, 0.020), new(-1, 0, 0), 0.003)), 1e-3 * 8e-6);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(40)]
    public void Tilted_box_keeps_the_wedge_above_its_vent(double degrees)
    {
        // Box 60 × 20 × 40 mm tilted about y: its top corner edge is at x = 60, z = 40. A pin-hole in the face x = 60 at 15 mm below it leaves a triangle
        // with legs 15 / cos and 15 ... : level plane through the hole, which falls 15 cos θ below the corner and meets the top face 15 cot θ from it.
        double angle = degrees * Math.PI / 180, leg = 0.015, along = leg / Math.Tan(angle), width = 0.020;
        double area = along <= 0.060 ? leg * along / 2 : leg * along / 2 * (1 - Math.Pow(1 - 0.060 / along, 2));
        PartVoxels box = Box(0.001, 60, 20, 40);
        double held = Trapped(box, new(Math.Sin(angle), 0, Math.Cos(angle)), new PourPort(new(0.060, 0.010, 0.040 - leg), new(1, 0, 0), 1e-6));
        // Half a cell along the wedge's long side: the free surface cuts cells that are taken as evenly filled.
        Assert.Equal(area * width, held, 0.02 * area * width);
    }

    [Fact]
    public void Inverted_cup_keeps_its_inside_down_to_its_rim()
    {
        // A dome of core 30 mm wide under walls, hanging from a wide basin: only the rim's height decides.
        PartVoxels part = new(default, new(0.001, 0.001, 0.001), 50, 10, 30);
        for (int k = 0; k < 30; k++)
            for (int j = 0; j < 10; j++)
                for (int i = 0; i < 50; i++)
                    // A wall at x = 35 to 36 from z = 8 up.
                    part.Core[part.Index(i, j, k)] = i == 35 && k >= 8 ? 0 : 1;
        TrappedAirResult result = new TrappedAir(PoreGrid.Create(part, 0.2)).Solve(new(0, 0, 1), [new(new(0.045, 0.005, 0.030), new(0, 0, 1), 0.004)]);
        Assert.Equal(0.8 * 0.035 * 0.010 * 0.022, result.Volume, 1e-10);
        TrappedRegion bubble = Assert.Single(result.Regions);
        Assert.Equal(0.022, bubble.Depth, 1e-6);
        Assert.Equal(0.0175, bubble.Centroid.X, 1e-6);
        Assert.Equal(0.019, bubble.Centroid.Z, 1e-6);
        Assert.Equal(0.030, bubble.Highest.Z, 1e-9);
        Assert.False(bubble.IsClosed);
    }

    [Fact]
    public void Room_without_a_way_to_a_vent_stays_full_of_air_and_is_called_closed()
    {
        PartVoxels part = Box(0.001, 30, 10, 10);
        for (int k = 0; k < 10; k++)
            for (int j = 0; j < 10; j++)
                part.Core[part.Index(20, j, k)] = 0;
        TrappedAirResult result = new TrappedAir(PoreGrid.Create(part, 0)).Solve(new(1, 0, 0), [new(new(0.020, 0.005, 0.005), new(1, 0, 0), 0.002)]);
        TrappedRegion room = Assert.Single(result.Regions);
        Assert.True(room.IsClosed);
        Assert.Equal(0.009 * 0.010 * 0.010, room.Volume, 1e-12);
    }

    [Fact]
    public void Without_a_vent_or_with_one_beside_the_part_all_air_stays()
    {
        PartVoxels box = Box(0.001, 10, 10, 10);
        Assert.Equal(1e-6, Trapped(box, new(0, 0, 1)), 1e-12);
        TrappedAirResult far = new TrappedAir(PoreGrid.Create(box, 0)).Solve(new(0, 0, 1), [new(new(0.05, 0.005, 0.005), new(1, 0, 0), 0.003)]);
        Assert.Equal([false], far.VentsReach);
        Assert.Equal(1, far.Share, 1e-12);
    }

    [Fact]
    public void Convex_body_at_any_slope_keeps_no_air_below_a_vent_at_its_highest_point()
    {
        // An ellipsoid cut exactly enough by 6³ points in each cell: its walls cross the grid at every slope.
        PartVoxels egg = Egg(0.0015);
        TrappedAir air = new(PoreGrid.Create(egg, 0.15));
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1]).Where((x, y, z) => x * x + y * y + z * z > 0.1).Hold(
            (x, y, z) =>
            {
                Point3 up = 1 / new Point3(x, y, z).Length * new Point3(x, y, z);
                TrappedAirResult result;
                lock (air)
                    result = air.Solve(up, [new(Top(up), up, 0.003)]);
                // The cap above a 3 mm mouth that stands level at the top: none.
                Assert.Equal(0, result.Volume);
            }, iter: 60);
    }

    [Fact]
    public void Egg_with_a_vent_below_its_top_keeps_the_cap_above_it()
    {
        // Cap of an ellipsoid: the map that makes it a ball keeps shares of volume. Vent at 60 % of the height from the middle: (1 − 0.6)² (2 + 0.6) / 4 of it.
        PartVoxels egg = Egg(0.001);
        TrappedAir air = new(PoreGrid.Create(egg, 0));
        Point3 up = new(0, 0, 1);
        // At the border, on the side x.
        Point3 mouth = new(0.030 * (1 + 0.8), 0.012, 0.010 * (1 + 0.6));
        Assert.Equal(0.4 * 0.4 * 2.6 / 4 * egg.CoreVolume, air.Solve(up, [new(mouth, new(1, 0, 0), 1e-6)]).Volume, 0.06 * 0.104 * egg.CoreVolume);
    }

    [Fact]
    public void Of_two_vents_in_one_cell_the_higher_counts_whichever_is_named_first()
    {
        PartVoxels box = Box(0.004, 10, 5, 5);
        PourPort low = new(new(0, 0.010, 0.0125), new(-1, 0, 0), 1e-6), high = new(new(0, 0.010, 0.0155), new(-1, 0, 0), 1e-6);
        // Above the higher pin-hole: 4.5 mm of 40 × 20 mm.
        Assert.Equal(0.0045 * 0.040 * 0.020, Trapped(box, new(0, 0, 1), low, high), 1e-9);
        Assert.Equal(0.0045 * 0.040 * 0.020, Trapped(box, new(0, 0, 1), high, low), 1e-9);
    }

    [Fact]
    public void Spill_levels_agree_with_rooms_found_one_level_after_another()
    {
        // Random walls in a small box. Brute force: for each height the cells at or above it, joined through all 26 neighbours; air at a cell is free until
        // the last height at which its room holds a vent.
        Gen.Select(Gen.Int[1, 1_000_000], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[0.2, 1]).Hold(
            (seed, x, y, z) =>
            {
                PartVoxels part = new(default, new(1, 1, 1), 6, 5, 7);
                uint state = (uint)seed;
                for (int c = 0; c < part.Count; c++)
                {
                    state = 1664525 * state + 1013904223;
                    part.Core[c] = state >> 24 > 110 ? 1 : 0;
                }

                part.Core[part.Index(3, 2, 6)] = 1;
                Point3 up = 1 / new Point3(x, y, z).Length * new Point3(x, y, z);
                PourPort vent = new(new(3.5, 2.5, 7), new(0, 0, 1), 1e-6);
                double half = (Math.Abs(up.X) + Math.Abs(up.Y) + Math.Abs(up.Z)) / 2;
                TrappedAirResult result = new TrappedAir(PoreGrid.Create(part, 0)).Solve(up, [vent], keepCells: true);
                double[] spill = BruteForce(part, up, part.Index(3, 2, 6), vent.Mouth.Dot(up));
                int cell = 0;
                for (int c = 0; c < part.Count; c++)
                {
                    if (part.Core[c] is 0)
                        continue;
                    double top = Middle(part, c).Dot(up) + half;
                    double air = double.IsNegativeInfinity(spill[c]) ? 1 : Math.Clamp((top - spill[c]) / (2 * half), 0, 1);
                    float found = result.Cells[cell++];
                    // Bubbles no deeper than half a cell are left out, so a shallow one may be missing; heights are told apart to 1/65536 of the box.
                    if (found > 0)
                        Assert.Equal(air, found, 1e-3);
                    else
                        Assert.True((top - spill[c]) <= half + 1e-3 || air < 1e-3, $"cell {c}: {air}, {found}");
                }
            }, iter: 60);
    }

    [Fact]
    public void Result_is_the_same_when_part_and_up_are_turned_together()
    {
        PartVoxels part = new(default, new(0.001, 0.002, 0.003), 12, 9, 7), turned = new(default, new(0.002, 0.003, 0.001), 9, 7, 12);
        uint state = 7;
        for (int k = 0; k < 7; k++)
            for (int j = 0; j < 9; j++)
                for (int i = 0; i < 12; i++)
                {
                    state = 1664525 * state + 1013904223;
                    double share = state >> 24 > 90 ? 1 : 0;
                    part.Core[part.Index(i, j, k)] = share;
                    turned.Core[turned.Index(j, k, i)] = share;
                }

        part.Core[part.Index(6, 4, 6)] = turned.Core[turned.Index(4, 6, 6)] = 1;
        double a = Trapped(part, new(0.3, -0.2, 0.9), new PourPort(new(0.0065, 0.009, 0.021), new(0, 0, 1), 0.001));
        double b = Trapped(turned, new(-0.2, 0.9, 0.3), new PourPort(new(0.009, 0.021, 0.0065), new(0, 1, 0), 0.001));
        Assert.InRange(a, 1e-9, part.CoreVolume);
        Assert.Equal(a, b, 1e-4 * a);
    }

    [Fact]
    public void More_vents_never_keep_more_air_and_scaling_by_two_keeps_eight_times_as_much()
    {
        PartVoxels small = Cave(0.001), large = Cave(0.002);
        PourPort one = new(new(0.002, 0.002, 0.020), new(0, 0, 1), 0.002), two = new(new(0.028, 0.002, 0.012), new(1, 0, 0), 0.002);
        double few = Trapped(small, new(0.2, 0.1, 1), one), many = Trapped(small, new(0.2, 0.1, 1), one, two);
        Assert.True(few > many && many >= 0);
        double scaled = Trapped(large, new(0.2, 0.1, 1), new PourPort(2 * one.Mouth, one.Outward, 0.004));
        Assert.Equal(8 * few, scaled, 1e-6 * scaled);
    }

    private static PartVoxels Cave(double cell)
    {
        PartVoxels part = Box(cell, 30, 10, 20);
        for (int k = 10; k < 20; k++)
            for (int j = 0; j < 10; j++)
                part.Core[part.Index(15, j, k)] = 0;
        return part;
    }

    private static Point3 Middle(PartVoxels part, int c) => part.Centre(c % part.CountX, c / part.CountX % part.CountY, c / (part.CountX * part.CountY));

    private static double[] BruteForce(PartVoxels part, Point3 up, int ventCell, double ventHeight)
    {
        double half = (Math.Abs(up.X) + Math.Abs(up.Y) + Math.Abs(up.Z)) / 2;
        double[] top = new double[part.Count], spill = new double[part.Count];
        for (int c = 0; c < part.Count; c++)
            top[c] = Middle(part, c).Dot(up) + half;
        Array.Fill(spill, double.NegativeInfinity);
        foreach (double height in top.Append(ventHeight).Where(h => h <= ventHeight).Distinct().Order())
        {
            if (top[ventCell] < height)
                continue;
            bool[] room = new bool[part.Count];
            Queue<int> queue = new([ventCell]);
            room[ventCell] = true;
            while (queue.TryDequeue(out int c))
            {
                spill[c] = Math.Max(spill[c], height);
                for (int n = 0; n < part.Count; n++)
                {
                    Point3 gap = Middle(part, n) - Middle(part, c);
                    if (!room[n] && part.Core[n] > 0 && top[n] >= height && Math.Max(Math.Abs(gap.X), Math.Max(Math.Abs(gap.Y), Math.Abs(gap.Z))) < 1.5)
                    {
                        room[n] = true;
                        queue.Enqueue(n);
                    }
                }
            }
        }

        return spill;
    }

    private static Point3 Top(Point3 up)
    {
        // Half axes 30, 12, 10 mm about the point (30, 12, 10): the border point with the normal up.
        Point3 a = new(0.030 * 0.030 * up.X, 0.012 * 0.012 * up.Y, 0.010 * 0.010 * up.Z);
        return new Point3(0.030, 0.012, 0.010) + 1 / Math.Sqrt(a.Dot(up)) * a;
    }

    private static PartVoxels Egg(double cell)
    {
        PartVoxels egg = new(default, new(cell, cell, cell), (int)Math.Ceiling(0.060 / cell), (int)Math.Ceiling(0.024 / cell), (int)Math.Ceiling(0.020 / cell));
        const int Fine = 6;
        for (int k = 0; k < egg.CountZ; k++)
            for (int j = 0; j < egg.CountY; j++)
                for (int i = 0; i < egg.CountX; i++)
                {
                    int inside = 0;
                    for (int n = 0; n < Fine * Fine * Fine; n++)
                    {
                        double x = (i + (n % Fine + 0.5) / Fine) * cell / 0.030 - 1, y = (j + (n / Fine % Fine + 0.5) / Fine) * cell / 0.012 - 1, z = (k + (n / (Fine * Fine) + 0.5) / Fine) * cell / 0.010 - 1;
                        if (x * x + y * y + z * z < 1)
                            inside++;
                    }

                    egg.Core[egg.Index(i, j, k)] = (double)inside / (Fine * Fine * Fine);
                }

        return egg;
    }
}
