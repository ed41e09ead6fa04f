namespace Finwright.Workshop.Tracks;

/// <summary>What is taken for possible on a track, and what for a fault of the receiver.</summary>
public static class TrackLimits
{
    /// <summary>Fastest that a windsurfer goes, m/s: 78 knots. Judgement: well above the fastest 2 s known (55 knots), below what most faults show.</summary>
    public const double FastestSpeed = 40;

    /// <summary>What a position may be off without anything being wrong, metres. Common practice, no source.</summary>
    public const double PositionSlack = 10;

    /// <summary>Points that must agree with one another before a leap is taken for true and the points before it for the fault. Judgement.</summary>
    public const int PointsToBelieve = 5;

    /// <summary>Greatest change of speed, m/s². Common practice, no source.</summary>
    public const double Acceleration = 3;

    /// <summary>Change of speed over a second that noise alone makes, m/s. Judgement.</summary>
    public const double SpeedSlack = 0.5;

    /// <summary>Change of speed from one point to the next that noise and a swinging arm make, however fast the points follow, m/s. Judgement.</summary>
    public const double SwingSlack = 1.5;

    /// <summary>Longest time for which the speed before a leap is held against the points after it, s; then the rest of the run is rejected. Judgement.</summary>
    public const double LongestHold = 5;

    /// <summary>Fewest satellites, where they are told. Judgement: 6 to 7 are commonly warned of, no source.</summary>
    public const int FewestSatellites = 5;

    /// <summary>Below this many satellites, where they are told, a track is warned of. Common practice, no source.</summary>
    public const int GoodSatellites = 7;

    /// <summary>Greatest horizontal dilution of precision, where it is told. Common practice, no source.</summary>
    public const double GreatestDilution = 5;

    /// <summary>How far measured speed and the speed between positions may differ, m/s over about <see cref="CompareSeconds"/>: 5 knots. Judgement: three times what positions are usually off.</summary>
    public const double SpeedDifference = 5 * SpeedUnits.Knot;

    /// <summary>Time over which both speeds are compared, s. Judgement.</summary>
    public const double CompareSeconds = 4;

    /// <summary>Measured speeds are in another unit than m/s, or false, when their way is not within this factor of the way between positions. Judgement; a knot is 0.51 m/s, 1 km/h is 0.28 m/s.</summary>
    public const double GreatestRatio = 1.3;

    /// <summary>Share of points that must tell a speed for the track to be taken as measured. Judgement.</summary>
    public const double MeasuredShare = 0.9;

    /// <summary>Shortest step between points where speeds come from positions, s: at ten points a second the way would be made of their noise. Judgement; the usual errors are those of a point a second.</summary>
    public const double ShortestPositionStep = 1;

    /// <summary>Longest step between points without a warning, s. Common practice, no source: a point a second or more.</summary>
    public const double LongestGoodStep = 2;

    /// <summary>Longest step that a speed may span, s; beyond it the track is cut. Judgement: a gybe fits into more.</summary>
    public const double LongestStep = 5;

    /// <summary>A clock that moves by more than this from one point to the next is wrong, or the file holds more than one day, s. Judgement.</summary>
    public const double LongestPause = 12 * 3600;

    /// <summary>Below this speed nobody sails, and positions wander by themselves, m/s. Judgement.</summary>
    public const double SlowestSailing = 1;
}
