using CsCheck;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

public sealed class SectionGeometryTests
{
    [Theory]
    [InlineData(6)]
    [InlineData(12)]
    [InlineData(21)]
    public void Properties_of_symmetric_four_digit_sections_agree_with_the_integrated_polynomial(int percent)
    {
        double t = percent / 100.0;
        SectionProperties p = SectionGeometry.Properties(new FourDigitSection(0, 0, percent));

        // Term by term integrals of the TR-460 polynomial; each of its coefficients is multiplied by 5 t on either side.
        double area = 10 * t * (0.2969 / 1.5 - 0.1260 / 2 - 0.3516 / 3 + 0.2843 / 4 - 0.1015 / 5);
        double first = 10 * t * (0.2969 / 2.5 - 0.1260 / 3 - 0.3516 / 4 + 0.2843 / 5 - 0.1015 / 6);
        double second = 10 * t * (0.2969 / 3.5 - 0.1260 / 4 - 0.3516 / 5 + 0.2843 / 6 - 0.1015 / 7);
        Assert.Equal(area, p.Area, 1e-12);
        Assert.Equal(first / area, p.Centroid.X, 1e-12);
        Assert.Equal(0, p.Centroid.Y, 1e-15);
        Assert.Equal(second - first * first / area, p.SecondMomentAcrossChord, 1e-12);

        // The same area to six digits, and two thirds of the integral of the cubed polynomial, done in exact fractions.
        Assert.Equal(0.685083, p.Area / t, 5e-7);
        Assert.Equal(0.03940745740787096, p.SecondMomentAboutChord / (t * t * t), 1e-12);
        Assert.Equal(0.42044, p.Centroid.X, 5e-6);

        // TR-460: nose radius 1.1019 t²; the polynomial's slope at 1 gives the angle.
        Assert.Equal(1.1019, p.LeadingEdgeRadius / (t * t), 5e-5);
        Assert.Equal(2 * Math.Atan(-5 * t * (0.2969 / 2 - 0.1260 - 2 * 0.3516 + 3 * 0.2843 - 4 * 0.1015)), p.TrailingEdgeAngle, 1e-9);
        Assert.Equal(10 * t * 0.0021, p.TrailingEdgeThickness, 1e-15);
        Assert.Equal(t, p.MaximumThickness, 3e-4 * t);
        Assert.Equal(0.3, p.MaximumThicknessAt, 2e-4);
        Assert.Equal(0, p.MaximumCamber);
    }

    [Fact]
    public void Properties_of_a_half_turned_ellipse_agree_with_the_closed_form()
    {
        // Half thickness b sin: an ellipse of axes 1 and 2 b. Area π b / 2, second moments π b³ / 8 and π b / 32.
        const double b = 0.06;
        SectionProperties p = SectionGeometry.Properties(new Ellipse(b));
        Assert.Equal(Math.PI * b / 2, p.Area, 1e-13);
        Assert.Equal(Math.PI * b * b * b / 8, p.SecondMomentAboutChord, 1e-15);
        Assert.Equal(Math.PI * b / 32, p.SecondMomentAcrossChord, 1e-14);
        Assert.Equal(0.5, p.Centroid.X, 1e-13);
        Assert.Equal(2 * b * b, p.LeadingEdgeRadius, 1e-12);
    }

    [Theory]
    [InlineData("naca-4412")]
    [InlineData("naca-2410-35")]
    [InlineData("naca-16-512")]
    public void Properties_of_cambered_sections_agree_with_a_dense_polygon(string name)
    {
        Assert.True(SectionCatalogue.TryFind(name, null, out Section? section, out _));
        SectionProperties p = SectionGeometry.Properties(section);

        // The shoelace formula is a second, simpler method; its error falls with the square of the count.
        const int count = 40_000;
        double area = 0, firstX = 0, firstY = 0;
        Point2 before = SectionGeometry.PointAt(section, 1);
        for (int i = 0; i <= count; i++)
        {
            Point2 here = SectionGeometry.PointAt(section, (double)i / count);
            double cross = before.Cross(here);
            area += cross / 2;
            firstX += cross * (before.X + here.X) / 6;
            firstY += cross * (before.Y + here.Y) / 6;
            before = here;
        }

        Assert.Equal(area, p.Area, 1e-8);
        Assert.Equal(firstX / area, p.Centroid.X, 1e-7);
        Assert.Equal(firstY / area, p.Centroid.Y, 1e-7);
    }

