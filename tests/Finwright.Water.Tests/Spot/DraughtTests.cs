using Finwright.Water.Spot;

namespace Finwright.Water.Tests.Spot;

public sealed class DraughtTests
{
    [Fact]
    public void Depth_is_the_span_whatever_the_rake_and_less_when_heeled()
    {
        Assert.Equal(0.3, Draught.Depth(0.3), 1e-15);
        Assert.Equal(0.3, Draught.Depth(0.3, tipAft: 0.25), 1e-15);
        Assert.Equal(0.3 * Math.Cos(0.3), Draught.Depth(0.3, heel: -0.3), 1e-15);
    }

    [Fact]
    public void Depth_of_a_raked_fin_grows_when_the_nose_is_up() =>
        // A tip 0.3 m down and 0.25 m aft, turned by 3 degrees about the root: 0.3 cos 3° + 0.25 sin 3°.
        Assert.Equal(0.29959 + 0.01308, Draught.Depth(0.3, tipAft: 0.25, trim: 3 * Math.PI / 180), 1e-5);

    [Theory]
    [InlineData(0.28, MarginState.Holds)]
    [InlineData(0.32, MarginState.Holds)]
    [InlineData(0.33, MarginState.Fails)]
    public void Judge_holds_the_span_against_the_spot(double span, MarginState state) => Assert.Equal(state, Draught.Judge(span, 0.32).State);

    [Fact]
    public void Judge_in_deep_water_always_holds()
    {
        Margin margin = Draught.Judge(0.6, null);
        Assert.Equal(MarginState.Holds, margin.State);
        Assert.Null(margin.Limit);
        Assert.Null(margin.Room);
    }

    [Fact]
    public void Judge_of_no_fin_refuses() => Assert.Throws<ArgumentOutOfRangeException>(() => Draught.Judge(0, 0.3));
}
