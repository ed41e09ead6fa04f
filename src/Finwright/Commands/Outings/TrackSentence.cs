using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>What a track comes to, in a sentence.</summary>
internal static class TrackSentence
{
    public static string Of(TrackMeasures measures)
    {
        string source = measures.Source == SpeedSource.Measured ? "speeds as the receiver measured them" : "speeds worked out from positions";
        string best = measures switch
        {
            { FiveTimesTen: double five } => $", 5 x 10 s {five / SpeedUnits.Knot:0.00} knots",
            { TenSeconds: { } ten } => $", best 10 s {ten.Speed / SpeedUnits.Knot:0.00} knots",
            _ => "",
        };
        return $"{measures.Runs.Count} {(measures.Runs.Count == 1 ? "run" : "runs")} and {measures.Distance / 1e3:0.0} km in {Clock(measures.TimeSailed)} of sailing{best}; {source}.";
    }

    /// <summary>A time as hours, minutes and seconds.</summary>
    public static string Clock(double seconds)
    {
        long whole = (long)Math.Round(seconds);
        return $"{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}";
    }
}
