using Finwright.Numerics;
using Finwright.Water.Spot;

namespace Finwright.Water.Tests.Spot;

public sealed class LeadingEdgeSheddingTests
{
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData(30, 0, 0)]
    [InlineData(40, 1, 0)]
    [InlineData(50, 1, 1)]
    public void Straight_edge_sheds_everywhere_or_nowhere(double sweepDegrees, double easy, double clinging)
    {
        // Common practice, no source: friction 0.7 to 1.0, so 35 to 45 degrees.
        var edge = LeadingEdgeShedding.Of(0.3, _ => sweepDegrees * Degree);
        Assert.Equal(easy, edge.ShareAt(LeadingEdgeShedding.EasyFriction));
        Assert.Equal(clinging, edge.ShareAt(LeadingEdgeShedding.ClingingFriction));
    }

    [Fact]
    public void Edge_that_sweeps_more_and_more_sheds_from_where_it_passes_the_angle()
    {
        // Sweep from 20 degrees at the root to 70 at the tip, linear: 45 is reached at half span.
        var edge = LeadingEdgeShedding.Of(0.3, y => (20 + 50 * y / 0.3) * Degree);
        Assert.Equal(0.5, edge.ShareAt(1), 0.005);
        Assert.Equal(0.5, edge.ClearedShareAt(1), 0.005);
        HoldingStretch held = Assert.Single(edge.HoldingAt(1));
        Assert.Equal((0, 0.15), (held.From, held.To), (a, b) => Math.Abs(a.From - b.From) < 1e-12 && Math.Abs(a.To - b.To) < 0.002);
        Assert.Equal(20 * Degree, edge.LeastSweep, 0.2 * Degree);
        Assert.Equal(0, edge.LeastSweepAt, 0.001);
    }

    [Fact]
    public void Upright_stretch_near_the_tip_catches_what_slid_down_to_it()
    {
        var edge = LeadingEdgeShedding.Of(0.3, y => (y is > 0.24 and < 0.27 ? 10 : 50) * Degree);
        Assert.Equal(0.9, edge.ShareAt(1), 0.0051);
        Assert.Equal(0.1, edge.ClearedShareAt(1), 0.0051);
        Assert.Equal(10 * Degree, Assert.Single(edge.HoldingAt(1)).LeastSweep, 1e-12);
    }

    [Theory]
    [InlineData(50, MarginState.Holds)]
    [InlineData(40, MarginState.Tight)]
    [InlineData(20, MarginState.Fails)]
    public void Judge_holds_against_clinging_weed_and_is_tight_against_easy_weed(double sweepDegrees, MarginState state)
    {
        Margin margin = LeadingEdgeShedding.Of(0.3, _ => sweepDegrees * Degree).Judge(0.8);
        Assert.Equal(state, margin.State);
        Assert.Equal(sweepDegrees * Degree, margin.Value!.Value, 1e-12);
        Assert.Equal(45 * Degree, margin.Limit!.Value, 1e-12);
        Assert.Equal(Certainty.CommonPractice, margin.Certainty);
        Assert.Equal(MarginState.Holds, LeadingEdgeShedding.Of(0.3, _ => sweepDegrees * Degree).Judge(0).State);
    }

    [Fact]
    public void Sweep_reached_by_a_share_falls_from_the_greatest_to_the_least()
    {
        // Linear from 20 to 70 degrees: the upper quarter of the sweeps lies above 57.5.
        var edge = LeadingEdgeShedding.Of(0.3, y => (20 + 50 * y / 0.3) * Degree);
        Assert.Equal(57.5 * Degree, edge.SweepReachedBy(0.25), 0.3 * Degree);
        Assert.Equal(edge.LeastSweep, edge.SweepReachedBy(1));
        Assert.True(edge.ShareAt(Math.Tan(edge.SweepReachedBy(0.4) - 1e-9)) >= 0.4);
    }

    [Fact]
    public void Sweep_that_is_no_number_refuses() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LeadingEdgeShedding.Of(0.3, _ => double.NaN));
}
