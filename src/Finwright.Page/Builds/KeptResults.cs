using Finwright.Assessment;
using Finwright.Page.Bench;
using Finwright.Page.Editing;
using Finwright.Workshop.Comparing;

namespace Finwright.Page.Builds;

/// <summary>Keeps what was worked out of an open design with its revision, so that what was built of it is held against it at once.</summary>
internal static class KeptResults
{
    /// <summary>Keeps it, once everything is worked out and the design is the revision's.</summary>
    /// <param name="room">Where kept results are looked up and kept.</param>
    /// <param name="session">The open design.</param>
    /// <returns>Whether it was kept now.</returns>
    public static bool KeepIfWhole(BenchRoom room, DesignSession session)
    {
        Standing now = session.Now;
        if (now is not { Reach: Reach.Everything, SailingIsOld: false, SailingIsQuick: false, MadeIsOld: false, Fault: null, Sailing: { HasErrors: false } sailing, Made: { HasErrors: false } made } || session.Differs || room.KeptOf(session.Base.Id) is not null)
            return false;
        AssessmentResult whole = made with
        {
            Polars = sailing.Polars,
            Afloat = sailing.Afloat,
            Built = sailing.Built,
            Vibration = sailing.Vibration,
            Bench = sailing.Bench,
            Loaded = sailing.Loaded,
            Verdicts = sailing.Verdicts,
            StrengthVerdicts = sailing.StrengthVerdicts,
        };
        room.Keep(session.Base, FinResults.Of(whole));
        return true;
    }
}
