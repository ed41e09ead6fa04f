using System.Globalization;
using Finwright.Page.Words;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Tracks;

namespace Finwright.Page.Outings;

/// <summary>Words of outings and their tracks for the reader. Sailors tell speeds in knots; m/s stands beside them.</summary>
internal static class OutingWords
{
    // A tenth of a knot is what receivers are good for at best; two decimals are how sailors tell it, with the error beside it.
    private const int Decimals = 2;

    /// <summary>A speed in knots, bare.</summary>
    public static string Knots(Reader reader, double speed) => reader.Tongue.Number(speed / SpeedUnits.Knot, Decimals);

    /// <summary>A speed in m/s, bare.</summary>
    public static string Metres(Reader reader, double speed) => reader.Tongue.Number(speed, Decimals);

    /// <summary>The wind of an outing; empty when it is not known.</summary>
    public static string Wind(Reader reader, Outing outing) => outing is not { WindLowKnots: double low, WindHighKnots: double high } ? ""
        : low.Equals(high) ? $"{reader.Tongue.Brief(low)} kn"
        : $"{reader.Tongue.Words.Numbers.Range(reader.Tongue.Brief(low), reader.Tongue.Brief(high))} kn";

    /// <summary>How it went, in a few words; empty when nothing was said.</summary>
    public static string Rating(Reader reader, Outing outing) => string.Join(", ", new[]
    {
        outing.Grip is int grip ? reader["grip {0} of 5", grip] : "",
        outing.SpinOuts switch { null => "", 0 => reader["never let go"], 1 => reader["let go once"], int times => reader["let go {0} times", times] },
        outing.Speed is int speed ? reader["speed {0} of 5", speed] : "",
        outing.Feel is int feel ? reader["feel {0} of 5", feel] : "",
    }.Where(word => word.Length > 0));

    /// <summary>A time as hours, minutes and seconds.</summary>
    public static string Clock(double seconds)
    {
        long whole = (long)Math.Round(seconds);
        return string.Create(CultureInfo.InvariantCulture, $"{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}");
    }

    /// <summary>What a track comes to, in a sentence.</summary>
    public static string Sentence(Reader reader, TrackMeasures measures)
    {
        string runs = measures.Runs.Count == 1 ? reader["1 run"] : reader["{0} runs", measures.Runs.Count];
        string best = measures switch
        {
            { FiveTimesTen: double five } => reader[", 5 × 10 s at {0} kn", Knots(reader, five)],
            { TenSeconds: { } ten } => reader[", best 10 s at {0} kn", Knots(reader, ten.Speed)],
            _ => "",
        };
        string source = measures.Source is SpeedSource.Measured ? reader["speeds as the receiver measured them"] : reader["speeds worked out from positions"];
        return reader["{0} and {1} km in {2} of sailing{3}; {4}.", runs, reader.Tongue.Number(measures.Distance / 1e3, 1), Clock(measures.TimeSailed), best, source];
    }

    /// <summary>Why points were left out.</summary>
    public static string Reason(Reader reader, RejectionReason reason) => reason switch
    {
        RejectionReason.DoubledTime => reader["the same time as the point before"],
        RejectionReason.ClockWentBack => reader["the clock went back"],
        RejectionReason.OtherDay => reader["of another day, or the clock was wrong by days"],
        RejectionReason.FewSatellites => reader["too few satellites, or badly placed ones"],
        RejectionReason.Leap => reader["farther from the last good point than anyone sails in the time"],
        RejectionReason.NoSpeed => reader["no speed told, or one that nobody sails"],
        RejectionReason.SpeedsDisagree => reader["measured speed and positions do not agree"],
        RejectionReason.TooClose => reader["nearer than a second to the point before: more would only add noise to speeds from positions"],
        RejectionReason.Acceleration => reader["the speed changed faster than a board's can"],
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Unknown reason."),
    };

    /// <summary>What a comparison of two fins comes to.</summary>
    public static string Sentence(Reader reader, FairComparison comparison, string first, string second)
    {
        if (comparison is not { Verdict: not FairVerdict.NotComparable, Difference: double difference, Low: double low, High: double high })
            return reader["{0} and {1} cannot be compared: {2}", first, second, reader[comparison.Findings[0].Message]];
        if (comparison.Verdict is FairVerdict.CannotTell)
        {
            string why = low <= 0 && high >= 0 ? reader["zero lies within the range"] : reader["less than {0} kn is not provable", Knots(reader, comparison.Floor)];
            return reader["{0} and {1} cannot be told apart: {0} less {1} is {2} kn, within {3} to {4} kn with 95 % certainty, and {5}.", first, second, Knots(reader, difference), Knots(reader, low), Knots(reader, high), why];
        }

        bool isFirst = comparison.Verdict is FairVerdict.FirstFaster;
        (double least, double most) = isFirst ? (low, high) : (-high, -low);
        return reader["{0} is faster than {1} by {2} to {3} kn with 95 % certainty.", isFirst ? first : second, isFirst ? second : first, Knots(reader, least), Knots(reader, most)];
    }
}
