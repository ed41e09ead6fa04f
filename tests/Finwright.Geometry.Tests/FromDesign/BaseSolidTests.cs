using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.FromDesign;

/// <summary>Base dimensions measured on the finished mesh, to 0.02 mm as a base must fit its box.</summary>
public sealed class BaseSolidTests : IDisposable
{
    private const double Fit = 0.02e-3, Degree = Math.PI / 180;

    private readonly ManifoldKernel _kernel = new();

    public void Dispose() => _kernel.Dispose();

    // Common practice, no source, for the drawing's numbers; allowances are added to length, thickness and both depths.
    [Theory]
    [InlineData(BoxKind.TwoBoltTapered, 0, 0, 0, 155.9, 15.8, 50.8, 31.75)]
    [InlineData(BoxKind.TwoBoltTapered, 0.35, -0.12, 1.5, 156.25, 15.68, 52.3, 33.25)]
    [InlineData(BoxKind.TwoBoltTapered, -1, 0.3, -4, 154.9, 16.1, 46.8, 27.75)]
    [InlineData(BoxKind.TwoBoltDeep, 0, 0, 0, 155.9, 15.8, 70, 51.884)]
    public void Two_bolt_base_measures_its_numbers_on_the_mesh(
        BoxKind box, double moreLength, double moreThickness, double moreDepth, double length, double thickness, double front, double rear)
    {
        BasePlan plan = Plan(TestDesigns.Design with
        {
            Base = new()
            {
                Box = box,
                LengthAllowanceMm = moreLength,
                ThicknessAllowanceMm = moreThickness,
                DepthAllowanceMm = moreDepth,
            },
        });
        Measured measured = Measure(plan);
        Assert.Equal(length * 1e-3, measured.HullLength, Fit);
        Assert.Equal(thickness * 1e-3, measured.HullWidth, Fit);
        Assert.Equal(thickness * 1e-3, measured.DeepWidth, Fit);
        Assert.Equal(front * 1e-3, measured.FrontDepth, Fit);
        Assert.Equal(rear * 1e-3, measured.RearDepth, Fit);
        // 0.02 mm over the height of the face.
        Assert.Equal(10 * Degree, measured.FrontAngle, Fit / 40e-3);
        Assert.Equal(10 * Degree, measured.RearAngle, Fit / 25e-3);
    }

    [Fact]
    public void Length_allowance_leaves_the_bolts_where_the_board_has_them()
    {
        BasePlan drawn = Plan(TestDesigns.Design), longer = Plan(TestDesigns.Design with { Base = new() { LengthAllowanceMm = 0.6 } });
        Assert.Equal(drawn.Bolts, longer.Bolts);
        Assert.Equal(drawn.FrontX - 0.3e-3, longer.FrontX, 12);
        Assert.Equal(drawn.MiddleX, longer.MiddleX, 12);
    }

    [Fact]
    public void Blade_offset_sets_the_root_s_middle_aft_of_the_base_s_middle()
    {
        BasePlan plan = Plan(TestDesigns.Design with { Base = new() { BladeOffsetMm = 12.5 } });
        // Root middle of the test blade: a quarter of 220 mm aft of the quarter chord.
        Assert.Equal(55e-3 - 12.5e-3, plan.MiddleX, 12);
    }

    [Fact]
    public void Measured_base_with_tapering_sides_measures_its_numbers_on_the_mesh()
    {
        MeasuredBox box = new()
        {
            HullLengthMm = 146,
            DeepLengthMm = 130,
            HullWidthMm = 18.4,
            DeepWidthMm = 14.6,
            FrontDepthMm = 40,
            RearDepthMm = 36,
            ClearanceMm = 0.2,
            CornerRadiusMm = 5,
            Bolts = [new() { FromFrontMm = 73 }],
        };
        BasePlan plan = Plan(TestDesigns.Design with { Base = new() { Box = BoxKind.Measured, Measured = box, ThicknessAllowanceMm = 0.1 } });
        Measured measured = Measure(plan);
        Assert.Equal(145.8e-3, measured.HullLength, Fit);
        Assert.Equal(40e-3, measured.FrontDepth, Fit);
        Assert.Equal(36e-3, measured.RearDepth, Fit);
        Assert.Equal(18.3e-3, measured.HullWidth, Fit);
        Assert.Equal(14.5e-3, measured.DeepWidth, Fit);
        // Left out: worked out from the deep length, the same at both ends: 16 = (40 + 36) tan a.
        Assert.Equal(Math.Atan(16.0 / 76), measured.FrontAngle, Fit / 30e-3);
        Assert.Equal(Math.Atan(16.0 / 76), measured.RearAngle, Fit / 30e-3);
        // The bolt is measured from the front corner of the box, which stands half a clearance before the base's own.
        Assert.Equal(73e-3 - 0.1e-3, plan.Bolts[0].AtHull.X - plan.FrontX, 12);
    }

