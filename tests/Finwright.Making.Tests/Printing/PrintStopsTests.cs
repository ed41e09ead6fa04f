using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Geometry.Solids;
using Finwright.Making.Layers;
using Finwright.Making.Printing;
using Finwright.Making.Tests.Layers;

namespace Finwright.Making.Tests.Printing;

public sealed class PrintStopsTests
{
    private const double Across = 8.2e-3, Thick = 4.9e-3, Allowance = 0.2e-3;

    private static (StopPlan Plan, List<Finding> Findings) Plan(SolidExpression block, params StopItem[] items)
    {
        PartLayers part = TestParts.Slice(block);
        // The slicer moves the block's corner to the origin: pockets are given in the block's own axes.
        List<Finding> findings = [];
        return (PrintStops.Plan(part, items, findings), findings);
    }

    private static SolidExpression Block() => TestParts.Box(40e-3, 30e-3, 20e-3);

    private static StopItem Item(FeatureVolume pocket, string name = "nut") =>
        StopItem.Of(
            new PlacedFeature { Name = name, Kind = FeatureKind.NutPocket, Path = "$.base", Owner = name, Volume = pocket, NeedsPause = true }, Placement.Identity, Allowance);

    private static FeatureVolume Upright(double x, double bottom) =>
        FeatureVolume.Prism(Rings.Hexagon(Across), new(x, 0, bottom), new(x, 0, bottom + Thick));

    [Fact]
    public void Plan_upright_nut_stops_before_the_layer_over_it()
    {
        FeatureVolume pocket = Upright(0, 5e-3);
        StopItem nut = Item(pocket);
        Assert.Equal(Thick - Allowance, nut.Height, 1e-6);
        Assert.Equal(Across - Allowance, nut.Width, 1e-5);
        (StopPlan plan, List<Finding> findings) = Plan(Block().Without(pocket.Tool()), nut);
        // The pocket reaches from 5 to 9.9 mm. Layer 50 lies from 9.8 to 10.0; its middle is at the roof and belongs above it: the stop is before it
        // or the next. Either way the nut lies at 5 mm and is 4.7 mm high.
        PrintStop stop = Assert.Single(plan.Stops);
        Assert.InRange(stop.LayerNumber, 50, 51);
        Assert.Equal((stop.LayerNumber - 1) * 0.2e-3, stop.Height, 1e-9);
        Assert.Equal(stop.Height - 9.7e-3, stop.Items[0].Clearance, 1e-6);
        Assert.Empty(findings);
    }

    [Fact]
    public void Plan_nut_under_a_bolts_bore_is_shut_in_by_the_bores_narrow_layers()
    {
        FeatureVolume pocket = Upright(0, 6e-3);
        SolidExpression block = Block().Without(pocket.Tool(), Tools.Bore(5.4e-3, new(0, 0, -5e-3), new(0, 0, 30e-3)));
        (StopPlan plan, _) = Plan(block, Item(pocket));
        PrintStop stop = Assert.Single(plan.Stops);
        // Roof at 10.9 mm: the layer from 10.8 to 11.0 mm, number 55, or the one after.
        Assert.InRange(stop.LayerNumber, 55, 56);
        Assert.InRange(stop.Items[0].Clearance, 0.09e-3, 0.31e-3);
    }

    [Fact]
    public void Plan_pocket_that_stays_open_needs_no_stop()
    {
        FeatureVolume pocket = FeatureVolume.Prism(Rings.Hexagon(Across), new(0, 0, 12e-3), new(0, 0, 25e-3));
        (StopPlan plan, List<Finding> findings) = Plan(Block().Without(pocket.Tool()), new StopItem("nut", "$.base", pocket, 4.7e-3, 8e-3));
        Assert.Empty(plan.Stops);
        Assert.Equal(["nut"], plan.NotNeeded);
        Assert.Empty(findings);
    }

