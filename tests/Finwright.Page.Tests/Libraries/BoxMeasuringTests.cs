using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Page.Libraries;

namespace Finwright.Page.Tests.Libraries;

public sealed class BoxMeasuringTests
{
    [Fact]
    public void A_step_is_not_left_before_its_measure_is_given_and_every_number_stays_on_the_way_back()
    {
        BoxMeasuring box = new();
        Assert.True(box.Next());
        Assert.False(box.Next());
        box["hull_length_mm"] = 150;
        Assert.True(box.Next());
        Assert.Equal(MeasuringStep.Depth, box.Step);
        box.Back();
        Assert.Equal((MeasuringStep.Length, 150), (box.Step, box["hull_length_mm"]));
        box.GoTo(MeasuringStep.Result);
        Assert.Equal(MeasuringStep.Depth, box.Step);
    }

    [Fact]
    public void A_number_that_no_box_has_is_refused_at_once_at_its_own_step()
    {
        BoxMeasuring box = new() { ["hull_length_mm"] = 15 };
        Assert.Contains("15", Assert.Single(box.Of(MeasuringStep.Length)).Message, StringComparison.Ordinal);
        Assert.Empty(box.Of(MeasuringStep.Width));
        Assert.False(box.IsDone(MeasuringStep.Length));
    }

    [Fact]
    public void A_deep_end_longer_than_the_hull_is_said_at_the_ends()
    {
        BoxMeasuring box = Measured();
        Assert.True(box.IsWhole);
        box["deep_length_mm"] = 155;
        Assert.False(box.IsWhole);
        Assert.Contains(box.Of(MeasuringStep.Ends), finding => finding.IsError);
        box.ByAngles = true;
        box["front_angle_degrees"] = 8;
        Assert.False(box.IsWhole);
        box["rear_angle_degrees"] = 8;
        Assert.True(box.IsWhole);
    }

    [Fact]
    public void Bolts_too_near_to_each_other_are_said_where_they_are_measured()
    {
        BoxMeasuring box = Measured();
        box.Bolts.Add(new() { FromFrontMm = 40 });
        box.Bolts.Add(new() { FromFrontMm = 46 });
        Assert.Contains(box.Of(MeasuringStep.Bolts), finding => finding.Path.EndsWith("bolts[1].from_front_mm", StringComparison.Ordinal));
        box.Bolts[1].FromFrontMm = 110;
        Assert.True(box.IsWhole);
    }

    [Fact]
    public void The_known_two_bolt_box_is_recognised()
    {
        BoxMeasuring box = new() { ["hull_length_mm"] = 156.1, ["hull_width_mm"] = 15.9, ["front_depth_mm"] = 51, ["rear_depth_mm"] = 32, ["deep_length_mm"] = 142 };
        Assert.True(box.LooksTwoBolt);
        box["hull_width_mm"] = 17;
        Assert.False(box.LooksTwoBolt);
    }

    [Fact]
    public void The_gauge_is_a_closed_thin_body_as_long_as_the_base_lying_on_the_bed()
    {
        BoxMeasuring box = Measured();
        BasePlan plan = BoxGauge.Plan(box.Carrier!).Plan!;
        TriangleMesh mesh = BoxGauge.Mesh(plan, 3e-3);
        Bounds bounds = mesh.Bounds();
        Assert.Equal(0, bounds.Minimum.Z, 9);
        Assert.Equal(plan.HullWidth, bounds.Maximum.Z - bounds.Minimum.Z, 6);
        // Half the block is taken away: what is left weighs far less than the base, and has the length of it.
        Assert.InRange(mesh.Volume(), 0.15 * plan.HullLength * plan.Depth * 3e-3, 0.6 * plan.HullLength * plan.Depth * plan.HullWidth);
        Assert.Equal(plan.HullLength, Math.Max(bounds.Maximum.X - bounds.Minimum.X, bounds.Maximum.Y - bounds.Minimum.Y), 4);
        Assert.NotEmpty(BoxGauge.File(box.Carrier!, "Blue", isStl: true)!);
        Assert.Equal((byte)'P', BoxGauge.File(box.Carrier!, "Blue", isStl: false)![0]);
    }

    internal static BoxMeasuring Measured() => new() { ["hull_length_mm"] = 150, ["hull_width_mm"] = 16, ["front_depth_mm"] = 40, ["deep_length_mm"] = 138 };
}
