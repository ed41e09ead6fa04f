namespace Finwright.Workshop.Tracks;

/// <summary>Why points were left out.</summary>
public enum RejectionReason
{
    /// <summary>The same time as the point before.</summary>
    DoubledTime,

    /// <summary>The clock went back.</summary>
    ClockWentBack,

    /// <summary>The clock, or the file, moved to another day.</summary>
    OtherDay,

    /// <summary>Too few satellites, or badly placed ones, as the receiver told.</summary>
    FewSatellites,

    /// <summary>Farther from the last good point than anyone sails in the time.</summary>
    Leap,

    /// <summary>No speed told, on a track that tells speeds; or one that nobody sails.</summary>
    NoSpeed,

    /// <summary>Measured speed and positions do not tell the same.</summary>
    SpeedsDisagree,

    /// <summary>Nearer in time than a second to the point before, where speeds come from positions.</summary>
    TooClose,

    /// <summary>Speed changed faster than a board can.</summary>
    Acceleration,
}

/// <summary>Points left out for one reason.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Count">How many.</param>
/// <param name="FirstTime">Time of the first of them, seconds since the start of the track.</param>
public sealed record Rejection(RejectionReason Reason, int Count, double FirstTime);
