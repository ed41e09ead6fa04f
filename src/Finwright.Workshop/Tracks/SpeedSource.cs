namespace Finwright.Workshop.Tracks;

/// <summary>Where the speeds of a track come from; results of the two kinds are never mixed, and each says which it is.</summary>
public enum SpeedSource
{
    /// <summary>Measured speed: the receiver measured it itself, from the shift of the satellites' signals; way is speed over time.</summary>
    Measured,

    /// <summary>From positions: the way between positions over the time between them.</summary>
    Positions,
}
