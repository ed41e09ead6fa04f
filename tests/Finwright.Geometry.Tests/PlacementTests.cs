namespace Finwright.Geometry.Tests;

public sealed class PlacementTests
{
    [Fact]
    public void Rotation_about_the_span_turns_aft_to_port()
    {
        Point3 turned = Placement.Rotation(new(0, 1, 0), Math.PI / 2).Apply(new(1, 2, 0));
        Assert.Equal(0, turned.X, 15);
        Assert.Equal(2, turned.Y, 15);
        Assert.Equal(-1, turned.Z, 15);
    }

    [Fact]
    public void Along_gives_a_right_handed_frame_of_unit_axes()
    {
        Placement frame = Placement.Along(new(1, 2, 3), new(0.3, -2, 0.4), new(1, 0, 0));
        Assert.Equal(1, frame.Determinant, 14);
        Assert.Equal(0, frame.AxisX.Dot(frame.AxisZ), 15);
        Assert.Equal(new Point3(1, 2, 3), frame.Apply(default));
    }

    [Fact]
    public void Then_applies_the_maps_in_reading_order()
    {
        Placement turnThenShift = Placement.Rotation(new(0, 0, 1), Math.PI / 2).Then(Placement.Shift(new(10, 0, 0)));
        Point3 moved = turnThenShift.Apply(new(1, 0, 0));
        Assert.Equal(10, moved.X, 14);
        Assert.Equal(1, moved.Y, 14);
    }
}
