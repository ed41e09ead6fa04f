using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry;

namespace Finwright.Assessment.Tests.Made;

/// <summary>Design axes: x aft, y from the hull to the tip, z to starboard.</summary>
public sealed class PourUpTests
{
    [Theory]
    [InlineData(PourPosition.TipDown, 0, 0, -1, 0)]
    [InlineData(PourPosition.TipUp, 0, 0, 1, 0)]
    [InlineData(PourPosition.LeadingEdgeDown, 0, 1, 0, 0)]
    [InlineData(PourPosition.LeadingEdgeUp, 0, -1, 0, 0)]
    [InlineData(PourPosition.StarboardUp, 0, 0, 0, 1)]
    [InlineData(PourPosition.PortUp, 0, 0, 0, -1)]
    // A tilt of 30° raises the trailing edge, or the tip where an edge points up or down.
    [InlineData(PourPosition.TipDown, 30, 0.5, -0.8660254037844386, 0)]
    [InlineData(PourPosition.TipDown, -30, -0.5, -0.8660254037844386, 0)]
    [InlineData(PourPosition.LeadingEdgeDown, 30, 0.8660254037844386, 0.5, 0)]
    [InlineData(PourPosition.PortUp, 30, 0.5, 0, -0.8660254037844386)]
    public void Words_become_the_direction_that_points_up(PourPosition position, double tilt, double x, double y, double z)
    {
        Point3 up = PourUp.Of(new() { Attitude = position, TiltDegrees = tilt })!.Value;
        Assert.Equal(0, (up - new Point3(x, y, z)).Length, 1e-12);
        Assert.Equal(1, up.Length, 1e-12);
    }

    [Fact]
    public void Auto_is_left_to_be_found() => Assert.Null(PourUp.Of(new()));
}