    // Abbott, von Doenhoff and Stivers, 1945, NACA TR-824, appendix II, ordinates of 2412 and 4412; from memory.
    // Tolerance: two in the last printed digit. The tables were drawn up by hand; the widest miss, 0.018, is at 60 % of the
    // lower 2412, where the report's own equations give -2.778.
    [Theory]
    [InlineData("naca-2412", 1, new[] { 2.15, 2.99, 4.13, 4.96, 5.63, 6.61, 7.26, 7.67, 7.88, 7.80, 7.24, 6.36, 5.18, 3.75, 2.08, 1.14 })]
    [InlineData("naca-2412", -1, new[] { -1.65, -2.27, -3.01, -3.46, -3.75, -4.10, -4.23, -4.22, -4.12, -3.80, -3.34, -2.76, -2.14, -1.50, -0.82, -0.48 })]
    [InlineData("naca-4412", 1, new[] { 2.44, 3.39, 4.73, 5.76, 6.59, 7.89, 8.80, 9.41, 9.76, 9.80, 9.19, 8.14, 6.69, 4.89, 2.71, 1.47 })]
    [InlineData("naca-4412", -1, new[] { -1.43, -1.95, -2.49, -2.74, -2.86, -2.88, -2.74, -2.50, -2.26, -1.80, -1.40, -1.00, -0.65, -0.39, -0.22, -0.16 })]
    public void SurfaceAt_of_cambered_sections_passes_the_printed_ordinates(string name, int side, double[] printed)
    {
        double[] stations = [1.25, 2.5, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 95];
        Assert.True(SectionCatalogue.TryFind(name, null, out Section? section, out _));
        for (int i = 0; i < stations.Length; i++)
        {
            double low = 0, high = 1;
            while (high - low > 1e-12)
                if (0.5 * (low + high) is double middle && SectionGeometry.SurfaceAt(section, middle, side).X < stations[i] / 100)
                    low = middle;
                else
                    high = middle;
            Assert.Equal(printed[i], 100 * SectionGeometry.SurfaceAt(section, low, side).Y, 0.02);
        }
    }

    [Fact]
    public void PointAt_meets_nose_and_trailing_edge_corners_exactly()
    {
        FourDigitSection section = new(0, 0, 12);
        Assert.Equal(default, SectionGeometry.PointAt(section, 0.5));
        Assert.Equal(new Point2(1, section.HalfThickness(1)), SectionGeometry.PointAt(section, 0));
        Assert.Equal(new Point2(1, -section.HalfThickness(1)), SectionGeometry.PointAt(section, 1));
    }

    [Fact]
    public void PointAt_mirrors_a_symmetric_section_to_the_last_bit() =>
        Gen.Int[0, 1 << 20].Hold(i =>
        {
            double u = (double)i / (1 << 20);
            Point2 a = SectionGeometry.PointAt(new FourDigitSection(0, 0, 9), u), b = SectionGeometry.PointAt(new FourDigitSection(0, 0, 9), 1 - u);
            return a.X.Equals(b.X) && a.Y + b.Y is 0;
        });

    [Fact]
    public void Every_formula_section_is_finite_positive_inside_and_no_thicker_than_it_says() =>
        Gen.Select(SectionGenerators.Formula, Gen.Double[1e-9, 1 - 1e-9]).Hold((section, x) =>
        {
            double half = section.HalfThickness(x);
            return half > 0 && half <= 0.50015 * section.ThicknessRatio && double.IsFinite(section.Camber(x)) && double.IsFinite(section.CamberSlope(x))
                && section.HalfThickness(0) is 0 && Math.Abs(section.Camber(x)) <= Math.Abs(section.MaximumCamber) + 1e-15;
        });

    private sealed class Ellipse(double b) : Section
    {
        public override string Name => "ellipse";

        public override double ThicknessRatio => 2 * b;

        public override double HalfThickness(double x) => 2 * b * Math.Sqrt(x * (1 - x));
    }
}
