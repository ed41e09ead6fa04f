namespace Finwright.Workshop.Tracks;

/// <summary>Ways between positions on the ellipsoid to which satellite receivers refer.</summary>
public static class Geodesic
{
    // World Geodetic System 1984, defining values (NIMA TR8350.2, 2000, table 3.1).
    private const double Equator = 6_378_137, Flattening = 1 / 298.257223563;
    private const int MostSteps = 50;
    // 0.01 µm on the ground: below it, a step changes nothing that counts.
    private const double Converged = 1e-15;

    /// <summary>The shortest way between two positions, metres.</summary>
    /// <param name="fromLatitude">Radians, positive north.</param>
    /// <param name="fromLongitude">Radians, positive east; any number of turns.</param>
    /// <param name="toLatitude">Radians.</param>
    /// <param name="toLongitude">Radians.</param>
    /// <remarks>
    /// T. Vincenty, 1975, Direct and inverse solutions of geodesics on the ellipsoid with application of nested equations, Survey Review 23 (176), eq. 10 to 19.
    /// To 0.1 mm, except between positions nearly opposite on the globe, where the series does not settle: there the arc on the mean sphere is given, to 0.6 %.
    /// </remarks>
    public static double Distance(double fromLatitude, double fromLongitude, double toLatitude, double toLongitude) =>
        Distance(fromLatitude, fromLongitude, toLatitude, toLongitude, Equator, Flattening);

    /// <summary>The same on another ellipsoid.</summary>
    internal static double Distance(double fromLatitude, double fromLongitude, double toLatitude, double toLongitude, double a, double f)
    {
        double b = a * (1 - f), l = Turn(toLongitude - fromLongitude);
        (double sinU1, double cosU1) = Reduced(fromLatitude, f);
        (double sinU2, double cosU2) = Reduced(toLatitude, f);
        double lambda = l;
        for (int step = 0; step < MostSteps; step++)
        {
            (double sinLambda, double cosLambda) = Math.SinCos(lambda);
            double across = cosU2 * sinLambda, along = cosU1 * sinU2 - sinU1 * cosU2 * cosLambda;
            double sinSigma = Math.Sqrt(across * across + along * along);
            if (sinSigma is 0)
                return cosLambda > 0 ? 0 : OnSphere(fromLatitude, toLatitude, l, a, b);
            double cosSigma = sinU1 * sinU2 + cosU1 * cosU2 * cosLambda;
            double sigma = Math.Atan2(sinSigma, cosSigma);
            double sinAlpha = cosU1 * cosU2 * sinLambda / sinSigma, cosSqAlpha = 1 - sinAlpha * sinAlpha;
            // On the equator there is no point nearest the pole.
            double cos2SigmaM = cosSqAlpha > 0 ? cosSigma - 2 * sinU1 * sinU2 / cosSqAlpha : 0;
            double c = f / 16 * cosSqAlpha * (4 + f * (4 - 3 * cosSqAlpha));
            double before = lambda;
            lambda = l + (1 - c) * f * sinAlpha * (sigma + c * sinSigma * (cos2SigmaM + c * cosSigma * (2 * cos2SigmaM * cos2SigmaM - 1)));
            if (Math.Abs(lambda) > Math.PI)
                break;
            if (Math.Abs(lambda - before) > Converged)
                continue;
            double uSq = cosSqAlpha * (a * a - b * b) / (b * b);
            double bigA = 1 + uSq / 16384 * (4096 + uSq * (-768 + uSq * (320 - 175 * uSq)));
            double bigB = uSq / 1024 * (256 + uSq * (-128 + uSq * (74 - 47 * uSq)));
            double q = 2 * cos2SigmaM * cos2SigmaM - 1;
            double deltaSigma = bigB * sinSigma * (cos2SigmaM + bigB / 4 * (cosSigma * q - bigB / 6 * cos2SigmaM * (4 * sinSigma * sinSigma - 3) * (4 * cos2SigmaM * cos2SigmaM - 3)));
            return b * bigA * (sigma - deltaSigma);
        }

        return OnSphere(fromLatitude, toLatitude, l, a, b);
    }

    /// <summary>Course of the straight line between two near positions, radians from north by east, 0 to 2π; to 0.1° within 10 km and 80° of latitude. 0 when both are the same.</summary>
    /// <param name="fromLatitude">Radians, positive north.</param>
    /// <param name="fromLongitude">Radians, positive east; any number of turns.</param>
    /// <param name="toLatitude">Radians.</param>
    /// <param name="toLongitude">Radians.</param>
    public static double Course(double fromLatitude, double fromLongitude, double toLatitude, double toLongitude)
    {
        const double EccentricitySquared = Flattening * (2 - Flattening);
        (double sin, double cos) = Math.SinCos((fromLatitude + toLatitude) / 2);
        double w = 1 - EccentricitySquared * sin * sin;
        // Radii of curvature at the middle, over the equator's: N = 1/√w across the meridian, M = (1 - e²)/w^1.5 along it.
        double east = Turn(toLongitude - fromLongitude) * cos, north = (toLatitude - fromLatitude) * (1 - EccentricitySquared) / w;
        double course = Math.Atan2(east, north);
        return course < 0 ? course + 2 * Math.PI : course;
    }

    /// <summary>An angle as the same direction within -π to π.</summary>
    internal static double Turn(double angle) => Math.IEEERemainder(angle, 2 * Math.PI);

    private static (double Sin, double Cos) Reduced(double latitude, double f)
    {
        (double sin, double cos) = Math.SinCos(latitude);
        double scaled = (1 - f) * sin, length = Math.Sqrt(scaled * scaled + cos * cos);
        return (scaled / length, Math.Max(0, cos) / length);
    }

    private static double OnSphere(double fromLatitude, double toLatitude, double longitude, double a, double b)
    {
        double north = Math.Sin((toLatitude - fromLatitude) / 2), east = Math.Sin(longitude / 2);
        double h = north * north + Math.Cos(fromLatitude) * Math.Cos(toLatitude) * east * east;
        return 2 * (2 * a + b) / 3 * Math.Asin(Math.Sqrt(Math.Clamp(h, 0, 1)));
    }
}
