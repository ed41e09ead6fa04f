using Finwright.Page.Words;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Reviewing;

namespace Finwright.Page.Builds;

/// <summary>A build held against its prediction, in the reader's words.</summary>
internal static class ReviewWords
{
    /// <summary>The answer in a sentence.</summary>
    public static string Sentence(Reader reader, BuildReview review)
    {
        ReviewState[] all = [.. review.Lines.Select(line => line.State), .. review.Readings.Select(reading => reading.Against.State)];
        int off = all.Count(state => state is ReviewState.Below or ReviewState.Above), compared = off + all.Count(state => state is ReviewState.Within);
        return compared == 0
            ? all.Contains(ReviewState.NotPredicted) ? reader["What was measured has no prediction to be held against yet."] : reader["Nothing was measured yet."]
            : off > 0 ? reader["{0} of {1} measurements lie outside their range.", off, compared]
            : review.Remarks.Count > 0 ? reader["Each of {0} measurements lies within its range; together they say more.", compared]
            : reader["All {0} measurements lie within their ranges.", compared];
    }

    /// <summary>What a line is about.</summary>
    public static string Name(Reader reader, ReviewLine line) => line.Key switch
    {
        { } key when key.StartsWith("print.", StringComparison.Ordinal) && key.EndsWith(".plastic", StringComparison.Ordinal) && key != ResultKeys.Plastic => reader["plastic of the part {0}", key[6..^8]],
        { } key when key.StartsWith("print.", StringComparison.Ordinal) && key.EndsWith(".time", StringComparison.Ordinal) && key != ResultKeys.PrintTime => reader["time of the part {0}", key[6..^5]],
        _ => reader[line.Name],
    };

    /// <summary>A number of a line, with its unit.</summary>
    public static string Number(Reader reader, ReviewLine line, double value) => line.Key switch
    {
        "bench.deflection" => reader.Tongue.Length(1e-3 * value),
        "bench.twist" => reader.Tongue.Angle(double.DegreesToRadians(value), 2),
        ResultKeys.Peak => reader.Tongue.Temperature(value + CelsiusZero, line.Decimals),
        _ => $"{reader.Tongue.Number(value, line.Decimals)} {line.Unit}".TrimEnd(),
    };

    /// <summary>How a line stands: its mark, its class and a word.</summary>
    public static (string Mark, string Class, string Word) State(Reader reader, ReviewState state) => state switch
    {
        ReviewState.Within => ("●", "mark-holds", reader["fits"]),
        ReviewState.Below => ("◐", "mark-tight", reader["below"]),
        ReviewState.Above => ("◐", "mark-tight", reader["above"]),
        ReviewState.NotMeasured => ("?", "mark-notknown", reader["not measured"]),
        ReviewState.NotPredicted => ("?", "mark-notknown", reader["not predicted"]),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Unknown state."),
    };

    private const double CelsiusZero = 273.15;
}
