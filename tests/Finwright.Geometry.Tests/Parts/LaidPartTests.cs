using CsCheck;
using Finwright.Design;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.Parts;

public sealed class LaidPartTests
{
    private static readonly Resting Standing = new(PrintAttitude.Standing, new(0, -1, 0));
    private static readonly Resting Lying = new(PrintAttitude.Lying, new(0, 0, 1));

    [Fact]
    public void Lay_blade_standing_has_its_root_face_on_the_bed_and_its_tip_up()
    {
        StraightBlade blade = new(0.11, 0.06, 0.2, 0.1, 0.1);
        LaidPart laid = LaidPart.Lay(blade.Mesh().Points(), [Standing, Lying], new(0.24, 0.2, 0.21, 0.005));
        Assert.True(laid.Fits);
        Assert.Equal(PrintAttitude.Standing, laid.Attitude);
        Assert.Equal(0, laid.Placement.Apply(default).Z, 12);
        Assert.Equal(0.2, laid.Placement.Apply(new(0, 0.2, 0)).Z, 12);
    }

    [Fact]
    public void Lay_blade_too_tall_lies_with_its_starboard_side_down()
    {
        StraightBlade blade = new(0.11, 0.06, 0.22, 0.1, 0.1);
        LaidPart laid = LaidPart.Lay(blade.Mesh().Points(), [Standing, Lying], new(0.24, 0.2, 0.21, 0.005));
        Assert.True(laid.Fits);
        Assert.Equal(PrintAttitude.Lying, laid.Attitude);
        Point3 starboard = blade.Skin(0, 0.3), port = blade.Skin(0, 0.7);
        Assert.True(laid.Placement.Apply(starboard).Z < laid.Placement.Apply(port).Z);
    }

    [Fact]
    public void Lay_is_a_rigid_turn_into_the_corner_of_the_bed_whatever_the_part() =>
        (from size in Gen.Select(Gen.Double[0.01, 0.3], Gen.Double[0.01, 0.3], Gen.Double[0.01, 0.3])
         from angle in Gen.Double[0, 7]
         select (size, angle)).Hold(
            c =>
            {
                Placement turn = Placement.Rotation(new(0.6, 0, 0.8), c.angle);
                Point3[] box =
                [
                    .. from x in new[] { 0, c.size.Item1 }
                       from y in new[] { 0, c.size.Item2 }
                       from z in new[] { 0, c.size.Item3 }
                       select turn.Apply(new(x, y, z)),
                ];
                LaidPart laid = LaidPart.Lay(box, [Standing, Lying], new(0.2, 0.2, 0.2, 0));
                Point3[] placed = [.. box.Select(laid.Placement.Apply)];
                Assert.Equal(1, laid.Placement.Determinant, 12);
                Assert.Equal(1, laid.Placement.AxisX.Length, 12);
                Assert.Equal(0, placed.Min(p => p.X), 12);
                Assert.Equal(0, placed.Min(p => p.Y), 12);
                Assert.Equal(0, placed.Min(p => p.Z), 12);
                Assert.Equal(laid.Size.X, placed.Max(p => p.X), 12);
                Assert.Equal(laid.Size.Y, placed.Max(p => p.Y), 12);
                Assert.Equal(laid.Size.Z, placed.Max(p => p.Z), 12);
                Assert.Equal(laid.Fits, laid.Size.X <= 0.2 * (1 + 1e-9) && laid.Size.Y <= 0.2 * (1 + 1e-9) && laid.Size.Z <= 0.2);
            },
            iter: 500);
}
