using Finwright.Workshop.Tracks;

namespace Finwright.Workshop.Season;

/// <summary>An invented track: to and fro on a reach, with gybes, gusts and the noise of a receiver.</summary>
/// <param name="Seed">Tells tracks apart.</param>
/// <param name="Start">When it begins.</param>
/// <param name="LatitudeDegrees">Where, degrees north.</param>
/// <param name="LongitudeDegrees">Where, degrees east.</param>
/// <param name="Runs">How many runs.</param>
/// <param name="Speed">Speed on the runs, m/s, in the mean.</param>
internal sealed record SeasonTrack(ulong Seed, DateTimeOffset Start, double LatitudeDegrees, double LongitudeDegrees, int Runs, double Speed)
{
    // One run differs from the next by gusts and by how it is sailed; the receiver's own noise is far smaller. Judgement.
    private const double RunDeviation = 0.3, Noise = 0.06, Gust = 0.25, GustSeconds = 23;

    private const int RunSeconds = 65, GybeSeconds = 9;
    private const double Gybing = 5.5, GettingUp = 4, Bearing = 80, EarthRadius = 6_371_000;

    /// <summary>The track, a point a second.</summary>
    public Track Make()
    {
        SeasonNoise noise = new(Seed);
        List<TrackPoint> points = [];
        (double latitude, double longitude) = (double.DegreesToRadians(LatitudeDegrees), double.DegreesToRadians(LongitudeDegrees));
        for (int run = 0; run < Runs; run++)
        {
            double top = Speed + RunDeviation * noise.Normal(), phase = 2 * Math.PI * noise.Even(), course = Bearing + 180 * (run % 2) + 4 * noise.Normal();
            int seconds = RunSeconds + (int)(20 * noise.Even());
            for (int s = 0; s < seconds + GybeSeconds; s++)
            {
                double rises = Gybing + (top - Gybing) * (1 - Math.Exp(-s / GettingUp)), gust = Gust * Math.Sin(2 * Math.PI * s / GustSeconds + phase);
                // Into the gybe the board slows down and turns through half a circle.
                double turned = Math.Clamp((s - seconds) / (double)GybeSeconds, 0, 1), slowed = 1 - turned;
                double speed = Math.Max(1, (s < seconds ? rises + gust : Gybing + (top - Gybing) * slowed * slowed) + Noise * noise.Normal());
                double heading = double.DegreesToRadians(course + 180 * turned);
                latitude += speed * Math.Cos(heading) / EarthRadius;
                longitude += speed * Math.Sin(heading) / (EarthRadius * Math.Cos(latitude));
                points.Add(new(points.Count, Rounded(latitude), Rounded(longitude), Math.Round(speed, 2)));
            }
        }

        return new(Start, points);
    }

    // Receivers tell positions to about a centimetre.
    private static double Rounded(double radians) => double.DegreesToRadians(Math.Round(double.RadiansToDegrees(radians), 7));
}
