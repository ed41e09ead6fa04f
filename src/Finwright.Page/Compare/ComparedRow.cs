using Finwright.Workshop.Comparing;

namespace Finwright.Page.Compare;

/// <summary>How a difference stands to what is not known of both numbers.</summary>
public enum DifferenceWeight
{
    /// <summary>No range is known.</summary>
    NotKnown,

    /// <summary>The ranges of both overlap.</summary>
    Within,

    /// <summary>The ranges of both lie apart.</summary>
    Clear,
}

/// <summary>A result of two fins side by side.</summary>
/// <param name="Old">The first's; null when only the second has it.</param>
/// <param name="New">The second's.</param>
public sealed record ComparedRow(ResultLine? Old, ResultLine? New)
{
    /// <summary>The line that names it.</summary>
    public ResultLine Line => (New ?? Old)!;

    /// <summary>Difference of the numbers; null where there is none.</summary>
    public double? Change => Old?.Value is double old && New?.Value is double now ? now - old : null;

    /// <summary>Whether both show the same.</summary>
    public bool IsSame => Old is { } old && New is { } now && string.Equals(old.Word, now.Word, StringComparison.Ordinal)
        && (old.Value is double a ? now.Value is double b && string.Equals(old.Bare(a), now.Bare(b), StringComparison.Ordinal) : now.Value is null);

    /// <summary>How the difference stands to the ranges.</summary>
    public DifferenceWeight Weight => Change is null || Old is not { Low: double oldLow, High: double oldHigh } || New is not { Low: double newLow, High: double newHigh } ? DifferenceWeight.NotKnown
        : oldHigh < newLow || newHigh < oldLow ? DifferenceWeight.Clear : DifferenceWeight.Within;

    /// <summary>Every result that both have worked out, in the order of the job.</summary>
    /// <param name="first">Results of the first.</param>
    /// <param name="second">Results of the second.</param>
    public static IReadOnlyList<ComparedRow> Of(FinResults first, FinResults second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        HashSet<ResultGroup> both = [.. first.Groups.Intersect(second.Groups)];
        Dictionary<string, ResultLine> theirs = second.Lines.Where(line => both.Contains(line.Group)).ToDictionary(line => line.Key, StringComparer.Ordinal);
        List<ComparedRow> rows = [.. first.Lines.Where(line => both.Contains(line.Group)).Select(line => new ComparedRow(line, theirs.GetValueOrDefault(line.Key)))];
        HashSet<string> known = [.. rows.Select(row => row.Line.Key)];
        rows.AddRange(second.Lines.Where(line => both.Contains(line.Group) && !known.Contains(line.Key)).Select(line => new ComparedRow(null, line)));
        return [.. rows.OrderBy(row => row.Line.Group)];
    }
}
