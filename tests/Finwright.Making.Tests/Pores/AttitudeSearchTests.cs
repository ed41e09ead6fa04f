using Finwright.Geometry;
using Finwright.Making.Pores;
using Finwright.Making.Voxels;

namespace Finwright.Making.Tests.Pores;

public sealed class AttitudeSearchTests
{
    // Layer axes: design x along x, design y (tip) along y, starboard up.
    private static readonly Placement Lying = Placement.Identity;

    [Fact]
    public void Names_say_which_side_is_up_and_which_is_lowered()
    {
        Assert.Equal("tip up", PourAttitude.Of(new(0, 3, 0), Lying).Name);
        Assert.Equal("root up", PourAttitude.Of(new(0, -1, 0), Lying).Name);
        Assert.Equal("tip up, leading edge tilted down 30°", PourAttitude.Of(new(0.5, Math.Sqrt(0.75), 0), Lying).Name);
        Assert.Equal("leading edge up, tip tilted down 20° and starboard side tilted down 10°", PourAttitude.Of(new(-1, -Math.Tan(20 * Math.PI / 180), -Math.Tan(10 * Math.PI / 180)), Lying).Name);
        // The same part standing on its root: tip along layer z.
        Placement standing = new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), new(0.1, 0.2, 0.3));
        Assert.Equal("tip up", PourAttitude.Of(new(0, 0, 1), standing).Name);
        Assert.Equal("port side up", PourAttitude.Of(new(0, 1, 0), standing).Name);
    }

    [Fact]
    public void Spread_covers_the_sphere_evenly()
    {
        IReadOnlyList<PourAttitude> all = PourAttitude.Spread(Lying);
        Assert.Equal(42 + 156, all.Count);
        Assert.Equal(6, all.Count(a => a.Practicality is 0));
        Assert.Equal(42, all.Take(42).Count(a => a.Practicality < 2));
        Assert.All(all, a => Assert.Equal(1, a.Up.Length, 1e-12));
        // An icosahedron parted twice has edges of at most 18.7°, so the middles of its triangles lie within 10.9° of a corner (geometry); 12° leaves room for the spherical excess.
        for (int i = 0; i < 500; i++)
        {
            double z = 2 * (i + 0.5) / 500 - 1, turn = i * 2.399963, r = Math.Sqrt(1 - z * z);
            Assert.True(all.Max(a => a.Up.Dot(new(r * Math.Cos(turn), r * Math.Sin(turn), z))) > Math.Cos(12 * Math.PI / 180));
        }
    }

    [Fact]
    public void Search_lays_a_box_so_that_its_vent_is_the_highest_point()
    {
        // Ports in the middle of the two narrow ends: only with one end up does no air stay, and the easy attitude wins over tilted ones as good.
        PartVoxels box = Box(40, 120, 10);
        AttitudeSearchResult result = AttitudeSearch.Search(box, 0.15, [new(new(0.020, 0, 0.005), new(0, -1, 0), 0.004), new(new(0.020, 0.120, 0.005), new(0, 1, 0), 0.004)], new(0, 0, 1), Lying, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal("starboard side up", result.Now.Attitude.Name);
        Assert.True(result.Now.Air.Share > 0.2);
        Assert.True(result.Best.Attitude.Name is "tip up" or "root up", result.Best.Attitude.Name);
        Assert.Equal(0, result.Best.Air.Volume);
        Assert.Null(result.Pair);
        Assert.Equal(199, result.Tried);
    }

    [Fact]
    public void Rocking_frees_two_bubbles_that_no_single_attitude_frees()
    {
        // A letter H: two posts of 20 × 60 mm joined by a bar, both ports on the bar. Whatever end is up, a post or two ends of posts stay full; laid on one
        // side and then on the other each post empties once.
        PartVoxels letter = Box(60, 60, 8);
        for (int k = 0; k < 8; k++)
            for (int j = 0; j < 60; j++)
                for (int i = 20; i < 40; i++)
                    if (j is < 25 or >= 35)
                        letter.Core[letter.Index(i, j, k)] = 0;
        PourPort feed = new(new(0.030, 0.025, 0.004), new(0, -1, 0), 0.004), vent = new(new(0.030, 0.035, 0.004), new(0, 1, 0), 0.004);
        AttitudeSearchResult result = AttitudeSearch.Search(letter, 0, [feed, vent], new(0, 1, 0), Lying, cancellation: TestContext.Current.CancellationToken);
        // Tip up both upper ends stay full: 2 × 20 × 25 × 8 mm; and the fine grid tells it exactly.
        Assert.Equal(2 * 0.020 * 0.025 * 0.008, result.Now.Air.Volume, 1e-9);
        Assert.Equal(2, result.Now.Air.Regions.Count);
        Assert.True(result.Best.Air.Volume <= result.Now.Air.Volume);
        Assert.True(result.Best.Air.Volume > 1e-6);
        Assert.NotNull(result.Pair);
        Assert.True(result.Pair.Air.Volume < 0.05 * result.Best.Air.Volume);
        Assert.Equal(result.Pair.First.FeedPort, result.Pair.Second.FeedPort);
        // What both attitudes keep is the lesser of what each keeps, cell by cell.
        for (int i = 0; i < result.Pair.Air.Cells.Count; i++)
            Assert.Equal(Math.Min(result.Pair.First.Air.Cells[i], result.Pair.Second.Air.Cells[i]), result.Pair.Air.Cells[i]);
    }

    [Fact]
    public void Rocked_box_keeps_only_what_neither_attitude_frees()
    {
        // A flat box with one vent in the middle of its upper face's long edge, feed below: sideways tilts free one half each.
        PartVoxels box = Box(80, 40, 6);
        TrappedAir air = new(PoreGrid.Create(box, 0));
        PourPort vent = new(new(0.040, 0.040, 0.003), new(0, 1, 0), 0.002);
        TrappedAirResult left = air.Solve(new(0.3, 1, 0), [vent], keepCells: true), right = air.Solve(new(-0.3, 1, 0), [vent], keepCells: true);
        TrappedAirResult both = air.Both(left, right);
        // Wedges of 40 mm × 0.3 × 40 mm / 2 on the raised side.
        Assert.Equal(0.040 * 0.012 / 2 * 0.006, left.Volume, 0.05 * 1.44e-6);
        Assert.Equal(left.Volume, right.Volume, 0.02 * left.Volume);
        // They lie on different sides of the vent: nothing stays in both.
        Assert.InRange(both.Volume, 0, 0.02 * left.Volume);
    }

    [Fact]
    public void Ports_suggested_for_a_cave_free_its_second_chamber()
    {
        PartVoxels part = Box(60, 20, 30);
        // A wall from the ceiling: two chambers, joined below.
        for (int k = 8; k < 30; k++)
            for (int j = 0; j < 20; j++)
                part.Core[part.Index(35, j, k)] = 0;
        PortPlan plan = PortPlaces.Suggest(part, 0.15, new(0, 0, 1), 0.003)!;
        Assert.Equal(2, plan.Vents.Count);
        Assert.All(plan.Vents, vent =>
        {
            Assert.Equal(new Point3(0, 0, 1), vent.Outward);
            Assert.Equal(0.030, vent.Mouth.Z, 1e-9);
        });
        Assert.True(plan.Vents.Any(v => v.Mouth.X < 0.035) && plan.Vents.Any(v => v.Mouth.X > 0.036));
        Assert.Equal(0, plan.Feed.Mouth.Z, 1e-9);
        Assert.Equal(new Point3(0, 0, -1), plan.Feed.Outward);
        Assert.Equal(0, plan.Air.Volume);
    }

    [Fact]
    public void Ports_are_not_spent_on_bubbles_that_are_not_worth_one()
    {
        PartVoxels part = Box(60, 20, 30);
        // A chamber of 2 × 20 × 3 mm, 0.3 % of the part and 0.1 ml.
        for (int k = 27; k < 30; k++)
            for (int j = 0; j < 20; j++)
                part.Core[part.Index(57, j, k)] = 0;
        PortPlan plan = PortPlaces.Suggest(part, 0.15, new(0, 0, 1), 0.003)!;
        Assert.Single(plan.Vents);
        Assert.Equal(0.85 * 0.002 * 0.020 * 0.003, plan.Air.Volume, 1e-10);
    }

    [Theory]
    [InlineData(6, 1.0)]
    [InlineData(2, 0.0)]
    public void Slab_of_core_is_thin_or_not_as_a_whole(int cells, double thinShare)
    {
        // 3 mm slab in 0.5 mm cells against limits of 6 / 2 and 2 / 2 mm; only its rim lies nearer to the side.
        PartVoxels slab = new(default, new(0.0005, 0.0005, 0.0005), 60, 60, 6);
        Array.Fill(slab.Core, 1);
        ThinCoreResult result = ThinCore.Measure(slab, cells * 2e-3, 0.5);
        // Square edges are not covered by balls: (1 − π/4) R² of 12 edges, 2 to 3 % of this slab.
        Assert.Equal(thinShare, result.Share, 0.03);
    }

    [Fact]
    public void Wedge_of_core_is_thin_up_to_where_it_is_as_thick_as_the_limit()
    {
        // Half thickness grows by 1 in 8: a ball of radius R sits at R / sin(angle) from the edge and touches both sides; between the edge and the circle the
        // core is thin. So are the two square edges of the thick end, (1 − π/4) R² each. Twice the depth less once leaves the ends out.
        double angle = Math.Atan(WedgeSlope), radius = 0.002;
        double area = radius * radius / Math.Tan(angle) - radius * radius * (Math.PI / 2 - angle) + 2 * (1 - Math.PI / 4) * radius * radius;
        double Miss(double cell)
        {
            double found = ThinCore.Measure(Wedge(cell, 0.020), 0.008, 0.5).Volume - ThinCore.Measure(Wedge(cell, 0.010), 0.008, 0.5).Volume;
            return Math.Abs(found / (area * 0.010) - 1);
        }

        // The thickness is told to about a cell of 0.5 mm in 4 mm, the area goes with its square, and the ball's place moves by eight times as much:
        // 35 %, and half of it on cells half as long.
        double coarse = Miss(0.0005), fine = Miss(0.00025);
        Assert.True(coarse < 0.35, $"{coarse}");
        Assert.True(fine < 0.18, $"{fine}");
    }

    private const double WedgeSlope = 1.0 / 8;

    private static PartVoxels Wedge(double cell, double depth)
    {
        double flat = cell / 2;
        PartVoxels wedge = new(default, new(cell, cell, flat), (int)Math.Round(0.060 / cell), (int)Math.Round(depth / cell), (int)Math.Round(0.0155 / flat));
        for (int k = 0; k < wedge.CountZ; k++)
            for (int j = 0; j < wedge.CountY; j++)
                for (int i = 0; i < wedge.CountX; i++)
                {
                    double half = (i + 0.5) * cell * WedgeSlope, z = (k + 0.5 - wedge.CountZ / 2.0) * flat;
                    wedge.Core[wedge.Index(i, j, k)] = Math.Clamp(0.5 + (half - Math.Abs(z)) / flat, 0, 1);
                }

        return wedge;
    }

    private static PartVoxels Box(int x, int y, int z)
    {
        PartVoxels box = new(default, new(0.001, 0.001, 0.001), x, y, z);
        Array.Fill(box.Core, 1);
        return box;
    }
}
