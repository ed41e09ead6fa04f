namespace Finwright.Workshop.Tracks;

/// <summary>Units in which sailors tell speeds and ways.</summary>
public static class SpeedUnits
{
    /// <summary>A nautical mile, metres; exact by definition.</summary>
    public const double NauticalMile = 1852;

    /// <summary>A knot, m/s: a nautical mile an hour.</summary>
    public const double Knot = NauticalMile / 3600;
}