    [Fact]
    public void Slot_tab_measures_its_numbers_on_the_mesh()
    {
        BasePlan plan = Plan(TestDesigns.Design with { Base = new() { Box = BoxKind.LongSlot, Slot = new() { LengthMm = 140, ThicknessMm = 9.3, DepthMm = 17.5 } } });
        Bounds bounds = Evaluate([plan.Solid()])[0].Mesh.Bounds();
        Assert.Equal(140e-3, bounds.Size.X, Fit);
        Assert.Equal(17.5e-3, bounds.Size.Y, Fit);
        Assert.Equal(9.3e-3, bounds.Size.Z, Fit);
        Assert.Equal(0, bounds.Maximum.Y, 1e-9);
    }

    private IReadOnlyList<SolidResult> Evaluate(IReadOnlyList<SolidExpression> solids) =>
        _kernel.Evaluate(solids, TestContext.Current.CancellationToken);

    private static BasePlan Plan(FinDesign design)
    {
        List<Finding> findings = [];
        BasePlan? plan = BaseFromDesign.Plan(design, 55e-3, findings);
        Assert.Empty(findings);
        return plan!;
    }

    // Straight faces are measured between a cut close to the hull and one half way up, and drawn out to the sharp corners.
    private Measured Measure(BasePlan plan)
    {
        SolidExpression solid = plan.Solid();
        SolidResult result = Evaluate([solid])[0];
        Assert.Equal(1, result.PieceCount);
        Placement up = Placement.Along(default, new(0, -1, 0), new(1, 0, 0));
        const double low = 0.1e-3, high = 15e-3;
        (double frontLow, double rearLow) = Slices.Range(Slices.Cut(_kernel, solid, up, low)[0], p => p.X);
        (double frontHigh, double rearHigh) = Slices.Range(Slices.Cut(_kernel, solid, up, high)[0], p => p.X);
        double frontSlope = (frontHigh - frontLow) / (high - low), rearSlope = (rearLow - rearHigh) / (high - low);
        double front = frontLow - low * frontSlope, rear = rearLow + low * rearSlope;
        (double Low, double High) widthLow = Slices.Range(Slices.Cut(_kernel, solid, up, low)[0], p => p.Y);
        (double Low, double High) widthHigh = Slices.Range(Slices.Cut(_kernel, solid, up, high)[0], p => p.Y);
        double widthSlope = (widthHigh.High - widthHigh.Low - widthLow.High + widthLow.Low) / (high - low);
        double hullWidth = widthLow.High - widthLow.Low - low * widthSlope;

        // The top edge as a straight line through two cuts across, clear of the rounded corners.
        Placement aft = Placement.Along(default, new(1, 0, 0), new(0, 1, 0));
        double x1 = front + 40e-3, x2 = rear - 40e-3;
        double top1 = -Slices.Cut(_kernel, solid, aft, x1)[0].Min(p => p.X), top2 = -Slices.Cut(_kernel, solid, aft, x2)[0].Min(p => p.X);
        double topSlope = (top2 - top1) / (x2 - x1);
        double frontDepth = (top1 + topSlope * (front - x1)) / (1 - topSlope * frontSlope);
        double rearDepth = (top1 + topSlope * (rear - x1)) / (1 + topSlope * rearSlope);
        return new(
            rear - front, hullWidth, hullWidth + Math.Max(frontDepth, rearDepth) * widthSlope, frontDepth, rearDepth,
            Math.Atan(frontSlope), Math.Atan(rearSlope));
    }

    private sealed record Measured(
        double HullLength, double HullWidth, double DeepWidth, double FrontDepth, double RearDepth, double FrontAngle, double RearAngle);
}
