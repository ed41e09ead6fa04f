using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Tests.Tracks;

public sealed class GeodesicTests
{
    private const double Degree = Math.PI / 180;

    // T. Vincenty, 1975, Survey Review 23 (176), table II: (a) on Bessel's ellipsoid, (b) and (c) on the International; distances to the millimetre. From memory, and they agree to the last digit.
    [Theory]
    [InlineData(6377397.155, 299.1528128, 55, 45, 0, -33, 26, 0, 108, 13, 0, 14110526.170)]
    [InlineData(6378388, 297, 37, 19, 54.95367, 26, 7, 42.83946, 41, 28, 35.50729, 4085966.703)]
    [InlineData(6378388, 297, 35, 16, 11.24862, 67, 22, 14.77638, 137, 47, 28.31435, 8084823.839)]
    public void Vincentys_own_cases_come_out_to_the_millimetre(double a, double flattening, int d1, int m1, double s1, int d2, int m2, double s2, int d3, int m3, double s3, double expected) =>
        Assert.Equal(expected, Geodesic.Distance(Angle(d1, m1, s1), 0, Angle(d2, m2, s2), Angle(d3, m3, s3), a, 1 / flattening), 1e-3);

    // C. F. F. Karney, 2013, Algorithms for geodesics, Journal of Geodesy 87, section 3, table 2: from 40 degrees north at azimuth 30 degrees over 10 000 km on WGS 84. From memory; positions are given to 1e-9 degrees, 0.1 mm.
    [Fact]
    public void Karneys_direct_case_leads_back_to_its_distance() =>
        Assert.Equal(10_000_000, Geodesic.Distance(40 * Degree, 0, 41.79331020506 * Degree, 137.84490004377 * Degree), 1e-3);

    [Fact]
    public void Along_the_equator_it_is_the_arc_of_the_circle()
    {
        foreach (double longitude in (double[])[1e-7, 1e-4, 0.01, 1])
            Assert.Equal(6_378_137 * longitude * Degree, Geodesic.Distance(0, 0, 0, longitude * Degree), 1e-7);
    }

    // Length of a quarter of the meridian of WGS 84: 10 001 965.729 m (Karney 2013, after eq. 52; also NIMA TR8350.2). From memory.
    [Fact]
    public void From_equator_to_pole_it_is_the_quarter_meridian() => Assert.Equal(10_001_965.729, Geodesic.Distance(0, 0.3, Math.PI / 2, 1.9), 2e-3);

    [Fact]
    public void Both_ways_are_as_long_and_the_date_line_is_no_wall()
    {
        double east = Geodesic.Distance(-17 * Degree, 179.9999 * Degree, -17.0001 * Degree, -179.9999 * Degree);
        Assert.Equal(Geodesic.Distance(-17 * Degree, 10.0001 * Degree, -17.0001 * Degree, 10.0003 * Degree), east, 1e-6);
        Assert.Equal(east, Geodesic.Distance(-17.0001 * Degree, -179.9999 * Degree, -17 * Degree, 179.9999 * Degree), 1e-7);
    }

    [Fact]
    public void The_same_place_is_no_way_and_the_far_side_of_the_globe_is_half_its_round()
    {
        Assert.Equal(0, Geodesic.Distance(0.9, 0.1, 0.9, 0.1));
        Assert.Equal(0, Geodesic.Distance(0.9, Math.PI, 0.9, -Math.PI), 1e-6);
        // Nearly opposite: the shortest way leads near a pole, twice the quarter meridian; on the mean sphere within 0.6 %.
        Assert.Equal(2 * 10_001_965.7, Geodesic.Distance(0, 0, 1e-5, Math.PI - 1e-5), 0.006 * 2e7);
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, 1, 90)]
    [InlineData(-1, 0, 180)]
    [InlineData(0, -1, 270)]
    public void Courses_run_from_north_by_east(double north, double east, double expected) =>
        Assert.Equal(expected, Geodesic.Course(0.5, Math.PI, 0.5 + 1e-6 * north, Math.PI + 1e-6 * east) / Degree, 1e-3);

    [Fact]
    public void A_course_at_high_latitude_is_that_of_the_ground_not_of_the_map()
    {
        // At 70 degrees a degree of longitude is 0.3420 × 1.0026 of an equator's, one of latitude 1.0032 × that of a sphere of M: both by M and N of WGS 84.
        double m = 6_378_137 * (1 - 0.00669437999) / Math.Pow(1 - 0.00669437999 * Math.Pow(Math.Sin(70 * Degree), 2), 1.5), n = 6_378_137 / Math.Sqrt(1 - 0.00669437999 * Math.Pow(Math.Sin(70 * Degree), 2));
        double north = 100 / m, east = 100 / (n * Math.Cos(70 * Degree));
        Assert.Equal(45, Geodesic.Course(70 * Degree - north / 2, 0, 70 * Degree + north / 2, east) / Degree, 1e-3);
    }

    private static double Angle(int degrees, int minutes, double seconds) => (degrees < 0 ? -1 : 1) * (Math.Abs(degrees) + minutes / 60.0 + seconds / 3600) * Degree;
}
