using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Evidence;

/// <summary>Sections beside printed tables and closed forms.</summary>
internal static class SectionEvidence
{
    private const string Tables = "Abbott, von Doenhoff and Stivers, 1945, NACA TR-824, from memory";

    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Thickness(), .. Cambered(), .. Properties()];

    private static IEnumerable<EvidenceRow> Thickness()
    {
        const string Topic = "Half thickness of sections, % of the chord", Digit = "one in the last printed digit";
        foreach ((int thickness, double station, double printed) in new[] { (6, 5, 1.777), (6, 30, 3.001), (9, 5, 2.666), (9, 30, 4.501), (12, 1.25, 1.894), (12, 30, 6.002), (12, 70, 3.664), (12, 95, 0.807) })
            yield return new(Topic, $"{thickness:0000} at {station} %", Tables, printed, 100 * new FourDigitSection(0, 0, thickness).HalfThickness(station / 100), 0.001, Digit);
        foreach ((double station, double printed) in new[] { (1.25, 0.969), (20, 3.498), (50, 4.500), (80, 3.149), (95, 1.061) })
            yield return new(Topic, $"16-009 at {station} %", Tables, printed, 100 * new SixteenSeriesSection(0, 9).HalfThickness(station / 100), 0.001, Digit);
        foreach ((double station, double printed) in new[] { (5.0, 1.580), (20, 3.982), (50, 5.516) })
            yield return new(Topic, $"Mean line of uniform load at design lift 1, at {station} %", Tables, printed, 100 / 0.9 * new SixteenSeriesSection(9, 10).Camber(station / 100), 0.001, Digit);
    }

    private static IEnumerable<EvidenceRow> Cambered()
    {
        const string Topic = "Ordinates of cambered sections, % of the chord", Reason = "tables drawn up by hand: two in the last printed digit";
        foreach ((string name, int side, double station, double printed) in new[]
        {
            ("2412", 1, 5, 4.13), ("2412", 1, 30, 7.88), ("2412", -1, 30, -4.12), ("2412", -1, 60, -2.76), ("4412", 1, 1.25, 2.44), ("4412", 1, 30, 9.76), ("4412", -1, 10, -2.86), ("4412", -1, 70, -0.65),
        })
            yield return new(Topic, $"{name}, {(side > 0 ? "upper" : "lower")} side at {station} %", Tables, printed, 100 * Ordinate("naca-" + name, side, station / 100), 0.02, Reason);
    }

    private static IEnumerable<EvidenceRow> Properties()
    {
        const string Topic = "Measures of sections, chord 1", Exact = "rounding", Integral = "closed form: integral of the thickness polynomial of NACA TR-460, 1933";
        SectionProperties own = SectionGeometry.Properties(new FourDigitSection(0, 0, 12));
        yield return new(Topic, "0012, area over thickness", Integral, 0.685083, own.Area / 0.12, 5e-7, "six digits");
        yield return new(Topic, "0012, place of the centroid", Integral, 0.42044, own.Centroid.X, 5e-6, "five digits");
        yield return new(Topic, "0012, second moment about the chord over thickness³", Integral, 0.03940745740787096, own.SecondMomentAboutChord / (0.12 * 0.12 * 0.12), 1e-12, Exact);
        yield return new(Topic, "0012, nose radius over thickness²", "Jacobs, Ward and Pinkerton, 1933, NACA TR-460", 1.1019, own.LeadingEdgeRadius / (0.12 * 0.12), 5e-5, "printed digits");
        yield return new(Topic, "16-009, nose radius, % of the chord", Tables, 0.396, 100 * SectionGeometry.Properties(new SixteenSeriesSection(0, 9)).LeadingEdgeRadius, 0.001, "one in the last printed digit");
    }

    // The place on the skin at a share of the chord, found by halving: the skin of a cambered section is not told over x.
    private static double Ordinate(string name, int side, double x)
    {
        Assert.True(SectionCatalogue.TryFind(name, null, out Section? section, out string problem), problem);
        double low = 0, high = 1;
        while (high - low > 1e-12)
        {
            double middle = 0.5 * (low + high);
            if (SectionGeometry.SurfaceAt(section, middle, side).X < x)
                low = middle;
            else
                high = middle;
        }

        return SectionGeometry.SurfaceAt(section, low, side).Y;
    }
}
