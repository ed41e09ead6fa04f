namespace Finwright.Papers.Words;

/// <summary>What stands beside numbers.</summary>
public abstract class NumberWords
{
    /// <summary>Whether a comma stands between whole number and decimals.</summary>
    public abstract bool HasDecimalComma { get; }

    /// <summary>Days, more than one.</summary>
    public abstract string Days { get; }

    /// <summary>The ends of a range: "23 to 28".</summary>
    public abstract string Range(string low, string high);

    /// <summary>A limit behind a value: "limit at least 1.5".</summary>
    /// <param name="limit">The limit, with its unit.</param>
    /// <param name="mustStayAbove">Whether the value must stay above it; else below.</param>
    public abstract string Limit(string limit, bool mustStayAbove);

    /// <summary>Two things: "a and b".</summary>
    public abstract string Both(string first, string second);

    /// <summary>A date.</summary>
    public abstract string Day(DateOnly day);
}
