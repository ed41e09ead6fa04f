using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

public sealed class ModifiedFourDigitSectionTests
{
    [Fact]
    public void Every_form_meets_the_conditions_of_the_report()
    {
        // Stack and von Doenhoff, 1934, NACA TR-492: conditions and table of trailing-edge slopes for 20 % thickness.
        double[] slopes = [0.200, 0.234, 0.315, 0.465, 0.700];
        for (int nose = 0; nose <= 9; nose++)
            for (int tenths = 2; tenths <= 6; tenths++)
            {
                ModifiedFourDigitSection section = new(0, 0, 20, nose, tenths);
                double m = tenths / 10.0, h = 1e-4;
                Assert.Equal(0.10, section.HalfThickness(m), 1e-15);
                Assert.Equal(0.002, section.HalfThickness(1), 1e-15);
                Assert.Equal(0, (section.HalfThickness(m + h) - section.HalfThickness(m - h)) / (2 * h), 1e-6);
                double ahead = (section.HalfThickness(m) - section.HalfThickness(m - h)) / (h * h), behind = (section.HalfThickness(m) - section.HalfThickness(m + h)) / (h * h);
                Assert.Equal(ahead, behind, 0.01 * Math.Abs(ahead));

                SectionProperties p = SectionGeometry.Properties(section);
                Assert.Equal(2 * Math.Atan(slopes[tenths - 2]), p.TrailingEdgeAngle, 1e-9);
                Assert.Equal(0.20, p.MaximumThickness, 1e-12);
                Assert.Equal(m, p.MaximumThicknessAt, 1e-6);

                // Radius 1.1019 t² at index 6, going with the square of the index; index 9 is three times that radius.
                double radius = 1.1019 * 0.04 * (nose == 9 ? 3 : nose * nose / 36.0);
                Assert.Equal(radius, p.LeadingEdgeRadius, 1e-5);
            }
    }

    [Theory]
    [InlineData(10, 3)]
    [InlineData(-1, 3)]
    [InlineData(6, 1)]
    [InlineData(6, 7)]
    public void Constructor_refuses_digits_outside_the_report(int nose, int tenths) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ModifiedFourDigitSection(0, 0, 10, nose, tenths));
}
