namespace Finwright.Workshop.Comparing;

/// <summary>One result in which two designs differ.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Group">What it is about.</param>
/// <param name="Name">Its name.</param>
/// <param name="Old">The first's; null when only the second has it.</param>
/// <param name="New">The second's; null when only the first has it.</param>
public sealed record ResultChange(string Key, ResultGroup Group, string Name, ResultLine? Old, ResultLine? New)
{
    /// <summary>Change of the number, in its unit; null when either has none.</summary>
    public double? Change => Old?.Value is double old && New?.Value is double now ? New.Rounded(now) - Old.Rounded(old) : null;

    /// <summary>Change in per cent of the first; null where that says nothing.</summary>
    public double? Percent => Change is double change && !IsShare(Old!.Unit) && Old.Rounded(Old.Value!.Value) is var old and not 0 ? 100 * change / Math.Abs(old) : null;

    // Per cent of per cent confuse, and degrees Celsius have no zero of their own.
    private static bool IsShare(string unit) => unit.StartsWith('%') || unit == "°C";

    /// <summary>Whether a verdict changed its state.</summary>
    public bool TurnsVerdict => Group is ResultGroup.Verdicts && !string.Equals(Old?.Word, New?.Word, StringComparison.Ordinal);
}

/// <summary>In what the results of two designs differ.</summary>
public static class ResultDifference
{
    /// <summary>Results that differ beyond the decimals that they deserve: verdicts that changed their state first, then in the order of the job. Groups that only one of them has are passed over.</summary>
    /// <param name="first">The first's results.</param>
    /// <param name="second">The second's.</param>
    public static IReadOnlyList<ResultChange> Of(FinResults first, FinResults second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ResultGroup[] both = [.. first.Groups.Intersect(second.Groups)];
        Dictionary<string, ResultLine> olds = first.Lines.Where(line => both.Contains(line.Group)).ToDictionary(line => line.Key, StringComparer.Ordinal);
        Dictionary<string, ResultLine> news = second.Lines.Where(line => both.Contains(line.Group)).ToDictionary(line => line.Key, StringComparer.Ordinal);
        IEnumerable<ResultChange> changed =
            from old in first.Lines
            where olds.ContainsKey(old.Key)
            let now = news.GetValueOrDefault(old.Key)
            where now is null || Differs(old, now)
            select new ResultChange(old.Key, old.Group, old.Name, old, now);
        IEnumerable<ResultChange> added = second.Lines.Where(line => news.ContainsKey(line.Key) && !olds.ContainsKey(line.Key)).Select(now => new ResultChange(now.Key, now.Group, now.Name, null, now));
        // A stable sort keeps lines of a group in their order.
        return [.. changed.Concat(added).OrderBy(change => !change.TurnsVerdict).ThenBy(change => change.Group)];
    }

    private static bool Differs(ResultLine old, ResultLine now) =>
        !string.Equals(old.Word, now.Word, StringComparison.Ordinal)
        || !string.Equals(old.Unit, now.Unit, StringComparison.Ordinal)
        || (old.Value is double a ? now.Value is not double b || !old.Rounded(a).Equals(now.Rounded(b)) : now.Value is not null);
}