    [Fact]
    public void Plan_lying_hexagon_goes_in_at_its_widest_and_sticks_out()
    {
        // Axis along x, two flats level: from 5 to 13.2 mm, widest at 9.1 mm, where it is 8.2 × 2/√3 = 9.469 mm wide; the nut is 9.269.
        // 0.2 mm are lost within 0.2 × √3/2 = 0.173 mm of height: the last layer wide enough has its middle at 9.1 mm (layer 46, sliced there).
        FeatureVolume pocket = FeatureVolume.Prism(Rings.Hexagon(Across), new(-Thick / 2, 0, 9.1e-3), new(Thick / 2, 0, 9.1e-3), new Point3(0, 1, 0));
        StopItem nut = Item(pocket);
        Assert.Equal(8e-3, nut.Height, 1e-6);
        Assert.Equal(Across * 2 / Math.Sqrt(3) - Allowance, nut.Width, 3e-5);
        (StopPlan plan, List<Finding> findings) = Plan(Block().Without(pocket.Tool()), nut);
        PrintStop stop = Assert.Single(plan.Stops);
        Assert.Equal(47, stop.LayerNumber);
        // Half of it is above.
        Assert.Equal(9.2e-3 - 13e-3, stop.Items[0].Clearance, 0.11e-3);
        Finding finding = Assert.Single(findings);
        Assert.Equal("stop-item-proud", finding.Code);
        Assert.True(finding.IsError);
        Assert.Contains("square nut", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_lying_square_goes_in_last_of_all()
    {
        FeatureVolume pocket = FeatureVolume.Prism(Rings.Rectangle(Across, Across), new(-Thick / 2, 0, 9.1e-3), new(Thick / 2, 0, 9.1e-3), new Point3(0, 1, 0));
        (StopPlan plan, List<Finding> findings) = Plan(Block().Without(pocket.Tool()), Item(pocket));
        // From 5.0 to 13.2 mm: closed by layer 67 from 13.2 up; the nut is 8.0 mm high.
        PrintStop stop = Assert.Single(plan.Stops);
        Assert.Equal(67, stop.LayerNumber);
        Assert.Equal(0.2e-3, stop.Items[0].Clearance, 1e-6);
        Assert.Empty(findings);
    }

    [Fact]
    public void Plan_two_nuts_of_one_height_share_a_stop_and_a_tall_one_is_told()
    {
        FeatureVolume left = Upright(-10e-3, 5e-3), right = Upright(10e-3, 5e-3);
        SolidExpression block = Block().Without(left.Tool(), right.Tool());
        (StopPlan plan, List<Finding> findings) = Plan(block, Item(left, "left"), Item(right, "right") with { Height = 5.5e-3 });
        PrintStop stop = Assert.Single(plan.Stops);
        Assert.Equal("left, right", string.Join(", ", stop.Items.Select(i => i.Name)));
        // The floor lies at 5.0, the roof's first layer at 9.8: 5.5 mm stick out by 0.7.
        Assert.Equal(-0.7e-3, stop.Items[1].Clearance, 1e-9);
        Finding proud = Assert.Single(findings);
        Assert.Equal(("stop-item-proud", true, "-0.70 mm"), (proud.Code, proud.IsError, proud.Value));
        Assert.Contains($"sticks out 0.70 mm above the layers at layer {stop.LayerNumber} ", proud.Message, StringComparison.Ordinal);
        // What lies just under the nozzle is no error, but may be struck.
        (_, findings) = Plan(block, Item(left, "left"), Item(right, "right") with { Height = 4.78e-3 });
        Finding close = Assert.Single(findings);
        Assert.Equal(("stop-item-proud", Severity.Caution, "0.02 mm"), (close.Code, close.Severity, close.Value));
        Assert.Contains($"lies only 0.02 mm under layer {stop.LayerNumber} ", close.Message, StringComparison.Ordinal);
        Assert.StartsWith("Raise the pocket allowance by 0.08 mm", close.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_pocket_that_was_never_cut_or_is_too_narrow_is_told()
    {
        FeatureVolume pocket = Upright(0, 5e-3);
        (StopPlan plan, List<Finding> findings) = Plan(Block(), Item(pocket));
        Assert.Equal(["nut"], plan.NotPossible);
        Assert.Equal("stop-never-open", Assert.Single(findings).Code);
        (plan, findings) = Plan(Block().Without(pocket.Tool()), Item(pocket) with { Width = 9e-3 });
        Assert.Equal(["nut"], plan.NotPossible);
        Assert.Equal("stop-never-open", Assert.Single(findings).Code);
    }
}
