namespace Finwright.Workshop.Tracks;

/// <summary>What a comparison of two fins comes to.</summary>
public enum FairVerdict
{
    /// <summary>The runs do not allow a comparison.</summary>
    NotComparable,

    /// <summary>Compared, and no difference can be told.</summary>
    CannotTell,

    /// <summary>The first fin is faster.</summary>
    FirstFaster,

    /// <summary>The second fin is faster.</summary>
    SecondFaster,
}

/// <summary>How the days were handled.</summary>
public enum DayHandling
{
    /// <summary>Nothing was compared.</summary>
    None,

    /// <summary>Differences within days on which both fins were sailed: what a day adds to both falls out.</summary>
    WithinDays,

    /// <summary>Never enough on the same day: means of days are compared, and how much days differ is part of the uncertainty.</summary>
    BetweenDays,
}

/// <summary>The runs of one fin that were compared.</summary>
/// <param name="Runs">How many.</param>
/// <param name="Days">On how many days.</param>
/// <param name="Mean">Mean of their best 10 s, m/s; not a number when there are none.</param>
/// <param name="Deviation">Standard deviation of one run, m/s; not a number with fewer than two.</param>
/// <param name="LeftOut">Runs that found nothing like them on the other side.</param>
public sealed record FairSide(int Runs, int Days, double Mean, double Deviation, int LeftOut);
