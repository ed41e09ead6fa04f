using Finwright.Geometry.Features;

namespace Finwright.Geometry.Tests.Features;

public sealed class StripSlotTests
{
    private static readonly TaperedBlade Blade = new(0.3, 0.12, 0.06, 20 * Math.PI / 180, 0.1, trailingEdge: 1.6e-3);

    [Fact]
    public void Tool_is_closed_and_its_volume_is_length_times_depth_times_width()
    {
        StripSlot slot = new(Blade, 0.6e-3, 8e-3, 0.03, 0.26);
        TriangleMesh mesh = slot.Tool();
        // A straight edge: the tool is a flat bar, 3 mm of it behind the edge.
        Assert.Equal(slot.EdgeLength * (8e-3 + 3e-3) * 0.6e-3, mesh.Volume(), slot.EdgeLength * 11e-3 * 0.6e-3 * 1e-9);
        Dictionary<(int, int), int> edges = [];
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
            for (int k = 0; k < 3; k++)
            {
                (int a, int b) = (corners[i + k], corners[i + (k + 1) % 3]);
                edges[(a, b)] = edges.GetValueOrDefault((a, b)) + 1;
            }

        Assert.All(edges, e => Assert.True(e.Value == 1 && edges.ContainsKey((e.Key.Item2, e.Key.Item1))));
    }

    [Fact]
    public void Mouth_leaves_half_of_what_the_edge_is_thicker_than_the_slot()
    {
        StripSlot slot = new(Blade, 0.6e-3, 8e-3, 0.03, 0.26);
        Assert.Equal((1.6e-3 - 0.6e-3) / 2, slot.Mouth.Wall, 5e-5);
        Assert.Equal(slot.Mouth.Wall, slot.Thinnest.Wall, 1e-9);
    }

    [Fact]
    public void Slot_that_reaches_past_the_tip_leaves_no_wall()
    {
        TaperedBlade swept = new(0.2, 0.12, 0.03, 50 * Math.PI / 180, 0.1);
        StripSlot slot = new(swept, 0.6e-3, 15e-3, 0.02, 0.2);
        Assert.True(slot.Thinnest.Wall < 0);
    }

    [Fact]
    public void DistanceFrom_a_bore_beside_the_slot_is_the_gap()
    {
        TaperedBlade upright = new(0.3, 0.1, 0.1, 0, 0.12);
        StripSlot slot = new(upright, 0.6e-3, 8e-3, 0.03, 0.26);
        // Edge at 75 mm, slot bottom at 67 mm, bore of 4 mm at 60 mm: 67 - 62 = 5 mm less half the slot's width.
        FeatureVolume bore = FeatureVolume.Cylinder(4e-3, new(60e-3, 0, 0), new(60e-3, 0.2, 0));
        Assert.Equal(5e-3 - 0.3e-3, slot.DistanceFrom(bore).Wall, 1e-9);
    }
}
