using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Materials;
using Outline = Finwright.Geometry.Outlines.Outline;

namespace Finwright.Strength.Tests.FromDesign;

public sealed class WallLayoutTests
{
    private static readonly Print Print = new() { Walls = 3, LineWidthMm = 0.4, SolidLayers = 5, LayerMm = 0.2 };

    // Width of three lines; five solid layers, metres.
    private const double Lines = 1.2e-3, Solid = 1.0e-3;

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.05, 0)]
    [InlineData(-0.05, 0.2)]
    public void Depth_of_a_standing_blade_is_the_wall_square_to_the_outline_of_its_layer(double along, double down)
    {
        // A wall of width w under a line that leans by the angle a reaches w/cos a deep; how the blade leans down the span does not matter to a level layer.
        double depth = new WallLayout(Print, new Wedge(along, down), PrintDirection.Standing).Depth(0.06, 0.1);
        Assert.Equal(Lines / Math.Cos(Math.Atan(along)), depth, 1e-12);
    }

    [Fact]
    public void Depth_of_a_lying_blade_is_that_of_its_solid_layers_over_the_flat_and_of_its_lines_where_it_leans()
    {
        Assert.Equal(Solid, new WallLayout(Print, new Wedge(0, 0), PrintDirection.Lying).Depth(0.06, 0.1), 1e-12);
        Assert.Equal(Solid, new WallLayout(Print, new Wedge(0.3, 0.4), PrintDirection.Lying).Depth(0.06, 0.1), 1e-12);
        // Lines of 1.2 mm that follow the edge of a slope of √(0.8² + 0.6²) = 1.
        Assert.Equal(Lines, new WallLayout(Print, new Wedge(-0.8, 0.6), PrintDirection.Lying).Depth(0.06, 0.1), 1e-12);
    }

    [Theory]
    [InlineData(PrintDirection.Standing)]
    [InlineData(PrintDirection.Lying)]
    public void Depth_at_both_edges_is_all_of_the_blade_for_the_width_of_the_lines(PrintDirection direction)
    {
        WallLayout layout = new(Print, new Wedge(0, 0), direction);
        foreach (double inside in (double[])[0, 0.99 * Lines])
        {
            Assert.Equal(double.MaxValue, layout.Depth(inside, 0.1));
            Assert.Equal(double.MaxValue, layout.Depth(Wedge.Length - inside, 0.1));
        }

        Assert.True(layout.Depth(1.01 * Lines, 0.1) < 2e-3);
        Assert.True(layout.Depth(Wedge.Length - 1.01 * Lines, 0.1) < 2e-3);
    }

    /// <summary>A rectangle whose half thickness grows evenly along chord and span from 100 mm, so that it never runs out.</summary>
    private sealed class Wedge(double along, double down) : BladeShape
    {
        public const double Length = 0.12;

        public override Outline Outline { get; } = new Rectangle();

        public override double TrailingEdgeThickness => 0;

        public override double ThicknessRatio(double y) => 1;

        public override double Twist(double y) => 0;

        public override Point3 Skin(double y, double u) => throw new NotSupportedException();

        public override double MidSurface(double x, double y) => 0;

        public override double HalfThickness(double x, double y) => x is < 0 or > Length ? 0 : 0.1 + along * x + down * y;

        private sealed class Rectangle : Outline
        {
            public override double Span => 0.2;

            public override double LeadingEdge(double y) => 0;

            public override double TrailingEdge(double y) => Length;
        }
    }
}
