using CsCheck;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

public sealed class ClassShapeFitTests
{
    // Kulfan, 2008, Journal of Aircraft 45(1), 142 takes as wind-tunnel tolerance 0.0004 chords on the first fifth and 0.0008 behind
    // it, and finds low orders enough; from memory.
    private const double WindTunnelTolerance = 4e-4;

    // Our own measure: 5e-5 for 0012, 1.3e-4 for 4412, the worst of these.
    private const double OrderEight = 1.5e-4;

    [Theory]
    [InlineData("naca-0006")]
    [InlineData("naca-0012")]
    [InlineData("naca-0021")]
    [InlineData("naca-0010-35")]
    [InlineData("naca-0010-64")]
    [InlineData("naca-16-009")]
    [InlineData("naca-2412")]
    [InlineData("naca-4412")]
    [InlineData("naca-16-209")]
    public void Fit_of_low_order_is_within_wind_tunnel_tolerance(string name)
    {
        Assert.True(SectionCatalogue.TryFind(name, null, out Section? section, out _));
        ClassShapeFitted fitted = ClassShapeFit.Fit(section, new());
        Assert.InRange(ClassShapeFit.Fit(section, new(6, 5)).MaximumError, 0, WindTunnelTolerance);
        Assert.InRange(fitted.MaximumError, 0, OrderEight);
        Assert.InRange(fitted.RootMeanSquareError, 0, fitted.MaximumError);
        Assert.InRange(fitted.MaximumErrorAt, 0, 1);
    }

    [Fact]
    public void Fit_of_0012_at_order_eight_follows_within_a_ten_thousandth_and_closer_with_more_terms()
    {
        FourDigitSection section = new(0, 0, 12);
        double before = 1;
        foreach (int order in (ReadOnlySpan<int>)[2, 4, 8, 12, 16])
        {
            double error = ClassShapeFit.Fit(section, new(order)).MaximumError;
            Assert.InRange(error, 0, before);
            before = error;
            if (order == 8)
                Assert.InRange(error, 0, 1e-4);
        }

        Assert.True(ClassShapeFit.Fit(section, new(8, NoseTerm: true)).RootMeanSquareError < ClassShapeFit.Fit(section, new(8)).RootMeanSquareError);
    }

    [Fact]
    public void Fit_reports_the_true_greatest_distance_of_a_symmetric_section()
    {
        FourDigitSection section = new(0, 0, 12);
        ClassShapeFitted fitted = ClassShapeFit.Fit(section, new(5));

        // Dense check of the report: shortest distance from true points to a dense polygon of the fit.
        double worst = 0;
        for (int i = 0; i <= 100; i++)
        {
            Point2 p = SectionGeometry.PointAt(section, i / 200.0);
            double nearest = double.MaxValue;
            for (int j = 0; j <= 10_000; j++)
                nearest = Math.Min(nearest, (SectionGeometry.PointAt(fitted.Section, j / 20_000.0) - p).Length);
            worst = Math.Max(worst, nearest);
        }

        Assert.Equal(worst, fitted.MaximumError, 0.05 * worst);
    }

    [Fact]
    public void TryFit_recovers_a_class_shape_section()
    {
        Gen<double[]> shapes = Gen.Double[0.08, 0.3].Array[9], cambers = Gen.Double[-0.1, 0.1].Array[8];
        Gen.Select(shapes, cambers, Gen.Double[0, 0.02], Gen.Double[-0.02, 0.02]).Hold((thickness, camber, edge, nose) =>
        {
            ClassShapeSection section = new("own", thickness, camber, edge, nose);
            List<Point2> up = [], down = [];
            for (int i = 0; i <= 60; i++)
            {
                up.Add(SectionGeometry.PointAt(section, i / 120.0));
                down.Add(SectionGeometry.PointAt(section, 1 - i / 120.0));
            }

            Assert.True(ClassShapeFit.TryFit("again", up, down, edge, new(8, 7, NoseTerm: true), out ClassShapeFitted? fitted));
            Assert.InRange(fitted.MaximumError, 0, 1e-12);
            for (int i = 0; i < 9; i++)
                Assert.Equal(thickness[i], fitted.Section.ThicknessCoefficients[i], 1e-9);
            for (int i = 0; i < 8; i++)
                Assert.Equal(camber[i], fitted.Section.CamberCoefficients[i], 1e-9);
            Assert.Equal(nose, fitted.Section.NoseCoefficient, 1e-9);
        });
    }

    [Fact]
    public void Properties_of_a_class_shape_section_agree_with_the_beta_integrals()
    {
        // Half thickness a √x (1-x): area 2 a (2/3 - 2/5), nose radius a²/2 (Kulfan, 2008), trailing slope -a, camber c x (1-x).
        const double a = 0.15, c = 0.04;
        SectionProperties p = SectionGeometry.Properties(new ClassShapeSection("one", [a], [c], 0));
        Assert.Equal(2 * a * (2.0 / 3 - 2.0 / 5), p.Area, 1e-13);
        Assert.Equal(a * a / 2, p.LeadingEdgeRadius, 1e-12);
        Assert.Equal(2 * Math.Atan(a), p.TrailingEdgeAngle, 1e-10);
        Assert.Equal(c / 4, p.MaximumCamber, 1e-15);
        Assert.Equal(0.5, p.MaximumCamberAt, 1e-6);
        Assert.Equal(1.0 / 3, p.MaximumThicknessAt, 1e-7);
    }

    [Fact]
    public void CamberSlope_is_the_derivative_of_the_camber()
    {
        ClassShapeSection section = new("own", [0.15], [0.1, -0.2, 0.3, 0.05], 0);
        for (double x = 0.05; x < 1; x += 0.1)
            Assert.Equal((section.Camber(x + 1e-5) - section.Camber(x - 1e-5)) / 2e-5, section.CamberSlope(x), 1e-9);
    }

    [Fact]
    public void TryFit_says_no_to_points_that_do_not_determine_the_coefficients()
    {
        Point2[] bunched = [.. Enumerable.Repeat(new Point2(0.3, 0.05), 40)];
        Assert.False(ClassShapeFit.TryFit("bunched", bunched, bunched, 0, new(), out _));
        Assert.False(ClassShapeFit.TryFit("few", bunched[..5], bunched[..5], 0, new(), out _));
    }
}
