using Finwright.Geometry.Outlines;
using Finwright.Geometry.Tests.Blades;

namespace Finwright.Geometry.Tests.Outlines;

public sealed class PlanformTests
{
    [Fact]
    public void Of_trapezoid_gives_the_closed_forms()
    {
        Planform planform = Planform.Of(TestBlades.Trapezoid(0.2, 0.1, 0.3, 0.06));
        // Trapezoid: area (a + b) s / 2; mean aerodynamic chord 2/3 (a² + ab + b²)/(a + b); centroid depth s (a + 2b) / (3 (a + b)).
        Assert.Equal(0.045, planform.Area, 15);
        Assert.Equal(2.0 / 3 * 0.07 / 0.3, planform.MeanAerodynamicChord, 14);
        Assert.Equal(0.3 * 0.4 / 0.9, planform.Centroid.Y, 14);
        Assert.Equal(2, planform.AspectRatio, 13);
        Assert.Equal(Math.Atan2(0.06, 0.3), planform.Rake, 14);
        Assert.Equal(Math.Atan2(0.06, 0.3), planform.QuarterChordSweep(0.17), 12);
        Assert.Equal(Math.Atan2(0.06 + 0.025, 0.3), planform.LeadingEdgeSweep(0.17), 12);
    }

    [Fact]
    public void Of_half_ellipse_gives_the_closed_forms()
    {
        // A quarter ellipse by a Bézier cubic is good to 2.7e-4 of its radius (from memory); the area of that cubic is exact:
        // for handles k times the axes it is a b (1/2 + 3k/5 - 3k²/20).
        const double k = 0.5522847498, a = 0.05, b = 0.3;
        SplineOutline outline = TestBlades.Outline(
            [new(-a, 0), new(-a, k * b), new(-k * a, b), new(0, b)],
            [new(a, 0), new(a, k * b), new(k * a, b), new(0, b)]);
        Planform planform = Planform.Of(outline);
        Assert.Equal(2 * a * b * (0.5 + 0.6 * k - 0.15 * k * k), planform.Area, 1e-15);
        Assert.Equal(Math.PI * a * b / 2, planform.Area, 3e-4 * planform.Area);
        // Ellipse: mean aerodynamic chord 8/(3π) of the root chord, centroid depth 4/(3π) of the span. Tolerance: the cubic is not quite an ellipse.
        Assert.Equal(8 / (3 * Math.PI) * 2 * a, planform.MeanAerodynamicChord, 1e-3 * a);
        Assert.Equal(4 / (3 * Math.PI) * b, planform.Centroid.Y, 1e-3 * b);
        Assert.Equal(a / 2, planform.Centroid.X, 1e-12);
    }

    [Fact]
    public void Of_round_outline_agrees_with_a_dense_integral()
    {
        SplineOutline outline = TestBlades.Round();
        Planform planform = Planform.Of(outline);
        double area = 0, chordSquared = 0, momentX = 0, momentY = 0;
        const int n = 200_000;
        for (int i = 0; i < n; i++)
        {
            // Midpoints, crowding quadratically at the tip.
            double s = (i + 0.5) / n, y = outline.Span * s * (2 - s), dy = 2 * outline.Span * (1 - s) / n;
            double chord = outline.Chord(y);
            area += chord * dy;
            chordSquared += chord * chord * dy;
            momentX += chord * (outline.LeadingEdge(y) + chord / 2) * dy;
            momentY += chord * y * dy;
        }

        Assert.Equal(1, planform.Area / area, 1e-8);
        Assert.Equal(1, planform.MeanAerodynamicChord / (chordSquared / area), 1e-8);
        Assert.Equal(momentX / area, planform.Centroid.X, 1e-9);
        Assert.Equal(momentY / area, planform.Centroid.Y, 1e-9);
    }

    [Theory]
    [InlineData(1e-4)]
    [InlineData(1e-6)]
    public void Polyline_stays_within_its_tolerance_and_keeps_the_area(double tolerance)
    {
        SplineOutline outline = TestBlades.Round();
        IReadOnlyList<Point2> line = Planform.Of(outline).Polyline(tolerance);
        double area = 0, length = 0;
        for (int i = 0; i < line.Count; i++)
        {
            area += line[(i + 1) % line.Count].Cross(line[i]) / 2;
            length += (line[(i + 1) % line.Count] - line[i]).Length;
        }

        Assert.Equal(Planform.Of(outline).Area, area, tolerance * length);
        for (int i = 0; i <= 2000; i++)
            Assert.True(Distance(line, At(outline, i / 2000.0)) <= 1.001 * tolerance);

        static Point2 At(SplineOutline outline, double t) => new(outline.LeadingCurve.At(t).X, outline.LeadingCurve.At(t).Y);
    }

    private static double Distance(IReadOnlyList<Point2> line, Point2 p)
    {
        double least = double.MaxValue;
        for (int i = 0; i < line.Count; i++)
        {
            Point2 a = line[i], ab = line[(i + 1) % line.Count] - a;
            double s = Math.Clamp((p - a).Dot(ab) / ab.Dot(ab), 0, 1);
            least = Math.Min(least, (p - a - s * ab).Length);
        }

        return least;
    }
}
